#pragma once

#include "ink_set.h"
#include "view/mark.h"

#include <QFont>
#include <QList>
#include <QString>

#include <limits>

class QPainter;

namespace groundcount::paint {

/// "Not there" for a fraction.
inline constexpr qreal kAbsent = std::numeric_limits<qreal>::quiet_NaN();

/// Words under the axis. `at` is a fraction of the axis from the left; the word is centred there if there is room.
struct LimitLabel {
    qreal at = 0;
    QString text;
    bool measured = false; ///< set in the measured size, 22 bold, not 16
};

/// One judged figure against its limits, all positions as fractions 0 to 1 of the axis (left to right); kAbsent where there is none.
/// Positions past an end are drawn at that end.
struct LimitLine {
    qreal lowLimit = kAbsent;   ///< hatched from the left end up to here, ticked
    qreal highLimit = kAbsent;  ///< hatched from here to the right end, ticked
    QList<qreal> ticks;         ///< further ticks
    qreal value = kAbsent;
    qreal spreadLow = kAbsent;  ///< the value with its uncertainty
    qreal spreadHigh = kAbsent;
    view::Mark mark = view::Mark::CannotTell; ///< disc (pass, clear), diamond (fail, too close), else open ring
    bool running = false;       ///< a time that runs: a bar from the left end to the value, hatched from there to the low limit
    QList<LimitLabel> labels;
};

/// Fonts for the two kinds of label.
struct LimitLineFonts {
    QFont label;
    QFont measured;
};

/// Draws `line` from (0,0) to `width` logical pixels: axis 14 below the top, hatch 12 high, ticks 24 high, value line 4.5 with caps
/// 14 high, a mark with a 2.5 paper ring; the hatch is cleared behind the value line and ticks are drawn over it.
void drawLimitLine(QPainter& painter, const LimitLine& line, qreal width, const InkSet& inks, const LimitLineFonts& fonts);

/// Left edges for labels of given widths, centred on `centres` as far as they neither overlap nor leave 0 to `width`.
/// @param centres ascending. @param gap least distance between two labels.
QList<qreal> placeLabels(const QList<qreal>& centres, const QList<qreal>& widths, qreal gap, qreal width);

/// The height that drawLimitLine uses: 28, or more where labels stand below.
qreal limitLineHeight(const LimitLine& line, const LimitLineFonts& fonts);

} // namespace groundcount::paint
