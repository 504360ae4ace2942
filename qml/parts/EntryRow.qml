import QtQuick
import Groundcount

// A value that is typed on a pane of its own: label left, what was typed right, a chevron. Empty: a dash.
Pressable {
    id: root

    required property string label
    property string value: ""
    property string unit: ""

    objectName: "entryRow"
    implicitHeight: Theme.rowHeight * Theme.textScale
    groundRadius: 0
    text: label
    Accessible.name: label + " " + (value === "" ? qsTr("not typed yet") : value + " " + unit)

    contentItem: Item { // qmllint disable deferred-property-id
        Text {
            anchors.left: parent.left
            anchors.right: figure.left
            anchors.rightMargin: Theme.gap2
            anchors.verticalCenter: parent.verticalCenter
            text: root.label
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.body
            textFormat: Text.PlainText
            wrapMode: Text.WordWrap
            maximumLineCount: 2
            elide: Text.ElideRight
        }
        Text {
            id: figure
            anchors.right: unitText.visible ? unitText.left : chevron.left
            anchors.rightMargin: unitText.visible ? Theme.gap1 : Theme.gap2
            anchors.verticalCenter: parent.verticalCenter
            text: root.value === "" ? "–" : root.value
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.strong
            textFormat: Text.PlainText
        }
        UnitMark {
            id: unitText
            visible: root.unit !== "" && root.value !== ""
            anchors.right: chevron.left
            anchors.rightMargin: Theme.gap2
            anchors.baseline: figure.baseline
            text: root.unit
        }
        Icon {
            id: chevron
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            glyph: Glyph.Right
            width: 22
            height: 22
        }
        Hair {
            width: parent.width
            anchors.bottom: parent.bottom
        }
    }
}
