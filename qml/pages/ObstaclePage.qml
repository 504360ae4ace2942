pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// A wall, structure, pipe, vehicle or gauge is placed on the map.
FocusScope {
    id: root

    readonly property ObstacleSheet obstacle: Desk.obstacle
    readonly property bool compact: height < 700

    objectName: "obstaclePage"
    Keys.onEscapePressed: root.obstacle.close()

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    Item {
        anchors.fill: parent
        visible: root.obstacle.entry === null

        PageHead {
            id: head
            objectName: "obstacleHead"
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            title: qsTr("Obstacle")
            context: root.obstacle.placeText
            hasBack: true
            onBack: root.obstacle.close()
        }
        Flickable {
            id: scroll
            anchors.top: head.bottom
            anchors.bottom: foot.top
            width: parent.width
            contentWidth: width
            contentHeight: column.implicitHeight + Theme.gap4
            clip: true
            boundsBehavior: Flickable.StopAtBounds

            Column {
                id: column
                x: Theme.margin
                width: scroll.width - 2 * Theme.margin
                spacing: Theme.gap2

                SectionHead {
                    width: parent.width
                    title: qsTr("What it is")
                }
                ChoiceBar {
                    objectName: "obstacleKind"
                    width: parent.width
                    words: root.obstacle.kindWords // qmllint disable type
                    chosen: root.obstacle.kindIndex
                    name: qsTr("What it is")
                    onPicked: index => root.obstacle.pickKind(index)
                }
                SectionHead {
                    width: parent.width
                    visible: root.obstacle.byTape
                    title: qsTr("Where, from the test")
                }
                SecondaryButton {
                    objectName: "obstacleDistance"
                    width: parent.width
                    visible: root.obstacle.byTape
                    text: root.obstacle.distanceText
                    onClicked: root.obstacle.typeDistance()
                }
                ChoiceBar {
                    objectName: "obstacleDirection"
                    width: parent.width
                    visible: root.obstacle.byTape
                    words: root.obstacle.directionWords // qmllint disable type
                    chosen: root.obstacle.directionIndex
                    name: qsTr("Direction")
                    onPicked: index => root.obstacle.pickDirection(index)
                }
                ReasonField {
                    objectName: "obstacleName"
                    width: parent.width
                    label: qsTr("Name, if it has one")
                    text: root.obstacle.name
                    onEdited: text => root.obstacle.name = text
                }
                CautionLine {
                    objectName: "obstacleTrouble"
                    width: parent.width
                    text: root.obstacle.trouble
                }
            }
        }
        ActFoot {
            id: foot
            anchors.bottom: parent.bottom
            width: parent.width

            PrimaryButton {
                objectName: "sealObstacle"
                width: parent.width
                visible: root.obstacle.notYet === ""
                compact: root.compact
                text: qsTr("Seal the obstacle")
                onClicked: root.obstacle.seal()
            }
            NotYetButton {
                objectName: "sealObstacleNotYet"
                width: parent.width
                visible: root.obstacle.notYet !== ""
                text: root.obstacle.notYet
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.obstacle.entry !== null
        visible: active
        focus: active
        sourceComponent: EntryPane {
            entry: root.obstacle.entry
            compact: root.compact
            onBack: root.obstacle.closeEntry()
        }
    }
}
