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
        {"range.wet_density_least", "lowest wet density and maximum dry density that is believed", "lb/ft3|kg/m3"},
        {"range.wet_density_most", "highest wet density and maximum dry density that is believed", "lb/ft3|kg/m3"},
        {"range.water_content_most", "highest water content that is believed", "%"},
        {"range.count_most", "highest count that is believed", "counts"},
        {"standard.age", "age of the standard count at the test, at most", "h"},
        {"offset.moisture_samples", "places behind a moisture correction, at least", "places"},
        {"offset.moisture_sd", "standard deviation of oven minus gauge behind a moisture correction, at most", "%"},
        {"offset.bias_pairs", "places behind a density bias, at least", "places"},
        {"offset.bias_sd", "standard deviation of reference minus gauge behind a density bias, at most", "lb/ft3|kg/m3"},
        {"offset.days", "age of a moisture correction or density bias that states no expiry, at most", "d"},
        {"place.fixes", "position fixes averaged", "fixes"},
        {"retest.distance", "retest from the failing test, at most", "ft|m"},
        {"place.accuracy", "two-sigma radius of a position, at most", "ft|m"},
        {"lot.moving_mean", "results in a moving mean", "tests"},
        {"lot.outlier_level", "significance level of the outlier test, two-sided", "%"},
        {"compare.level", "significance level of comparisons of two sets of tests, two-sided", "%"},
        {"compare.pairs", "places tested side by side, at least, before pairs are compared", "pairs"},
        {"compare.distance", "two tests side by side, at most", "ft|m"},
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
        "none|1 half even|1 half up|0.1 half even|0.1 half up|0.01 half even|0.01 half up|0.05 half even|0.05 half up|"
        "0.5 half even|0.5 half up|5 half even|5 half up|10 half even|10 half up|50 half even|50 half up";
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
        {"offset.approval", "a name that approved a moisture correction or density bias is", "not needed|needed"},
        {"standard.rule", "standard counts are judged by", "percent|two-step|statistical|decay band"},
        {"standard.too_few", "with too few earlier standard counts use the", "mean of those there are|refuse"},
        {"lot.retested", "a failed random test that was closed by a retest counts as", "the passing retest|the failed test|nothing"},
        {"pwl.table", "percent within limits is read", "exact|next higher whole|nearest whole"},
        {"pwl.mean", "rounding of the mean before the quality index", "none|0.1|0.01|0.001|0.0001"},
        {"pwl.sd", "rounding of the standard deviation before the quality index", "none|0.1|0.01|0.001|0.0001"},
        {"pwl.q", "rounding of the quality index before the table", "none|0.1|0.01|0.001|0.0001"},
        {"pwl.tie", "a tie in that chain goes", "half even|half up"},
    };
    return keys;
}

const RuleSet& neutralRules()
{
    static const RuleSet rules = ruleSetFromJson(kNeutralRulesText).value();
    return rules;
}

}  // namespace groundcount::method
