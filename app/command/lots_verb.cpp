#include "book/job_rules.h"
#include "book/lot_statistics.h"
#include "book/state_query.h"
#include "command/columns.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "method/decimal.h"

#include <algorithm>
#include <memory>
#include <nlohmann/json.hpp>

namespace groundcount::command {
namespace {

using Json = nlohmann::ordered_json;

struct Reviewed {
    std::vector<book::LotStatistics> lots;
    std::vector<book::ChartOfTests> charts;
    std::vector<book::TestRow> tests;  ///< what the pointers above point to
    std::vector<book::GaugeRow> gauges;
};

Result<Reviewed> reviewed(const book::Store& store, const std::string& lotName)
{
    const book::StateQuery query(store);
    const auto rules = book::jobRules(store).and_then(book::statisticsRules);
    const auto job = query.job();
    const auto lots = query.lots();
    const auto lifts = query.lifts("");
    const auto gauges = query.gauges();
    auto tests = query.tests({});
    if (!rules || !job || !lots || !lifts || !gauges || !tests)
        return tl::unexpected(!rules ? rules.error() : !job ? job.error() : !lots ? lots.error() : !lifts ? lifts.error() : !gauges ? gauges.error() : tests.error());
    Reviewed r;
    r.tests = std::move(*tests);
    r.gauges = *gauges;
    std::string only;
    for (const auto& lot : *lots) {
        if (!lotName.empty() && lot.name != lotName)
            continue;
        only = lot.id;
        auto one = book::lotStatistics(lot, *lifts, r.tests, job->metresPerGridUnit, *rules);
        if (!one)
            return tl::unexpected(one.error());
        r.lots.push_back(std::move(*one));
    }
    if (r.lots.empty() && !lotName.empty())
        return refused("There is no lot \"" + lotName + "\" in the book.");
    auto charts = book::controlCharts(r.tests, lotName.empty() ? "" : only);
    if (!charts)
        return tl::unexpected(charts.error());
    r.charts = std::move(*charts);
    return r;
}

std::string shown(double value, int places) { return reportedText(value, places, TieRule::HalfEven); }

std::string asText(const Reviewed& r)
{
    Columns table({Align::Left, Align::Right, Align::Right, Align::Right, Align::Right, Align::Right, Align::Right, Align::Right, Align::Left});
    table.add({"lot", "lifts", "required", "made", "open fail", "mean %", "s", "PWL %", "remarks"});
    for (const auto& lot : r.lots) {
        std::string remarks;
        const auto remark = [&](const std::string& text) { remarks += (remarks.empty() ? "" : "; ") + text; };
        if (!lot.pwl.value)
            remark("no PWL: " + lot.pwl.whyNot);
        if (lot.outlier.value && lot.outlier.value->flagged)
            remark("outlier: test " + lot.values[lot.outlier.value->index].test->number + ", " + shown(lot.values[lot.outlier.value->index].compactionPct, 1) + " %");
        for (const auto& v : lot.values)
            if (!v.insteadOf.empty())
                remark(v.test->number + " stands for " + v.insteadOf);
        for (const auto& out : lot.leftOut)
            remark("left out " + out);
        table.add({lot.name, std::to_string(lot.lifts), std::to_string(lot.required), std::to_string(lot.made), std::to_string(lot.openFailures.size()),
                   lot.mean.value ? shown(*lot.mean.value, 2) : "-", lot.spread.value ? shown(lot.spread.value->sd, 2) : "-",
                   lot.pwl.value ? shown(lot.pwl.value->pwl, 1) : "-", remarks});
    }
    std::string out = table.text();
    for (const auto& chart : r.charts) {
        const auto gauge = std::find_if(r.gauges.begin(), r.gauges.end(), [&](const auto& g) { return g.id == chart.gauge; });
        const auto& test = *chart.tests.front();
        out += "\n\nControl chart, " + test.materialName + ", " + test.proctorName + ", gauge " + (gauge == r.gauges.end() ? "not known" : gauge->name) + ": ";
        if (!chart.chart.value) {
            out += chart.chart.whyNot;
            continue;
        }
        const auto& limits = chart.chart.value->values;
        out += std::to_string(chart.tests.size()) + " tests, " + shown(limits.lower, 2) + " to " + shown(limits.upper, 2) + " % about " + shown(limits.centre, 2) + " %";
        for (const auto i : chart.outside)
            out += "; outside: " + chart.tests[i]->number + " (" + chart.tests[i]->compactionPct + " %)";
    }
    return out;
}

template <class T, class Write>
Json figure(const book::Figure<T>& f, Write write)
{
    return f.value ? write(*f.value) : Json{{"why_not", f.whyNot}};
}

std::string asJson(const Reviewed& r)
{
    const auto plain = [](double v) { return Json(v); };
    const auto optional = [](const std::optional<double>& v) { return v ? Json(*v) : Json(); };
    Json lots = Json::array();
    for (const auto& lot : r.lots) {
        Json values = Json::array(), open = Json::array();
        for (const auto& v : lot.values)
            values.push_back({{"test", v.test->number}, {"percent_compaction", v.compactionPct}, {"instead_of", v.insteadOf}});
        for (const auto* t : lot.openFailures)
            open.push_back(t->number);
        lots.push_back({{"lot", lot.name}, {"lifts", lot.lifts}, {"required", lot.required}, {"made", lot.made}, {"random", lot.random}, {"directed", lot.directed},
                        {"retests", lot.retests}, {"waiting", lot.waiting}, {"information_only", lot.informationOnly}, {"open_failures", open}, {"values", values},
                        {"left_out", lot.leftOut}, {"mean", figure(lot.mean, plain)}, {"sd", figure(lot.spread, [](const auto& s) { return Json(s.sd); })},
                        {"pwl", figure(lot.pwl, [&](const auto& p) { return Json{{"n", p.n}, {"mean", p.mean}, {"sd", p.sd}, {"q_lower", optional(p.qLower)}, {"q_upper", optional(p.qUpper)},
                                  {"p_lower", optional(p.pLower)}, {"p_upper", optional(p.pUpper)}, {"pwl", p.pwl}}; })},
                        {"moving_means", lot.movingMeans},
                        {"outlier", figure(lot.outlier, [&](const auto& o) { return Json{{"test", lot.values[o.index].test->number}, {"g", o.g}, {"critical", o.critical}, {"flagged", o.flagged}}; })}});
    }
    Json charts = Json::array();
    for (const auto& chart : r.charts) {
        Json tests = Json::array(), outside = Json::array();
        for (const auto* t : chart.tests)
            tests.push_back(t->number);
        for (const auto i : chart.outside)
            outside.push_back(chart.tests[i]->number);
        charts.push_back({{"material", chart.material}, {"proctor", chart.proctor}, {"gauge", chart.gauge}, {"tests", tests}, {"outside", outside},
                          {"limits", figure(chart.chart, [](const auto& c) { return Json{{"lower", c.values.lower}, {"centre", c.values.centre}, {"upper", c.values.upper}, {"moving_range_upper", c.movingRangeUpper}}; })}});
    }
    return Json{{"lots", lots}, {"charts", charts}}.dump(2);
}

struct LotsOptions {
    std::string book, lot;
    bool json = false;
};

}  // namespace

void addLots(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("lots", "Show each lot's tests owed and made, mean, spread, percent within limits and control charts");
    auto options = std::make_shared<LotsOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("--lot", options->lot, "Name of one lot")->type_name("NAME");
    verb->add_flag("--json", options->json, "As JSON, unrounded, with every value and moving mean");
    verb->footer("Random tests, and the passing retests that stand for failed ones where the rule set says so, enter the statistics; what is\n"
                 "left out is named. An outlier is flagged, never dropped. Percent within limits is information unless the contract says so.");
    verb->callback([options, &status] {
        const auto store = openToRead(options->book);
        const auto all = store ? reviewed(*store, options->lot) : Result<Reviewed>(tl::unexpected(store.error()));
        if (!all) {
            status = refuse(all.error());
            return;
        }
        print(options->json ? asJson(*all) : asText(*all));
        status = store->damage().empty() ? kDone : kRefused;
    });
}

}  // namespace groundcount::command
