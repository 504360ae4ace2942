import QtQuick
import Groundcount

// The ink rule that opens a section.
Rectangle {
    implicitHeight: Theme.ruleWidth
    color: Theme.ink
}
