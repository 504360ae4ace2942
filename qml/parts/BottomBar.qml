import QtQuick
import Groundcount

// Four places under the thumb. `place` is "day", "map", "lots" or "kit".
Rectangle {
    id: root

    property string place: "day"
    signal chosen(string place)

    objectName: "bottomBar"
    color: Theme.paper
    implicitHeight: Theme.barHeight + Theme.insetBottom
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Rectangle {
        width: parent.width
        height: Theme.hairWidth
        color: Theme.ink
    }
    Row {
        width: parent.width
        height: Theme.barHeight
        PlaceTab {
            objectName: "place_day"
            width: parent.width / 4
            height: parent.height
            glyph: Glyph.Day
            text: qsTr("Day")
            chosen: root.place === "day"
            onClicked: root.chosen("day")
        }
        PlaceTab {
            objectName: "place_map"
            width: parent.width / 4
            height: parent.height
            glyph: Glyph.Map
            text: qsTr("Map")
            chosen: root.place === "map"
            onClicked: root.chosen("map")
        }
        PlaceTab {
            objectName: "place_lots"
            width: parent.width / 4
            height: parent.height
            glyph: Glyph.Lots
            text: qsTr("Lots")
            chosen: root.place === "lots"
            onClicked: root.chosen("lots")
        }
        PlaceTab {
            objectName: "place_kit"
            width: parent.width / 4
            height: parent.height
            glyph: Glyph.Kit
            text: qsTr("Kit")
            chosen: root.place === "kit"
            onClicked: root.chosen("kit")
        }
    }
}
