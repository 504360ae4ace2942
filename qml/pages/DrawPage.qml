import QtQuick
import Groundcount

// Random sites for a lift: lift, number, edge, seed; every drawn and every rejected place; sealed, they are owed on Day.
KitSheet {
    id: root

    property string lot: ""

    objectName: "drawPage"
    form: draw
    ofLot: true

    DrawSheet {
        id: draw
        session: Session
        subject: root.lot
    }
    ChoiceBar {
        objectName: "drawLift"
        width: parent.width
        visible: draw.liftWords.length > 1
        words: draw.liftWords // qmllint disable type
        chosen: draw.lift
        name: qsTr("Lift")
        onPicked: index => draw.pickLift(index)
    }
    Body {
        objectName: "drawnText"
        width: parent.width
        visible: text !== ""
        text: draw.drawnText
    }
    Column {
        width: parent.width
        EntryRow {
            objectName: "drawSites"
            width: parent.width
            label: qsTr("Sites")
            value: draw.sitesText
            onClicked: draw.typeSites()
        }
        EntryRow {
            objectName: "drawEdge"
            width: parent.width
            label: qsTr("Off each edge")
            value: draw.edgeText
            unit: qsTr("ft")
            onClicked: draw.typeEdge()
        }
        EntryRow {
            objectName: "drawSeed"
            width: parent.width
            label: qsTr("Seed")
            value: draw.seedText
            onClicked: draw.typeSeed()
        }
    }
    Column {
        width: parent.width
        SectionHead {
            width: parent.width
            title: qsTr("Drawn")
            count: draw.drawn.count
        }
        RowColumn {
            objectName: "drawnSites"
            width: parent.width
            rows: draw.drawn
        }
    }
    Column {
        width: parent.width
        visible: draw.rejected.count > 0
        SectionHead {
            width: parent.width
            title: qsTr("Rejected and drawn again")
            count: draw.rejected.count
        }
        RowColumn {
            objectName: "rejectedSites"
            width: parent.width
            rows: draw.rejected
        }
    }
    Body {
        objectName: "drawPolicy"
        width: parent.width
        color: Theme.ink2
        text: draw.policyText
    }
}
