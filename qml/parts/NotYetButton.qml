import QtQuick
import Groundcount

// What cannot be done yet, with the reason as its text. It can be asked why, so it can be focused and pressed.
Pressable {
    id: root

    property bool tall: true
    property alias reason: root.text

    objectName: "notYetButton"
    property bool compact: false
    readonly property real least: !tall ? 56 : compact ? 64 : 68
    implicitHeight: implicitContentHeight + Theme.gap4 > least ? implicitContentHeight + Theme.gap4 : least
    leftPadding: Theme.gap2
    rightPadding: Theme.gap2
    Accessible.description: qsTr("Not possible yet")

    DashItem {
        anchors.fill: parent
        inks: Theme.inks
        shape: DashItem.Frame
    }
    contentItem: Text {
        text: root.text
        color: Theme.ink2
        font.pixelSize: root.tall ? Theme.sizeRow : Theme.sizeBody
        font.weight: Theme.body
        textFormat: Text.PlainText
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.WordWrap
    }
}
