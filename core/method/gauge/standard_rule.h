#pragma once

#include "method/error.h"
#include "method/gauge/standard_count.h"
#include "method/rules/rule_set.h"

#include <optional>
#include <span>
#include <string>

namespace groundcount::method {

/// Which of the two standard counts of a gauge.
enum class Channel { Density, Moisture };

/// A standard count with what the rule of a rule set may ask about it. What the rule does not read may be left out.
struct StandardInput {
    std::span<const double> earlier;         ///< earlier accepted counts, oldest first, each above 0
    double today = 0;                        ///< N, above 0
    std::optional<double> firstToday;        ///< two-step: the count of the set before it today that did not hold
    std::optional<double> prescale;          ///< statistical: F, true counts per displayed count
    std::optional<double> calibrationCount;  ///< decay band: Nc
    double daysSinceCalibration = 0;         ///< decay band: t
};

/// What a rule says of one standard count, in one form for every rule.
struct StandardVerdict {
    std::string rule;              ///< "percent", "two-step", "statistical", "decay band"
    double base = 0;               ///< what it is compared with: mean, established count, decayed count
    double lower = 0;              ///< least count that holds
    double upper = 0;              ///< greatest count that holds
    double deviationPercent = 0;   ///< 100 (N - base)/base, signed
    double limitPercent = 0;       ///< 100 (upper - base)/base
    bool isAccepted = false;
    bool asksForSecond = false;    ///< two-step: a second count decides
};

/// Judges a standard count by the rule that the rule set names: percentCheck, twoStepCheck, statisticalCheck or decayBand.
/// Percent and decay band take p and 100 q from `standard.density` or `standard.moisture`; the established count of the two-step
/// rule is the latest earlier one.
/// @error Refused as the rule's function does; for a limit that the rule set lacks; for a prescale or calibration count not known
/// @source [QCFORM-2011], [IA-IM334], [D2922-TXT], [D6938-TXT] as the functions
Result<StandardVerdict> judgeStandard(const RuleSet& rules, Channel channel, const StandardInput& input);

/// Keys of the limits that the rule in force reads for a channel, in the order in which a page lists them.
std::vector<std::string> standardLimitKeys(const RuleSet& rules, Channel channel);

}  // namespace groundcount::method
