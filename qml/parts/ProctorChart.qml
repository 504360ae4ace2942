import QtQuick
import Groundcount

// A moisture-density test: curve, points, peak, zero air voids, acceptance window, field tests.
ProctorChartItem {
    inks: Theme.inks
    objectName: "proctorChart"
    Accessible.role: Accessible.Graphic
    Accessible.name: plot.spoken
}
