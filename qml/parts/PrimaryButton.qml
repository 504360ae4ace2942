import QtQuick
import Groundcount

// The one marigold thing of a page: what to do next.
Pressable {
    id: root

    property bool compact: false

    objectName: "primaryButton"
    readonly property real least: compact ? 64 : 68
    implicitHeight: implicitContentHeight + Theme.gap4 > least ? implicitContentHeight + Theme.gap4 : least
    ground: Theme.act
    edgeWidth: Theme.actEdge
    pressedGround: Theme.well
    leftPadding: Theme.gap3
    rightPadding: Theme.gap3

    contentItem: Text {
        text: root.text
        color: root.pressed ? Theme.ink : Theme.actInk
        font.pixelSize: Theme.sizeAct
        font.weight: Theme.strong
        textFormat: Text.PlainText
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.WordWrap
    }
}
