pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// A result unfolded. `rows` is a model with the roles name, formula, numbers, value and source (all strings).
Column {
    id: root

    property alias rows: lines.model

    objectName: "arithmeticList"
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Arithmetic")

    Repeater {
        id: lines

        Column {
            id: line

            required property string name
            required property string formula
            required property string numbers
            required property string value
            required property string source

            width: root.width
            topPadding: Theme.gap2
            spacing: 2
            Accessible.role: Accessible.ListItem
            Accessible.name: name + ": " + formula + ", " + numbers + " = " + value + ". " + source

            Item {
                width: parent.width
                height: Theme.lineMeasured
                Text {
                    anchors.left: parent.left
                    anchors.right: valueText.left
                    anchors.rightMargin: Theme.gap2
                    anchors.baseline: valueText.baseline
                    text: line.name
                    color: Theme.ink
                    font.pixelSize: Theme.sizeBody
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                    elide: Text.ElideRight
                }
                Text {
                    id: valueText
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    text: line.value
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                }
            }
            Body {
                width: parent.width
                visible: text !== ""
                text: line.formula
            }
            Body {
                width: parent.width
                visible: text !== ""
                text: line.numbers
            }
            Body {
                width: parent.width
                visible: text !== ""
                color: Theme.ink2
                text: line.source
            }
            Item {
                width: parent.width
                height: Theme.gap2
            }
            Hair {
                width: parent.width
            }
        }
    }
}
