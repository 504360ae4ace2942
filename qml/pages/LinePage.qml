import QtQuick
import Groundcount

// A straight line off the plans: name, begin station, both ends.
KitSheet {
    id: root

    property string subject: ""

    objectName: "linePage"
    form: line

    LineSheet {
        id: line
        session: Session
        onSealed: Desk.kit = ""
    }
    Body {
        width: parent.width
        color: Theme.ink2
        text: qsTr("Stations count along it. A line with curves or station equations comes in a site file.")
    }
    LinkRow {
        objectName: "lineSiteFile"
        width: parent.width
        text: qsTr("Lines out of a site file")
        onClicked: Desk.kit = "site-file"
    }
    ReasonField {
        objectName: "lineName"
        width: parent.width
        label: qsTr("Name of the line")
        text: line.name
        onEdited: text => line.setName(text)
    }
    Column {
        width: parent.width
        EntryRow {
            objectName: "lineBegin"
            width: parent.width
            label: qsTr("Begin station")
            value: line.beginStation
            onClicked: line.typeBegin()
        }
        EntryRow {
            objectName: "lineFrom"
            width: parent.width
            label: qsTr("Begin")
            value: line.fromText
            unit: line.unit
            onClicked: line.typeFrom()
        }
        EntryRow {
            objectName: "lineTo"
            width: parent.width
            label: qsTr("End")
            value: line.toText
            unit: line.unit
            onClicked: line.typeTo()
        }
    }
    Body {
        objectName: "lineText"
        width: parent.width
        visible: text !== ""
        font.weight: Theme.strong
        text: line.lineText
    }
}
