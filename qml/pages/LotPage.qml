import QtQuick
import Groundcount

// A lot: its ground, what it is built of, what it must reach.
KitSheet {
    id: root

    property string subject: ""

    objectName: "lotPage"
    form: lot

    LotSheet {
        id: lot
        session: Session
        subject: root.subject
        onSealed: id => {
            Desk.kit = "";
            Desk.place = "lots";
            Desk.lot = id;
        }
    }
    LinkRow {
        objectName: "lotNeedsLine"
        width: parent.width
        visible: lot.lacksLine
        glyph: Glyph.Plus
        text: qsTr("Add the line that its stations count along")
        onClicked: Desk.kit = "line"
    }
    LinkRow {
        objectName: "lotNeedsReference"
        width: parent.width
        visible: lot.lacksReference
        glyph: Glyph.Plus
        text: qsTr("Add the material with its reference test")
        onClicked: Desk.kit = "material"
    }
    ReasonField {
        objectName: "lotName"
        width: parent.width
        label: qsTr("Name of the lot")
        text: lot.name
        onEdited: text => lot.setName(text)
    }
    ReasonField {
        objectName: "lotZone"
        width: parent.width
        label: qsTr("Zone, such as embankment or subgrade")
        text: lot.zone
        onEdited: text => lot.setZone(text)
    }
    Body {
        objectName: "lotCorners"
        width: parent.width
        visible: lot.hasCorners
        color: Theme.ink2
        text: qsTr("Its corners came in a site file and stay as they are.")
    }
    ChoiceBar {
        objectName: "lotLine"
        width: parent.width
        visible: !lot.hasCorners && lot.lineWords.length > 1
        words: lot.lineWords // qmllint disable type
        chosen: lot.lineIndex
        name: qsTr("Line")
        onPicked: index => lot.pickLine(index)
    }
    Column {
        width: parent.width
        visible: !lot.hasCorners
        EntryRow {
            objectName: "lotStations"
            width: parent.width
            label: qsTr("Stations")
            value: lot.stations
            onClicked: lot.typeStations()
        }
        EntryRow {
            objectName: "lotSides"
            width: parent.width
            label: qsTr("Width from the line")
            value: lot.sides
            unit: qsTr("ft")
            onClicked: lot.typeSides()
        }
    }
    Body {
        width: parent.width
        visible: !lot.lacksReference
        text: qsTr("Reference test")
    }
    ChoiceBar {
        objectName: "lotReference"
        width: parent.width
        visible: !lot.lacksReference
        words: lot.referenceWords // qmllint disable type
        chosen: lot.referenceIndex
        name: qsTr("Reference test")
        onPicked: index => lot.pickReference(index)
    }
    EntryRow {
        objectName: "lotCompaction"
        width: parent.width
        label: qsTr("Percent compaction")
        value: lot.compaction
        onClicked: lot.typeCompaction()
    }
    Body {
        width: parent.width
        text: qsTr("Moisture window")
    }
    ChoiceBar {
        objectName: "lotWindowKind"
        width: parent.width
        words: lot.windowWords // qmllint disable type
        chosen: lot.windowIndex
        name: qsTr("Moisture window")
        onPicked: index => lot.pickWindow(index)
    }
    Column {
        width: parent.width
        EntryRow {
            objectName: "lotDriest"
            width: parent.width
            visible: lot.windowIndex > 0
            label: qsTr("Driest")
            value: lot.driest
            unit: qsTr("%")
            onClicked: lot.typeDriest()
        }
        EntryRow {
            objectName: "lotWettest"
            width: parent.width
            visible: lot.windowIndex > 0
            label: qsTr("Wettest")
            value: lot.wettest
            unit: qsTr("%")
            onClicked: lot.typeWettest()
        }
        EntryRow {
            objectName: "lotTestsPerLift"
            width: parent.width
            label: qsTr("Tests per lift")
            value: lot.tests
            onClicked: lot.typeTests()
        }
        EntryRow {
            objectName: "lotSublots"
            width: parent.width
            visible: lot.sublots !== ""
            label: qsTr("Sublots")
            value: lot.sublots
            onClicked: lot.typeTests()
        }
    }
    ReasonField {
        objectName: "lotWhy"
        width: parent.width
        visible: lot.asksWhy
        label: qsTr("Why it changes")
        text: lot.why
        onEdited: text => lot.setWhy(text)
    }
    Body {
        width: parent.width
        color: Theme.ink2
        text: qsTr("The specification of the contract governs; type what it says.")
    }
}
