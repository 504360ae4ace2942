pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// What the map's symbols mean: symbol and word, closable.
Rectangle {
    id: root

    signal closed

    objectName: "mapLegend"
    color: Theme.paper
    implicitHeight: grid.implicitHeight + siteLink.height + backgroundLink.height + Theme.gap4 + Theme.gap3
    height: implicitHeight

    Rule {
        width: parent.width
    }
    Grid {
        id: grid
        x: Theme.margin
        y: Theme.gap4
        columns: 2
        rowSpacing: Theme.gap2
        columnSpacing: Theme.gap4
        StateBadge {
            width: (root.width - 2 * Theme.margin - Theme.target) / 2
            mark: Mark.Pass
            word: qsTr("Pass")
        }
        StateBadge {
            mark: Mark.Fail
            word: qsTr("Fail")
        }
        StateBadge {
            mark: Mark.Waiting
            word: qsTr("Waiting")
        }
        StateBadge {
            mark: Mark.Owed
            word: qsTr("Owed site")
        }
        StateBadge {
            mark: Mark.InformationOnly
            word: qsTr("Information only")
        }
        StateBadge {
            mark: Mark.Void
            word: qsTr("Void")
        }
        Caption {
            text: qsTr("Hatched: open failure")
        }
        Caption {
            text: qsTr("Dotted: untested")
        }
    }
    LinkRow {
        id: siteLink
        objectName: "legendSiteFile"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        anchors.top: grid.bottom
        text: qsTr("Site file: lots, lines, walls, pipes of the plans")
        onClicked: Desk.kit = "site-file"
    }
    LinkRow {
        id: backgroundLink
        objectName: "legendBackground"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        anchors.top: siteLink.bottom
        text: qsTr("Background of the map")
        onClicked: Desk.kit = "background"
    }
    Pressable {
        objectName: "legendClose"
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.gap2
        width: 48
        height: 48
        text: qsTr("Close the legend")
        onClicked: root.closed()
        contentItem: Item {
            Icon {
                anchors.centerIn: parent
                glyph: Glyph.Close
            }
        }
    }
}
