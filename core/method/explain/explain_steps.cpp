#include "method/explain/explain_steps.h"

#include "method/decimal.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>

namespace groundcount::method {
namespace {

std::string withRealMinus(std::string text)
{
    if (!text.empty() && text.front() == '-')
        text.replace(0, 1, "\xE2\x88\x92");
    return text;
}

}  // namespace

std::string shown(double value, int places)
{
    return std::isfinite(value) ? withRealMinus(reportedText(value, places, TieRule::HalfEven)) : "unbounded";
}

std::string figure(double value)
{
    return std::isfinite(value) ? withRealMinus(shownNumber(value)) : "unbounded";
}

std::string figures(std::span<const double> values)
{
    constexpr std::size_t kMost = 12;  // a page's width
    std::string s;
    for (std::size_t i = 0; i < std::min(values.size(), kMost); ++i)
        s += (i ? ", " : "") + figure(values[i]);
    return values.size() > kMost ? s + ", \xE2\x80\xA6 (" + std::to_string(values.size()) + " in all)" : s;
}

}  // namespace groundcount::method
