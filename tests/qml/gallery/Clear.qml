import QtQuick
import Groundcount

Rectangle {
    color: Theme.paper

    Column {
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        PageHead { width: parent.width; title: "Test 27"; context: "53+38, 14 Rt"; hasBack: true }
        StepHead { width: parent.width; steps: Steps {} now: 1 }
        HazardRow {
            width: parent.width
            name: "Vertical face"; known: "Drop inlet, by tape"; mark: Mark.TooClose; word: "Too close"
            lowLimit: 0.5; value: 0.355
            labels: ["17 in.", "24 in. needed"]; labelAt: [0.355, 0.63]; measuredLabel: 0
            SecondaryButton { objectName: "trench"; width: (parent.width - parent.spacing) / 2; text: "Trench correction" }
            SecondaryButton { objectName: "move"; width: (parent.width - parent.spacing) / 2; text: "Move the test" }
        }
        HazardRow {
            width: parent.width
            name: "Parked scraper"; known: "From the map, ±3.2 ft"; mark: Mark.CannotTell; word: "Cannot tell"
            lowLimit: 0.5; value: 0.57; spreadLow: 0.41; spreadHigh: 0.73
            labels: ["10 ft needed", "11.4 ft"]; labelAt: [0.4, 0.65]; measuredLabel: 1
            SecondaryButton { objectName: "tape"; width: (parent.width - parent.spacing) / 2; glyph: Glyph.Tape; text: "Enter the tape" }
            SecondaryButton { objectName: "moved"; width: (parent.width - parent.spacing) / 2; text: "Have it moved" }
        }
        HazardRow { width: parent.width; name: "Other gauges"; known: "Gauge 04 at 214 ft, 30 needed"; mark: Mark.Clear; word: "Clear"; settled: true }
        HazardRow { width: parent.width; name: "People"; known: "Ring of 15 ft, by eye"; mark: Mark.Clear; word: "None inside"; settled: true }
        LinkRow { width: parent.width; text: "Add a hazard"; strong: false }
    }
    ActFoot {
        width: parent.width
        anchors.bottom: parent.bottom
        NotYetButton { width: parent.width; text: "Seal: settle 2 hazards first" }
    }
}
