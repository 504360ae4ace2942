#include <QObject>
#include "view/reading_check.h"

#include "book/kinds.h"
#include "method/gauge/curve_at_depth.h"
#include "method/soil/in_place.h"
#include "view/figure_text.h"

#include <cmath>
#include <vector>

namespace groundcount::view {
namespace {

double numberAt(const book::Body& body, const char* key)
{
    return QString::fromStdString(book::textAt(body, key)).toDouble();
}

template <class Density>
Density densityAt(const book::Body& body, const char* stem)
{
    const auto value = book::withUnit(body, stem, book::Unit::Density);
    const double number = QString::fromStdString(value.text).toDouble();
    return value.unit == "kg_m3" ? Density::kgPerM3(number) : Density::lbPerFt3(number);
}

double perKgPerM3(const book::Body& body, const char* stem)
{
    const auto value = book::withUnit(body, stem, book::Unit::PerDensity);
    const double number = QString::fromStdString(value.text).toDouble();
    return value.unit == "per_kg_m3" ? number : number / kKgPerM3PerLbPerFt3;
}

template <class Curve, class Density>
QString rangeDoubt(const Curve& curve, const Density& value, const method::EvaluationRules& rules, const QString& unit)
{
    if (method::calibratedRange(curve, value) == method::Range::Inside)
        return {};
    return QObject::tr("%1 %2 is outside the calibrated range, %3 to %4.")
        .arg(figureText(inUnit(value, rules.unit), 1), unit, figureText(inUnit(curve.rangeLow, rules.unit), 0), figureText(inUnit(curve.rangeHigh, rules.unit), 0));
}

/// Whether the two counts, changed over, both lie in the calibrated ranges.
bool fitsTurnedRound(const TypedReading& reading, const ReadingPapers& papers)
{
    const auto densityRatio = method::countRatio(reading.second, papers.densityStandard);
    const auto waterRatio = method::countRatio(reading.first, papers.moistureStandard);
    if (!densityRatio || !waterRatio)
        return false;
    const auto wet = method::wetDensity(*papers.densityCurve, *densityRatio);
    const auto water = method::waterDensity(*papers.waterCurve, *waterRatio);
    return wet && water && method::calibratedRange(*papers.densityCurve, *wet) == method::Range::Inside &&
           method::calibratedRange(*papers.waterCurve, *water) == method::Range::Inside;
}

Result<ReadingMeaning> fromCounts(const TypedReading& reading, const ReadingPapers& papers, const method::EvaluationRules& rules, const QString& unit)
{
    if (!papers.densityCurve || !papers.waterCurve)
        return refused("The gauge has no calibration for this depth; type the gauge's own readout instead.");
    if (!(papers.densityStandard > 0 && papers.moistureStandard > 0))
        return refused("No standard count of the gauge is in the book; counts need one.");
    const auto densityRatio = method::countRatio(reading.first, papers.densityStandard);
    if (!densityRatio)
        return tl::unexpected(densityRatio.error());
    const auto waterRatio = method::countRatio(reading.second, papers.moistureStandard);
    if (!waterRatio)
        return tl::unexpected(waterRatio.error());
    const auto wet = method::wetDensity(*papers.densityCurve, *densityRatio);
    if (!wet)
        return tl::unexpected(wet.error());
    const auto water = method::waterDensity(*papers.waterCurve, *waterRatio);
    if (!water)
        return tl::unexpected(water.error());
    ReadingMeaning meaning{inUnit(*wet, rules.unit), inUnit(*water, rules.unit), rangeDoubt(*papers.densityCurve, *wet, rules, unit), rangeDoubt(*papers.waterCurve, *water, rules, unit)};
    if (!meaning.firstDoubt.isEmpty() && fitsTurnedRound(reading, papers))
        meaning.firstDoubt += ' ' + QObject::tr("Are the two numbers the wrong way round?");
    return meaning;
}

}  // namespace

ReadingPapers papersOf(const book::Body& calibration, const QString& depthIn)
{
    ReadingPapers papers;
    std::vector<method::DensityCurve> curves;
    for (const auto& one : calibration.at("curves"))
        curves.push_back({Length::inches(numberAt(one, "depth_in")), numberAt(one, "a"), perKgPerM3(one, "b"), numberAt(one, "c"), densityAt<WetDensity>(one, "range_low"), densityAt<WetDensity>(one, "range_high")});
    if (const auto curve = method::curveAtDepth(curves, Length::inches(depthIn.toDouble())))
        papers.densityCurve = *curve;
    const auto& water = calibration.at("water");
    papers.waterCurve = method::WaterCurve{numberAt(water, "e"), perKgPerM3(water, "slope"), densityAt<WaterDensity>(water, "range_low"), densityAt<WaterDensity>(water, "range_high")};
    return papers;
}

Result<ReadingMeaning> meaningOf(const TypedReading& reading, const ReadingPapers& papers, const method::EvaluationRules& rules, const QString& unit)
{
    if (reading.form == TypedForm::Counts) {
        auto meaning = fromCounts(reading, papers, rules, unit);
        if (!meaning)
            return meaning;
        const auto dry = method::dryFromWater(method::fromUnit<WetDensity>(meaning->wet, rules.unit), method::fromUnit<WaterDensity>(meaning->water, rules.unit));
        if (!dry)
            return refused(dry.error().what + (fitsTurnedRound(reading, papers) ? " Are the two numbers the wrong way round?" : ""));
        return meaning;
    }
    const auto wet = method::fromUnit<WetDensity>(reading.first, rules.unit);
    ReadingMeaning meaning{reading.first, reading.second, {}, {}};
    if (reading.form == TypedForm::WaterDensity) {
        const auto dry = method::dryFromWater(wet, method::fromUnit<WaterDensity>(reading.second, rules.unit));
        if (!dry)
            return reading.second >= reading.first ? Result<ReadingMeaning>(refused(dry.error().what + " Are the two numbers the wrong way round?"))
                                                   : Result<ReadingMeaning>(tl::unexpected(dry.error()));
    } else {
        const auto dry = method::dryFromContent(wet, WaterContent::percent(reading.second));
        if (!dry)
            return tl::unexpected(dry.error());
        meaning.water = inUnit(dry->water, rules.unit);
    }
    if (papers.densityCurve)
        meaning.firstDoubt = rangeDoubt(*papers.densityCurve, wet, rules, unit);
    if (papers.waterCurve)
        meaning.secondDoubt = rangeDoubt(*papers.waterCurve, method::fromUnit<WaterDensity>(meaning.water, rules.unit), rules, unit);
    return meaning;
}

Result<ReadingComparison> compared(const ReadingMeaning& first, const ReadingMeaning& second, const method::EvaluationRules& rules, const QString& densityUnit)
{
    const auto wet = method::compareReadings(first.wet, second.wet, rules.secondKind, rules.secondDensityLimit);
    if (!wet)
        return tl::unexpected(wet.error());
    const auto water = method::compareReadings(first.water, second.water, rules.secondKind, rules.secondMoistureLimit);
    if (!water)
        return tl::unexpected(water.error());
    const bool percent = rules.secondKind == method::DifferenceKind::PercentOfFirst;
    const bool wetApart = wet->agreement == method::Agreement::Apart;
    const bool waterApart = water->agreement == method::Agreement::Apart;
    const auto& shown = !wetApart && waterApart ? *water : *wet;
    const double limit = !wetApart && waterApart ? rules.secondMoistureLimit : rules.secondDensityLimit;
    const QString what = !wetApart && waterApart ? QObject::tr("Moisture ") : QString();
    return ReadingComparison{what + QObject::tr("%1 %2 apart, %3 allowed").arg(figureText(percent ? shown.differencePct : shown.difference, 1), percent ? QStringLiteral("%") : densityUnit, figureText(limit, 1)),
                             !wetApart && !waterApart};
}

}  // namespace groundcount::view
