#include "method/rules/rule_set.h"

#include "method/rules/neutral_rules_text.h"

namespace groundcount::method {

const std::vector<RuleKey>& limitKeys()
{
    static const std::vector<RuleKey> keys = {
        {"clearance.vertical_face", "gauge to a wall or other vertical face", "in|ft|mm|m"},
        {"clearance.people", "gauge to any person while it counts", "ft|m"},
        {"clearance.vehicles", "gauge to vehicles and large objects", "ft|m"},
        {"clearance.other_gauges", "gauge to another nuclear gauge", "ft|m"},
        {"seat.hole_below_depth", "hole deeper than the test depth by", "in|mm"},
        {"seat.void_depth", "depth of voids filled under the gauge", "in|mm"},
        {"count.seconds", "time of one count", "s"},
        {"count.second_density", "second reading against the first, wet density", "%|lb/ft3|kg/m3"},
        {"count.second_moisture", "second reading against the first, water", "%|lb/ft3|kg/m3"},
        {"standard.density", "density standard count against the mean of earlier ones", "%"},
        {"standard.moisture", "moisture standard count against the mean of earlier ones", "%"},
        {"standard.earlier", "earlier standard counts in the mean", "counts"},
        {"standard.warm_up", "warm-up before standard counts", "min"},
        {"trench.offset_warning", "trench offset questioned above", "%"},
        {"coarse.lower", "coarse part corrected above", "%"},
        {"coarse.upper_no4", "coarse part on the No. 4 sieve, at most", "%"},
        {"coarse.upper_three_quarter", "coarse part on the 3/4 in. sieve, at most", "%"},
        {"coarse.water", "water content of coarse particles when not known", "%"},
        {"sample.mass", "check sample", "g|kg|lb"},
        {"water.density", "density of water", "lb/ft3|kg/m3"},
        {"uncertainty.wet", "standard uncertainty of a wet density", "lb/ft3|kg/m3"},
        {"uncertainty.water_content", "standard uncertainty of a water content", "%"},
        {"place.fixes", "position fixes averaged", "fixes"},
    };
    return keys;
}

const std::vector<RuleKey>& optionalLimitKeys()
{
    static const std::vector<RuleKey> keys = {
        {"standard.pair_density", "second density standard count against the first", "%"},
        {"standard.pair_moisture", "second moisture standard count against the first", "%"},
        {"standard.established_density", "both density standard counts against the established one", "%"},
        {"standard.established_moisture", "both moisture standard counts against the established one", "%"},
        {"standard.z", "statistical limit of a standard count, standard deviations", "sd"},
        {"standard.half_life_density", "half-life of the density source", "d"},
        {"standard.half_life_moisture", "half-life of the moisture source", "d"},
        {"stability.counts", "single counts of a stability test", "counts"},
        {"stability.low", "stability ratio, at least", "ratio"},
        {"stability.high", "stability ratio, at most", "ratio"},
    };
    return keys;
}

const std::vector<RuleKey>& choiceKeys()
{
    static constexpr std::string_view kRounding =
        "none|1 half even|1 half up|0.1 half even|0.1 half up|0.01 half even|0.01 half up";
    static const std::vector<RuleKey> keys = {
        {"round.dry_density", "rounding of the dry density", kRounding},
        {"round.maximum", "rounding of the maximum dry density", kRounding},
        {"round.optimum", "rounding of the optimum water content", kRounding},
        {"round.water_content", "rounding of the water content", kRounding},
        {"round.percent_compaction", "rounding of the percent compaction", kRounding},
        {"percent.from", "percent compaction is taken from the", "unrounded dry density|rounded dry density"},
        {"compare", "the value compared with a limit is", "rounded|unrounded"},
        {"coarse.at_lower_limit", "a coarse part exactly at the lower limit is", "not corrected|corrected"},
        {"coarse.sample", "a test waits for its check sample", "always|when coarse particles are present|never"},
        {"second_reading", "a second reading is taken", "always|when asked|never"},
        {"second_reading.kind", "limits of the second reading are", "absolute|percent of the first"},
        {"standard.rule", "standard counts are judged by", "percent|two-step|statistical|decay band"},
        {"standard.too_few", "with too few earlier standard counts use the", "mean of those there are|refuse"},
    };
    return keys;
}

const RuleSet& neutralRules()
{
    static const RuleSet rules = ruleSetFromJson(kNeutralRulesText).value();
    return rules;
}

}  // namespace groundcount::method
