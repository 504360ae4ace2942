// Longer than 250 lines: one walk from a line to sealed records; each of its small readers reports into the same list of refused lines.
#include "book/csv_import.h"

#include "book/canonical.h"
#include "book/csv_columns.h"
#include "book/evidence.h"
#include "book/kinds.h"
#include "book/seal.h"
#include "book/state_query.h"
#include "method/accept/evaluation_rules.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace groundcount::book {

namespace {

/// Builds the entries of one list: things that rows share are made once.
class Import {
public:
    Import(Store& store, const ImportSettings& settings) : m_store(store), m_settings(settings) {}

    Result<void> begin()
    {
        const StateQuery query(m_store);
        const auto tests = query.tests({});
        const auto gauges = query.gauges();
        const auto materials = query.materials();
        const auto rules = readJson(method::toJson(m_settings.rules));
        RecordFilter filter;
        filter.kind = "rule-set";
        const auto known = m_store.records(filter);
        for (const Error* error : {tests ? nullptr : &tests.error(), gauges ? nullptr : &gauges.error(),
                                   materials ? nullptr : &materials.error(), rules ? nullptr : &rules.error(),
                                   known ? nullptr : &known.error()})
            if (error)
                return tl::unexpected(*error);
        for (const TestRow& t : *tests)
            m_numbers.insert(t.number);
        for (const GaugeRow& g : *gauges)
            if (g.name == kAsReported)
                m_gauge = g.id;
        for (const MaterialRow& m : *materials)
            m_materials.emplace(m.name, m.id);
        for (const Record& r : *known)
            if (r.body.contains("rules") && r.body.at("rules") == *rules)
                m_ruleSet = r;
        if (m_gauge.empty())
            m_gauge = add("gauge", {{"name", kAsReported}, {"serial", "not recorded"}});
        if (m_ruleSet.hash.empty())
            add("rule-set", {{"rules", *rules}});
        return {};
    }

    /// @error Refused when the number is taken or the method refuses the row; nothing of the row is kept then.
    Result<void> row(const FieldTestRow& r)
    {
        const auto at = [&](const std::string& what) { return "Line " + std::to_string(r.line) + ", column 1 (test_no): " + what; };
        if (m_numbers.contains(r.number))
            return refused(at("a number is used once; test " + r.number + " is there already."));
        if (auto judged = judge(r); !judged)
            return refused("Line " + std::to_string(r.line) + ", test " + r.number + ": " + judged.error().what);
        m_numbers.insert(r.number);
        const auto [lot, lift] = lotOf(r);
        const std::string test = newSubject();
        Body site{{"number", r.number}, {"gauge", m_gauge}, {"lot", lot}, {"lift", lift}, {"purpose", "directed"},
                  {"position", "not recorded"}, {"tested_on", r.date}};
        addTo(test, "test-site", std::move(site));
        addTo(test, "reading", {{"number", 1}, {"reported", true}, {"wet_density_lb_ft3", r.wet}, {"water_content_pct", r.content}});
        m_tests.push_back({test, lot, r});
        return {};
    }

    Result<ImportReport> finish(std::vector<std::string> skipped)
    {
        ImportReport report;
        report.skipped = std::move(skipped);
        if (m_tests.empty())
            return report;
        const auto sealed = m_store.sealThen(m_entries, [&](const std::vector<Record>& records) { return verdicts(records, report); });
        if (!sealed)
            return tl::unexpected(sealed.error());
        for (const Made& made : m_tests)
            report.tests.push_back(made.test);
        return report;
    }

private:
    static constexpr const char* kAsReported = "As reported";
    struct Made {
        std::string test;
        std::string lot;
        FieldTestRow row;
    };

    std::string add(const char* kind, Body body) { return addTo(newSubject(), kind, std::move(body)); }

    std::string addTo(const std::string& subject, const char* kind, Body body)
    {
        Entry e;
        e.kind = kind;
        e.subject = subject;
        e.by = m_settings.by;
        e.at = m_settings.at;
        e.offsetMinutes = m_settings.offsetMinutes;
        e.body = std::move(body);
        m_entries.push_back(std::move(e));
        return subject;
    }

    /// The row worked before anything is sealed, so that a refusal is the row's and not the file's.
    Result<void> judge(const FieldTestRow& r) const
    {
        const auto rules = method::evaluationRules(m_settings.rules);
        if (!rules)
            return tl::unexpected(rules.error());
        method::TestInput input;
        const auto number = [](const std::string& text) { return Decimal::parse(text).value_or(Decimal()); };
        input.readings[0].form = method::ReadingForm::WaterContent;
        input.readings[0].wet = WetDensity::lbPerFt3(number(r.wet).value());
        input.readings[0].content = WaterContent::percent(number(r.content).value());
        input.reference.maximum = DryDensity::lbPerFt3(number(r.maximum).value());
        input.reference.optimum = WaterContent::percent(number(r.optimum).value());
        if (!r.minimum.empty())
            input.requirement.minimumPct = number(r.minimum);
        if (!r.most.empty())
            input.requirement.maximumPct = number(r.most);
        if (!r.windowLow.empty() || !r.windowHigh.empty())
            input.requirement.window.kind = method::WindowKind::Points;
        if (!r.windowLow.empty())
            input.requirement.window.low = number(r.windowLow);
        if (!r.windowHigh.empty())
            input.requirement.window.high = number(r.windowHigh);
        const auto evaluation = method::evaluate(input, *rules);
        if (!evaluation)
            return tl::unexpected(evaluation.error());
        return checkBody("lot", lotBody(r, m_settings.by, m_settings.by));
    }

    Body lotBody(const FieldTestRow& r, const std::string& material, const std::string& proctor) const
    {
        Body lot{{"name", "Imported " + std::to_string(m_lots.size() + 1)}, {"material", material}, {"proctor", proctor}, {"tests_per_lift", 0}};
        if (!r.minimum.empty())
            lot["minimum_pct"] = r.minimum;
        if (!r.most.empty())
            lot["maximum_pct"] = r.most;
        if (!r.windowLow.empty() || !r.windowHigh.empty()) {
            lot["window"] = {{"kind", "points"}};
            if (!r.windowLow.empty())
                lot["window"]["low"] = r.windowLow;
            if (!r.windowHigh.empty())
                lot["window"]["high"] = r.windowHigh;
        }
        return lot;
    }

    std::pair<std::string, std::string> lotOf(const FieldTestRow& r)
    {
        if (!m_materials.contains(r.material))
            m_materials.emplace(r.material, add("material", {{"name", r.material}}));
        const std::string material = m_materials.at(r.material);
        const std::vector<std::string> reference{r.material, r.standard, r.maximum, r.optimum};
        if (!m_proctors.contains(reference))
            m_proctors.emplace(reference, add("proctor", {{"name", r.material + " " + r.maximum + " / " + r.optimum}, {"material", material},
                                                          {"standard", r.standard}, {"max_dry_density_lb_ft3", r.maximum},
                                                          {"optimum_pct", r.optimum}, {"peak_by", "as reported"}}));
        std::vector<std::string> asked = reference;
        asked.insert(asked.end(), {r.minimum, r.most, r.windowLow, r.windowHigh});
        if (!m_lots.contains(asked)) {
            const std::string lot = add("lot", lotBody(r, material, m_proctors.at(reference)));
            m_lots.emplace(asked, std::pair(lot, add("lift", {{"lot", lot}, {"number", 1}})));
        }
        return m_lots.at(asked);
    }

    Result<std::vector<Entry>> verdicts(const std::vector<Record>& records, ImportReport& report) const
    {
        std::multimap<std::string, const Record*> bySubject;
        for (const Record& r : records)
            bySubject.emplace(r.subject, &r);
        std::vector<Entry> entries;
        for (const Made& made : m_tests) {
            std::vector<Record> from;
            const auto take = [&](const std::string& subject) {
                for (auto [it, end] = bySubject.equal_range(subject); it != end; ++it)
                    from.push_back(*it->second);
            };
            take(made.test);
            const std::string lift = textAt(from.front().body, "lift");
            take(made.lot);
            take(textAt(from.back().body, "proctor"));
            take(lift);
            if (!m_ruleSet.hash.empty())
                from.push_back(m_ruleSet);
            else
                for (const Record& r : records)
                    if (r.kind == "rule-set")
                        from.push_back(r);
            const auto evidence = evidenceFrom(from);
            if (!evidence)
                return tl::unexpected(evidence.error());
            auto entry = verdictEntry(*evidence, m_settings.by, m_settings.at, m_settings.offsetMinutes);
            if (!entry)
                return tl::unexpected(entry.error());
            compare(made.row, entry->body.at("figures"), report);
            entries.push_back(std::move(*entry));
        }
        return entries;
    }

    static void compare(const FieldTestRow& r, const Body& figures, ImportReport& report)
    {
        const auto differs = [&](const std::string& reported, const WithUnit& computed, const char* what) {
            const auto a = Decimal::parse(reported);
            const auto b = Decimal::parse(computed.text);
            if (a && (!b || *a != *b))
                report.disagreements.push_back("Line " + std::to_string(r.line) + ", test " + r.number + ": " + what + " reported " +
                                               reported + ", computed " + computed.text + ".");
        };
        differs(r.reportedDry, withUnit(figures, "dry_density", Unit::Density), "dry density");
        differs(r.reportedPercent, {textAt(figures, "percent_compaction"), ""}, "percent compaction");
    }

    Store& m_store;
    const ImportSettings& m_settings;
    std::set<std::string> m_numbers;
    std::string m_gauge;
    Record m_ruleSet;
    std::map<std::string, std::string> m_materials;
    std::map<std::vector<std::string>, std::string> m_proctors;
    std::map<std::vector<std::string>, std::pair<std::string, std::string>> m_lots;
    std::vector<Entry> m_entries;
    std::vector<Made> m_tests;
};

}  // namespace

Result<ImportReport> importTests(Store& store, std::string_view csv, const ImportSettings& settings)
{
    const auto rows = readCsv(csv);
    if (!rows)
        return tl::unexpected(rows.error());
    if (rows->empty())
        return refused("A list of tests needs a head row and at least one test; the file is empty.");
    const auto columns = columnsOf(rows->front());
    if (!columns)
        return tl::unexpected(columns.error());
    Import import(store, settings);
    if (auto begun = import.begin(); !begun)
        return tl::unexpected(begun.error());
    std::vector<std::string> skipped;
    for (std::size_t i = 1; i < rows->size(); ++i) {
        const auto test = fieldTestOf((*rows)[i], *columns, rows->front().size());
        const auto taken = test ? import.row(*test) : Result<void>(tl::unexpected(test.error()));
        if (taken)
            continue;
        if (settings.mode == ImportMode::AllOrNothing)
            return tl::unexpected(taken.error());
        skipped.push_back(taken.error().what);
    }
    if (rows->size() == 1)
        return refused("A list of tests needs at least one test under its head row; there is none.");
    return import.finish(std::move(skipped));
}

}  // namespace groundcount::book
