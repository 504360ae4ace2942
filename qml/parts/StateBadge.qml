import QtQuick
import Groundcount

// Symbol and word, always both.
Row {
    id: root

    required property int mark
    required property string word
    property int glyph: Glyph.None
    property real symbolSize: 22
    property real wordSize: Theme.sizeRow
    property real limit: 0 // the word wraps where symbol and word would be wider; 0 for never
    readonly property real room: limit - symbolSize - spacing

    objectName: "stateBadge"
    spacing: Theme.gap2
    Accessible.role: Accessible.StaticText
    Accessible.name: word

    StateInk {
        id: stateInk
        mark: root.mark
    }
    StateSymbol {
        anchors.verticalCenter: parent.verticalCenter
        visible: root.mark !== Mark.Nothing && root.glyph === Glyph.None
        mark: root.mark
        width: root.symbolSize
        height: root.symbolSize
    }
    Icon {
        anchors.verticalCenter: parent.verticalCenter
        visible: root.glyph !== Glyph.None
        glyph: root.glyph
        width: root.symbolSize
        height: root.symbolSize
    }
    Text {
        id: wordText
        anchors.verticalCenter: parent.verticalCenter
        width: wordFit.given
        TextFit {
            id: wordFit
            shown: wordText
            most: root.limit > 0 ? root.room : Infinity
        }
        wrapMode: Text.WordWrap
        text: root.word
        color: stateInk.color
        font.pixelSize: root.wordSize
        font.weight: Theme.strong
        textFormat: Text.PlainText
        Accessible.ignored: true
    }
}
