import QtQuick
import Groundcount

Pressable {
    id: root

    property int glyph: Glyph.None

    // The field keeps the focus while its keys are pressed.
    focusPolicy: Qt.NoFocus
    groundRadius: 0
    ground: Theme.well
    pressedGround: Theme.paper

    contentItem: Item {
        Text {
            visible: root.glyph === Glyph.None
            anchors.centerIn: parent
            text: root.text
            color: Theme.ink
            font.pixelSize: Theme.sizeKey
            font.weight: Theme.strong
            textFormat: Text.PlainText
        }
        Icon {
            visible: root.glyph !== Glyph.None
            anchors.centerIn: parent
            glyph: root.glyph
            width: 34
            height: 34
        }
    }
    Rectangle {
        anchors.right: parent.right
        width: Theme.hairWidth
        height: parent.height
        color: Theme.hair
    }
    Hair {
        anchors.bottom: parent.bottom
        width: parent.width
    }
}
