#include "method/accept/explain_readings.h"

namespace groundcount::method {
namespace {

class Readings {
public:
    Readings(ExplainSteps& steps, const TestInput& input, const Evaluation& evaluation)
        : m_steps(steps), m_in(input), m_e(evaluation)
    {
    }

    void reading(int i)
    {
        const auto n = static_cast<std::size_t>(i);
        const ReadingInput& in = m_in.readings[n];
        const ReadingResult& r = m_e.readings[n];
        const std::string which = m_e.readingCount == 2 ? ", reading " + std::to_string(i + 1) : "";
        if (in.form == ReadingForm::Counts)
            counts(in, r, which);
        else
            readout(in, r, which);
        if (m_in.gauge.densityBiasKgPerM3 != 0)
            m_steps.add("Density bias" + which, "wet density + bias",
                m_steps.density(r.wetAsRead) + " + " + m_steps.density(WetDensity::kgPerM3(m_in.gauge.densityBiasKgPerM3)), m_steps.withUnit(r.wet), "AB-ATT48");
        if (m_in.gauge.moistureCorrection)
            correction(r, which);
    }

    void counts(const ReadingInput& in, const ReadingResult& r, const std::string& which)
    {
        const GaugeInput& g = m_in.gauge;
        const auto trench = [&](const char* name, const TrenchCounts& t, double count, double corrected) {
            m_steps.add(std::string(name) + which, "count \xE2\x88\x92 (standard in trench \xE2\x88\x92 standard outside)",
                shown(count, 0) + kMinus + "(" + shown(t.inTrench, 0) + kMinus + shown(t.outside, 0) + ")", shown(corrected, 0) + " counts", "DESIGN");
        };
        if (g.trenchDensity)
            trench("Trench offset, density", *g.trenchDensity, in.densityCount, r.densityCorrected);
        if (g.trenchMoisture)
            trench("Trench offset, moisture", *g.trenchMoisture, in.moistureCount, r.moistureCorrected);
        m_steps.add("Density count ratio" + which, "test count / standard count",
            shown(r.densityCorrected, 0) + " / " + shown(g.densityStandard, 0), shown(r.densityRatio, 5), "PURDUE-1966");
        const DensityCurve& d = *g.densityCurve;
        const double perUnit = m_steps.unit() == DensityUnit::LbPerFt3 ? kKgPerM3PerLbPerFt3 : 1.0;
        m_steps.add("Wet density" + which, "ln(A / (CR + C)) / B",
            "ln(" + shown(d.a, 4) + " / (" + shown(r.densityRatio, 5) + " + " + shown(d.c, 4) + ")) / " + shown(d.bPerKgPerM3 * perUnit, 6),
            m_steps.withUnit(r.wetAsRead), "D7759-WK, D6938-TXT");
        m_steps.add("Moisture count ratio" + which, "test count / standard count",
            shown(r.moistureCorrected, 0) + " / " + shown(g.moistureStandard, 0), shown(r.moistureRatio, 5), "PURDUE-1966");
        const WaterCurve& w = *g.waterCurve;
        m_steps.add("Water density" + which, "(CR " + std::string("\xE2\x88\x92") + " E) / m",
            "(" + shown(r.moistureRatio, 5) + kMinus + shown(w.e, 4) + ") / " + shown(w.slopePerKgPerM3 * perUnit, 6),
            m_steps.withUnit(r.waterAsRead), "D6938-TXT");
    }

    void readout(const ReadingInput& in, const ReadingResult& r, const std::string& which)
    {
        m_steps.add("Wet density" + which, "as the gauge read it", m_steps.density(in.wet, 1), m_steps.withUnit(r.wetAsRead, 1), "");
        if (in.form == ReadingForm::WaterDensity)
            m_steps.add("Water density" + which, "as the gauge read it", m_steps.density(in.water, 1), m_steps.withUnit(r.waterAsRead, 1), "");
        else
            m_steps.add("Water content" + which, "as the gauge read it", shown(in.content.percent(), 1), shown(in.content.percent(), 1) + " %", "");
    }

    void correction(const ReadingResult& r, const std::string& which)
    {
        const MoistureCorrection& c = *m_in.gauge.moistureCorrection;
        switch (c.variant) {
        case MoistureVariant::DryBasis:
            m_steps.add("Moisture correction" + which, "dry density = (wet \xE2\x88\x92 water) / (1 + k)",
                "(" + m_steps.density(r.wet) + kMinus + m_steps.density(r.waterAsRead) + ") / (1 + " + shown(c.factor, 5) + ")",
                m_steps.withUnit(DryDensity::kgPerM3(r.wet.kgPerM3() - r.water.kgPerM3())), "COMMON");
            break;
        case MoistureVariant::WetBasis:
            m_steps.add("Moisture correction" + which, "water + k' " + std::string(kTimes) + "wet",
                m_steps.density(r.waterAsRead) + " + " + shown(c.factor, 5) + kTimes + m_steps.density(r.wet), m_steps.withUnit(r.water), "COMPUTED");
            break;
        case MoistureVariant::MassOffset:
            m_steps.add("Moisture correction" + which, "water + offset", m_steps.density(r.waterAsRead) + " + " + m_steps.density(WaterDensity::kgPerM3(c.factor)), m_steps.withUnit(r.water), "COMPUTED");
            break;
        case MoistureVariant::PercentOffset:
            m_steps.add("Moisture correction" + which, "water content + offset", "offset " + shown(c.factor, 2) + " points", m_steps.withUnit(r.water), "COMPUTED");
            break;
        case MoistureVariant::Ratio:
            m_steps.add("Moisture correction" + which, "water content" + std::string(kTimes) + "ratio", "ratio " + shown(c.factor, 4), m_steps.withUnit(r.water), "COMPUTED");
            break;
        }
    }

    void mean()
    {
        const auto& a = m_e.readings[0];
        const auto& b = m_e.readings[1];
        m_steps.add("Mean wet density", "(first + second) / 2", "(" + m_steps.density(a.wet) + " + " + m_steps.density(b.wet) + ") / 2", m_steps.withUnit(m_e.wet), "WAQTC-T310");
        m_steps.add("Mean water density", "(first + second) / 2", "(" + m_steps.density(a.water) + " + " + m_steps.density(b.water) + ") / 2",
            m_steps.withUnit(WaterDensity::kgPerM3((a.water.kgPerM3() + b.water.kgPerM3()) / 2)), "WAQTC-T310");
    }

private:
    ExplainSteps& m_steps;
    const TestInput& m_in;
    const Evaluation& m_e;
};

}  // namespace

void explainReadings(ExplainSteps& steps, const TestInput& input, const Evaluation& evaluation)
{
    Readings readings(steps, input, evaluation);
    for (int i = 0; i < evaluation.readingCount; ++i)
        readings.reading(i);
    if (evaluation.readingCount == 2)
        readings.mean();
}

}  // namespace groundcount::method
