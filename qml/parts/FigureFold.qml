import QtQuick
import Groundcount

// A figure of the statistics: name over its words, figure at the right; touched, it unfolds to its arithmetic.
Column {
    id: root

    required property int index
    required property string rowId
    required property string title
    required property string second
    required property string figure
    required property string unit
    required property bool chevron
    required property string unfolded
    required property QtObject arithmetic
    readonly property bool open: unfolded === rowId
    signal picked(string rowId)

    Pressable {
        objectName: "figure_" + root.index
        width: root.width
        height: words.implicitHeight + Theme.gap4 > Theme.rowHeight ? words.implicitHeight + Theme.gap4 : Theme.rowHeight
        enabled: root.chevron
        groundRadius: 0
        text: root.title + ", " + root.second + ", " + root.figure + " " + root.unit
        Accessible.description: root.open ? qsTr("Fold the arithmetic") : qsTr("Show the arithmetic")
        onClicked: root.picked(root.rowId)
        contentItem: Item {
            Column {
                id: words
                anchors.left: parent.left
                anchors.right: value.left
                anchors.rightMargin: Theme.gap2
                anchors.verticalCenter: parent.verticalCenter
                Text {
                    width: parent.width
                    text: root.title
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                    wrapMode: Text.WordWrap
                }
                Body {
                    width: parent.width
                    color: Theme.ink2
                    text: root.second
                }
            }
            Text {
                id: value
                anchors.right: unitText.left
                anchors.rightMargin: unitText.text === "" ? 0 : Theme.gap1
                anchors.verticalCenter: parent.verticalCenter
                text: root.figure
                color: Theme.ink
                font.pixelSize: Theme.sizeMeasured
                font.weight: Theme.deciding
                textFormat: Text.PlainText
            }
            UnitMark {
                id: unitText
                anchors.right: sign.left
                anchors.rightMargin: Theme.gap2
                anchors.baseline: value.baseline
                text: root.unit
            }
            Icon {
                id: sign
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                width: 24
                height: 24
                visible: root.chevron
                glyph: root.open ? Glyph.Up : Glyph.Down
            }
        }
    }
    Loader {
        width: root.width
        active: root.open
        visible: active
        sourceComponent: ArithmeticList {
            // qmllint disable unqualified
            objectName: "figureArithmetic"
            rows: root.arithmetic
            // qmllint enable unqualified
        }
    }
    Hair {
        width: root.width
    }
}
