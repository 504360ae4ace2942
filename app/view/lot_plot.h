#pragma once

#include "book/lot_chart.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace groundcount::view {

/// A lot's plot for a page, with its title and the picture in words.
class LotPlot {
    Q_GADGET
    QML_VALUE_TYPE(lotPlot)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    book::LotChart chart;
    QString title, spoken;
    int revision = 0;  ///< counts refreshes: charts are compared by it, not point by point

    bool operator==(const LotPlot& other) const { return title == other.title && revision == other.revision; }
};

/// Tests along a line for a page.
class ProfilePlot {
    Q_GADGET
    QML_VALUE_TYPE(profilePlot)
    Q_PROPERTY(QString spoken MEMBER spoken)
    Q_PROPERTY(bool there READ isThere)
    Q_PROPERTY(int lifts READ lifts)

public:
    book::LineProfile profile;
    QString spoken;
    int revision = 0;

    bool isThere() const { return !profile.lots.empty(); }
    int lifts() const { return profile.highest - profile.lowest + 1; }
    bool operator==(const ProfilePlot& other) const { return spoken == other.spoken && revision == other.revision; }
};

}  // namespace groundcount::view
