import QtQuick
import Groundcount

// Who has the gauge and where: signed out, in transit, at site, signed in.
KitSheet {
    id: root

    property string subject: ""

    objectName: "custodyPage"
    form: custody

    CustodySheet {
        id: custody
        session: Session
        subject: root.subject
    }
    FigureRow {
        width: parent.width
        figureSize: Theme.sizeMeasured
        label: qsTr("Now")
        figure: custody.now
    }
    ChoiceBar {
        objectName: "custodyGauge"
        width: parent.width
        visible: words.length > 1
        words: custody.gaugeWords // qmllint disable type
        chosen: custody.gaugeIndex
        name: qsTr("Gauge")
        onPicked: index => custody.pickGauge(index)
    }
    SectionHead {
        width: parent.width
        title: qsTr("What happens")
        count: custody.who
    }
    ChoiceBar {
        objectName: "custodyEvent"
        width: parent.width
        words: custody.eventWords // qmllint disable type
        chosen: custody.eventIndex
        name: qsTr("What happens")
        onPicked: index => custody.pickEvent(index)
    }
    ReasonField {
        objectName: "custodyPlace"
        width: parent.width
        label: qsTr("Where")
        text: custody.place
        onEdited: text => custody.setPlace(text)
    }
    SectionHead {
        width: parent.width
        title: qsTr("Barriers that hold it")
    }
    ChoiceBar {
        objectName: "custodyBarriers"
        width: parent.width
        words: custody.barrierWords // qmllint disable type
        chosen: custody.barrierIndex
        name: qsTr("Barriers")
        onPicked: index => custody.pickBarriers(index)
    }
    CautionLine {
        objectName: "barrierCaution"
        width: parent.width
        text: custody.barrierCaution
    }
    CheckColumn {
        objectName: "custodyChecks"
        width: parent.width
        rows: custody.checks
        onPicked: rowId => custody.see(rowId)
    }
    CautionLine {
        objectName: "badgeCaution"
        width: parent.width
        text: custody.badgeCaution
    }
    CautionLine {
        objectName: "papersCaution"
        width: parent.width
        text: custody.papersCaution
    }
    CautionLine {
        width: parent.width
        text: custody.caution
    }
    Body {
        width: parent.width
        color: Theme.ink2
        text: custody.governs
    }
    SectionHead {
        width: parent.width
        visible: custody.history.count > 0
        title: qsTr("Before")
    }
    WrapColumn {
        objectName: "custodyHistory"
        width: parent.width
        rows: custody.history
    }
    LinkRow {
        objectName: "custodyLog"
        width: parent.width
        visible: custody.subject !== ""
        text: qsTr("Log of the custody, to sign")
        onClicked: Desk.paper = "custody:" + custody.subject
    }
}
