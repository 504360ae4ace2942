import QtQuick
import Groundcount

// One lot: where it stands and why, its lifts as built, what is open, the ways on, its tests.
RowScroll {
    id: root

    required property LotsView lots
    property bool hasBack: true

    objectName: "lotDetail"
    rows: root.lots.tests
    rowWidth: root.width > 660 ? 600 : root.width - 2 * Theme.margin
    onPicked: rowId => Desk.openTest(rowId)

    Column {
        parent: root.headerItem
        x: Theme.margin
        topPadding: Theme.gap3
        width: root.rowWidth
        PageHead {
            width: parent.width
            hasBack: root.hasBack
            title: root.lots.lotTitle
            context: root.lots.lotContext
            onBack: Desk.lot = ""
        }
        StateBadge {
            objectName: "lotStanding"
            mark: root.lots.standingMark
            word: root.lots.standingWord
        }
        Body {
            objectName: "lotReason"
            width: parent.width
            text: root.lots.standingReason
        }
        Body {
            width: parent.width
            topPadding: Theme.gap1
            bottomPadding: Theme.gap3
            color: Theme.ink2
            text: root.lots.requirement
        }
        LiftGrid {
            width: parent.width
            columns: root.lots.columns // qmllint disable type
            lifts: root.lots.lifts
        }
        LinkRow {
            objectName: "addLift"
            width: parent.width
            glyph: Glyph.Plus
            text: qsTr("Add a lift")
            onClicked: Desk.kit = "lift:" + Desk.lot
        }
        SectionHead {
            visible: root.lots.failures.count > 0
            width: parent.width
            title: qsTr("Open failures")
            count: root.lots.failures.count
        }
        RowColumn {
            width: parent.width
            rows: root.lots.failures
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
            text: qsTr("Profile, lift by lift")
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
            rows: root.lots.gauges
            onPicked: rowId => Desk.paper = "custody:" + rowId
        }
        SectionHead {
            width: parent.width
            title: qsTr("Tests")
            count: root.lots.tests.count
        }
        LinkRow {
            objectName: "testsLink"
            width: parent.width
            text: qsTr("By state, person, gauge, material, day")
            onClicked: Desk.lotSheet = "tests"
        }
    }
}
