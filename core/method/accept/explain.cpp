#include "method/accept/explain.h"

#include "method/accept/explain_readings.h"

namespace groundcount::method {
namespace {

class Evaluated {
public:
    Evaluated(const TestInput& input, const EvaluationRules& rules, const Evaluation& evaluation)
        : m_in(input), m_rules(rules), m_e(evaluation), m_steps(rules.unit)
    {
    }

    std::vector<ExplainStep> all()
    {
        explainReadings(m_steps, m_in, m_e);
        dry();
        coarse();
        compaction();
        saturation();
        judgement();
        uncertainty();
        return m_steps.take();
    }

private:
    void dry()
    {
        const bool fromContent = m_in.otherContent || m_in.readings[0].form == ReadingForm::WaterContent;
        if (fromContent) {
            if (m_in.otherContent)
                m_steps.add("Water content", "as weighed, not the gauge's", shown(m_in.otherContent->percent(), 1), shown(m_in.otherContent->percent(), 1) + " %", "WAQTC-T310");
            m_steps.add("Dry density", "100" + std::string(kTimes) + "wet / (100 + water content)",
                "100" + std::string(kTimes) + m_steps.density(m_e.wet) + " / (100 + " + shown(m_e.content.percent(), 2) + ")", m_steps.withUnit(m_e.dry), "GOVUR");
            return;
        }
        m_steps.add("Dry density", "wet density \xE2\x88\x92 water density", m_steps.density(m_e.wet) + kMinus + m_steps.density(m_e.water), m_steps.withUnit(m_e.dry), "D6938-SCOPE");
        m_steps.add("Water content", "100" + std::string(kTimes) + "water density / dry density",
            "100" + std::string(kTimes) + m_steps.density(m_e.water) + " / " + m_steps.density(m_e.dry), shown(m_e.content.percent(), 2) + " %", "D6938-TXT");
    }

    void coarse()
    {
        if (!m_in.sample)
            return;
        const auto& s = *m_in.sample;
        m_steps.add("Coarse part, dry masses", "100" + std::string(kTimes) + "B/(1 + wc) / (A/(1 + w))",
            "A " + shown(s.totalMass, 0) + ", B " + shown(s.retainedMass, 0) + ", w " + shown(m_e.content.percent(), 2) + " %, wc " +
                shown(m_e.coarseWater.percent(), 2) + " %",
            shown(m_e.coarse.percent(), 2) + " %", "WAQTC-T224");
        if (!m_e.coarseCorrected) {
            m_steps.add("Coarse correction", "only above " + shown(m_rules.coarseLower.percent(), 1) + " %", shown(m_e.coarse.percent(), 2) + " %", "none", "T99-SCOPE");
            return;
        }
        const double fine = 100 - m_e.coarse.percent();
        m_steps.add("Maximum dry density, corrected", "100 / (PF / DF + PC / (G" + std::string(kTimes) + "water))",
            "100 / (" + shown(fine, 2) + " / " + m_steps.density(m_in.reference.maximum) + " + " + shown(m_e.coarse.percent(), 2) + " / (" +
                shown(*m_in.reference.coarseGravity, 3) + kTimes + m_steps.density(m_rules.waterDensity) + "))",
            m_steps.withUnit(m_e.maximum), "UFC-322020, SMITH-142");
        m_steps.add("Optimum water content, corrected", "(wF PF + wC PC) / 100",
            "(" + shown(m_in.reference.optimum.percent(), 2) + kTimes + shown(fine, 2) + " + " + shown(m_e.coarseWater.percent(), 2) + kTimes +
                shown(m_e.coarse.percent(), 2) + ") / 100",
            shown(m_e.optimum.percent(), 2) + " %", "ND-T224");
    }

    void compaction()
    {
        const bool fromRounded = m_rules.percentFrom == PercentFrom::RoundedDry;
        const auto dry = fromRounded ? shown(m_e.reported.dry, 1) : m_steps.density(m_e.dry);
        const auto maximum = fromRounded ? shown(m_e.reported.maximum, 1) : m_steps.density(m_e.maximum);
        m_steps.add("Percent compaction", fromRounded ? "100" + std::string(kTimes) + "rounded dry / rounded maximum" : "100" + std::string(kTimes) + "dry density / maximum",
            "100" + std::string(kTimes) + dry + " / " + maximum, shown(m_e.compaction.percent(), 3) + " %", fromRounded ? "COPPELL" : "WAQTC-T310");
        m_steps.add("Reported", "rounded as the rule set says", shown(m_e.compaction.percent(), 3) + " %, " + shown(m_e.content.percent(), 3) + " %",
            shown(m_e.reported.compactionPct, places(m_rules.compaction)) + " %, water content " +
                shown(m_e.reported.contentPct, places(m_rules.content)) + " %",
            "E29-SCOPE, HARTNELL");
    }

    void saturation()
    {
        if (m_e.saturationPct)
            m_steps.add("Saturation", "w Gs / (Gs" + std::string(kTimes) + "water / dry " + "\xE2\x88\x92 1)",
                "w " + shown(m_e.content.percent(), 2) + " %, Gs " + shown(*m_in.reference.solidsGravity, 3) + ", dry " + m_steps.density(m_e.dry),
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
            m_steps.add("Density", bounds, shown(m_e.reported.compactionPct, places(m_rules.compaction)) + " %", m_e.densityMet ? "met" : "not met", "");
        }
        if (m_e.window.lowPct || m_e.window.highPct) {
            const std::string low = m_e.window.lowPct ? shown(*m_e.window.lowPct, 1) : "";
            const std::string high = m_e.window.highPct ? shown(*m_e.window.highPct, 1) : "";
            const std::string bounds = !low.empty() && !high.empty() ? low + " to " + high + " %" : !low.empty() ? "at least " + low + " %" : "at most " + high + " %";
            m_steps.add("Water content", bounds, shown(m_e.reported.contentPct, places(m_rules.content)) + " %", m_e.moistureMet ? "met" : "not met", "");
        }
        std::string why;
        for (const auto reason : m_e.reasons)
            why += (why.empty() ? "" : ", ") + std::string(word(reason));
        m_steps.add("Verdict", "", why, word(m_e.outcome), "");
    }

    void uncertainty()
    {
        if (!m_e.expandedUncertaintyPct)
            return;
        m_steps.add("Uncertainty, k = 2", "2" + std::string(kTimes) + "compaction" + kTimes + "root of the squared relative parts",
            "wet " + m_steps.density(m_rules.wetUncertainty) + ", water content " + shown(m_rules.contentUncertaintyPct, 2) + " %, maximum " +
                m_steps.density(*m_in.reference.maximumStandardUncertainty),
            "\xC2\xB1" + shown(*m_e.expandedUncertaintyPct, 1) + " %", "GI-TOOLS, COMPUTED");
    }

    const TestInput& m_in;
    const EvaluationRules& m_rules;
    const Evaluation& m_e;
    ExplainSteps m_steps;
};

}  // namespace

std::vector<ExplainStep> explain(const TestInput& input, const EvaluationRules& rules, const Evaluation& evaluation)
{
    return Evaluated(input, rules, evaluation).all();
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
