import QtQuick
import Groundcount

// A label over a word of weight.
Column {
    id: root

    property string label: ""
    required property string text

    objectName: "labelledText"
    spacing: Theme.gap1
    Accessible.role: Accessible.StaticText
    Accessible.name: label + " " + text

    Body {
        width: root.width
        color: Theme.ink2
        text: root.label
        Accessible.ignored: true
    }
    Text {
        width: root.width
        text: root.text
        color: Theme.ink
        font.pixelSize: Theme.sizeRow
        font.weight: Theme.strong
        textFormat: Text.PlainText
        wrapMode: Text.Wrap
        Accessible.ignored: true
    }
}
