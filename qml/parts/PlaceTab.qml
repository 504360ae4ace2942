import QtQuick
import Groundcount

// One of the four places, in the bar or the rail.
Pressable {
    id: root

    required property int glyph
    property bool chosen: false
    property bool upright: false

    groundRadius: 0
    Accessible.role: Accessible.PageTab
    Accessible.selectable: true
    Accessible.selected: chosen

    contentItem: Item {
        implicitWidth: Theme.railWidth
        implicitHeight: 60

        Rectangle {
            visible: root.chosen
            color: Theme.ink
            x: root.upright ? 0 : Theme.gap4
            y: 0
            width: root.upright ? Theme.barWidth : parent.width - 2 * Theme.gap4
            height: root.upright ? parent.height : Theme.barWidth
        }
        Column {
            anchors.centerIn: parent
            spacing: 2
            Icon {
                anchors.horizontalCenter: parent.horizontalCenter
                glyph: root.glyph
                colour: root.chosen ? Theme.ink : Theme.ink2
            }
            Text {
                anchors.horizontalCenter: parent.horizontalCenter
                text: root.text
                color: root.chosen ? Theme.ink : Theme.ink2
                font.pixelSize: Theme.sizeBody
                font.weight: root.chosen ? Theme.strong : Theme.body
                textFormat: Text.PlainText
            }
        }
    }
}
