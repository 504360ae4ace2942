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
    LotDetail {
        visible: root.inside && !root.leading && (root.three || !root.sheetOpen)
        x: root.wide ? root.listWidth + Theme.hairWidth : 0
        width: root.lotWidth - (root.wide ? Theme.hairWidth : 0)
        height: parent.height
        lots: page
        hasBack: !root.wide
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
