import QtQuick
import Groundcount

// The four places at the left of a wide window.
Rectangle {
    id: root

    property string place: "day"
    signal chosen(string place)

    objectName: "sideRail"
    color: Theme.paper
    implicitWidth: Theme.railWidth
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Rectangle {
        anchors.right: parent.right
        width: Theme.hairWidth
        height: parent.height
        color: Theme.ink
    }
    Column {
        y: 32 + Theme.insetTop
        width: parent.width
        spacing: 24
        PlaceTab {
            objectName: "place_day"
            width: parent.width
            height: 60
            upright: true
            glyph: Glyph.Day
            text: qsTr("Day")
            chosen: root.place === "day"
            onClicked: root.chosen("day")
        }
        PlaceTab {
            objectName: "place_map"
            width: parent.width
            height: 60
            upright: true
            glyph: Glyph.Map
            text: qsTr("Map")
            chosen: root.place === "map"
            onClicked: root.chosen("map")
        }
        PlaceTab {
            objectName: "place_lots"
            width: parent.width
            height: 60
            upright: true
            glyph: Glyph.Lots
            text: qsTr("Lots")
            chosen: root.place === "lots"
            onClicked: root.chosen("lots")
        }
        PlaceTab {
            objectName: "place_kit"
            width: parent.width
            height: 60
            upright: true
            glyph: Glyph.Kit
            text: qsTr("Kit")
            chosen: root.place === "kit"
            onClicked: root.chosen("kit")
        }
    }
}
