#include "method/rules/test_input_json.h"

#include "method/accept/explain.h"

#include <nlohmann/json.hpp>

namespace groundcount::method {

std::string evaluationToJson(const EvaluationRequest& request, const EvaluationRules& rules, const Evaluation& e)
{
    nlohmann::ordered_json j;
    const auto unrounded = [](double v) { return reportedText(v, 6, TieRule::HalfEven); };
    const auto reported = [&](double v, const std::optional<Rounding>& r) {
        return r ? reportedText(v, *r) : unrounded(v);
    };
    j["verdict"] = word(e.outcome);
    j["sentence"] = verdictSentence(request.input, e);
    j["reasons"] = nlohmann::ordered_json::array();
    for (const auto reason : e.reasons)
        j["reasons"].push_back(word(reason));
    j["density_unit"] = request.rules.densityUnit;
    j["reported"] = {{"wet_density", reported(e.reported.wet, rules.dry)},
                     {"water_density", reported(e.reported.water, rules.dry)},
                     {"dry_density", reported(e.reported.dry, rules.dry)},
                     {"water_content_pct", reported(e.reported.contentPct, rules.content)},
                     {"maximum", reported(e.reported.maximum, rules.maximum)},
                     {"optimum_pct", reported(e.reported.optimumPct, rules.optimum)},
                     {"percent_compaction", reported(e.reported.compactionPct, rules.compaction)}};
    j["unrounded"] = {{"wet_density", unrounded(inUnit(e.wet, rules.unit))},
                      {"water_density", unrounded(inUnit(e.water, rules.unit))},
                      {"dry_density", unrounded(inUnit(e.dry, rules.unit))},
                      {"water_content_pct", unrounded(e.content.percent())},
                      {"maximum", unrounded(inUnit(e.maximum, rules.unit))},
                      {"optimum_pct", unrounded(e.optimum.percent())},
                      {"coarse_pct", unrounded(e.coarse.percent())},
                      {"percent_compaction", unrounded(e.compaction.percent())}};
    if (e.expandedUncertaintyPct)
        j["uncertainty_pct"] = reportedText(*e.expandedUncertaintyPct, 2, TieRule::HalfEven);
    j["arithmetic"] = nlohmann::ordered_json::array();
    for (const auto& s : explain(request.input, rules, e))
        j["arithmetic"].push_back({{"name", s.name}, {"formula", s.formula}, {"numbers", s.numbers}, {"value", s.value}, {"source", s.source}});
    return j.dump(2);
}

}  // namespace groundcount::method
