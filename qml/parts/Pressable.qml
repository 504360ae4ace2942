import QtQuick
import Groundcount

// What every control stands on: by finger, mouse, Space, Enter or an assistive press, one `clicked`.
PressItem {
    id: root

    property color ground: "transparent"
    property color pressedGround: Theme.well
    property real groundRadius: Theme.radius
    property real edgeWidth: 0

    objectName: "pressable"
    implicitWidth: implicitContentWidth > Theme.target ? implicitContentWidth : Theme.target
    implicitHeight: implicitContentHeight > Theme.target ? implicitContentHeight : Theme.target
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.focusable: true
    Accessible.onPressAction: if (root.enabled) root.clicked()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    Rectangle {
        z: -1
        anchors.fill: parent
        color: root.pressed ? root.pressedGround : root.ground
        radius: root.groundRadius
        border.width: root.edgeWidth
        border.color: Theme.ink

        // Keyboard focus: a second frame inside, ink, so that it never reads as a choice.
        Rectangle {
            anchors.fill: parent
            anchors.margins: root.edgeWidth
            visible: root.visualFocus
            color: "transparent"
            radius: root.groundRadius
            border.width: Theme.tickWidth
            border.color: Theme.ink
        }
    }
}
