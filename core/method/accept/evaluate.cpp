#include "method/accept/evaluate.h"

#include "method/accept/evaluate_readings.h"
#include "method/sentence.h"
#include "method/soil/in_place.h"
#include "method/soil/oversize.h"
#include "method/uncertainty/compaction.h"

#include <cmath>
#include <string>
#include <utility>

namespace groundcount::method {
namespace {

double rounded(double value, const std::optional<Rounding>& rule)
{
    return rule ? roundReported(value, *rule) : value;
}

Result<void> dryDensity(const TestInput& input, const EvaluationRules& rules, Evaluation& e)
{
    if (input.otherContent && !(input.otherContent->percent() >= 0 && input.otherContent->percent() <= rules.contentMostPct))
        return refusedValue("The water content", input.otherContent->percent(), " %", "0 to " + shownNumber(rules.contentMostPct));
    const auto dry = input.otherContent ? dryFromContent(e.wet, *input.otherContent) : dryFromGauge(e.wet, e.water);
    if (!dry)
        return tl::unexpected(dry.error());
    e.dry = dry->dry;
    e.content = dry->content;
    e.water = dry->water;
    return {};
}

Result<void> reference(const TestInput& input, const EvaluationRules& rules, Evaluation& e)
{
    const ReferenceInput& ref = input.reference;
    if (!(ref.maximum.kgPerM3() >= rules.wetLeast.kgPerM3() && ref.maximum.kgPerM3() <= rules.wetMost.kgPerM3()))
        return refused("The maximum dry density is " + shownNumber(inUnit(ref.maximum, rules.unit)) + " " + unitWord(rules.unit) + "; it must be " +
                       shownNumber(inUnit(rules.wetLeast, rules.unit)) + " to " + shownNumber(inUnit(rules.wetMost, rules.unit)) + " " + unitWord(rules.unit) + ".");
    if (!(ref.optimum.percent() >= 0 && ref.optimum.percent() <= 100))
        return refused("The optimum water content must be 0 to 100 %; it is " +
                       reportedText(ref.optimum.percent(), 1, TieRule::HalfEven) + " %.");
    e.maximum = ref.maximum;
    e.optimum = ref.optimum;
    e.coarseWater = ref.coarseWater.value_or(rules.coarseWater);
    if (!input.sample)
        return {};
    const SampleInput& sample = *input.sample;
    if (!(sample.totalMass > 0))
        return refused("The sample's total mass must be above 0 g; it is " + reportedText(sample.totalMass, 1, TieRule::HalfEven) + " g.");
    if (!(sample.retainedMass >= 0 && sample.retainedMass <= sample.totalMass))
        return refused("The mass retained is " + reportedText(sample.retainedMass, 1, TieRule::HalfEven) + " g of a sample of " +
                       reportedText(sample.totalMass, 1, TieRule::HalfEven) +
                       " g; it must be 0 to the total. Are the two masses the wrong way round?");
    // The total's water content is known, the fine fraction's is not: dry total and dry coarse give the dry fine.
    const double dryTotal = sample.totalMass / (1 + e.content.fraction());
    const double dryCoarse = sample.retainedMass / (1 + e.coarseWater.fraction());
    const auto part = coarsePart(dryTotal - dryCoarse, dryCoarse);
    if (!part)
        return tl::unexpected(part.error());
    e.coarse = *part;
    const OversizeLimits limits{rules.coarseLower.percent(), rules.atLowerLimit,
                                sample.sieve == SplitSieve::No4 ? rules.coarseUpperNo4.percent()
                                                                  : rules.coarseUpperThreeQuarter.percent()};
    const auto need = oversizeNeed(*part, limits);
    if (!need)
        return tl::unexpected(need.error());
    if (*need == OversizeNeed::None)
        return {};
    if (!ref.coarseGravity)
        return refused("The coarse part is " + reportedText(part->percent(), 1, TieRule::HalfEven) +
                       " % and must be corrected for, but the reference test has no specific gravity of the coarse particles.");
    const auto maximum = totalFromFine(ref.maximum, *part, *ref.coarseGravity, rules.waterDensity);
    if (!maximum)
        return tl::unexpected(maximum.error());
    const auto optimum = totalWaterFromFine(ref.optimum, *part, e.coarseWater);
    if (!optimum)
        return tl::unexpected(optimum.error());
    e.maximum = *maximum;
    e.optimum = *optimum;
    e.coarseCorrected = true;
    return {};
}

/// A figure for the report must lie in the range of roundReported; beyond it a slip of typing is likelier than any soil.
Result<void> guardFigure(const char* thing, double value, const char* unit)
{
    if (std::fabs(value) < 1e8)
        return {};
    return refusedValue(thing, value, unit, "between -100 000 000 and 100 000 000");
}

Result<void> report(const EvaluationRules& rules, Evaluation& e)
{
    // Wet density and maximum are inside the believed range; a quotient by a sliver of dry mass still needs a guard.
    if (auto ok = guardFigure("The water content", e.content.percent(), " %"); !ok)
        return ok;
    if (auto ok = guardFigure("The optimum water content", e.optimum.percent(), " %"); !ok)
        return ok;
    e.reported.wet = rounded(inUnit(e.wet, rules.unit), rules.dry);
    e.reported.water = rounded(inUnit(e.water, rules.unit), rules.dry);
    e.reported.dry = rounded(inUnit(e.dry, rules.unit), rules.dry);
    e.reported.contentPct = rounded(e.content.percent(), rules.content);
    e.reported.maximum = rounded(inUnit(e.maximum, rules.unit), rules.maximum);
    e.reported.optimumPct = rounded(e.optimum.percent(), rules.optimum);
    return {};
}

void judge(const TestInput& input, const EvaluationRules& rules, Evaluation& e)
{
    const auto pct = [](const std::optional<Decimal>& d) { return d ? std::optional(d->value()) : std::nullopt; };
    const bool roundedFigures = rules.compared == Compared::Rounded;
    const Side density = sideOf(roundedFigures ? e.reported.compactionPct : e.compaction.percent(),
                                pct(input.requirement.minimumPct), pct(input.requirement.maximumPct));
    e.window = windowBounds(input.requirement.window, e.reported.optimumPct);
    const Side moisture = sideOf(roundedFigures ? e.reported.contentPct : e.content.percent(), e.window.lowPct, e.window.highPct);
    e.densityMet = density == Side::Inside;
    e.moistureMet = moisture == Side::Inside;
    if (!e.densityMet)
        e.reasons.add(density == Side::Below ? Reason::DensityLow : Reason::DensityHigh);
    if (!e.moistureMet)
        e.reasons.add(moisture == Side::Below ? Reason::TooDry : Reason::TooWet);
    if (input.awaiting != Awaiting::Nothing)
        e.reasons.add(input.awaiting == Awaiting::Sample ? Reason::AwaitsSample : Reason::AwaitsOven);
    if (input.standing == Standing::Overridden)
        e.reasons.add(Reason::CheckOverridden);
    e.outcome = input.standing == Standing::Overridden    ? Outcome::InformationOnly
                : input.awaiting != Awaiting::Nothing     ? Outcome::Provisional
                : e.densityMet && e.moistureMet           ? Outcome::Pass
                                                          : Outcome::Fail;
}

Result<void> checkSaturation(const TestInput& input, const EvaluationRules& rules, Evaluation& e)
{
    if (!input.reference.solidsGravity)
        return {};
    const auto saturation = saturationPercent(e.dry, e.content, *input.reference.solidsGravity, rules.waterDensity);
    if (!saturation)
        return tl::unexpected(saturation.error());
    e.saturationPct = *saturation;
    if (*saturation > 100)
        e.reasons.add(Reason::AboveSaturation);
    return {};
}

void addUncertainty(const TestInput& input, const EvaluationRules& rules, Evaluation& e)
{
    // Two readings share calibration and reference errors; only the seating and counting part is halved, and it is not
    // known apart from the rest here, so the uncertainty of one reading is kept: never too small.
    e.expandedContentPct = 2 * rules.contentUncertaintyPct;
    if (!input.reference.maximumStandardUncertainty)
        return;
    const auto u = compactionUncertainty(e.wet, rules.wetUncertainty, e.content,
                                         WaterContent::percent(rules.contentUncertaintyPct), e.maximum,
                                         *input.reference.maximumStandardUncertainty);
    if (u)
        e.expandedUncertaintyPct = u->expandedPct;
}

Result<void> work(const TestInput& input, const EvaluationRules& rules, Evaluation& e)
{
    if (auto ok = joinReadings(input, rules, e); !ok)
        return ok;
    const auto& trench = input.gauge.trenchMoisture;
    if (trench && std::fabs(trench->inTrench - trench->outside) * 100 > rules.trenchWarningPct * trench->outside)
        e.reasons.add(Reason::LargeTrenchOffset);
    if (auto ok = dryDensity(input, rules, e); !ok)
        return ok;
    if (auto ok = reference(input, rules, e); !ok)
        return ok;
    if (auto ok = checkSaturation(input, rules, e); !ok)
        return ok;
    if (auto ok = report(rules, e); !ok)
        return ok;
    const bool fromRounded = rules.percentFrom == PercentFrom::RoundedDry;
    const auto compaction = percentCompaction(fromRounded ? fromUnit<DryDensity>(e.reported.dry, rules.unit) : e.dry,
                                              fromRounded ? fromUnit<DryDensity>(e.reported.maximum, rules.unit) : e.maximum);
    if (!compaction)
        return tl::unexpected(compaction.error());
    e.compaction = *compaction;
    if (auto ok = guardFigure("The percent compaction", e.compaction.percent(), " %"); !ok)
        return ok;
    e.reported.compactionPct = rounded(e.compaction.percent(), rules.compaction);
    judge(input, rules, e);
    addUncertainty(input, rules, e);
    return {};
}

}  // namespace

Result<Evaluation> evaluate(const TestInput& input, const EvaluationRules& rules)
{
    Result<Evaluation> result;  // filled in place: an Evaluation is several cache lines
    if (auto ok = work(input, rules, *result); !ok)
        result = tl::unexpected(std::move(ok.error()));
    return result;
}

}  // namespace groundcount::method
