import QtQuick
import Groundcount

// The four places and the way between them. A place is loaded when it is first asked for and kept from then on.
FocusScope {
    id: root

    property bool wide: false
    property string place: "day"
    readonly property bool settled: day.settled && map.settled && lots.settled && kit.settled
    signal chosen(string place)

    SideRail {
        id: rail
        visible: root.wide
        height: parent.height
        width: visible ? implicitWidth : 0
        place: root.place
        onChosen: place => root.chosen(place)
    }
    Item {
        id: stage
        anchors.left: rail.right
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.topMargin: Theme.insetTop
        anchors.bottom: bar.top
        PlaceLoader {
            id: day
            objectName: "dayPlace"
            shown: root.place === "day"
            page: "../pages/DayPage.qml"
        }
        PlaceLoader {
            id: map
            objectName: "mapPlace"
            shown: root.place === "map"
            page: "../pages/MapPage.qml"
        }
        PlaceLoader {
            id: lots
            objectName: "lotsPlace"
            shown: root.place === "lots"
            page: "../pages/LotsPage.qml"
        }
        PlaceLoader {
            id: kit
            objectName: "kitPlace"
            shown: root.place === "kit"
            page: "../pages/KitPage.qml"
        }
    }
    BottomBar {
        id: bar
        visible: !root.wide
        anchors.bottom: parent.bottom
        width: parent.width
        height: visible ? implicitHeight : 0
        place: root.place
        onChosen: place => root.chosen(place)
    }
}
