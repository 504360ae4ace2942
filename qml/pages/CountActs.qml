import QtQuick
import Groundcount

// The foot while a count is ahead or runs: the warning, and what can be pressed.
Column {
    id: root

    required property TestSheet sheet
    property bool compact: false
    readonly property CountStep step: sheet.count
    readonly property bool locked: sheet.lock !== "" && step.stage === CountStep.Ready

    objectName: "countActs"
    spacing: Theme.gap2

    Row {
        spacing: Theme.gap3
        Icon {
            glyph: Glyph.Warning
            width: 30
            height: 30
        }
        Text {
            anchors.verticalCenter: parent.verticalCenter
            objectName: "countCaution"
            text: root.step.caution
            color: Theme.ink
            font.pixelSize: Theme.sizeAct
            font.weight: Theme.strong
            textFormat: Text.PlainText
        }
    }
    NotYetButton {
        objectName: "countLocked"
        width: parent.width
        compact: root.compact
        visible: root.locked
        text: root.sheet.lock
    }
    PrimaryButton {
        objectName: "startCount"
        width: parent.width
        visible: root.step.stage === CountStep.Ready && !root.locked
        compact: root.compact
        text: qsTr("Start the count")
        onClicked: root.step.start()
    }
    Row {
        width: parent.width
        spacing: Theme.gap2
        visible: root.step.stage === CountStep.Running
        SecondaryButton {
            objectName: "stopCount"
            width: 104
            height: root.compact ? 64 : 68
            text: qsTr("Stop")
            onClicked: root.step.stop()
        }
        NotYetButton {
            objectName: "enterNotYet"
            width: parent.width - 104 - Theme.gap2
            compact: root.compact
            visible: root.step.enterNotYet !== ""
            text: root.step.enterNotYet
        }
        PrimaryButton {
            objectName: "enterReading"
            width: parent.width - 104 - Theme.gap2
            visible: root.step.enterNotYet === ""
            compact: root.compact
            text: qsTr("Enter the reading")
            onClicked: root.step.enterReading()
        }
    }
}
