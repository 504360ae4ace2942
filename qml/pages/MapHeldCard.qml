import QtQuick
import Groundcount

// A place that was held on the map: what can be done there.
Rectangle {
    id: root

    required property MapView page

    objectName: "heldCard"
    visible: page.isHeld
    height: visible ? column.implicitHeight + Theme.gap4 : 0
    color: Theme.paper

    Rule {
        width: parent.width
    }
    Column {
        id: column
        x: Theme.margin
        y: Theme.gap2
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap2
        PageHead {
            objectName: "heldHead"
            width: parent.width
            title: root.page.touchedText === "" ? qsTr("This place") : root.page.touchedText
            link: qsTr("Close")
            onLinkActivated: root.page.letGo()
        }
        Row {
            width: parent.width
            spacing: Theme.gap3
            SecondaryButton {
                objectName: "heldObstacle"
                width: (parent.width - Theme.gap3) / 2
                text: qsTr("Place an obstacle")
                onClicked: {
                    Desk.obstacle.openAt(root.page.heldNorth, root.page.heldEast, root.page.heldUncertaintyMetres, root.page.touchedText);
                    root.page.letGo();
                }
            }
            SecondaryButton {
                objectName: "heldTest"
                width: (parent.width - Theme.gap3) / 2
                text: qsTr("Start a test here")
                onClicked: {
                    Desk.startAtPoint(root.page.heldNorth, root.page.heldEast);
                    root.page.letGo();
                }
            }
        }
    }
}
