import QtQuick
import Groundcount

// What ground the tests of the lift stand for, lot by lot, under the map.
Rectangle {
    id: root

    required property MapView page
    required property real room

    objectName: "coverageCard"
    readonly property real most: room < parent.height * 0.55 ? room : parent.height * 0.55
    readonly property real whole: column.implicitHeight + Theme.gap4
    height: !visible ? 0 : whole > most ? most : whole
    color: Theme.paper
    clip: true

    Flickable {
        anchors.fill: parent
        contentHeight: root.whole
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column
            x: Theme.margin
            y: Theme.gap2
            width: parent.width - 2 * Theme.margin
            RowColumn {
                objectName: "coverageRows"
                width: parent.width
                rows: root.page.coverage
                onPicked: rowId => {
                    Desk.lot = rowId;
                    Desk.place = "lots";
                }
            }
            Body {
                width: parent.width
                color: Theme.ink2
                text: root.page.reading ? qsTr("Working out the coverage") : root.page.coverage.count === 0 ? qsTr("No lot has this lift.") : qsTr("Between tests nothing is known; the specification decides how many are enough.")
            }
        }
    }
    Rule {
        width: parent.width
    }
}
