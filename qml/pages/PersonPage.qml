import QtQuick
import Groundcount

// A person: name, role, certificate and its end.
KitSheet {
    id: root

    property string subject: ""

    objectName: "personPage"
    form: person

    PersonSheet {
        id: person
        session: Session
        subject: root.subject
    }
    Body {
        objectName: "atWork"
        width: parent.width
        visible: person.isAtWork
        font.weight: Theme.strong
        text: qsTr("At work with this device: what is sealed bears this name.")
    }
    SecondaryButton {
        objectName: "takeOver"
        width: parent.width
        visible: person.canTakeOver
        text: qsTr("I am at work with this device")
        onClicked: person.takeOver()
    }
    CautionLine {
        objectName: "certificateCaution"
        width: parent.width
        text: person.expiryCaution
    }
    ReasonField {
        objectName: "personName"
        width: parent.width
        label: qsTr("Name")
        text: person.name
        onEdited: text => person.setName(text)
    }
    ChoiceBar {
        objectName: "personRole"
        width: parent.width
        words: person.roleWords // qmllint disable type
        chosen: person.roleIndex
        name: qsTr("Role")
        onPicked: index => person.pickRole(index)
    }
    Body {
        width: parent.width
        text: qsTr("Tests for")
    }
    ChoiceBar {
        objectName: "personParty"
        width: parent.width
        words: person.partyWords // qmllint disable type
        chosen: person.partyIndex
        name: qsTr("Tests for")
        onPicked: index => person.pickParty(index)
    }
    ReasonField {
        objectName: "personCertificate"
        width: parent.width
        label: qsTr("Certificate, as printed")
        text: person.certificate
        onEdited: text => person.setCertificate(text)
    }
    EntryRow {
        objectName: "personExpires"
        width: parent.width
        label: qsTr("Certificate ends")
        value: person.expires
        onClicked: person.typeExpires()
    }
    ReasonField {
        objectName: "personWhy"
        width: parent.width
        visible: person.asksWhy
        label: qsTr("Why it changes")
        text: person.why
        onEdited: text => person.setWhy(text)
    }
    Body {
        width: parent.width
        topPadding: Theme.gap2
        color: Theme.ink2
        text: qsTr("Who may use a gauge is a matter of the licence and of training; a certificate here is a note, not a permission.")
    }
}
