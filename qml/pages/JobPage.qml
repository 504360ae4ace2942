import QtQuick
import Groundcount

// The job of this field book: begun here; later its name and place put right.
KitSheet {
    id: root

    property string subject: ""

    objectName: "jobPage"
    form: job

    JobSheet {
        id: job
        session: Session
        subject: root.subject
        onSealed: {
            Desk.kit = "";
            Desk.place = "day";
        }
    }
    ReasonField {
        objectName: "jobName"
        width: parent.width
        label: qsTr("Name of the job")
        text: job.name
        onEdited: text => job.setName(text)
    }
    ReasonField {
        objectName: "jobPlace"
        width: parent.width
        label: qsTr("Where it is")
        text: job.place
        onEdited: text => job.setPlace(text)
    }
    LabelledText {
        objectName: "jobSystemSealed"
        width: parent.width
        visible: job.isOld
        label: qsTr("Coordinate system")
        text: job.systemText
    }
    SystemSearch {
        objectName: "jobSystem"
        width: parent.width
        visible: !job.isOld
        chosen: job.systemText
        systems: job.systems
        trouble: job.systemTrouble
        onAsked: words => job.searchSystem(words)
        onPicked: code => job.pickSystem(code)
    }
    Body {
        width: parent.width
        visible: !job.isOld
        color: Theme.ink2
        text: qsTr("The plans name it. Every place of the book counts in it, so it cannot be changed later.")
    }
    LabelledText {
        objectName: "jobRules"
        width: parent.width
        label: qsTr("Rule set, densities in %1").arg(job.densityText)
        text: job.rulesText
    }
    CautionLine {
        objectName: "jobRulesTrouble"
        width: parent.width
        text: job.rulesTrouble
    }
    SecondaryButton {
        objectName: "jobRulesFile"
        width: parent.width
        visible: !job.isOld
        text: qsTr("Take a rule set from a file")
        onClicked: rulesPick.open()
    }
    FilePick {
        id: rulesPick
        objectName: "jobRulesPick"
        title: qsTr("Take a rule set from a file")
        endings: ["*.json"]
        onPicked: file => job.takeRules(file)
    }
    ReasonField {
        objectName: "jobPerson"
        width: parent.width
        visible: job.asksPerson
        label: qsTr("Your name, which is sealed with everything you do")
        text: job.person
        onEdited: text => job.setPerson(text)
    }
    ChoiceBar {
        objectName: "jobRole"
        width: parent.width
        visible: job.asksPerson
        words: job.roleWords // qmllint disable type
        chosen: job.roleIndex
        name: qsTr("Role")
        onPicked: index => job.pickRole(index)
    }
    ReasonField {
        objectName: "jobWhy"
        width: parent.width
        visible: job.asksWhy
        label: qsTr("Why it changes")
        text: job.why
        onEdited: text => job.setWhy(text)
    }
}
