import QtQuick
import Groundcount

// A value that is typed on a pane of its own: label left, what was typed right, a chevron. Empty: a dash.
Pressable {
    id: root

    required property string label
    property string value: ""
    property string unit: ""

    objectName: "entryRow"
    readonly property real half: width / 2
    // A long value stands under its label.
    readonly property bool stacked: figure.implicitWidth + (unitText.visible ? unitText.implicitWidth : 0) > half
    implicitHeight: stacked ? labelText.height + figure.height + 2 * Theme.gap2
        : labelText.implicitHeight + Theme.gap3 > Theme.rowHeight ? labelText.implicitHeight + Theme.gap3 : Theme.rowHeight
    groundRadius: 0
    text: label
    Accessible.name: label + " " + (value === "" ? qsTr("not typed yet") : value + " " + unit)

    contentItem: Item {
        Text {
            id: labelText
            anchors.left: parent.left
            anchors.right: root.stacked ? chevron.left : figure.left
            anchors.rightMargin: Theme.gap2
            y: root.stacked ? Theme.gap2 : (parent.height - height) / 2
            text: root.label
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.body
            textFormat: Text.PlainText
            wrapMode: Text.WordWrap
        }
        Text {
            id: figure
            anchors.right: unitText.visible ? unitText.left : chevron.left
            anchors.rightMargin: unitText.visible ? Theme.gap1 : Theme.gap2
            y: root.stacked ? labelText.y + labelText.height : (parent.height - height) / 2
            width: figureFit.given
            TextFit {
                id: figureFit
                shown: figure
                most: root.stacked ? root.width - 34 : Infinity
            }
            text: root.value === "" ? "–" : root.value
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.strong
            horizontalAlignment: Text.AlignRight
            textFormat: Text.PlainText
            wrapMode: Text.WordWrap
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
