import QtQuick
import Groundcount

Rectangle {
    color: Theme.paper

    Column {
        id: column
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        PageHead { width: parent.width; title: "Count"; link: "If the gauge is struck"; hasBack: true }
        TimerFigure {
            width: parent.width
            caption: "Left of the one-minute minimum"; figure: "0:23"
            asideLead: "Reading 1"; aside: "direct, 8 in."; aside2: "along the line"
            value: 0.495; lowLimit: 0.8; limitLabel: "1:00"
        }
        Rule { width: parent.width }
        Item {
            width: parent.width
            height: own.implicitHeight
            Figure { id: own; label: "You to the gauge"; figure: "21"; unit: "ft"; uncertainty: "±3" }
            StateBadge { anchors.right: parent.right; anchors.bottom: parent.bottom; anchors.bottomMargin: 8; mark: Mark.Clear; word: "Outside the ring"; symbolSize: 28 }
        }
    }
    StandBackRing {
        anchors.top: column.bottom
        anchors.bottom: foot.top
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        Accessible.name: "You are 21 ft south-east of the gauge, outside its ring of 15 ft"
        distanceInRings: 1.4
        accuracyInRings: 0.2
        bearing: 121
        ringLabel: "15 ft"; gaugeLabel: "Gauge"; ownLabel: "You"
    }
    NorthArrow { anchors.right: parent.right; anchors.rightMargin: Theme.margin; anchors.top: column.bottom; anchors.topMargin: Theme.gap5 }
    ActFoot {
        id: foot
        width: parent.width
        anchors.bottom: parent.bottom
        Row {
            spacing: Theme.gap3
            Icon { glyph: Glyph.Warning; width: 30; height: 30 }
            Text { anchors.verticalCenter: parent.verticalCenter; text: "Keep people and vehicles out."; color: Theme.ink; font.pixelSize: Theme.sizeRow; font.weight: Theme.strong }
        }
        Row {
            width: parent.width
            spacing: 10
            SecondaryButton { objectName: "stop"; width: 104; tall: true; text: "Stop" }
            NotYetButton { width: parent.width - 114; text: "Enter the reading in 0:23" }
        }
    }
}
