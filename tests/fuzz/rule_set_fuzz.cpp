#include "fuzz/hold.h"
#include "method/accept/evaluation_rules.h"
#include "method/rules/rule_set.h"

#include <cstdint>
#include <string_view>

using namespace groundcount::method;

/// Any text: refused with a sentence, or a rule set that writes to text which reads back as the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const auto rules = ruleSetFromJson(std::string_view(reinterpret_cast<const char*>(data), size));
    if (!rules) {
        HOLD(!rules.error().what.empty());
        return 0;
    }
    HOLD(rules->limits.size() == limitKeys().size() && rules->choices.size() == choiceKeys().size());
    const auto text = toJson(*rules);
    const auto again = ruleSetFromJson(text);
    HOLD(again && toJson(*again) == text);
    const auto read = evaluationRules(*rules);
    HOLD(read || !read.error().what.empty());
    return 0;
}
