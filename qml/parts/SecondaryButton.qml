import QtQuick
import Groundcount

Pressable {
    id: root

    property bool tall: false
    property int glyph: Glyph.None

    objectName: "secondaryButton"
    implicitWidth: label.implicitWidth + (glyph === Glyph.None ? 0 : 34) + leftPadding + rightPadding
    implicitHeight: tall ? 68 : 56
    edgeWidth: Theme.ruleWidth
    ground: Theme.paper
    leftPadding: Theme.gap2
    rightPadding: Theme.gap2

    Item {
        anchors.fill: parent
        anchors.leftMargin: root.leftPadding
        anchors.rightMargin: root.rightPadding
        Icon {
            id: sign
            visible: root.glyph !== Glyph.None
            glyph: root.glyph
            width: 24
            height: 24
            anchors.right: label.left
            anchors.rightMargin: Theme.gap2
            anchors.verticalCenter: parent.verticalCenter
        }
        Text {
            id: label
            // while a page is being laid out the button may be narrower than nothing
            readonly property real room: parent.width > 68 ? parent.width - (sign.visible ? 34 : 0) : 34
            anchors.centerIn: parent
            anchors.horizontalCenterOffset: sign.visible ? 16 : 0
            width: fit.given
            TextFit {
                id: fit
                shown: label
                most: label.room
            }
            text: root.text
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.strong
            textFormat: Text.PlainText
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.WordWrap
            maximumLineCount: 2
            elide: Text.ElideRight
        }
    }
}
