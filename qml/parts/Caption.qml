import QtQuick
import Groundcount

// A label or a second line, 16 in the second ink, on one line.
Text {
    color: Theme.ink2
    font.pixelSize: Theme.sizeBody
    font.weight: Theme.body
    textFormat: Text.PlainText
    elide: Text.ElideRight
}
