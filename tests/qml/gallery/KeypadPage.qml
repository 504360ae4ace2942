import QtQuick
import Groundcount

Rectangle {
    id: root
    color: Theme.paper

    Column {
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap2
        PageHead { width: parent.width; title: "Reading 2"; context: "turned 90°"; hasBack: true }
        NumberField { id: wet; objectName: "wet"; width: parent.width; label: "Wet density"; unit: "lb/ft³"; text: "129.6"; focus: true; shownActive: true }
        NumberField { objectName: "moisture"; width: parent.width; label: "Moisture"; unit: "lb/ft³"; doubt: root.height > 700 ? "41 lb/ft³ of water is more than clay holds. Read it again." : "" }
        LimitLine {
            visible: root.height > 700
            width: parent.width
            highLimit: 0.6; value: 0.12; mark: Mark.Pass
            labels: ["3.0"]; labelAt: [0.6]
            Accessible.name: "0.6 lb/ft³ apart, 3.0 allowed"
        }
    }
    Keypad {
        anchors.bottom: parent.bottom
        width: parent.width
        compact: root.height < 700
        into: wet.input
        nextText: "Next: moisture"
    }
}
