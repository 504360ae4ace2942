import QtQuick
import Groundcount

// Degrees clockwise from up to north.
Column {
    id: root

    property real bearing: 0

    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("North arrow")

    Icon {
        anchors.horizontalCenter: parent.horizontalCenter
        glyph: Glyph.North
        bearing: root.bearing
        width: 30
        height: 30
    }
    Text {
        anchors.horizontalCenter: parent.horizontalCenter
        text: qsTr("N")
        color: Theme.ink
        font.pixelSize: Theme.sizeBody
        font.weight: Theme.strong
    }
}
