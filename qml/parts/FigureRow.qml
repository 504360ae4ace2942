import QtQuick
import Groundcount

// Label at the left, a deciding figure at the right, on one baseline.
Item {
    id: root

    required property string label
    required property string figure
    property string unit: ""
    property string uncertainty: ""
    property real figureSize: Theme.sizeDeciding
    property real unitSize: Theme.sizeMeasured

    objectName: "figureRow"
    implicitHeight: figureSize
    Accessible.role: Accessible.StaticText
    Accessible.name: label + " " + figure + " " + unit + " " + uncertainty

    Figure {
        id: right
        anchors.right: parent.right
        figure: root.figure
        unit: root.unit
        uncertainty: root.uncertainty
        figureSize: root.figureSize
        unitSize: root.unitSize
        Accessible.ignored: true
    }
    Caption {
        anchors.left: parent.left
        anchors.right: right.left
        anchors.rightMargin: Theme.gap1
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.figureSize * 0.195 - Theme.sizeBody * 0.195
        text: root.label
        Accessible.ignored: true
    }
}
