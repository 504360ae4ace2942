#include "view/limit_scale.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

bool same(double a, double b)
{
    return a == b || (std::isnan(a) && std::isnan(b));
}

// A value with its spread ends this part of the half-width before the end of the axis, so that its cap is drawn whole.
constexpr double kReach = 0.85;

}  // namespace

bool LimitFigure::operator==(const LimitFigure& o) const
{
    return same(lowLimit, o.lowLimit) && same(highLimit, o.highLimit) && same(value, o.value) && same(spreadLow, o.spreadLow) &&
           same(spreadHigh, o.spreadHigh) && labels == o.labels && labelAt == o.labelAt && measuredLabel == o.measuredLabel &&
           mark == o.mark;
}

LimitScale LimitScale::around(const LimitReading& reading, double room)
{
    const auto low = reading.low ? reading.low : reading.high ? reading.high : reading.value;
    const auto high = reading.high ? reading.high : low;
    if (!low)
        return {-room, room};
    const double middle = (*low + *high) / 2;
    const bool between = reading.low && reading.high && *reading.low < *reading.high;
    double half = between ? *high - *low : room;
    if (reading.value) {
        const double away = std::fabs(*reading.value - middle) + reading.spread.value_or(0);
        half = std::max(half, away / kReach);
    }
    return {middle - half, middle + half};
}

double LimitScale::fraction(double value) const
{
    if (std::isnan(value))
        return kNoFraction;
    return std::clamp((value - m_low) / (m_high - m_low), 0.0, 1.0);
}

LimitFigure LimitScale::place(const LimitReading& reading, Mark mark) const
{
    LimitFigure figure;
    figure.mark = static_cast<int>(mark);
    if (reading.low)
        figure.lowLimit = fraction(*reading.low);
    if (reading.high)
        figure.highLimit = fraction(*reading.high);
    if (reading.value) {
        figure.value = fraction(*reading.value);
        if (reading.spread && *reading.spread > 0) {
            figure.spreadLow = fraction(*reading.value - *reading.spread);
            figure.spreadHigh = fraction(*reading.value + *reading.spread);
        }
    }
    return figure;
}

void addLabel(LimitFigure& figure, double at, const QString& text, LabelKind kind)
{
    const auto place = std::upper_bound(figure.labelAt.begin(), figure.labelAt.end(), at);
    const auto index = static_cast<int>(place - figure.labelAt.begin());
    if (figure.measuredLabel >= index)
        ++figure.measuredLabel;
    figure.labelAt.insert(index, at);
    figure.labels.insert(index, text);
    if (kind == LabelKind::Measured)
        figure.measuredLabel = index;
}

}  // namespace groundcount::view
