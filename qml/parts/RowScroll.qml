pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// A page that ends in a list which grows with the job: what makes `headerItem` its parent scrolls above the rows, and only the rows near what is
// seen are made.
HeadedList {
    id: root

    required property RowList rows
    property bool dense: false
    property real rowWidth: width - 2 * Theme.margin
    property string chosenId: ""
    signal picked(string rowId)

    objectName: "rowScroll"
    model: rows
    currentIndex: -1
    highlightFollowsCurrentItem: false
    boundsBehavior: Flickable.StopAtBounds
    bottomMargin: Theme.gap6
    clip: true
    delegate: RowLine {
        id: line
        x: Theme.margin
        width: root.rowWidth
        dense: root.dense
        chosen: root.chosenId !== "" && root.chosenId === line.rowId
        ruled: line.index + 1 < root.count
        onClicked: root.picked(line.rowId)
    }
}
