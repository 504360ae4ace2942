#include "book/evidence.h"
#include "book/kinds.h"
#include "book/seal.h"
#include "method/accept/evaluation_rules.h"
#include "method/core_version.h"
#include "method/decimal.h"

namespace groundcount::book {

namespace {

using namespace method;

/// A number with 9 places, trailing zeros kept: 12 significant digits for densities and percents.
std::string unrounded(double value)
{
    const auto decimal = Decimal::fromDouble(value, 9);
    return decimal ? decimal->text() : std::string("0");
}

std::string reported(double value, const std::optional<Rounding>& rounding)
{
    return rounding ? reportedText(value, *rounding) : unrounded(value);
}

Body figuresOf(const TestInput& input, const EvaluationRules& rules, const Evaluation& e)
{
    const std::string unit = rules.unit == DensityUnit::LbPerFt3 ? "_lb_ft3" : "_kg_m3";
    Body f = Body::object();
    f["wet_density" + unit] = reported(e.reported.wet, rules.dry);
    f["water_density" + unit] = reported(e.reported.water, rules.dry);
    f["dry_density" + unit] = reported(e.reported.dry, rules.dry);
    f["maximum" + unit] = reported(e.reported.maximum, rules.maximum);
    f["water_content_pct"] = reported(e.reported.contentPct, rules.content);
    f["optimum_pct"] = reported(e.reported.optimumPct, rules.optimum);
    f["percent_compaction"] = reported(e.reported.compactionPct, rules.compaction);
    Body& u = f["unrounded"] = Body::object();
    u["wet_density" + unit] = unrounded(inUnit(e.wet, rules.unit));
    u["water_density" + unit] = unrounded(inUnit(e.water, rules.unit));
    u["dry_density" + unit] = unrounded(inUnit(e.dry, rules.unit));
    u["maximum" + unit] = unrounded(inUnit(e.maximum, rules.unit));
    u["water_content_pct"] = unrounded(e.content.percent());
    u["optimum_pct"] = unrounded(e.optimum.percent());
    u["percent_compaction"] = unrounded(e.compaction.percent());
    if (input.sample) {
        f["coarse_pct"] = reported(e.coarse.percent(), rules.content);
        f["unrounded"]["coarse_pct"] = unrounded(e.coarse.percent());
    }
    if (input.requirement.minimumPct)
        f["minimum_pct"] = input.requirement.minimumPct->text();
    if (input.requirement.maximumPct)
        f["maximum_pct"] = input.requirement.maximumPct->text();
    if (e.window.lowPct)
        f["window_low_pct"] = reported(*e.window.lowPct, rules.content);
    if (e.window.highPct)
        f["window_high_pct"] = reported(*e.window.highPct, rules.content);
    if (e.expandedUncertaintyPct)
        f["uncertainty_pct"] = reportedText(*e.expandedUncertaintyPct, 2, TieRule::HalfEven);  // two figures of an uncertainty
    return f;
}

Result<Body> verdictBody(const Evidence& evidence)
{
    const auto rules = evaluationRules(evidence.rules);
    if (!rules)
        return tl::unexpected(rules.error());
    const auto evaluation = evaluate(evidence.input, *rules);
    if (!evaluation)
        return tl::unexpected(evaluation.error());
    Body reasons = Body::array();
    for (const Reason reason : evaluation->reasons)
        reasons.push_back(word(reason));
    return Body{{"result", word(evaluation->outcome)}, {"reasons", reasons},
                {"figures", figuresOf(evidence.input, *rules, *evaluation)}, {"rule_set", evidence.ruleSet},
                {"core", kCoreVersion}, {"from", evidence.from}, {"material", evidence.material}, {"proctor", evidence.proctor}};
}

void compare(const Body& sealed, const Body& today, const std::string& where, std::vector<std::string>& differences)
{
    const auto shownOr = [](const Body& body, const std::string& key) {
        return body.contains(key) ? shown(body.at(key)) : std::string("nothing");
    };
    for (auto it = today.begin(); it != today.end(); ++it) {
        if (it.key() == "unrounded") {
            if (sealed.contains("unrounded") && sealed.at("unrounded").is_object())
                compare(sealed.at("unrounded"), *it, "unrounded ", differences);
        } else if (shownOr(sealed, it.key()) != shown(*it)) {
            differences.push_back(where + it.key() + ": sealed " + shownOr(sealed, it.key()) + ", today " + shown(*it));
        }
    }
    for (auto it = sealed.begin(); it != sealed.end(); ++it)
        if (it.key() != "unrounded" && !today.contains(it.key()))
            differences.push_back(where + it.key() + ": sealed " + shown(*it) + ", today nothing");
}

}  // namespace

Result<Entry> verdictEntry(const Evidence& evidence, const std::string& by, const std::string& at, int offsetMinutes)
{
    auto body = verdictBody(evidence);
    if (!body)
        return tl::unexpected(body.error());
    Entry entry;
    entry.kind = "verdict";
    entry.subject = evidence.test;
    entry.by = by;
    entry.at = at;
    entry.offsetMinutes = offsetMinutes;
    entry.body = std::move(*body);
    return entry;
}

Result<VerdictCheck> recompute(const Record& verdict, const Store& store)
{
    if (auto form = checkBody("verdict", verdict.body); !form)
        return tl::unexpected(form.error());
    std::vector<Record> records;
    for (const Body& hash : verdict.body.at("from")) {
        auto record = store.record(hash.get<std::string>());
        if (!record)
            return tl::unexpected(record.error());
        records.push_back(std::move(*record));
    }
    auto rules = store.record(textAt(verdict.body, "rule_set"));
    if (!rules)
        return tl::unexpected(rules.error());
    records.push_back(std::move(*rules));
    const auto evidence = evidenceFrom(records);
    if (!evidence)
        return tl::unexpected(evidence.error());
    const auto today = verdictBody(*evidence);
    if (!today)
        return tl::unexpected(today.error());
    VerdictCheck check;
    if (evidence->test != verdict.subject)
        check.differences.push_back("the records named are of another test");
    if (textAt(*today, "result") != textAt(verdict.body, "result"))
        check.differences.push_back("result: sealed " + shown(verdict.body.at("result")) + ", today " + shown(today->at("result")));
    if (today->at("reasons") != verdict.body.at("reasons"))
        check.differences.push_back("reasons: sealed " + shown(verdict.body.at("reasons")) + ", today " + shown(today->at("reasons")));
    compare(verdict.body.at("figures"), today->at("figures"), "", check.differences);
    check.agrees = check.differences.empty();
    return check;
}

}  // namespace groundcount::book
