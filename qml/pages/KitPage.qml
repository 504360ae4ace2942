pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// What must be right before anything counts: gauges with papers, standard counts, reference tests, people, rule set, job.
FocusScope {
    id: root

    readonly property bool wide: width >= Theme.wideFrom - Theme.railWidth

    objectName: "kitPage"

    KitView {
        id: kit
        session: Session
    }
    Flickable {
        anchors.fill: parent
        contentHeight: column.implicitHeight + Theme.gap6
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: column
            x: Theme.margin
            y: Theme.gap3
            width: root.wide ? 680 : parent.width - 2 * Theme.margin
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
                objectName: "screenLink"
                width: parent.width
                text: qsTr("Screen: light, text, language")
                onClicked: Desk.screenOpen = true
            }
            SectionHead {
                width: parent.width
                title: qsTr("Gauges")
            }
            RowColumn {
                width: parent.width
                rows: kit.gauges
            }
            SectionHead {
                width: parent.width
                title: qsTr("Standard counts")
                count: qsTr("density over moisture")
            }
            RowColumn {
                width: parent.width
                rows: kit.standardCounts
            }
            SectionHead {
                width: parent.width
                title: qsTr("Reference tests")
            }
            RowColumn {
                width: parent.width
                symbolColumn: false
                rows: kit.references
            }
            SectionHead {
                width: parent.width
                title: qsTr("People")
            }
            RowColumn {
                width: parent.width
                symbolColumn: false
                rows: kit.people
            }
            SectionHead {
                width: parent.width
                title: qsTr("Rule set")
                count: kit.rulesTitle
            }
            RowColumn {
                width: parent.width
                symbolColumn: false
                rows: kit.limits
            }
            RowColumn {
                width: parent.width
                symbolColumn: false
                rows: kit.choices
            }
            SectionHead {
                width: parent.width
                title: qsTr("Job")
            }
            RowColumn {
                width: parent.width
                symbolColumn: false
                rows: kit.job
            }
        }
    }
}
