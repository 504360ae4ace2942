pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// What the map's symbols mean: symbol and word, closable. It scrolls where `room` is less than it needs.
Rectangle {
    id: root

    property real room: whole
    readonly property real whole: column.implicitHeight + Theme.gap4 + Theme.gap3
    signal closed

    objectName: "mapLegend"
    color: Theme.paper
    implicitHeight: whole > room ? room : whole
    height: implicitHeight
    clip: true

    Flickable {
        anchors.fill: parent
        contentHeight: root.whole
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column
            x: Theme.margin
            y: Theme.gap4
            width: root.width - 2 * Theme.margin
            Grid {
                columns: left.implicitWidth + right.implicitWidth + 2 * Theme.gap4 < column.width ? 2 : 1
                rowSpacing: Theme.gap2
                columnSpacing: Theme.gap4
                Column {
                    id: left
                    spacing: Theme.gap2
                    StateBadge {
                        mark: Mark.Pass
                        word: qsTr("Pass")
                    }
                    StateBadge {
                        mark: Mark.Waiting
                        word: qsTr("Waiting")
                    }
                    StateBadge {
                        mark: Mark.InformationOnly
                        word: qsTr("Information only")
                    }
                    Caption {
                        text: qsTr("Hatched: open failure")
                    }
                }
                Column {
                    id: right
                    spacing: Theme.gap2
                    StateBadge {
                        mark: Mark.Fail
                        word: qsTr("Fail")
                    }
                    StateBadge {
                        mark: Mark.Owed
                        word: qsTr("Owed site")
                    }
                    StateBadge {
                        mark: Mark.Void
                        word: qsTr("Void")
                    }
                    Caption {
                        text: qsTr("Dotted: untested")
                    }
                }
            }
            LinkRow {
                objectName: "legendSiteFile"
                width: parent.width
                text: qsTr("Site file: lots, lines, walls, pipes of the plans")
                onClicked: Desk.kit = "site-file"
            }
            LinkRow {
                objectName: "legendBackground"
                width: parent.width
                text: qsTr("Background of the map")
                onClicked: Desk.kit = "background"
            }
        }
    }
    Rule {
        width: parent.width
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
