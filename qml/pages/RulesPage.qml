import QtQuick
import Groundcount

// The rule set in force: every limit with its source; touched, it changes in a copy, and the copy shows what differs.
KitSheet {
    id: root

    property string subject: ""

    objectName: "rulesPage"
    form: rules

    RulesSheet {
        id: rules
        session: Session
        subject: root.subject
    }
    Body {
        width: parent.width
        visible: text !== ""
        color: Theme.ink2
        text: rules.note
    }
    Column {
        width: parent.width
        visible: rules.isCopy
        spacing: Theme.gap2
        SectionHead {
            width: parent.width
            title: qsTr("The copy differs in")
            count: rules.differences.count
        }
        WrapColumn {
            objectName: "differences"
            width: parent.width
            rows: rules.differences
            onPicked: rowId => rules.typeLimit(rowId)
        }
        ReasonField {
            objectName: "copyName"
            width: parent.width
            label: qsTr("Name of the copy")
            text: rules.name
            onEdited: text => rules.setName(text)
        }
        ReasonField {
            objectName: "copyRevision"
            width: parent.width
            label: qsTr("Revision")
            text: rules.revision
            onEdited: text => rules.setRevision(text)
        }
        ReasonField {
            objectName: "copySource"
            width: parent.width
            label: qsTr("Source of what differs")
            text: rules.source
            onEdited: text => rules.setSource(text)
        }
        ChoiceBar {
            objectName: "copyMark"
            width: parent.width
            words: rules.markWords // qmllint disable type
            chosen: rules.markIndex
            name: qsTr("How good the source is")
            onPicked: index => rules.pickMark(index)
        }
        SecondaryButton {
            objectName: "dropCopy"
            width: parent.width
            text: qsTr("Throw the copy away")
            onClicked: rules.startAgain()
        }
    }
    SectionHead {
        width: parent.width
        title: qsTr("Limits, with their source")
        count: rules.limits.count
    }
    WrapColumn {
        objectName: "ruleLimits"
        width: parent.width
        rows: rules.limits
        onPicked: rowId => rules.typeLimit(rowId)
    }
    SectionHead {
        width: parent.width
        title: qsTr("Choices, with their source")
        count: rules.choices.count
    }
    WrapColumn {
        objectName: "ruleChoices"
        width: parent.width
        visible: rules.wordsId === ""
        rows: rules.choices
        onPicked: rowId => rules.openChoice(rowId)
    }
    Column {
        width: parent.width
        visible: rules.wordsId !== ""
        SectionHead {
            width: parent.width
            title: rules.wordsTitle
        }
        WrapColumn {
            objectName: "ruleWords"
            width: parent.width
            rows: rules.words
            onPicked: rowId => rules.pickWord(rowId)
        }
    }
}
