#include "method/rules/rule_set.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace groundcount::method {

using Json = nlohmann::json;

const std::vector<std::string_view>& laterKeys()
{
    static const std::vector<std::string_view> keys{
        "range.wet_density_least", "range.wet_density_most", "range.water_content_most", "range.count_most", "standard.age",
        "offset.moisture_samples", "offset.moisture_sd", "offset.bias_pairs", "offset.bias_sd", "offset.days", "retest.distance",
        "place.accuracy", "lot.moving_mean", "lot.outlier_level", "compare.level", "compare.pairs", "compare.distance", "offset.approval",
        "lot.retested", "pwl.table", "pwl.mean", "pwl.sd", "pwl.q", "pwl.tie"};
    return keys;
}

Result<RuleSet> ruleSetFromSealed(std::string_view text)
{
    Json root = Json::parse(text, nullptr, false);
    if (!root.is_object())
        return ruleSetFromJson(text);
    const auto holds = [&](const char* section, std::string_view key) {
        return root.contains(section) && root.at(section).is_object() && root.at(section).contains(std::string(key));
    };
    const auto& later = laterKeys();
    if (std::all_of(later.begin(), later.end(), [&](std::string_view key) { return holds("limits", key) || holds("choices", key); }))
        return ruleSetFromJson(text);  // nothing was added since
    const Json neutral = Json::parse(toJson(neutralRules()));
    for (const char* section : {"limits", "choices"}) {
        if (!root.contains(section) || !root.at(section).is_object())
            continue;
        for (const auto key : later) {
            const std::string name(key);
            if (!neutral.at(section).contains(name) || root.at(section).contains(name))
                continue;
            root[section][name] = neutral.at(section).at(name);
            root[section][name]["note"] = "added after this rule set was sealed";
        }
    }
    return ruleSetFromJson(root.dump());
}

}  // namespace groundcount::method
