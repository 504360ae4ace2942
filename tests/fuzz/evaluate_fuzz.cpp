#include "fuzz/hold.h"
#include "method/accept/explain.h"
#include "method/rules/test_input_json.h"

#include <cmath>
#include <cstdint>
#include <string_view>

using namespace groundcount::method;

/// Any text: refused with a sentence, or a test that evaluates to finite, physical figures and can be explained.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const auto request = evaluationFromJson(std::string_view(reinterpret_cast<const char*>(data), size));
    if (!request) {
        HOLD(!request.error().what.empty());
        return 0;
    }
    const auto rules = evaluationRules(request->rules);
    if (!rules) {
        HOLD(!rules.error().what.empty());
        return 0;
    }
    const auto e = evaluate(request->input, *rules);
    if (!e) {
        HOLD(!e.error().what.empty());
        return 0;
    }
    HOLD(std::isfinite(e->dry.kgPerM3()) && e->dry.kgPerM3() > 0);
    HOLD(e->dry.kgPerM3() <= e->wet.kgPerM3());
    HOLD(std::isfinite(e->content.percent()) && e->content.percent() >= 0);
    HOLD(std::isfinite(e->maximum.kgPerM3()) && e->maximum.kgPerM3() > 0);
    HOLD(std::isfinite(e->compaction.percent()) && e->compaction.percent() > 0);
    HOLD(e->coarse.percent() >= 0 && e->coarse.percent() < 100);
    HOLD(e->outcome != Outcome::Pass || (e->densityMet && e->moistureMet));
    HOLD(!explain(request->input, *rules, *e).empty());
    HOLD(!verdictSentence(request->input, *e).empty());
    HOLD(!evaluationToJson(*request, *rules, *e).empty());
    return 0;
}
