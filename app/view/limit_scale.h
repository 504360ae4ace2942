#pragma once

#include "view/mark.h"

#include <QList>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <limits>
#include <optional>

namespace groundcount::view {

/// "Not there" for a fraction of a limit line.
inline constexpr double kNoFraction = std::numeric_limits<double>::quiet_NaN();

/// One judged figure on its axis, ready for LimitLine.qml: every position is a fraction 0 to 1 from the left; NaN is absent.
class LimitFigure {
    Q_GADGET
    QML_VALUE_TYPE(limitFigure)
    Q_PROPERTY(double lowLimit MEMBER lowLimit)
    Q_PROPERTY(double highLimit MEMBER highLimit)
    Q_PROPERTY(double value MEMBER value)
    Q_PROPERTY(double spreadLow MEMBER spreadLow)
    Q_PROPERTY(double spreadHigh MEMBER spreadHigh)
    Q_PROPERTY(QStringList labels MEMBER labels)
    Q_PROPERTY(QList<qreal> labelAt MEMBER labelAt)
    Q_PROPERTY(int measuredLabel MEMBER measuredLabel)
    Q_PROPERTY(int mark MEMBER mark)

public:
    double lowLimit = kNoFraction;   ///< hatched below
    double highLimit = kNoFraction;  ///< hatched above
    double value = kNoFraction;
    double spreadLow = kNoFraction;
    double spreadHigh = kNoFraction;
    QStringList labels;              ///< under the axis, from left to right
    QList<qreal> labelAt;
    int measuredLabel = -1;          ///< which label is the measured value
    int mark = 0;                    ///< view::Mark

    bool operator==(const LimitFigure& other) const;
};

/// What is drawn on one axis, in one unit.
struct LimitReading {
    std::optional<double> low;     ///< least allowed value
    std::optional<double> high;    ///< greatest allowed value
    std::optional<double> value;
    std::optional<double> spread;  ///< half-width of the value's uncertainty
};

/// A range of values laid on the axis of a limit line.
class LimitScale {
public:
    /// @param low, high ends of the axis, low < high
    LimitScale(double low, double high) : m_low(low), m_high(high) {}

    /// An axis on which the limit of a distance stands in the middle: 0 to twice the requirement.
    /// @param required above 0
    static LimitScale forDistance(double required) { return {0, 2 * required}; }

    /// An axis that shows every limit with room outside it and reaches to the value with its spread.
    /// One limit stands in the middle, `room` to each side; of two limits, each has half the width between them outside.
    /// @param room least half-width round a single limit (or round a value without any limit), above 0, unit of the reading
    static LimitScale around(const LimitReading& reading, double room);

    /// Place of `value` on the axis, held at its ends. NaN stays NaN.
    double fraction(double value) const;

    /// Positions of a reading; labels are added with `label`.
    LimitFigure place(const LimitReading& reading, Mark mark) const;

    double low() const { return m_low; }
    double high() const { return m_high; }

private:
    double m_low;
    double m_high;
};

/// Which kind of label: a plain one, or the one that carries the measured value.
enum class LabelKind { Plain, Measured };

/// Puts a word under the axis at a fraction, keeping the labels in order from left to right.
void addLabel(LimitFigure& figure, double at, const QString& text, LabelKind kind);

}  // namespace groundcount::view
