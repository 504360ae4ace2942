import QtQuick
import Groundcount

// Results of a lot in the order of testing: requirement, control limits, mean, moving mean.
LotChartItem {
    inks: Theme.inks
    objectName: "lotChart"
    Accessible.role: Accessible.Graphic
    Accessible.name: plot.spoken
}
