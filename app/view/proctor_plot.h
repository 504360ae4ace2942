#pragma once

#include "method/error.h"
#include "method/soil/peak.h"
#include "method/accept/evaluation_rules.h"

#include <QList>
#include <QObject>
#include <QPointF>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

namespace groundcount::view {

/// A moisture-density test ready to draw: every position is a fraction 0 to 1, left to right and bottom to top.
class ProctorPlot {
    Q_GADGET
    QML_VALUE_TYPE(proctorPlot)
    Q_PROPERTY(bool there READ isThere)
    Q_PROPERTY(QString spoken MEMBER spoken)

public:
    QList<QPointF> points, curve, zeroAirVoids;
    std::optional<QPointF> peak;
    QList<QPointF> tests;      ///< field tests
    QList<int> testMarks;      ///< view::Mark of each
    bool hasWindow = false;    ///< the acceptance window of the lots that use it
    double windowLeft = 0, windowRight = 1, windowFoot = 0;
    QString windowLeftText, windowRightText, windowFootText;
    QStringList xLabels, yLabels;
    QList<qreal> xAt, yAt;
    QString yTitle, xTitle, voidsText, voidsText2;
    QString spoken;

    bool isThere() const { return !points.isEmpty() || peak.has_value(); }
    bool operator==(const ProctorPlot&) const = default;
};

/// What is laid out, densities in `unit`.
struct ProctorDrawing {
    std::vector<method::CompactionPoint> points;
    std::optional<method::Peak> peak;
    std::optional<double> solidsGravity;
    DensityOfWater water;
    method::DensityUnit unit = method::DensityUnit::LbPerFt3;
    struct Test {
        double content = 0, dry = 0;
        int mark = 0;
    };
    std::vector<Test> tests;
    std::optional<double> leastPercent, windowLowPoints, windowHighPoints;  ///< of the lots that use it
};

ProctorPlot plotOf(const ProctorDrawing& drawing);

}  // namespace groundcount::view
