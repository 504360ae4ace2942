import QtQuick
import Groundcount

// The layers as tables of a PostGIS database, for programs of the owner that read one.
Flickable {
    id: root

    property bool hasBack: true
    signal back

    objectName: "publishPane"
    contentHeight: column.implicitHeight + Theme.gap6
    boundsBehavior: Flickable.StopAtBounds
    clip: true

    PublishView {
        id: page
        session: Session
    }
    Column {
        id: column
        x: Theme.margin
        y: Theme.gap3
        width: root.width < 600 + 2 * Theme.margin ? root.width - 2 * Theme.margin : 600
        spacing: Theme.gap3

        PageHead {
            width: parent.width
            hasBack: root.hasBack
            title: qsTr("Publish the layers")
            onBack: root.back()
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: qsTr("The layers of this job as tables of a PostGIS database. Each time all rows are made again from the sealed records; a reader sees the old state or the new one, never a part.")
        }
        ReasonField {
            objectName: "publishAddress"
            width: parent.width
            enabled: !page.running
            label: qsTr("Address of the database")
            text: page.address
            onEdited: text => page.address = text
        }
        ReasonField {
            objectName: "publishSchema"
            width: parent.width
            enabled: !page.running
            label: qsTr("Schema: lower-case letters, digits and _")
            text: page.schema
            onEdited: text => page.schema = text
        }
        ReasonField {
            objectName: "publishReaders"
            width: parent.width
            enabled: !page.running
            label: qsTr("Role that may read the tables, or nothing")
            text: page.readers
            onEdited: text => page.readers = text
        }
        Body {
            objectName: "publishProgress"
            visible: page.running
            width: parent.width
            text: page.progress
            Accessible.role: Accessible.Indicator
        }
        Body {
            objectName: "publishDone"
            visible: page.done !== ""
            width: parent.width
            text: page.done
        }
        CautionLine {
            objectName: "publishTrouble"
            width: parent.width
            text: page.trouble
        }
        NotYetButton {
            objectName: "publishMissing"
            visible: page.missing !== ""
            width: parent.width
            reason: page.missing
        }
        PrimaryButton {
            objectName: "publishNow"
            visible: page.missing === "" && !page.running
            width: parent.width
            text: qsTr("Publish now")
            onClicked: page.publish()
        }
        SecondaryButton {
            objectName: "publishStop"
            visible: page.running
            width: parent.width
            tall: true
            text: qsTr("Stop")
            onClicked: page.stop()
        }
        SectionHead {
            visible: page.tables.count > 0
            width: parent.width
            title: qsTr("Tables")
            count: page.tables.count
        }
        RowColumn {
            objectName: "publishTables"
            width: parent.width
            symbolColumn: false
            rows: page.tables
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: qsTr("The login needs the right to make schemas. A password belongs in the password file of this device, never in the address.")
        }
    }
}
