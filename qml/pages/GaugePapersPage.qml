import QtQuick
import Groundcount

// A gauge and its papers: who it is, its calibration curves, its leak test.
KitSheet {
    id: root

    property string subject: ""

    objectName: "gaugePapersPage"
    form: papers

    GaugePapers {
        id: papers
        session: Session
        subject: root.subject
    }
    CautionLine {
        objectName: "expiryCaution"
        width: parent.width
        text: papers.expiryCaution
    }
    SectionHead {
        width: parent.width
        title: qsTr("Gauge")
    }
    ReasonField {
        objectName: "gaugeName"
        width: parent.width
        label: qsTr("Name on the job")
        text: papers.name
        onEdited: text => papers.setName(text)
    }
    ReasonField {
        objectName: "gaugeSerial"
        width: parent.width
        label: qsTr("Serial")
        text: papers.serial
        onEdited: text => papers.setSerial(text)
    }
    ReasonField {
        objectName: "gaugeSources"
        width: parent.width
        label: qsTr("Sources, as on the certificate")
        text: papers.sources
        onEdited: text => papers.setSources(text)
    }
    EntryRow {
        objectName: "gaugePrescale"
        width: parent.width
        label: qsTr("Prescale")
        value: papers.prescale
        onClicked: papers.typePrescale()
    }
    ReasonField {
        objectName: "gaugeWhy"
        width: parent.width
        visible: papers.asksWhy
        label: qsTr("Why the gauge's record changes")
        text: papers.why
        onEdited: text => papers.setWhy(text)
    }
    SectionHead {
        width: parent.width
        title: qsTr("Calibration")
    }
    EntryRow {
        objectName: "calibratedOn"
        width: parent.width
        label: qsTr("Calibrated on")
        value: papers.calibratedOn
        onClicked: papers.typeDate("cal.on")
    }
    EntryRow {
        objectName: "calibrationExpires"
        width: parent.width
        label: qsTr("Ends")
        value: papers.calibrationExpires
        onClicked: papers.typeDate("cal.expires")
    }
    WrapColumn {
        objectName: "curves"
        width: parent.width
        rows: papers.curves
        onPicked: rowId => papers.typeCurve(rowId)
    }
    LinkRow {
        objectName: "addCurve"
        width: parent.width
        glyph: Glyph.Plus
        text: qsTr("Add the curve of a depth")
        onClicked: papers.addCurve()
    }
    EntryRow {
        objectName: "waterCurve"
        width: parent.width
        label: qsTr("Water curve")
        value: papers.water
        onClicked: papers.typeWater()
    }
    EntryRow {
        objectName: "calibrationCounts"
        width: parent.width
        label: qsTr("Standard counts that day")
        value: papers.calibrationCounts
        onClicked: papers.typeCalibrationCounts()
    }
    SecondaryButton {
        objectName: "lookForFiles"
        width: parent.width
        text: papers.filesShown ? qsTr("Hide the files") : qsTr("Read the curves from a CSV file")
        onClicked: papers.lookForFiles()
    }
    Column {
        width: parent.width
        visible: papers.filesShown
        spacing: Theme.gap2
        WrapColumn {
            objectName: "csvFiles"
            width: parent.width
            rows: papers.files
            onPicked: rowId => papers.importFile(rowId)
        }
        ReasonField {
            objectName: "csvPath"
            width: parent.width
            label: qsTr("Or where the file is")
            text: papers.path
            onEdited: text => papers.setPath(text)
        }
        SecondaryButton {
            objectName: "importPath"
            width: parent.width
            text: qsTr("Read this file")
            onClicked: papers.importFile(papers.path)
        }
    }
    Body {
        objectName: "importText"
        width: parent.width
        visible: text !== ""
        text: papers.importText
    }
    SectionHead {
        width: parent.width
        title: qsTr("Leak test")
    }
    EntryRow {
        objectName: "leakTestedOn"
        width: parent.width
        label: qsTr("Tested on")
        value: papers.leakTestedOn
        onClicked: papers.typeDate("leak.on")
    }
    EntryRow {
        objectName: "leakExpires"
        width: parent.width
        label: qsTr("Ends")
        value: papers.leakExpires
        onClicked: papers.typeDate("leak.expires")
    }
    ChoiceBar {
        objectName: "leakResult"
        width: parent.width
        words: papers.leakWords // qmllint disable type
        chosen: papers.leakIndex
        name: qsTr("Result of the leak test")
        onPicked: index => papers.pickLeak(index)
    }
    Body {
        width: parent.width
        topPadding: Theme.gap2
        color: Theme.ink2
        text: qsTr("How often a gauge is calibrated and leak-tested is a matter of the licence and of local rules. The manufacturer's instructions govern.")
    }
}
