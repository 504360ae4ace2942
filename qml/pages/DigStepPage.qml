import QtQuick
import Groundcount

// Step 5: the check sample and a water content of another method; both may wait.
Column {
    id: root

    property TestSheet sheet: null
    readonly property DigStep step: sheet ? sheet.dig : null
    readonly property bool open: step !== null && !step.isSealed

    objectName: "digStep"
    spacing: Theme.gap2

    SectionHead {
        width: parent.width
        title: qsTr("Coarse particles")
    }
    ChoiceBar {
        objectName: "sample"
        width: parent.width
        enabled: root.open
        words: root.step ? root.step.sampleWords : []
        chosen: root.step ? root.step.sampleIndex : -1
        name: qsTr("Coarse particles")
        onPicked: index => root.step.pickSample(index)
    }
    Column {
        width: parent.width
        spacing: Theme.gap2
        visible: root.step !== null && root.step.isWeighed
        ChoiceBar {
            objectName: "sieve"
            width: parent.width
            enabled: root.open
            words: root.step ? root.step.sieveWords : []
            chosen: root.step ? root.step.sieveIndex : -1
            name: qsTr("Sieve")
            onPicked: index => root.step.pickSieve(index)
        }
        SecondaryButton {
            objectName: "typeMasses"
            width: parent.width
            visible: root.open
            text: qsTr("Type the masses")
            onClicked: root.step.typeMasses()
        }
        Text {
            objectName: "masses"
            width: parent.width
            text: root.step ? root.step.masses : ""
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.strong
            textFormat: Text.PlainText
            wrapMode: Text.WordWrap
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: root.step ? root.step.rule : ""
        }
        CautionLine {
            objectName: "sampleTrouble"
            width: parent.width
            text: root.step ? root.step.sampleTrouble : ""
        }
        CautionLine {
            objectName: "sampleDoubt"
            width: parent.width
            text: root.step ? root.step.sampleDoubt : ""
        }
    }
    SectionHead {
        width: parent.width
        title: qsTr("Moisture")
    }
    ChoiceBar {
        objectName: "moisture"
        width: parent.width
        enabled: root.open
        words: root.step ? root.step.moistureWords : []
        chosen: root.step ? root.step.moistureIndex : -1
        name: qsTr("Moisture")
        onPicked: index => root.step.pickMoisture(index)
    }
    Column {
        width: parent.width
        spacing: Theme.gap2
        visible: root.step !== null && root.step.moistureIndex === 1
        ChoiceBar {
            objectName: "otherMethod"
            width: parent.width
            enabled: root.open
            words: root.step ? root.step.methodWords : []
            chosen: root.step ? root.step.methodIndex : -1
            name: qsTr("Method")
            onPicked: index => root.step.pickMethod(index)
        }
        SecondaryButton {
            objectName: "typeContent"
            width: parent.width
            visible: root.open
            text: root.step && root.step.otherContent !== "" ? qsTr("%1 %").arg(root.step.otherContent) : qsTr("Type the moisture")
            onClicked: root.step.typeContent()
        }
    }
    StateBadge {
        objectName: "waiting"
        visible: root.step !== null && root.step.isWaiting
        mark: Mark.Waiting
        word: root.step && root.step.isWaiting ? qsTr("Waiting") : ""
    }
    Body {
        objectName: "waitingText"
        width: parent.width
        visible: text !== ""
        text: root.step ? root.step.waitingText : ""
    }
}
