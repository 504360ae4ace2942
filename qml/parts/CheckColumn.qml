pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Things to be seen before an act: one row each, touched when seen. `rows` is a RowList whose word says what was seen.
Column {
    id: root

    required property RowList rows
    property bool open: true
    signal picked(string rowId)

    objectName: "checkColumn"

    Repeater {
        model: root.rows
        delegate: Pressable {
            id: line

            required property int index
            required property string rowId
            required property string title
            required property string second
            required property string word
            required property int mark
            readonly property bool seen: mark === Mark.Pass

            objectName: "check_" + rowId
            width: root.width
            height: words.implicitHeight + Theme.gap3 > Theme.rowHeight ? words.implicitHeight + Theme.gap3 : Theme.rowHeight
            enabled: root.open
            groundRadius: 0
            text: title
            Accessible.role: Accessible.CheckBox
            Accessible.checkable: true
            Accessible.checked: seen
            Accessible.name: title + ", " + second + ", " + word
            onClicked: root.picked(line.rowId)

            contentItem: Item {
                Column {
                    id: words
                    anchors.left: parent.left
                    anchors.right: side.left
                    anchors.rightMargin: Theme.gap2
                    anchors.verticalCenter: parent.verticalCenter
                    Text {
                        width: parent.width
                        text: line.title
                        color: Theme.ink
                        font.pixelSize: Theme.sizeRow
                        font.weight: line.seen ? Theme.body : Theme.strong
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
                Text {
                    id: side
                    anchors.right: box.left
                    anchors.rightMargin: Theme.gap2
                    anchors.verticalCenter: parent.verticalCenter
                    text: line.word
                    color: Theme.ink
                    font.pixelSize: Theme.sizeBody
                    font.weight: line.seen ? Theme.strong : Theme.body
                    textFormat: Text.PlainText
                }
                Rectangle {
                    id: box
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    width: 28
                    height: 28
                    radius: Theme.fieldRadius
                    color: line.seen ? Theme.ink : Theme.paper
                    border.width: Theme.ruleWidth
                    border.color: Theme.ink
                    Icon {
                        anchors.centerIn: parent
                        visible: line.seen
                        glyph: Glyph.Check
                        colour: Theme.paper
                        width: 22
                        height: 22
                    }
                }
                Hair {
                    width: parent.width
                    anchors.bottom: parent.bottom
                }
            }
        }
    }
}
