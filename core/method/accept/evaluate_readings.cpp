#include "method/accept/evaluate_readings.h"

#include "method/accept/second_reading.h"
#include "method/sentence.h"
#include "method/soil/in_place.h"

#include <cmath>
#include <string>
#include <tuple>

namespace groundcount::method {
namespace {

/// Counts -> corrected counts -> ratios -> wet density and water density, without bias and moisture correction.
Result<void> fromCounts(const ReadingInput& in, const GaugeInput& gauge, ReadingResult& out, Reasons& reasons)
{
    if (!gauge.densityCurve || !gauge.waterCurve)
        return refused("The gauge has no calibration for this depth; counts need a curve of their own depth.");
    out.densityCorrected = in.densityCount;
    out.moistureCorrected = in.moistureCount;
    if (gauge.trenchDensity) {
        const auto n = trenchCorrected(in.densityCount, gauge.trenchDensity->inTrench, gauge.trenchDensity->outside);
        if (!n)
            return tl::unexpected(n.error());
        out.densityCorrected = *n;
    }
    if (gauge.trenchMoisture) {
        const auto n = trenchCorrected(in.moistureCount, gauge.trenchMoisture->inTrench, gauge.trenchMoisture->outside);
        if (!n)
            return tl::unexpected(n.error());
        out.moistureCorrected = *n;
    }
    const auto densityRatio = countRatio(out.densityCorrected, gauge.densityStandard);
    if (!densityRatio)
        return refused("Density: " + densityRatio.error().what);
    const auto moistureRatio = countRatio(out.moistureCorrected, gauge.moistureStandard);
    if (!moistureRatio)
        return refused("Moisture: " + moistureRatio.error().what);
    const auto wet = wetDensity(*gauge.densityCurve, *densityRatio);
    if (!wet)
        return tl::unexpected(wet.error());
    const auto water = waterDensity(*gauge.waterCurve, *moistureRatio);
    if (!water)
        return tl::unexpected(water.error());
    out.densityRatio = *densityRatio;
    out.moistureRatio = *moistureRatio;
    out.wetAsRead = *wet;
    out.waterAsRead = *water;
    if (calibratedRange(*gauge.densityCurve, *wet) == Range::Outside && !reasons.has(Reason::OutsideDensityCurve))
        reasons.add(Reason::OutsideDensityCurve);
    if (calibratedRange(*gauge.waterCurve, *water) == Range::Outside && !reasons.has(Reason::OutsideWaterCurve))
        reasons.add(Reason::OutsideWaterCurve);
    return {};
}

Result<void> fromReadout(const ReadingInput& in, double contentMostPct, ReadingResult& out)
{
    out.wetAsRead = in.wet;
    if (in.form == ReadingForm::WaterContent && !(in.content.percent() >= 0 && in.content.percent() <= contentMostPct))
        return refusedValue("The water content", in.content.percent(), " %", "0 to " + shownNumber(contentMostPct));
    if (!(in.wet.kgPerM3() > 0))
        return {};  // guardDensities says so in the unit that was typed
    if (in.form == ReadingForm::WaterDensity) {
        out.waterAsRead = in.water;
        return {};
    }
    const auto dry = dryFromContent(in.wet, in.content);
    if (!dry)
        return tl::unexpected(dry.error());
    out.waterAsRead = dry->water;
    return {};
}

/// The guards of section 9 in the unit that was typed (the functions below refuse the same in kg/m3), and the range of
/// wet densities that is believed at all.
Result<void> guardDensities(const WetDensity& wet, const WaterDensity& water, const EvaluationRules& rules)
{
    const auto shown = [&](const auto& density) {
        const double value = inUnit(density, rules.unit);
        return (std::fabs(value) < 1e6 ? reportedText(value, 1, TieRule::HalfEven) : shownNumber(value)) + " " + unitWord(rules.unit);
    };
    const auto outOfRange = [&] {
        return refused("The wet density is " + shown(wet) + "; it must be " + shown(rules.wetLeast) + " to " + shown(rules.wetMost) + ".");
    };
    if (!(wet.kgPerM3() > 0))
        return outOfRange();
    if (!(water.kgPerM3() >= 0 && water.kgPerM3() < wet.kgPerM3()))  // the likelier slip comes first
        return refused("The water density is " + shown(water) + "; it must be 0 or more and below the wet density of " +
                       shown(wet) + ". Are the two the wrong way round?");
    if (!(wet >= rules.wetLeast && wet <= rules.wetMost))
        return outOfRange();
    return {};
}

/// A count above what any gauge shows is a slip of typing.
Result<void> guardCounts(const ReadingInput& in, const GaugeInput& gauge, double most)
{
    const auto refusedCount = [&](const char* thing, double count) {
        return refusedValue(thing, count, "", "above 0 and at most " + reportedText(most, 0, TieRule::HalfEven));
    };
    for (const auto& [thing, count] : {std::pair{"The density count", in.densityCount},
                                       {"The moisture count", in.moistureCount},
                                       {"The density standard count", gauge.densityStandard},
                                       {"The moisture standard count", gauge.moistureStandard}})
        if (!(count > 0 && count <= most))
            return refusedCount(thing, count);
    for (const auto& trench : {gauge.trenchDensity, gauge.trenchMoisture})
        if (trench)
            for (const double count : {trench->inTrench, trench->outside})
                if (!(count > 0 && count <= most))
                    return refusedCount("A trench standard count", count);
    return {};
}

Result<void> workReading(const ReadingInput& in, const GaugeInput& gauge, const EvaluationRules& rules, ReadingResult& out, Reasons& reasons)
{
    if (in.form == ReadingForm::Counts) {
        if (auto ok = guardCounts(in, gauge, rules.countMost); !ok)
            return ok;
        if (auto ok = fromCounts(in, gauge, out, reasons); !ok)
            return ok;
    } else if (auto ok = fromReadout(in, rules.contentMostPct, out); !ok) {
        return ok;
    }
    out.wet = WetDensity::kgPerM3(out.wetAsRead.kgPerM3() + gauge.densityBiasKgPerM3);
    if (auto ok = guardDensities(out.wet, out.waterAsRead, rules); !ok)
        return ok;
    if (!gauge.moistureCorrection) {
        out.water = out.waterAsRead;  // guarded just now
        return {};
    }
    const auto corrected = dryFromGauge(out.wet, out.waterAsRead, *gauge.moistureCorrection);
    if (!corrected)
        return tl::unexpected(corrected.error());
    out.water = corrected->water;
    return {};
}

}  // namespace

Result<void> joinReadings(const TestInput& input, const EvaluationRules& rules, Evaluation& e)
{
    if (input.readingCount < 1 || input.readingCount > 2)
        return refused("A test has one or two readings; " + std::to_string(input.readingCount) + " were given.");
    for (int i = 0; i < input.readingCount; ++i) {
        const auto n = static_cast<std::size_t>(i);
        if (auto one = workReading(input.readings[n], input.gauge, rules, e.readings[n], e.reasons); !one)
            return input.readingCount == 1 ? one : Result<void>(refused("Reading " + std::to_string(i + 1) + ": " + one.error().what));
    }
    e.readingCount = input.readingCount;
    e.wet = e.readings[0].wet;
    e.water = e.readings[0].water;
    if (input.readingCount == 1)
        return {};
    const auto inRuleUnit = [&](const auto& density) { return inUnit(density, rules.unit); };
    const auto wet = compareReadings(inRuleUnit(e.readings[0].wet), inRuleUnit(e.readings[1].wet), rules.secondKind, rules.secondDensityLimit);
    if (!wet)
        return tl::unexpected(wet.error());
    const auto water = compareReadings(inRuleUnit(e.readings[0].water), inRuleUnit(e.readings[1].water), rules.secondKind, rules.secondMoistureLimit);
    if (!water)
        return tl::unexpected(water.error());
    for (const auto& [name, result, limit] : {std::tuple{"wet density", &*wet, rules.secondDensityLimit},
                                              {"water density", &*water, rules.secondMoistureLimit}}) {
        if (result->agreement == Agreement::Apart) {
            const bool percent = rules.secondKind == DifferenceKind::PercentOfFirst;
            return refused(std::string("The second reading's ") + name + " differs from the first by " +
                           reportedText(percent ? result->differencePct : result->difference, 1, TieRule::HalfEven) +
                           (percent ? " %" : std::string(" ") + unitWord(rules.unit)) + "; at most " +
                           reportedText(limit, 1, TieRule::HalfEven) + " is allowed. Take the test at a new spot.");
        }
    }
    e.wet = WetDensity::kgPerM3((e.readings[0].wet.kgPerM3() + e.readings[1].wet.kgPerM3()) / 2);
    e.water = WaterDensity::kgPerM3((e.readings[0].water.kgPerM3() + e.readings[1].water.kgPerM3()) / 2);
    return {};
}

}  // namespace groundcount::method
