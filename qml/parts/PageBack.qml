import QtQuick
import Groundcount

// The way back, at the left of a page's head.
Pressable {
    id: root

    property PageHead head: null

    objectName: "back"
    text: qsTr("Back")
    onClicked: root.head.back()
    contentItem: Item {
        Icon {
            glyph: Glyph.Back
            x: 12
            anchors.verticalCenter: parent.verticalCenter
        }
    }
}
