import QtQuick
import Groundcount

// A sealed record: what, below it who, when and why on as many lines as it needs, its short hash at the right.
Pressable {
    id: root

    required property int index
    required property string title
    required property string second
    required property string word
    property bool pressable: true

    readonly property real textHeight: titleText.implicitHeight + secondText.implicitHeight + Theme.gap4
    implicitHeight: textHeight > Theme.rowHeight ? textHeight : Theme.rowHeight
    groundRadius: 0
    text: root.title
    enabled: root.pressable
    Accessible.role: Accessible.ListItem
    Accessible.description: root.second

    Item {
        anchors.fill: parent
        Text {
            id: titleText
            y: Theme.gap2
            width: parent.width - hash.width - Theme.gap2
            text: root.title
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.strong
            textFormat: Text.PlainText
            wrapMode: Text.WordWrap
        }
        UnitMark {
            id: hash
            anchors.right: parent.right
            anchors.baseline: titleText.baseline
            text: root.word
        }
        Body {
            id: secondText
            anchors.top: titleText.bottom
            width: parent.width
            color: Theme.ink2
            text: root.second
        }
        Hair {
            anchors.bottom: parent.bottom
            width: parent.width
        }
    }
}
