import QtQuick
import Groundcount

// A new lift of a lot.
KitSheet {
    id: root

    property string subject: ""

    objectName: "liftPage"
    form: lift

    LiftSheet {
        id: lift
        session: Session
        subject: root.subject
        onSealed: id => {
            Desk.kit = "";
            Desk.place = "lots";
            Desk.lot = id;
        }
    }
    Column {
        width: parent.width
        EntryRow {
            objectName: "liftNumber"
            width: parent.width
            label: qsTr("Number")
            value: lift.number
            onClicked: lift.typeLift()
        }
        EntryRow {
            objectName: "liftThickness"
            width: parent.width
            label: qsTr("Thickness, compacted")
            value: lift.thickness
            unit: qsTr("in.")
            onClicked: lift.typeLift()
        }
    }
    SectionHead {
        width: parent.width
        visible: lift.lifts.count > 0
        title: qsTr("Lifts of this lot")
        count: lift.lifts.count
    }
    RowColumn {
        objectName: "liftRows"
        width: parent.width
        symbolColumn: false
        rows: lift.lifts
    }
}
