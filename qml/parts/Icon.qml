import QtQuick
import Groundcount

GlyphItem {
    inks: Theme.inks
    colour: Theme.ink
    implicitWidth: 26
    implicitHeight: 26
}
