import QtQuick
import Groundcount

// One standard count against its limits: label, figure, limit line, deviation of its limit. Without a figure: a blank to fill in.
Item {
    id: root

    required property string label
    required property string figure
    required property real lowLimit
    required property real highLimit
    required property real value
    required property int mark
    required property string deviation
    readonly property bool blank: figure === ""

    objectName: "countLine_" + label
    // Large text on a narrow phone: the deviation stands below its line.
    readonly property bool below: !blank && 148 * Theme.textScale + 70 + deviationText.implicitWidth > width
    readonly property real lineHeight: (blank ? 41 : 32) * Theme.textScale
    implicitHeight: lineHeight + (below ? Theme.lineBody : 0)
    Accessible.role: Accessible.StaticText
    Accessible.name: label + " " + figure + " " + deviation

    Caption {
        id: labelText
        height: root.lineHeight
        verticalAlignment: Text.AlignVCenter
        text: root.label
        Accessible.ignored: true
    }
    Text {
        id: figureText
        anchors.right: parent.left
        anchors.rightMargin: -134 * Theme.textScale
        height: root.lineHeight
        verticalAlignment: Text.AlignVCenter
        text: root.figure
        color: Theme.ink
        font.pixelSize: Theme.sizeMeasured
        font.weight: Theme.strong
        textFormat: Text.PlainText
        Accessible.ignored: true
    }
    DashItem {
        visible: root.blank
        inks: Theme.inks
        shape: DashItem.Foot
        x: 76 * Theme.textScale
        width: 86
        height: parent.height / 2 + 12
    }
    LimitLine {
        visible: !root.blank
        anchors.left: parent.left
        anchors.leftMargin: 148 * Theme.textScale
        anchors.right: root.below ? parent.right : deviationText.left
        anchors.verticalCenter: labelText.verticalCenter
        lowLimit: root.lowLimit
        highLimit: root.highLimit
        value: root.value
        mark: root.mark
        Accessible.ignored: true
    }
    Caption {
        id: deviationText
        anchors.right: parent.right
        y: root.below ? root.lineHeight : 0
        height: root.below ? Theme.lineBody : root.lineHeight
        verticalAlignment: Text.AlignVCenter
        text: root.deviation
        Accessible.ignored: true
    }
}
