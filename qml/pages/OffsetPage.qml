import QtQuick
import Groundcount

// An offset of a gauge with its evidence: trench, moisture or density.
KitSheet {
    id: root

    property string subject: ""
    readonly property bool open: !offset.isSealed

    objectName: "offsetPage"
    form: offset

    OffsetSheet {
        id: offset
        session: Session
        subject: root.subject
    }
    ChoiceBar {
        objectName: "offsetKind"
        width: parent.width
        enabled: root.open
        words: offset.kindWords // qmllint disable type
        chosen: offset.kind
        name: qsTr("What it corrects")
        onPicked: index => offset.pickKind(index)
    }
    Figure {
        objectName: "offsetFigure"
        visible: offset.figure !== ""
        label: qsTr("Offset")
        figure: offset.figure
        unit: offset.unit
    }
    Body {
        objectName: "offsetMeaning"
        width: parent.width
        visible: text !== ""
        color: Theme.ink2
        text: offset.meaning
    }
    CautionLine {
        objectName: "offsetDoubt"
        width: parent.width
        text: offset.doubt
    }
    Column {
        width: parent.width
        visible: offset.kind >= 0
        spacing: Theme.gap2
        SectionHead {
            width: parent.width
            title: qsTr("Evidence")
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: offset.evidenceText
        }
        WrapColumn {
            objectName: "evidence"
            width: parent.width
            rows: offset.evidence
        }
        SecondaryButton {
            objectName: "typeEvidence"
            width: parent.width
            visible: root.open
            text: offset.typeText
            onClicked: offset.typeEvidence()
        }
        SecondaryButton {
            objectName: "addEvidence"
            width: parent.width
            visible: root.open && offset.kind > OffsetSheet.Trench && offset.evidence.count >= 3
            text: qsTr("One more")
            onClicked: offset.addEvidence()
        }
        ChoiceBar {
            objectName: "offsetVariant"
            width: parent.width
            visible: offset.kind === OffsetSheet.Moisture
            enabled: root.open
            words: offset.variantWords // qmllint disable type
            chosen: offset.variant
            name: qsTr("How it is applied")
            onPicked: index => offset.pickVariant(index)
        }
        Body {
            width: parent.width
            visible: offset.kind === OffsetSheet.Moisture
            color: Theme.ink2
            text: offset.variantText
        }
        SectionHead {
            width: parent.width
            title: qsTr("Where it holds")
        }
        ReasonField {
            objectName: "offsetPlace"
            width: parent.width
            enabled: root.open
            label: qsTr("Where")
            text: offset.place
            onEdited: text => offset.setPlace(text)
        }
        ChoiceBar {
            objectName: "offsetGauge"
            width: parent.width
            visible: words.length > 1
            enabled: root.open
            words: offset.gaugeWords // qmllint disable type
            chosen: offset.gaugeIndex
            name: qsTr("Gauge")
            onPicked: index => offset.pickGauge(index)
        }
        EntryRow {
            objectName: "offsetOn"
            width: parent.width
            enabled: root.open
            label: qsTr("Taken on")
            value: offset.on
            onClicked: offset.typeOn()
        }
        EntryRow {
            objectName: "offsetExpires"
            width: parent.width
            enabled: root.open
            label: qsTr("Ends")
            value: offset.expires
            onClicked: offset.typeExpires()
        }
        EntryRow {
            objectName: "offsetDepth"
            width: parent.width
            enabled: root.open
            label: qsTr("Depth of the tests")
            value: offset.depth
            unit: qsTr("in.")
            onClicked: offset.typeDepth()
        }
        ChoiceBar {
            objectName: "offsetMaterial"
            width: parent.width
            visible: words.length > 0
            enabled: root.open
            words: offset.materialWords // qmllint disable type
            chosen: offset.materialIndex
            name: qsTr("Material")
            onPicked: index => offset.pickMaterial(index)
        }
    }
}
