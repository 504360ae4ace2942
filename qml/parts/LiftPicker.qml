import QtQuick
import Groundcount

// Three cells, 60 wide: lift up, the lift that is shown (higher where the text is large), lift down.
Rectangle {
    id: root

    required property string lift
    readonly property real shownHeight: shown.implicitHeight + 8 > 60 ? shown.implicitHeight + 8 : 60
    property bool canGoUp: true
    property bool canGoDown: true
    signal up
    signal down

    objectName: "liftPicker"
    width: 60
    height: 120 + shownHeight
    color: Theme.paper
    border.color: Theme.ink
    border.width: Theme.ruleWidth
    radius: Theme.radius
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Lift %1").arg(lift)

    Pressable {
        objectName: "liftUp"
        width: 60
        height: 60
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
        y: 60 + (root.shownHeight - implicitHeight) / 2
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
        y: 60
        width: parent.width
    }
    Hair {
        y: 60 + root.shownHeight
        width: parent.width
    }
    Pressable {
        objectName: "liftDown"
        y: 60 + root.shownHeight
        width: 60
        height: 60
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
