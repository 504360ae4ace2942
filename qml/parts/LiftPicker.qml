import QtQuick
import Groundcount

// Three cells: lift up, the lift that is shown (higher where the text is large), lift down.
Rectangle {
    id: root

    required property string lift
    readonly property real shownHeight: shown.implicitHeight + 8 > Theme.mapControl ? shown.implicitHeight + 8 : Theme.mapControl
    property bool canGoUp: true
    property bool canGoDown: true
    signal up
    signal down

    objectName: "liftPicker"
    width: Theme.mapControl
    height: 2 * Theme.mapControl + shownHeight
    color: Theme.paper
    border.color: Theme.ink
    border.width: Theme.ruleWidth
    radius: Theme.radius
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Lift %1").arg(lift)

    Pressable {
        objectName: "liftUp"
        width: Theme.mapControl
        height: Theme.mapControl
        enabled: root.canGoUp
        opacity: enabled ? 1 : 0.35
        text: qsTr("Lift above")
        onClicked: root.up()
        contentItem: Item {
            Icon {
                anchors.centerIn: parent
                glyph: Glyph.Up
            }
        }
    }
    Column {
        id: shown
        y: Theme.mapControl + (root.shownHeight - implicitHeight) / 2
        width: parent.width
        Caption {
            anchors.horizontalCenter: parent.horizontalCenter
            text: qsTr("Lift")
        }
        Text {
            anchors.horizontalCenter: parent.horizontalCenter
            text: root.lift
            color: Theme.ink
            font.pixelSize: Theme.sizeTitle
            font.weight: Theme.strong
            textFormat: Text.PlainText
        }
    }
    Hair {
        y: Theme.mapControl
        width: parent.width
    }
    Hair {
        y: Theme.mapControl + root.shownHeight
        width: parent.width
    }
    Pressable {
        objectName: "liftDown"
        y: Theme.mapControl + root.shownHeight
        width: Theme.mapControl
        height: Theme.mapControl
        enabled: root.canGoDown
        opacity: enabled ? 1 : 0.35
        text: qsTr("Lift below")
        onClicked: root.down()
        contentItem: Item {
            Icon {
                anchors.centerIn: parent
                glyph: Glyph.Down
            }
        }
    }
}
