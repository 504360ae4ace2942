import QtQuick
import Groundcount

// The colour a state is written in.
QtObject {
    id: root

    required property int mark
    property color plain: Theme.ink
    readonly property color color: mark === Mark.Pass || mark === Mark.Clear ? Theme.pass
        : mark === Mark.Fail || mark === Mark.TooClose ? Theme.fail : plain
}
