#include "method/accept/requirement.h"

#include <string>

namespace groundcount::method {
namespace {

// A value that equals its bound in exact arithmetic differs from it by a few units of 1e-14 at most.
long long snapped(double value)
{
    return nearestWhole(value * 1e9);
}

}  // namespace

WindowBounds windowBounds(const MoistureWindow& window, double optimumPct)
{
    WindowBounds bounds;
    const auto bound = [&](const std::optional<Decimal>& b) -> std::optional<double> {
        if (!b || window.kind == WindowKind::None)
            return std::nullopt;
        return window.kind == WindowKind::Points ? optimumPct + b->value() : optimumPct * (1.0 + b->value() / 100.0);
    };
    bounds.lowPct = bound(window.low);
    bounds.highPct = bound(window.high);
    return bounds;
}

Side sideOf(double value, std::optional<double> low, std::optional<double> high)
{
    if (low && snapped(value) < snapped(*low))
        return Side::Below;
    if (high && snapped(value) > snapped(*high))
        return Side::Above;
    return Side::Inside;
}

Result<void> validate(const Requirement& r)
{
    for (const auto& [name, bound] : {std::pair{"minimum", r.minimumPct}, {"maximum", r.maximumPct}}) {
        if (bound && !(bound->value() >= 0 && bound->value() <= 200))
            return refused(std::string("The ") + name + " percent compaction is " + bound->text() + "; 0 to 200 % is allowed.");
    }
    if (r.minimumPct && r.maximumPct && *r.minimumPct > *r.maximumPct)
        return refused("The minimum percent compaction " + r.minimumPct->text() + " is above the maximum " +
                       r.maximumPct->text() + ".");
    const auto& w = r.window;
    if (w.kind != WindowKind::None && !w.low && !w.high)
        return refused("The moisture window has neither a low nor a high bound; give one or choose no window.");
    if (w.low && w.high && *w.low > *w.high)
        return refused("The moisture window runs from " + w.low->text() + " to " + w.high->text() +
                       "; the low bound must not be above the high one.");
    return {};
}

Result<WindowKind> windowKindFrom(std::string_view text)
{
    for (const auto kind : {WindowKind::None, WindowKind::Points, WindowKind::PercentOfOptimum}) {
        if (word(kind) == text)
            return kind;
    }
    return refused("The moisture window kind is \"" + std::string(text) + "\"; allowed: none, points, percent of optimum.");
}

std::string_view word(WindowKind kind)
{
    switch (kind) {
    case WindowKind::Points: return "points";
    case WindowKind::PercentOfOptimum: return "percent of optimum";
    case WindowKind::None: break;
    }
    return "none";
}

}  // namespace groundcount::method
