import QtQuick
import Groundcount

// The four places and the way between them. A place is loaded when it is first asked for and kept from then on. A test's
// sheet lies over the place on a phone; wide, it takes the place of the day's sheet beside the map. Every page is named by its
// file, so that the first frame does not wait for the types of a page that is not shown.
FocusScope {
    id: root

    property bool wide: false
    readonly property string place: Desk.place
    readonly property bool beside: wide && (place === "day" || Desk.testOpen)
    readonly property bool settled: day.settled && map.settled && lots.settled && kit.settled && sheet.settled

    objectName: "shell"

    Loader {
        id: rail
        active: root.wide
        visible: active
        height: parent.height
        width: active ? implicitWidth : 0
        sourceComponent: SideRail {
            place: Desk.place
            onChosen: place => Desk.place = place
        }
    }
    Item {
        id: stage
        anchors.left: rail.right
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.topMargin: Theme.insetTop
        anchors.bottom: bar.top
        visible: Desk.paper === "" || Session.reading

        Item {
            id: left
            width: root.beside ? 412 : parent.width
            height: parent.height
            PlaceLoader {
                id: day
                objectName: "dayPlace"
                shown: root.place === "day" && !Desk.testOpen
                held: Session.reading
                page: "../pages/DayPage.qml"
            }
            PlaceLoader {
                id: lots
                objectName: "lotsPlace"
                shown: root.place === "lots" && !Desk.testOpen
                held: Session.reading
                page: "../pages/LotsPage.qml"
            }
            PlaceLoader {
                id: kit
                objectName: "kitPlace"
                shown: root.place === "kit" && !Desk.testOpen
                held: Session.reading
                page: "../pages/KitPage.qml"
            }
            PlaceLoader {
                id: sheet
                objectName: "testPlace"
                shown: Desk.testOpen
                held: Session.reading
                page: "../pages/TestSheetPage.qml"
            }
            Loader {
                active: Session.reading && (day.shown || lots.shown || kit.shown || sheet.shown)
                visible: active
                anchors.centerIn: parent
                width: parent.width - 2 * Theme.margin
                sourceComponent: Body {
                    objectName: "readingTests"
                    horizontalAlignment: Text.AlignHCenter
                    text: qsTr("The tests of this book are being read. Its map can be used meanwhile.")
                }
            }
        }
        Rectangle {
            visible: root.beside
            x: left.width
            width: Theme.hairWidth
            height: parent.height
            color: Theme.ink
        }
        Item {
            x: root.beside ? left.width + 1 : 0
            width: parent.width - x
            height: parent.height
            PlaceLoader {
                id: map
                objectName: "mapPlace"
                shown: root.beside || (root.place === "map" && !Desk.testOpen)
                page: "../pages/MapPage.qml"
            }
        }
    }
    Loader {
        anchors.fill: stage
        active: Desk.screenOpen
        visible: active
        focus: active
        source: "../pages/ScreenPage.qml"
    }
    Loader {
        x: rail.visible ? rail.width : 0
        y: Theme.insetTop
        width: root.beside ? left.width : parent.width - x
        height: parent.height - y
        active: Desk.obstacle.isOpen
        visible: active
        focus: active
        source: "../pages/ObstaclePage.qml"
    }
    Loader {
        anchors.fill: parent
        z: 1
        active: Desk.paper !== "" && !Session.reading
        visible: active
        focus: active
        source: "../pages/PaperPage.qml"
    }
    BottomBar {
        id: bar
        visible: !root.wide && !Desk.testOpen && (Desk.paper === "" || Session.reading)
        anchors.bottom: parent.bottom
        width: parent.width
        height: visible ? implicitHeight : 0
        place: root.place
        onChosen: place => Desk.place = place
    }
}
