import QtQuick
import Groundcount

// The crew's shared server: where it is, what was exchanged, what it gave that is not sound.
Flickable {
    id: root

    readonly property ExchangeView exchange: Desk.exchange
    property bool hasBack: true
    signal back

    objectName: "serverPane"
    contentHeight: column.implicitHeight + Theme.gap6
    boundsBehavior: Flickable.StopAtBounds
    clip: true

    Column {
        id: column
        x: Theme.margin
        y: Theme.gap3
        width: root.width < 600 + 2 * Theme.margin ? root.width - 2 * Theme.margin : 600
        spacing: Theme.gap3

        PageHead {
            width: parent.width
            hasBack: root.hasBack
            title: qsTr("Shared server")
            onBack: root.back()
        }
        Body {
            objectName: "serverEmpty"
            visible: root.exchange.empty
            width: parent.width
            text: qsTr("This book is empty: it can become this device's copy of a job.")
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: qsTr("Devices of one job send each other what is sealed. Everything that comes is verified before it is taken. Without a server a bundle file does the same.")
        }
        ReasonField {
            objectName: "serverAddress"
            width: parent.width
            enabled: !root.exchange.running
            label: qsTr("Address of the server, as its administrator gave it")
            text: root.exchange.address
            onEdited: text => root.exchange.address = text
        }
        ChoiceBar {
            objectName: "serverEvery"
            width: parent.width
            words: root.exchange.everyWords // qmllint disable type
            chosen: root.exchange.everyIndex
            name: qsTr("When to exchange")
            onPicked: index => root.exchange.pickEvery(index)
        }
        Body {
            objectName: "serverProgress"
            visible: root.exchange.running
            width: parent.width
            text: root.exchange.progress
            Accessible.role: Accessible.Indicator
        }
        Body {
            objectName: "serverDone"
            visible: root.exchange.done !== ""
            width: parent.width
            text: root.exchange.done
        }
        CautionLine {
            objectName: "serverTrouble"
            width: parent.width
            text: root.exchange.trouble
        }
        NotYetButton {
            objectName: "serverMissing"
            visible: root.exchange.missing !== ""
            width: parent.width
            reason: root.exchange.missing
        }
        PrimaryButton {
            objectName: "serverExchange"
            visible: root.exchange.missing === "" && !root.exchange.running && !root.exchange.empty
            width: parent.width
            text: qsTr("Exchange now")
            onClicked: root.exchange.exchange()
        }
        PrimaryButton {
            objectName: "serverJobsAsk"
            visible: root.exchange.missing === "" && !root.exchange.running && root.exchange.empty
            width: parent.width
            text: qsTr("Show the jobs on the server")
            onClicked: root.exchange.askJobs()
        }
        SecondaryButton {
            objectName: "serverStop"
            visible: root.exchange.running
            width: parent.width
            tall: true
            text: qsTr("Stop")
            onClicked: root.exchange.stop()
        }
        SectionHead {
            visible: root.exchange.empty && root.exchange.jobs.count > 0
            width: parent.width
            title: qsTr("Join a job")
            count: root.exchange.jobs.count
        }
        RowColumn {
            objectName: "serverJobs"
            visible: root.exchange.empty
            enabled: !root.exchange.running
            width: parent.width
            symbolColumn: false
            rows: root.exchange.jobs
            onPicked: rowId => root.exchange.join(rowId)
        }
        SectionHead {
            visible: root.exchange.refused.count > 0
            width: parent.width
            title: qsTr("Not taken")
            count: root.exchange.refused.count
        }
        RowColumn {
            objectName: "serverRefused"
            width: parent.width
            symbolColumn: false
            rows: root.exchange.refused
        }
        LabelledText {
            objectName: "serverJob"
            visible: root.exchange.jobId !== ""
            width: parent.width
            label: qsTr("Id of this job, for a device that joins")
            text: root.exchange.jobId
        }
        LinkRow {
            objectName: "serverBundle"
            width: parent.width
            enabled: !root.exchange.running
            text: qsTr("Take in a bundle file")
            onClicked: bundle.open()
        }
        LinkRow {
            objectName: "serverPublish"
            visible: !root.exchange.empty
            width: parent.width
            text: qsTr("Publish the layers in PostGIS")
            onClicked: Desk.lot = "publish"
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: qsTr("A password belongs in the password file of this device, never in the address. Stopping loses nothing.")
        }
    }
    FilePick {
        id: bundle
        objectName: "serverBundlePick"
        title: qsTr("Take in a bundle file")
        endings: ["*.fieldbundle"]
        onPicked: file => root.exchange.takeFile(file)
    }
}
