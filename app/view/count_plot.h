#pragma once

#include <QList>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace groundcount::view {

/// Standard counts in order of time with the limits each was judged by, ready to draw: every position is a fraction 0 to 1,
/// left to right and bottom to top.
class CountPlot {
    Q_GADGET
    QML_VALUE_TYPE(countPlot)
    Q_PROPERTY(int sets READ sets)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QList<qreal> value, base, lower, upper;  ///< one per set; NaN where a set had nothing to compare with
    QList<int> marks;                        ///< view::Mark
    QList<int> replacedBy;                   ///< index of the set that took the place of a refused one, else -1
    int large = -1;                          ///< index of today's set
    QStringList yLabels, xLabels;
    QList<qreal> yAt, xAt;
    QString spoken;                          ///< the picture in words

    int sets() const { return static_cast<int>(value.size()); }
    bool operator==(const CountPlot& other) const;
};

/// One set as the plot takes it, counts.
struct PlottedCount {
    QString day;  ///< "Jun 9"
    double value = 0, base = 0, lower = 0, upper = 0;
    bool accepted = false;
    bool isToday = false;
};

/// Lays sets out: limits with room outside, four or five round figures up the side, as many days as fit along the foot.
CountPlot plotOf(const std::vector<PlottedCount>& sets);

}  // namespace groundcount::view
