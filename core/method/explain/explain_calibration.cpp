#include "method/explain/explain_calibration.h"

#include <algorithm>

namespace groundcount::method {
namespace {

/// A coefficient per kg/m3, shown per unit of density of the steps.
std::string perUnit(double perKgPerM3, DensityUnit unit)
{
    return figure(unit == DensityUnit::LbPerFt3 ? perKgPerM3 * kKgPerM3PerLbPerFt3 : perKgPerM3);
}

std::string inRange(Range range) { return range == Range::Inside ? "inside" : "outside: look again"; }

template <class Density>
void addRange(ExplainSteps& s, const Density& low, const Density& high, const Density& value, Range range)
{
    if (high > Density())
        s.add("Calibrated range", s.density(low, 1) + " to " + s.withUnit(high, 1), s.density(value), inRange(range), "D7759-WK");
}

std::string times(const std::string& a, const std::string& b) { return a + kTimes + b; }

}  // namespace

std::vector<ExplainStep> explainWetDensity(const DensityCurve& curve, double ratio, WetDensity wet, DensityUnit unit)
{
    ExplainSteps s(unit);
    const std::string a = figure(curve.a), b = perUnit(curve.bPerKgPerM3, unit), c = figure(curve.c);
    if (const auto back = countRatioOf(curve, wet))
        s.add("Ratio of that density", "A \u00D7 exp(\u2212B \u00D7 density) \u2212 C",
              times(a, "exp(\xE2\x88\x92" + times(b, s.density(wet)) + ")") + kMinus + c, shown(*back, 5), "D6938-TXT");
    s.add("One thousandth of the ratio", "\u2212ratio / (1000 \u00D7 B \u00D7 (ratio + C))",
          "\xE2\x88\x92" + shown(ratio, 5) + " / (" + times("1000", times(b, "(" + shown(ratio, 5) + " + " + c + ")")) + ")",
          s.withUnit(WetDensity::kgPerM3(wetDensityPerRatio(curve, ratio) * ratio / 1000), 3), "COMPUTED");
    addRange(s, curve.rangeLow, curve.rangeHigh, wet, calibratedRange(curve, wet));
    s.add("Wet density", "ln(A / (ratio + C)) / B", "ln(" + a + " / (" + shown(ratio, 5) + " + " + c + ")) / " + b, s.withUnit(wet), "D7759-WK, D6938-TXT");
    return s.take();
}

std::vector<ExplainStep> explainWaterDensity(const WaterCurve& curve, double ratio, WaterDensity water, DensityUnit unit)
{
    ExplainSteps s(unit);
    const std::string e = figure(curve.e), m = perUnit(curve.slopePerKgPerM3, unit);
    if (const auto back = countRatioOf(curve, water))
        s.add("Ratio of that water", "E + m" + std::string(kTimes) + "water", e + " + " + times(m, s.density(water)), shown(*back, 5), "D6938-TXT");
    addRange(s, curve.rangeLow, curve.rangeHigh, water, calibratedRange(curve, water));
    s.add("Water density", "(ratio" + std::string(kMinus) + "E) / m", "(" + shown(ratio, 5) + kMinus + e + ") / " + m, s.withUnit(water), "D6938-TXT");
    return s.take();
}

std::vector<ExplainStep> explainWetDensityFromTable(std::span<const CalibrationRow> rows, double ratio, std::optional<double> c, WetDensity wet,
                                                    DensityUnit unit)
{
    ExplainSteps s(unit);
    // density rises and the ratio falls down the table: the first row whose ratio is not above the one looked up closes the gap
    const auto after = std::find_if(rows.begin(), rows.end(), [ratio](const CalibrationRow& row) { return row.ratio <= ratio; });
    if (after != rows.end()) {
        const auto& low = after == rows.begin() ? *after : *(after - 1);
        s.add("Rows around it", "ratios around " + shown(ratio, 5), shown(low.ratio, 5) + ", " + shown(after->ratio, 5),
              s.density(low.density, 1) + ", " + s.withUnit(after->density, 1), "COMPUTED");
    }
    if (c)
        s.add("Wet density", "linear in ln(ratio + C)", "C = " + figure(*c), s.withUnit(wet), "COMPUTED");
    else
        s.add("Wet density", "linear in the ratio, which reads high between rows", shown(ratio, 5), s.withUnit(wet), "COMPUTED");
    return s.take();
}

std::vector<ExplainStep> explainDecay(double halfLifeDays, double elapsedDays, double factor)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    s.add("What decay has left", "exp(\xE2\x88\x92ln 2" + std::string(kTimes) + "days / half-life)",
          "exp(\xE2\x88\x92" "0.693147" + std::string(kTimes) + figure(elapsedDays) + " / " + figure(halfLifeDays) + ")", shown(factor, 6), "D6938-TXT, HL-NIST");
    return s.take();
}

std::vector<ExplainStep> explainHalfLife(double value, TimeUnit timeUnit, double days)
{
    ExplainSteps s(DensityUnit::KgPerM3);
    const auto step = [&](const std::string& formula, const std::string& numbers, const char* source) {
        s.add("Half-life", formula, numbers, figure(days) + " d", source);
        return s.take();
    };
    switch (timeUnit) {
    case TimeUnit::Seconds: return step("seconds / 86400", figure(value) + " / 86400", "COMPUTED");
    case TimeUnit::Years365: return step("years" + std::string(kTimes) + "365", figure(value) + kTimes + "365", "HL-BO");
    case TimeUnit::Years365Quarter: return step("years" + std::string(kTimes) + "365.25", figure(value) + kTimes + "365.25", "HL-DDEP");
    case TimeUnit::Days: break;
    }
    return step("days", figure(value), "HL-NIST");
}

}  // namespace groundcount::method
