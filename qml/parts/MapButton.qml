import QtQuick
import Groundcount

// A square control that lies on the map: icon only, its word is the accessible name.
Pressable {
    id: root

    required property int glyph

    objectName: "mapButton"
    width: Theme.mapControl
    height: Theme.mapControl
    ground: Theme.paper
    edgeWidth: Theme.ruleWidth
    Accessible.name: text

    contentItem: Item {
        Icon {
            anchors.centerIn: parent
            glyph: root.glyph
            width: 28
            height: 28
        }
    }
}
