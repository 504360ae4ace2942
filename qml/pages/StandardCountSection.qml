import QtQuick
import Groundcount

// One of the two standard counts: its figure against its limits, the expected spread, the sets before it.
Column {
    id: root

    required property string title
    property string figure: ""
    property string text: ""
    property string spread: ""
    property limitFigure line
    property countPlot plot

    spacing: Theme.gap1

    Rule {
        width: parent.width
    }
    Item {
        id: top
        // Large text: the deviation stands below the figure.
        readonly property real beside: width - name.implicitWidth - Theme.gap3
        readonly property bool below: beside < 110 * Theme.textScale
        width: parent.width
        height: below ? name.implicitHeight + side.implicitHeight : name.implicitHeight > side.implicitHeight ? name.implicitHeight : side.implicitHeight
        Row {
            id: name
            spacing: Theme.gap2
            Text {
                anchors.baseline: figureText.baseline
                text: root.title
                color: Theme.ink
                font.pixelSize: Theme.sizeRow
                font.weight: Theme.strong
                textFormat: Text.PlainText
            }
            Text {
                id: figureText
                objectName: "figureText"
                text: root.figure === "" ? "–" : root.figure
                color: Theme.ink
                font.pixelSize: Theme.sizeTitle
                font.weight: Theme.deciding
                textFormat: Text.PlainText
            }
        }
        Body {
            id: side
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            width: top.below ? top.width : top.beside
            horizontalAlignment: top.below ? Text.AlignLeft : Text.AlignRight
            color: Theme.ink2
            text: root.text
        }
    }
    LimitLine {
        width: parent.width
        visible: root.figure !== "" && root.line.labels.length > 0
        lowLimit: root.line.lowLimit
        highLimit: root.line.highLimit
        value: root.line.value
        mark: root.line.mark
        labels: root.line.labels // qmllint disable type
        labelAt: root.line.labelAt
        Accessible.name: root.title + " " + root.figure + ", " + root.text
    }
    Body {
        width: parent.width
        visible: root.figure !== "" && root.spread !== ""
        color: Theme.ink2
        text: root.spread
    }
    CountChart {
        objectName: "countChart"
        width: parent.width
        visible: root.plot.sets > 0
        plot: root.plot
        Accessible.name: root.title + ", " + root.plot.spoken
    }
}
