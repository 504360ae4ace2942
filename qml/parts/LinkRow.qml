import QtQuick
import Groundcount

// A way to somewhere else: bold with an underline, or bold with a chevron at the right end.
Pressable {
    id: root

    property bool underlined: false
    property int glyph: Glyph.Right
    property bool strong: true

    objectName: "linkRow"
    implicitWidth: label.implicitWidth + (underlined ? 0 : 34)
    implicitHeight: underlined ? Theme.target : label.implicitHeight + Theme.gap4 > Theme.rowHeight ? label.implicitHeight + Theme.gap4 : Theme.rowHeight
    groundRadius: 0
    Accessible.role: Accessible.Link

    Item {
        anchors.fill: parent
        Text {
            id: label
            anchors.left: parent.left
            anchors.right: root.underlined ? undefined : chevron.left
            anchors.verticalCenter: parent.verticalCenter
            text: root.text
            color: Theme.ink
            font.pixelSize: Theme.sizeBody
            font.weight: root.strong ? Theme.strong : Theme.body
            textFormat: Text.PlainText
            wrapMode: root.underlined ? Text.NoWrap : Text.WordWrap
            elide: root.underlined ? Text.ElideRight : Text.ElideNone
            Rule {
                visible: root.underlined
                anchors.top: parent.bottom
                anchors.topMargin: 1
                width: parent.width
            }
        }
        Icon {
            id: chevron
            visible: !root.underlined
            glyph: root.glyph
            width: 22
            height: 22
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
        }
    }
}
