#include "method/accept/explain.h"

#include <cmath>

namespace groundcount::method {
namespace {

constexpr const char* kMinus = " \xE2\x88\x92 ";
constexpr const char* kTimes = " \xC3\x97 ";

/// Shown to a fixed number of places; computed values are never shown with all their digits.
std::string shown(double value, int places)
{
    std::string s = reportedText(value, places, TieRule::HalfEven);
    if (!s.empty() && s.front() == '-')
        s.replace(0, 1, "\xE2\x88\x92");
    return s;
}

class Steps {
public:
    Steps(const TestInput& input, const EvaluationRules& rules, const Evaluation& evaluation)
        : m_in(input), m_rules(rules), m_e(evaluation)
    {
    }

    std::vector<ExplainStep> all()
    {
        for (int i = 0; i < m_e.readingCount; ++i)
            reading(i);
        if (m_e.readingCount == 2)
            mean();
        dry();
        coarse();
        compaction();
        saturation();
        judgement();
        uncertainty();
        return std::move(m_steps);
    }

private:
    template <class Density>
    std::string density(const Density& d, int places = 2) const
    {
        return shown(inUnit(d, m_rules.unit), places);
    }

    template <class Density>
    std::string withUnit(const Density& d, int places = 2) const
    {
        return density(d, places) + " " + unitWord(m_rules.unit);
    }

    void add(std::string name, std::string formula, std::string numbers, std::string value, std::string source)
    {
        m_steps.push_back({std::move(name), std::move(formula), std::move(numbers), std::move(value), std::move(source)});
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
            add("Density bias" + which, "wet density + bias",
                density(r.wetAsRead) + " + " + density(WetDensity::kgPerM3(m_in.gauge.densityBiasKgPerM3)), withUnit(r.wet), "AB-ATT48");
        if (m_in.gauge.moistureCorrection)
            correction(r, which);
    }

    void counts(const ReadingInput& in, const ReadingResult& r, const std::string& which)
    {
        const GaugeInput& g = m_in.gauge;
        const auto trench = [&](const char* name, const TrenchCounts& t, double count, double corrected) {
            add(std::string(name) + which, "count \xE2\x88\x92 (standard in trench \xE2\x88\x92 standard outside)",
                shown(count, 0) + kMinus + "(" + shown(t.inTrench, 0) + kMinus + shown(t.outside, 0) + ")", shown(corrected, 0) + " counts", "DESIGN");
        };
        if (g.trenchDensity)
            trench("Trench offset, density", *g.trenchDensity, in.densityCount, r.densityCorrected);
        if (g.trenchMoisture)
            trench("Trench offset, moisture", *g.trenchMoisture, in.moistureCount, r.moistureCorrected);
        add("Density count ratio" + which, "test count / standard count",
            shown(r.densityCorrected, 0) + " / " + shown(g.densityStandard, 0), shown(r.densityRatio, 5), "PURDUE-1966");
        const DensityCurve& d = *g.densityCurve;
        const double perUnit = m_rules.unit == DensityUnit::LbPerFt3 ? kKgPerM3PerLbPerFt3 : 1.0;
        add("Wet density" + which, "ln(A / (CR + C)) / B",
            "ln(" + shown(d.a, 4) + " / (" + shown(r.densityRatio, 5) + " + " + shown(d.c, 4) + ")) / " + shown(d.bPerKgPerM3 * perUnit, 6),
            withUnit(r.wetAsRead), "D7759-WK, D6938-TXT");
        add("Moisture count ratio" + which, "test count / standard count",
            shown(r.moistureCorrected, 0) + " / " + shown(g.moistureStandard, 0), shown(r.moistureRatio, 5), "PURDUE-1966");
        const WaterCurve& w = *g.waterCurve;
        add("Water density" + which, "(CR " + std::string("\xE2\x88\x92") + " E) / m",
            "(" + shown(r.moistureRatio, 5) + kMinus + shown(w.e, 4) + ") / " + shown(w.slopePerKgPerM3 * perUnit, 6),
            withUnit(r.waterAsRead), "D6938-TXT");
    }

    void readout(const ReadingInput& in, const ReadingResult& r, const std::string& which)
    {
        add("Wet density" + which, "as the gauge read it", density(in.wet, 1), withUnit(r.wetAsRead, 1), "");
        if (in.form == ReadingForm::WaterDensity)
            add("Water density" + which, "as the gauge read it", density(in.water, 1), withUnit(r.waterAsRead, 1), "");
        else
            add("Water content" + which, "as the gauge read it", shown(in.content.percent(), 1), shown(in.content.percent(), 1) + " %", "");
    }

    void correction(const ReadingResult& r, const std::string& which)
    {
        const MoistureCorrection& c = *m_in.gauge.moistureCorrection;
        switch (c.variant) {
        case MoistureVariant::DryBasis:
            add("Moisture correction" + which, "dry density = (wet \xE2\x88\x92 water) / (1 + k)",
                "(" + density(r.wet) + kMinus + density(r.waterAsRead) + ") / (1 + " + shown(c.factor, 5) + ")",
                withUnit(DryDensity::kgPerM3(r.wet.kgPerM3() - r.water.kgPerM3())), "COMMON");
            break;
        case MoistureVariant::WetBasis:
            add("Moisture correction" + which, "water + k' " + std::string(kTimes) + "wet",
                density(r.waterAsRead) + " + " + shown(c.factor, 5) + kTimes + density(r.wet), withUnit(r.water), "COMPUTED");
            break;
        case MoistureVariant::MassOffset:
            add("Moisture correction" + which, "water + offset", density(r.waterAsRead) + " + " + density(WaterDensity::kgPerM3(c.factor)), withUnit(r.water), "COMPUTED");
            break;
        case MoistureVariant::PercentOffset:
            add("Moisture correction" + which, "water content + offset", "offset " + shown(c.factor, 2) + " points", withUnit(r.water), "COMPUTED");
            break;
        case MoistureVariant::Ratio:
            add("Moisture correction" + which, "water content" + std::string(kTimes) + "ratio", "ratio " + shown(c.factor, 4), withUnit(r.water), "COMPUTED");
            break;
        }
    }

    void mean()
    {
        const auto& a = m_e.readings[0];
        const auto& b = m_e.readings[1];
        add("Mean wet density", "(first + second) / 2", "(" + density(a.wet) + " + " + density(b.wet) + ") / 2", withUnit(m_e.wet), "WAQTC-T310");
        add("Mean water density", "(first + second) / 2", "(" + density(a.water) + " + " + density(b.water) + ") / 2",
            withUnit(WaterDensity::kgPerM3((a.water.kgPerM3() + b.water.kgPerM3()) / 2)), "WAQTC-T310");
    }

    void dry()
    {
        const bool fromContent = m_in.otherContent || m_in.readings[0].form == ReadingForm::WaterContent;
        if (fromContent) {
            if (m_in.otherContent)
                add("Water content", "as weighed, not the gauge's", shown(m_in.otherContent->percent(), 1), shown(m_in.otherContent->percent(), 1) + " %", "WAQTC-T310");
            add("Dry density", "100" + std::string(kTimes) + "wet / (100 + water content)",
                "100" + std::string(kTimes) + density(m_e.wet) + " / (100 + " + shown(m_e.content.percent(), 2) + ")", withUnit(m_e.dry), "GOVUR");
            return;
        }
        add("Dry density", "wet density \xE2\x88\x92 water density", density(m_e.wet) + kMinus + density(m_e.water), withUnit(m_e.dry), "D6938-SCOPE");
        add("Water content", "100" + std::string(kTimes) + "water density / dry density",
            "100" + std::string(kTimes) + density(m_e.water) + " / " + density(m_e.dry), shown(m_e.content.percent(), 2) + " %", "D6938-TXT");
    }

    void coarse()
    {
        if (!m_in.sample)
            return;
        const auto& s = *m_in.sample;
        add("Coarse part, dry masses", "100" + std::string(kTimes) + "B/(1 + wc) / (A/(1 + w))",
            "A " + shown(s.totalMass, 0) + ", B " + shown(s.retainedMass, 0) + ", w " + shown(m_e.content.percent(), 2) + " %, wc " +
                shown(m_e.coarseWater.percent(), 2) + " %",
            shown(m_e.coarse.percent(), 2) + " %", "WAQTC-T224");
        if (!m_e.coarseCorrected) {
            add("Coarse correction", "only above " + shown(m_rules.coarseLower.percent(), 1) + " %", shown(m_e.coarse.percent(), 2) + " %", "none", "T99-SCOPE");
            return;
        }
        const double fine = 100 - m_e.coarse.percent();
        add("Maximum dry density, corrected", "100 / (PF / DF + PC / (G" + std::string(kTimes) + "water))",
            "100 / (" + shown(fine, 2) + " / " + density(m_in.reference.maximum) + " + " + shown(m_e.coarse.percent(), 2) + " / (" +
                shown(*m_in.reference.coarseGravity, 3) + kTimes + density(m_rules.waterDensity) + "))",
            withUnit(m_e.maximum), "UFC-322020, SMITH-142");
        add("Optimum water content, corrected", "(wF PF + wC PC) / 100",
            "(" + shown(m_in.reference.optimum.percent(), 2) + kTimes + shown(fine, 2) + " + " + shown(m_e.coarseWater.percent(), 2) + kTimes +
                shown(m_e.coarse.percent(), 2) + ") / 100",
            shown(m_e.optimum.percent(), 2) + " %", "ND-T224");
    }

    void compaction()
    {
        const bool fromRounded = m_rules.percentFrom == PercentFrom::RoundedDry;
        const auto dry = fromRounded ? shown(m_e.reported.dry, 1) : density(m_e.dry);
        const auto maximum = fromRounded ? shown(m_e.reported.maximum, 1) : density(m_e.maximum);
        add("Percent compaction", fromRounded ? "100" + std::string(kTimes) + "rounded dry / rounded maximum" : "100" + std::string(kTimes) + "dry density / maximum",
            "100" + std::string(kTimes) + dry + " / " + maximum, shown(m_e.compaction.percent(), 3) + " %", fromRounded ? "COPPELL" : "WAQTC-T310");
        add("Reported", "rounded as the rule set says", shown(m_e.compaction.percent(), 3) + " %, " + shown(m_e.content.percent(), 3) + " %",
            shown(m_e.reported.compactionPct, places(m_rules.compaction)) + " %, water content " +
                shown(m_e.reported.contentPct, places(m_rules.content)) + " %",
            "E29-SCOPE, HARTNELL");
    }

    void saturation()
    {
        if (m_e.saturationPct)
            add("Saturation", "w Gs / (Gs" + std::string(kTimes) + "water / dry " + "\xE2\x88\x92 1)",
                "w " + shown(m_e.content.percent(), 2) + " %, Gs " + shown(*m_in.reference.solidsGravity, 3) + ", dry " + density(m_e.dry),
                shown(*m_e.saturationPct, 1) + " %", "DAS9SI");
    }

    static int places(const std::optional<Rounding>& r) { return r ? r->places : 3; }

    void judgement()
    {
        const auto& req = m_in.requirement;
        if (req.minimumPct || req.maximumPct) {
            const std::string bounds = req.minimumPct && req.maximumPct ? req.minimumPct->text() + " to " + req.maximumPct->text() + " %"
                                       : req.minimumPct                 ? "at least " + req.minimumPct->text() + " %"
                                                                        : "at most " + req.maximumPct->text() + " %";
            add("Density", bounds, shown(m_e.reported.compactionPct, places(m_rules.compaction)) + " %", m_e.densityMet ? "met" : "not met", "");
        }
        if (m_e.window.lowPct || m_e.window.highPct) {
            const std::string low = m_e.window.lowPct ? shown(*m_e.window.lowPct, 1) : "";
            const std::string high = m_e.window.highPct ? shown(*m_e.window.highPct, 1) : "";
            const std::string bounds = !low.empty() && !high.empty() ? low + " to " + high + " %" : !low.empty() ? "at least " + low + " %" : "at most " + high + " %";
            add("Water content", bounds, shown(m_e.reported.contentPct, places(m_rules.content)) + " %", m_e.moistureMet ? "met" : "not met", "");
        }
        std::string why;
        for (const auto reason : m_e.reasons)
            why += (why.empty() ? "" : ", ") + std::string(word(reason));
        add("Verdict", "", why, word(m_e.outcome), "");
    }

    void uncertainty()
    {
        if (!m_e.expandedUncertaintyPct)
            return;
        add("Uncertainty, k = 2", "2" + std::string(kTimes) + "compaction" + kTimes + "root of the squared relative parts",
            "wet " + density(m_rules.wetUncertainty) + ", water content " + shown(m_rules.contentUncertaintyPct, 2) + " %, maximum " +
                density(*m_in.reference.maximumStandardUncertainty),
            "\xC2\xB1" + shown(*m_e.expandedUncertaintyPct, 1) + " %", "GI-TOOLS, COMPUTED");
    }

    const TestInput& m_in;
    const EvaluationRules& m_rules;
    const Evaluation& m_e;
    std::vector<ExplainStep> m_steps;
};

}  // namespace

std::vector<ExplainStep> explain(const TestInput& input, const EvaluationRules& rules, const Evaluation& evaluation)
{
    return Steps(input, rules, evaluation).all();
}

std::string verdictSentence(const TestInput& input, const Evaluation& e)
{
    std::string s = word(e.outcome);
    s.front() = static_cast<char>(s.front() - 'a' + 'A');
    s += ": " + shown(e.reported.compactionPct, 1) + " % compaction";
    if (input.requirement.minimumPct)
        s += ", " + input.requirement.minimumPct->text() + " needed";
    if (input.requirement.maximumPct)
        s += ", at most " + input.requirement.maximumPct->text();
    s += "; water content " + shown(e.reported.contentPct, 1) + " %";
    if (e.window.lowPct && e.window.highPct)
        s += ", " + shown(*e.window.lowPct, 1) + " to " + shown(*e.window.highPct, 1) + " allowed";
    else if (e.window.lowPct)
        s += ", " + shown(*e.window.lowPct, 1) + " or more allowed";
    else if (e.window.highPct)
        s += ", " + shown(*e.window.highPct, 1) + " or less allowed";
    s += ".";
    for (const auto reason : e.reasons) {
        std::string w = word(reason);
        w.front() = static_cast<char>(w.front() - 'a' + 'A');
        s += " " + w + ".";
    }
    return s;
}

}  // namespace groundcount::method
