import QtQuick
import Groundcount

// Symbol, title over second line, figure over a word at the right margin.
Pressable {
    id: root

    property int mark: Mark.Nothing
    property bool symbolColumn: true
    property string lead: ""
    property string title: ""
    property string second: ""
    property string figure: ""
    property string unit: ""
    property string word: ""
    property int wordMark: Mark.Nothing
    property bool wordStrong: wordMark !== Mark.Nothing
    property bool hasBearing: false
    property real bearing: 0
    property bool chevron: false
    property bool chosen: false
    property bool dense: false
    property bool ruled: true

    objectName: "listRow"
    readonly property real least: (dense ? Theme.denseRowHeight : Theme.rowHeight) * Theme.textScale
    readonly property real content: (words.implicitHeight > side.implicitHeight ? words.implicitHeight : side.implicitHeight) + Theme.gap2
    implicitHeight: content > least ? content : least
    groundRadius: 0
    ground: chosen ? Theme.well : "transparent"
    Accessible.role: Accessible.ListItem
    Accessible.name: lead + title + ", " + second + ", " + figure + " " + unit + " " + word

    StateInk {
        id: wordInk
        mark: root.wordMark
        plain: Theme.ink2
    }
    Rectangle {
        visible: root.chosen
        x: -Theme.margin
        width: Theme.barWidth
        height: parent.height
        color: Theme.ink
    }
    Item {
        anchors.fill: parent
        StateSymbol {
            id: symbol
            visible: root.mark !== Mark.Nothing
            mark: root.mark
            anchors.verticalCenter: parent.verticalCenter
            width: 24
            height: 24
        }
        Column {
            id: words
            anchors.left: parent.left
            anchors.leftMargin: root.symbolColumn ? Theme.iconColumn : 0
            anchors.right: root.hasBearing ? arrow.left : side.left
            anchors.rightMargin: Theme.gap2
            anchors.verticalCenter: parent.verticalCenter
            // The title follows the number, or stands below it where both do not fit beside each other.
            Flow {
                width: parent.width
                Text {
                    text: root.lead
                    visible: text !== ""
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                }
                Text {
                    id: titleText
                    visible: text !== ""
                    width: titleFit.given
                    TextFit {
                        id: titleFit
                        shown: titleText
                        most: words.width
                    }
                    text: root.title
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.body
                    textFormat: Text.PlainText
                    wrapMode: Text.WordWrap
                }
            }
            Body {
                visible: root.second !== ""
                width: parent.width
                color: Theme.ink2
                text: root.second
            }
        }
        Icon {
            id: arrow
            visible: root.hasBearing
            glyph: Glyph.Bearing
            bearing: root.bearing
            width: 24
            height: 24
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: 86 * Theme.textScale
        }
        Column {
            id: side
            anchors.right: root.chevron ? chevronSign.left : parent.right
            anchors.rightMargin: root.chevron ? Theme.gap2 : 0
            anchors.verticalCenter: parent.verticalCenter
            Row {
                anchors.right: parent.right
                visible: root.figure !== ""
                spacing: root.unit === "" ? 0 : Theme.gap1
                Text {
                    id: figureText
                    text: root.figure
                    color: Theme.ink
                    font.pixelSize: Theme.sizeMeasured
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                }
                UnitMark {
                    anchors.baseline: figureText.baseline
                    text: root.unit
                }
            }
            Text {
                id: wordText
                anchors.right: parent.right
                visible: text !== ""
                width: wordFit.given
                TextFit {
                    id: wordFit
                    shown: wordText
                    most: root.width * 0.43
                }
                horizontalAlignment: Text.AlignRight
                wrapMode: Text.WordWrap
                text: root.word
                color: wordInk.color
                font.pixelSize: Theme.sizeBody
                font.weight: root.wordStrong ? Theme.strong : Theme.body
                textFormat: Text.PlainText
            }
        }
        Icon {
            id: chevronSign
            visible: root.chevron
            glyph: Glyph.Right
            width: 22
            height: 22
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
        }
        Hair {
            visible: root.ruled
            width: parent.width
            anchors.bottom: parent.bottom
        }
    }
}
