import QtQuick
import Groundcount

// A gauge's standard counts in order of time with the limits each was judged by.
CountChartItem {
    inks: Theme.inks
    objectName: "countChart"
    Accessible.role: Accessible.Graphic
}
