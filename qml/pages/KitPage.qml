pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// What must be right before anything counts: gauges with papers, standard counts, materials, people, rule set, offsets, job.
// A row leads to its sheet; wide, the sheet stands beside the list.
FocusScope {
    id: root

    readonly property bool wide: width >= Theme.wideFrom - Theme.railWidth
    readonly property bool inside: Desk.kit !== ""

    objectName: "kitPage"

    KitView {
        id: kit
        session: Session
    }
    Flickable {
        objectName: "kitList"
        visible: root.wide || !root.inside
        width: root.wide ? 412 : parent.width
        height: parent.height
        contentHeight: column.implicitHeight + Theme.gap6
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: column
            x: Theme.margin
            y: Theme.gap3
            width: parent.width - 2 * Theme.margin
            PageHead {
                width: parent.width
                title: qsTr("Kit")
            }
            Body {
                width: parent.width
                bottomPadding: Theme.gap2
                color: Theme.ink2
                text: qsTr("The licence, local rules and the manufacturer's instructions govern.")
            }
            LinkRow {
                objectName: "beginJob"
                width: parent.width
                visible: kit.job.count === 0
                glyph: Glyph.Plus
                text: qsTr("Begin a job")
                onClicked: Desk.kit = "job"
            }
            LinkRow {
                objectName: "booksLink"
                width: parent.width
                text: qsTr("Field books: another job")
                onClicked: Desk.kit = "books"
            }
            LinkRow {
                objectName: "screenLink"
                width: parent.width
                text: qsTr("Screen: light, text, language")
                onClicked: Desk.screenOpen = true
            }
            LinkRow {
                objectName: "receiverLink"
                width: parent.width
                text: qsTr("Receiver: where positions come from")
                onClicked: Desk.kit = "receiver"
            }
            LinkRow {
                objectName: "siteFileLink"
                width: parent.width
                text: qsTr("Site file: lots, lines, walls, pipes of the plans")
                onClicked: Desk.kit = "site-file"
            }
            LinkRow {
                objectName: "backgroundLink"
                width: parent.width
                text: qsTr("Background of the map")
                onClicked: Desk.kit = "background"
            }
            KitSection {
                objectName: "kitGauges"
                title: qsTr("Gauges")
                rows: kit.gauges
                addText: qsTr("Add a gauge")
                addTo: "gauge"
            }
            KitSection {
                objectName: "kitCounts"
                title: qsTr("Standard counts")
                count: qsTr("density over moisture")
                rows: kit.standardCounts
                addText: qsTr("Take standard counts")
                addTo: "counts"
            }
            KitSection {
                objectName: "kitOffsets"
                title: qsTr("Offsets")
                rows: kit.offsets
                addText: qsTr("Add an offset")
                addTo: "offset"
            }
            KitSection {
                objectName: "kitMaterials"
                title: qsTr("Materials")
                symbolColumn: false
                rows: kit.references
                addText: qsTr("Add a material")
                addTo: "material"
            }
            KitSection {
                objectName: "kitPeople"
                title: qsTr("People")
                rows: kit.people
                addText: qsTr("Add a person")
                addTo: "person"
            }
            KitSection {
                objectName: "kitRules"
                title: qsTr("Rule set")
                symbolColumn: false
                rows: kit.rules
            }
            KitSection {
                objectName: "kitJob"
                title: qsTr("Job")
                symbolColumn: false
                rows: kit.job
                addText: kit.job.count > 0 ? qsTr("Add a straight line") : ""
                addTo: "line"
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
        visible: root.wide && !root.inside
        x: 412 + Theme.margin
        y: Theme.gap6
        color: Theme.ink2
        text: qsTr("Choose a row at the left.")
    }
    KitSheetLoader {
        objectName: "kitSheet"
        x: root.wide ? 413 : 0
        width: parent.width - x
        height: parent.height
        focus: root.inside
        sheet: Desk.kitSheet
        subject: Desk.kitSubject
    }
}
