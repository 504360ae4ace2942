pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Rows of a list whose words may be long: title over second line, both wrapped, figure and unit or a word at the right.
Column {
    id: root

    required property RowList rows
    property bool open: true
    property bool symbolColumn: false
    signal picked(string rowId)

    objectName: "wrapColumn"

    Repeater {
        model: root.rows
        delegate: Pressable {
            id: line

            required property int index
            required property string rowId
            required property string title
            required property string second
            required property string figure
            required property string unit
            required property string word
            required property int mark
            required property int wordMark
            required property bool chevron

            objectName: "row" + index
            width: root.width
            // A long figure stands below its words instead of pressing them.
            readonly property bool below: figureLine.implicitWidth > width * 0.45
            readonly property real content: below ? words.implicitHeight + side.implicitHeight
                : words.implicitHeight > side.implicitHeight ? words.implicitHeight : side.implicitHeight
            height: content + Theme.gap3 > Theme.rowHeight ? content + Theme.gap3 : Theme.rowHeight
            enabled: root.open
            groundRadius: 0
            text: title
            Accessible.role: Accessible.ListItem
            Accessible.name: title + ", " + second + ", " + figure + " " + unit + " " + word
            onClicked: root.picked(line.rowId)

            contentItem: Item {
                StateSymbol {
                    id: symbol
                    visible: line.mark !== Mark.Nothing
                    mark: line.mark
                    anchors.verticalCenter: parent.verticalCenter
                    width: 24
                    height: 24
                }
                Column {
                    id: words
                    anchors.left: parent.left
                    anchors.leftMargin: symbol.visible || root.symbolColumn ? Theme.iconColumn : 0
                    anchors.right: line.below ? parent.right : side.left
                    anchors.rightMargin: line.below ? 0 : Theme.gap2
                    anchors.verticalCenter: parent.verticalCenter
                    anchors.verticalCenterOffset: line.below ? -side.implicitHeight / 2 : 0
                    Text {
                        width: parent.width
                        text: line.title
                        color: Theme.ink
                        font.pixelSize: Theme.sizeRow
                        font.weight: Theme.body
                        textFormat: Text.PlainText
                        wrapMode: Text.WordWrap
                    }
                    Body {
                        width: parent.width
                        visible: line.second !== ""
                        color: Theme.ink2
                        text: line.second
                    }
                }
                StateInk {
                    id: wordInk
                    mark: line.wordMark
                    plain: Theme.ink2
                }
                Column {
                    id: side
                    anchors.right: sign.visible ? sign.left : parent.right
                    anchors.rightMargin: sign.visible ? Theme.gap2 : 0
                    anchors.verticalCenter: parent.verticalCenter
                    anchors.verticalCenterOffset: line.below ? words.implicitHeight / 2 : 0
                    Row {
                        id: figureLine
                        anchors.right: parent.right
                        visible: line.figure !== ""
                        spacing: Theme.gap1
                        Text {
                            id: figureText
                            text: line.figure
                            color: Theme.ink
                            font.pixelSize: line.figure.length > 6 ? Theme.sizeRow : Theme.sizeMeasured
                            font.weight: Theme.strong
                            textFormat: Text.PlainText
                        }
                        UnitMark {
                            visible: line.unit !== ""
                            anchors.baseline: figureText.baseline
                            text: line.unit
                        }
                    }
                    Text {
                        id: wordText
                        anchors.right: parent.right
                        visible: line.word !== ""
                        width: wordFit.given
                        TextFit {
                            id: wordFit
                            shown: wordText
                            most: line.below ? line.width : line.width * 0.45
                        }
                        horizontalAlignment: Text.AlignRight
                        text: line.word
                        color: wordInk.color
                        font.pixelSize: Theme.sizeBody
                        font.weight: line.wordMark === Mark.Nothing ? Theme.body : Theme.strong
                        textFormat: Text.PlainText
                        wrapMode: Text.WordWrap
                    }
                }
                Icon {
                    id: sign
                    visible: line.chevron
                    glyph: Glyph.Right
                    width: 22
                    height: 22
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                }
                Hair {
                    visible: line.index + 1 < root.rows.count
                    width: parent.width
                    anchors.bottom: parent.bottom
                }
            }
        }
    }
}
