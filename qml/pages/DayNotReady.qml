import QtQuick
import Groundcount

// The foot of Day while no test can be started: why, and the way round it with a reason.
Column {
    id: root

    property DayView day: null

    spacing: Theme.gap2

    NotYetButton {
        objectName: "startTestNotYet"
        width: parent.width
        reason: root.day ? root.day.startText : ""
    }
    SecondaryButton {
        objectName: "startWithReason"
        visible: root.day !== null && root.day.canStartWithReason
        width: parent.width
        text: qsTr("Start all the same, with a reason")
        onClicked: Desk.start()
    }
}
