pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// The rows of a list, one under the other, as long as they need; for lists of a few rows inside a page that scrolls as a whole. Every row is
// made: a list that grows with the job is a RowScroll.
Column {
    id: root

    required property RowList rows
    property bool dense: false
    property bool symbolColumn: true
    property string chosenId: ""
    signal picked(string rowId)

    objectName: "rowColumn"

    Repeater {
        model: root.rows
        delegate: RowLine {
            id: line
            width: root.width
            dense: root.dense
            symbolColumn: root.symbolColumn
            chosen: root.chosenId !== "" && root.chosenId === rowId
            ruled: index + 1 < root.rows.count
            onClicked: root.picked(line.rowId)
        }
    }
}
