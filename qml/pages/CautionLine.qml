import QtQuick
import Groundcount

// The caution triangle and a sentence; nothing when there is none.
Row {
    id: root

    required property string text

    objectName: "cautionLine"
    visible: text !== ""
    spacing: Theme.gap2
    topPadding: Theme.gap1
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    Icon {
        glyph: Glyph.Warning
        width: 24
        height: 24
    }
    Body {
        width: root.width - 24 - Theme.gap2
        text: root.text
        Accessible.ignored: true
    }
}
