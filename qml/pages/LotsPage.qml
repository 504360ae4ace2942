pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Owed and done: the lots, and inside one its lifts as built, what is open, its tests.
FocusScope {
    id: root

    readonly property bool wide: width >= Theme.wideFrom - Theme.railWidth
    readonly property bool inside: page.chosenLot !== ""

    objectName: "lotsPage"

    LotsView {
        id: page
        session: Session
        chosenLot: Desk.lot
    }
    Flickable {
        id: list
        objectName: "lotList"
        visible: root.wide || !root.inside
        width: root.wide ? 412 : parent.width
        height: parent.height
        contentHeight: listColumn.implicitHeight + Theme.gap6
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: listColumn
            x: Theme.margin
            y: Theme.gap3
            width: parent.width - 2 * Theme.margin
            PageHead {
                width: parent.width
                title: qsTr("Lots")
                subtitle: page.summary
            }
            Rule {
                width: parent.width
            }
            Body {
                objectName: "lotsEmpty"
                visible: page.lots.count === 0
                width: parent.width
                topPadding: Theme.gap3
                text: qsTr("No lots in this book yet.")
            }
            RowColumn {
                width: parent.width
                rows: page.lots
                chosenId: root.wide ? page.chosenLot : ""
                onPicked: rowId => Desk.lot = rowId
            }
        }
    }
    Rectangle {
        visible: root.wide
        x: 412
        width: Theme.hairWidth
        height: parent.height
        color: Theme.ink
    }
    Body {
        visible: root.wide && !root.inside && page.lots.count > 0
        x: 412 + Theme.margin
        y: Theme.gap6
        color: Theme.ink2
        text: qsTr("Choose a lot at the left.")
    }
    Flickable {
        objectName: "lotDetail"
        visible: root.inside
        x: root.wide ? 413 : 0
        width: parent.width - x
        height: parent.height
        contentHeight: detail.implicitHeight + Theme.gap6
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: detail
            x: Theme.margin
            y: Theme.gap3
            width: root.wide ? 600 : parent.width - 2 * Theme.margin
            PageHead {
                width: parent.width
                hasBack: !root.wide
                title: page.lotTitle
                context: page.lotContext
                onBack: Desk.lot = ""
            }
            Body {
                width: parent.width
                bottomPadding: Theme.gap3
                color: Theme.ink2
                text: page.requirement
            }
            LiftGrid {
                width: parent.width
                columns: page.columns // qmllint disable type
                lifts: page.lifts
            }
            SectionHead {
                visible: page.failures.count > 0
                width: parent.width
                title: qsTr("Open failures")
                count: page.failures.count
            }
            RowColumn {
                width: parent.width
                rows: page.failures
                onPicked: rowId => Desk.retest(rowId)
            }
            SectionHead {
                width: parent.width
                title: qsTr("Tests")
                count: page.tests.count
            }
            RowColumn {
                width: parent.width
                rows: page.tests
                onPicked: rowId => Desk.openTest(rowId)
            }
        }
    }
}
