import QtQuick
import Groundcount

// A unit, 14, stands 4 after its figure on the figure's baseline.
Text {
    color: Theme.ink2
    font.pixelSize: Theme.sizeUnit
    font.weight: Theme.body
    textFormat: Text.PlainText
}
