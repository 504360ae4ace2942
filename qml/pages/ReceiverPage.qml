import QtQuick
import Groundcount

// Where the positions of this device come from, and how it stands.
FocusScope {
    id: root

    property string subject: ""
    readonly property Receiver receiver: Desk.receiver

    objectName: "receiverPage"

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    Flickable {
        anchors.fill: parent
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
                hasBack: true
                title: qsTr("Receiver")
                onBack: Desk.kit = ""
            }
            Body {
                width: parent.width
                color: Theme.ink2
                text: qsTr("The place of a test is the mean of many positions. A surveying receiver sends NMEA 0183 sentences over the local network or a serial line; a phone's own receiver knows its place to some paces only.")
            }
            ChoiceBar {
                objectName: "receiverKind"
                width: parent.width
                words: root.receiver.kindWords // qmllint disable type
                chosen: root.receiver.kindIndex
                name: qsTr("Receiver")
                onPicked: index => root.receiver.pickKind(index)
            }
            ReasonField {
                objectName: "receiverWhere"
                visible: root.receiver.whereLabel !== ""
                width: parent.width
                label: root.receiver.whereLabel
                text: root.receiver.where
                onEdited: text => root.receiver.where = text
            }
            ReasonField {
                objectName: "receiverSpeed"
                visible: root.receiver.asksSpeed
                width: parent.width
                label: qsTr("Speed, bits a second")
                text: root.receiver.speed
                onEdited: text => root.receiver.speed = text
            }
            NotYetButton {
                objectName: "receiverMissing"
                visible: root.receiver.missing !== ""
                width: parent.width
                reason: root.receiver.missing
            }
            PrimaryButton {
                objectName: "receiverUse"
                visible: root.receiver.missing === ""
                width: parent.width
                text: qsTr("Use this")
                onClicked: root.receiver.use()
            }
            Body {
                objectName: "receiverState"
                width: parent.width
                text: root.receiver.state
                Accessible.role: Accessible.Indicator
            }
            CautionLine {
                objectName: "receiverTrouble"
                width: parent.width
                text: root.receiver.trouble
            }
        }
    }
}
