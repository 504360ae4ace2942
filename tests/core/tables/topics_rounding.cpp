#include "cells.h"
#include "topics.h"

#include "method/accept/moisture_window.h"
#include "method/conformity.h"
#include "method/soil/in_place.h"

#include <cmath>

namespace groundcount::tables {
namespace {

using namespace groundcount::method;

/// "0.1" -> 1, "1" -> 0, "100" -> -2.
int placesOf(const std::string& to)
{
    const int places = -static_cast<int>(std::lround(std::log10(readNumber(to))));
    if (!(std::fabs(readNumber(to) - std::pow(10.0, -places)) < 1e-12 * readNumber(to)))
        unknownWord("to", to);
    return places;
}

TieRule tieRule(const std::string& mode)
{
    if (mode != "half_even" && mode != "half_up")
        unknownWord("mode", mode);
    return mode == "half_up" ? TieRule::HalfUp : TieRule::HalfEven;
}

Result<Outcome> rounding(const Row& row)
{
    return Decimal::parse(row.text("value_text")).map([&](const Decimal& value) {
        return Outcome{"ok", {{"want_text", value.rounded(placesOf(row.text("to")), tieRule(row.text("mode"))).text()}}, {}};
    });
}

Result<Outcome> conformityTopic(const Row& row)
{
    const std::string& kind = row.text("limit_kind");
    const std::string& method = row.text("method");
    if (kind != "min" && kind != "max")
        unknownWord("limit_kind", kind);
    if (method != "absolute" && method != "rounding")
        unknownWord("method", method);
    const auto limit = Decimal::parse(row.text("limit_text"));
    const auto observed = Decimal::parse(row.text("observed_text"));
    if (!limit || !observed)
        return tl::unexpected(limit ? observed.error() : limit.error());
    return conformity(kind == "min" ? Bound::Minimum : Bound::Maximum, *limit, *observed,
                      method == "absolute" ? ConformityMethod::Absolute : ConformityMethod::Rounding, placesOf(row.text("to")),
                      tieRule(row.text("mode")))
        .map([](const Conformity& c) { return Outcome{c.isMet ? "pass" : "fail", {{"want_compared", c.compared.text()}}, {}}; });
}

/// A bound of a window: "-" is no bound.
std::optional<Decimal> bound(const Row& row, const std::string& column)
{
    if (!row.has(column))
        return std::nullopt;
    const auto value = Decimal::parse(row.text(column));
    if (!value)
        unknownWord(column, row.text(column));
    return *value;
}

Result<Outcome> moistureWindow(const Row& row)
{
    const std::string& kind = row.text("kind");
    MoistureWindow window;
    window.kind = kind == "points" ? WindowKind::Points : kind == "relative" ? WindowKind::PercentOfOptimum : WindowKind::None;
    if (window.kind == WindowKind::None && kind != "none")
        unknownWord("kind", kind);
    window.low = bound(row, "low");
    window.high = bound(row, "high");
    return checkWindow(WaterContent::percent(row.number("w_pct")), WaterContent::percent(row.number("optimum_pct")), window).map([](const WindowCheck& check) {
        Outcome outcome{check.side == Side::Inside ? "pass" : "fail", {}, {}};
        if (check.bounds.lowPct)
            outcome.want["want_low_pct"] = *check.bounds.lowPct;
        if (check.bounds.highPct)
            outcome.want["want_high_pct"] = *check.bounds.highPct;
        return outcome;
    });
}

// The chain of the table's head: dry density to 0.1, percent from that, to 0.1, verdict on the rounded figures.
Result<Outcome> fieldTests(const Row& row)
{
    constexpr int kPlaces = 1;
    const TieRule tie = row.has("mode") ? tieRule(row.text("mode")) : TieRule::HalfEven;
    const auto moisture = Decimal::parse(row.text("moisture_pct"));
    if (!moisture)
        return tl::unexpected(moisture.error());
    const auto place = dryFromContent(WetDensity::lbPerFt3(row.number("wet_lb_ft3")), WaterContent::percent(moisture->value()));
    if (!place)
        return tl::unexpected(place.error());
    const double dry = roundReported(place->dry.lbPerFt3(), kPlaces, tie);
    const auto compaction = percentCompaction(DryDensity::lbPerFt3(dry), DryDensity::lbPerFt3(row.number("max_dry_lb_ft3")));
    if (!compaction)
        return tl::unexpected(compaction.error());
    const auto percent = Decimal::fromDouble(compaction->percent(), 9);
    if (!percent)
        return tl::unexpected(percent.error());
    bool pass = true;
    for (const auto& [column, side] : {std::pair{"min_pct", Bound::Minimum}, {"max_pct", Bound::Maximum}}) {
        if (!row.has(column))
            continue;
        const auto limit = bound(row, column);
        const auto met = conformity(side, *limit, *percent, ConformityMethod::Rounding, kPlaces, tie);
        pass = pass && met && met->isMet;
    }
    MoistureWindow window;
    window.low = bound(row, "window_low_pts");
    window.high = bound(row, "window_high_pts");
    window.kind = window.low || window.high ? WindowKind::Points : WindowKind::None;
    const double optimum = row.number("optimum_pct");
    const auto inside = checkWindow(WaterContent::percent(moisture->value()), WaterContent::percent(optimum), window);
    if (!inside)
        return tl::unexpected(inside.error());
    pass = pass && inside->side == Side::Inside;
    return Outcome{pass ? "pass" : "fail",
                   {{"want_dry_lb_ft3", reportedText(place->dry.lbPerFt3(), kPlaces, tie)},
                    {"want_percent", percent->rounded(kPlaces, tie).text()},
                    {"want_moisture_minus_optimum", reportedText(moisture->value() - optimum, kPlaces, tie)}},
                   {}};
}

}  // namespace

std::vector<Topic> roundingTopics()
{
    return {{"rounding", rounding},
            {"report_rounding", rounding},
            {"conformity", conformityTopic},
            {"moisture_window", moistureWindow},
            {"field_tests", fieldTests}};
}

}  // namespace groundcount::tables
