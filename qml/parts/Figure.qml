import QtQuick
import Groundcount

// Label above; figure, unit and uncertainty on one baseline.
Item {
    id: root

    property string label: ""
    required property string figure
    property string unit: ""
    property string uncertainty: ""
    property real figureSize: Theme.sizeDeciding
    property int figureWeight: Theme.deciding
    property bool toTheRight: false
    property real allowed: 0 // a wider label wraps, a spread that does not fit stands below; 0 for no bound
    readonly property bool huge: figureSize >= Theme.sizeVerdict
    property real unitSize: huge ? Theme.sizeTitle : Theme.sizeUnit
    property real uncertaintySize: huge ? Theme.sizeTitle : Theme.sizeRow

    objectName: "figure"
    implicitWidth: labelText.implicitWidth > line.implicitWidth ? labelText.implicitWidth : line.implicitWidth
    readonly property bool below: huge && uncertainty !== "" && allowed > 0 && beside > allowed
    readonly property real beside: figureText.implicitWidth + (unit === "" ? 0 : unitText.implicitWidth + Theme.gap1) + uncertaintyText.implicitWidth + Theme.gap4
    implicitHeight: (label === "" ? 0 : labelText.lineCount * Theme.lineBody) + figureSize + (below ? uncertaintyText.implicitHeight : 0)
    Accessible.role: Accessible.StaticText
    Accessible.name: label + " " + figure + " " + unit + " " + uncertainty

    Body {
        id: labelText
        visible: text !== ""
        width: labelFit.given
        TextFit {
            id: labelFit
            shown: labelText
            most: root.allowed > 0 ? root.allowed : Infinity
        }
        color: Theme.ink2
        x: root.toTheRight ? root.width - width : 0
        text: root.label
        Accessible.ignored: true
    }
    Item {
        id: line
        implicitWidth: figureText.implicitWidth + (root.unit === "" ? 0 : unitText.implicitWidth + Theme.gap1)
            + (root.uncertainty === "" || root.below ? 0 : uncertaintyText.implicitWidth + uncertaintyText.anchors.leftMargin)
        width: implicitWidth
        height: root.figureSize
        x: root.toTheRight ? root.width - width : 0
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.below ? uncertaintyText.implicitHeight : 0
        Text {
            id: figureText
            objectName: "figureText"
            text: root.figure
            color: Theme.ink
            font.pixelSize: root.figureSize
            font.weight: root.figureWeight
            font.letterSpacing: root.huge ? Theme.tightVerdict : root.figureSize >= Theme.sizeDeciding ? Theme.tightDeciding : 0
            textFormat: Text.PlainText
            Accessible.ignored: true
        }
        Text {
            id: unitText
            anchors.left: figureText.right
            anchors.leftMargin: Theme.gap1
            anchors.baseline: figureText.baseline
            text: root.unit
            color: root.unitSize > Theme.sizeUnit ? Theme.ink : Theme.ink2
            font.pixelSize: root.unitSize
            font.weight: root.unitSize > Theme.sizeUnit ? Theme.strong : Theme.body
            textFormat: Text.PlainText
            Accessible.ignored: true
        }
        Text {
            id: uncertaintyText
            visible: !root.below
            anchors.left: root.unit === "" ? figureText.right : unitText.right
            anchors.leftMargin: root.huge ? Theme.gap4 : Theme.gap2
            anchors.baseline: figureText.baseline
            text: root.uncertainty
            color: root.huge ? Theme.ink : Theme.ink2
            font.pixelSize: root.uncertaintySize
            font.weight: Theme.body
            textFormat: Text.PlainText
            Accessible.ignored: true
        }
    }
    Text {
        visible: root.below
        anchors.bottom: parent.bottom
        text: root.uncertainty
        color: Theme.ink
        font.pixelSize: root.uncertaintySize
        font.weight: Theme.body
        textFormat: Text.PlainText
        Accessible.ignored: true
    }
}
