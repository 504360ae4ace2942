import QtQuick
import Groundcount

// Time left, large enough to read from outside the ring, and the line that runs towards the minimum.
Item {
    id: root

    property string caption: ""
    required property string figure
    property string asideLead: ""
    property string aside: ""
    property string aside2: ""
    property real value: NaN
    property real lowLimit: NaN
    property string limitLabel: ""

    objectName: "timerFigure"
    implicitHeight: Theme.lineBody + Theme.lineTimer + Theme.gap2 + line.implicitHeight
    Accessible.role: Accessible.StaticText
    Accessible.name: caption + " " + figure

    Caption {
        text: root.caption
        Accessible.ignored: true
    }
    Text {
        id: figureText
        y: Theme.lineBody - 6
        text: root.figure
        color: Theme.ink
        font.pixelSize: Theme.sizeTimer
        font.weight: Theme.deciding
        font.letterSpacing: Theme.tightVerdict
        textFormat: Text.PlainText
        Accessible.ignored: true
    }
    Column {
        anchors.right: parent.right
        anchors.bottom: figureText.bottom
        anchors.bottomMargin: Theme.sizeTimer * 0.17
        Text {
            anchors.right: parent.right
            text: root.asideLead
            color: Theme.ink
            font.pixelSize: Theme.sizeBody
            font.weight: Theme.strong
            textFormat: Text.PlainText
        }
        Caption {
            anchors.right: parent.right
            visible: text !== ""
            text: root.aside
        }
        Caption {
            anchors.right: parent.right
            visible: text !== ""
            text: root.aside2
        }
    }
    LimitLine {
        id: line
        objectName: "timerLine"
        anchors.bottom: parent.bottom
        width: parent.width
        running: true
        value: root.value
        lowLimit: root.lowLimit
        mark: Mark.Waiting
        labels: root.limitLabel === "" ? [] : [root.limitLabel]
        labelAt: root.limitLabel === "" ? [] : [root.lowLimit]
        Accessible.name: root.limitLabel
    }
}
