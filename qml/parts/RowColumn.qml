pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// The rows of a list, one under the other, as long as they need; for lists inside a page that scrolls as a whole.
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
        delegate: ListRow {
            id: line
            required property int index
            required property string rowId
            required mark
            required lead
            required title
            required second
            required figure
            required unit
            required word
            required wordMark
            required hasBearing
            required bearing
            required chevron
            objectName: "row" + index
            width: root.width
            dense: root.dense
            symbolColumn: root.symbolColumn
            chosen: root.chosenId !== "" && root.chosenId === rowId
            ruled: index + 1 < root.rows.count
            onClicked: root.picked(line.rowId)
        }
    }
}
