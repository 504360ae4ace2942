import QtQuick
import Groundcount

// Running text, 16 on 20.
Text {
    color: Theme.ink
    font.pixelSize: Theme.sizeBody
    font.weight: Theme.body
    lineHeightMode: Text.FixedHeight
    lineHeight: Theme.lineBody
    textFormat: Text.PlainText
    wrapMode: Text.WordWrap
}
