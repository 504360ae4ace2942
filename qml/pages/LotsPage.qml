pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Owed and done: the lots, and inside one its lifts as built, what is open, its tests.
FocusScope {
    id: root

    readonly property bool wide: width >= Theme.wideFrom - Theme.railWidth
    readonly property bool inside: page.chosenLot !== ""
    readonly property bool sheetOpen: Desk.lotSheet !== ""
    readonly property bool publishing: Desk.lot === "publish"
    // what leads off the device takes the lot's place
    readonly property bool leading: Desk.lot === "hand-over" || Desk.lot === "server" || publishing
    // list, lot and sheet side by side where there is room for three; else the sheet takes the lot's place
    readonly property bool three: width >= Theme.threeFrom
    readonly property real listWidth: three && sheetOpen ? 320 : wide ? 412 : width
    readonly property real lotWidth: sheetOpen && !inside ? 0 : three && sheetOpen ? (width - listWidth) / 2 : wide ? width - listWidth : width

    objectName: "lotsPage"

    LotsView {
        id: page
        session: Session
        chosenLot: Desk.lot
    }
    Flickable {
        id: list
        objectName: "lotList"
        visible: root.wide || (!root.inside && !root.sheetOpen)
        width: root.listWidth
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
            LinkRow {
                objectName: "allTestsLink"
                width: parent.width
                visible: page.lots.count > 0
                text: qsTr("Tests of every lot")
                onClicked: Desk.lotSheet = "tests"
            }
            LinkRow {
                objectName: "addLot"
                width: parent.width
                glyph: Glyph.Plus
                text: qsTr("Add a lot")
                onClicked: Desk.kit = "lot"
            }
            LinkRow {
                objectName: "lotsSiteFileLink"
                width: parent.width
                text: qsTr("Lots out of a site file")
                onClicked: Desk.kit = "site-file"
            }
            LinkRow {
                objectName: "handOverLink"
                width: parent.width
                text: qsTr("Hand over")
                onClicked: Desk.lot = "hand-over"
            }
            LinkRow {
                objectName: "serverLink"
                width: parent.width
                text: qsTr("Shared server")
                onClicked: Desk.lot = "server"
            }
        }
    }
    Rectangle {
        visible: root.wide
        x: root.listWidth
        width: Theme.hairWidth
        height: parent.height
        color: Theme.ink
    }
    Body {
        visible: root.wide && !root.inside && !root.sheetOpen && page.lots.count > 0
        x: root.listWidth + Theme.margin
        y: Theme.gap6
        color: Theme.ink2
        text: qsTr("Choose a lot at the left.")
    }
    Flickable {
        objectName: "lotDetail"
        visible: root.inside && !root.leading && (root.three || !root.sheetOpen)
        x: root.wide ? root.listWidth + Theme.hairWidth : 0
        width: root.lotWidth - (root.wide ? Theme.hairWidth : 0)
        height: parent.height
        contentHeight: detail.implicitHeight + Theme.gap6
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: detail
            x: Theme.margin
            y: Theme.gap3
            width: root.lotWidth > 660 ? 600 : root.lotWidth - 2 * Theme.margin
            PageHead {
                width: parent.width
                hasBack: !root.wide
                title: page.lotTitle
                context: page.lotContext
                onBack: Desk.lot = ""
            }
            StateBadge {
                objectName: "lotStanding"
                mark: page.standingMark
                word: page.standingWord
            }
            Body {
                objectName: "lotReason"
                width: parent.width
                text: page.standingReason
            }
            Body {
                width: parent.width
                topPadding: Theme.gap1
                bottomPadding: Theme.gap3
                color: Theme.ink2
                text: page.requirement
            }
            LiftGrid {
                width: parent.width
                columns: page.columns // qmllint disable type
                lifts: page.lifts
            }
            LinkRow {
                objectName: "addLift"
                width: parent.width
                glyph: Glyph.Plus
                text: qsTr("Add a lift")
                onClicked: Desk.kit = "lift:" + Desk.lot
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
            LinkRow {
                objectName: "reviewLink"
                width: parent.width
                text: qsTr("Review")
                onClicked: Desk.lotSheet = "review"
            }
            LinkRow {
                objectName: "figuresLink"
                width: parent.width
                text: qsTr("Statistics")
                onClicked: Desk.lotSheet = "figures"
            }
            LinkRow {
                objectName: "profileLink"
                width: parent.width
                text: qsTr("Profile along the line")
                onClicked: Desk.lotSheet = "profile"
            }
            LinkRow {
                objectName: "drawLink"
                width: parent.width
                text: qsTr("Draw random sites")
                onClicked: Desk.lotSheet = "draw"
            }
            LinkRow {
                objectName: "changeLot"
                width: parent.width
                text: qsTr("Ground and requirement of this lot")
                onClicked: Desk.kit = "lot:" + Desk.lot
            }
            SectionHead {
                width: parent.width
                title: qsTr("Sheets to sign")
            }
            LinkRow {
                objectName: "lotSheetLink"
                width: parent.width
                text: qsTr("Summary of this lot")
                onClicked: Desk.paper = "lot:" + Desk.lot
            }
            LinkRow {
                objectName: "reviewSheetLink"
                width: parent.width
                text: qsTr("Review of this lot")
                onClicked: Desk.paper = "review:" + Desk.lot
            }
            RowColumn {
                objectName: "custodySheets"
                width: parent.width
                rows: page.gauges
                onPicked: rowId => Desk.paper = "custody:" + rowId
            }
            SectionHead {
                width: parent.width
                title: qsTr("Tests")
                count: page.tests.count
            }
            LinkRow {
                objectName: "testsLink"
                width: parent.width
                text: qsTr("By state, person, gauge, material, day")
                onClicked: Desk.lotSheet = "tests"
            }
            RowColumn {
                objectName: "lotTests"
                width: parent.width
                rows: page.tests
                onPicked: rowId => Desk.openTest(rowId)
            }
        }
    }
    Rectangle {
        visible: root.three && root.sheetOpen
        x: root.listWidth + root.lotWidth
        width: Theme.hairWidth
        height: parent.height
        color: Theme.ink
    }
    LotPanes {
        x: root.wide ? root.listWidth + Theme.hairWidth : 0
        width: parent.width - x
        height: parent.height
        hasBack: !root.wide
        which: Desk.lot
        onBack: Desk.lot = root.publishing ? "server" : ""
    }
    LotSheetLoader {
        objectName: "lotSheet"
        x: root.three ? root.listWidth + root.lotWidth + Theme.hairWidth : root.wide ? root.listWidth + Theme.hairWidth : 0
        width: parent.width - x
        height: parent.height
        focus: root.sheetOpen
        sheet: Desk.lotSheet
        lot: Desk.lot
    }
}
