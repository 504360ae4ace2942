import QtQuick
import Groundcount

// A material and its moisture-density test: peak, curve, points, coarse particles.
KitSheet {
    id: root

    property string subject: ""

    objectName: "materialPage"
    form: sheet

    MaterialSheet {
        id: sheet
        session: Session
        subject: root.subject
    }
    Item {
        id: figures
        readonly property bool stacked: maximum.implicitWidth + optimum.implicitWidth + Theme.gap3 > width
        width: parent.width
        height: stacked ? maximum.implicitHeight + optimum.implicitHeight + Theme.gap2 : maximum.implicitHeight
        visible: sheet.maximum !== ""
        Figure {
            id: maximum
            objectName: "maximum"
            label: qsTr("Maximum dry density")
            figure: sheet.maximum
            unit: sheet.densityUnit
            uncertainty: sheet.spread
        }
        Figure {
            id: optimum
            objectName: "optimum"
            x: parent.width - width
            y: figures.stacked ? maximum.implicitHeight + Theme.gap2 : 0
            toTheRight: true
            label: qsTr("Optimum")
            figure: sheet.optimum
            unit: qsTr("%")
        }
    }
    ProctorChart {
        width: parent.width
        height: 340
        visible: sheet.plot.there
        plot: sheet.plot
    }
    Body {
        objectName: "saturation"
        width: parent.width
        visible: text !== ""
        color: Theme.ink2
        text: sheet.saturation
    }
    CautionLine {
        objectName: "peakRefusal"
        width: parent.width
        text: sheet.refusal
    }
    SectionHead {
        width: parent.width
        title: qsTr("Peak by")
    }
    ChoiceBar {
        objectName: "peakBy"
        width: parent.width
        words: sheet.peakWords // qmllint disable type
        chosen: sheet.peakIndex
        name: qsTr("Peak by")
        onPicked: index => sheet.pickPeak(index)
    }
    EntryRow {
        objectName: "byHand"
        width: parent.width
        visible: sheet.peakIndex === MaterialSheet.ByHand
        label: qsTr("Peak by hand")
        value: sheet.byHand
        onClicked: sheet.typeByHand()
    }
    WrapColumn {
        objectName: "otherPeaks"
        width: parent.width
        rows: sheet.otherPeaks
    }
    SectionHead {
        width: parent.width
        visible: sheet.warnings.count > 0
        title: qsTr("Look again")
    }
    WrapColumn {
        objectName: "peakWarnings"
        width: parent.width
        rows: sheet.warnings
    }
    SectionHead {
        width: parent.width
        title: qsTr("Points")
        count: sheet.pointsText
    }
    WrapColumn {
        objectName: "proctorPoints"
        width: parent.width
        rows: sheet.points
    }
    SecondaryButton {
        objectName: "typePoints"
        width: parent.width
        text: qsTr("Type the points")
        onClicked: sheet.typePoints()
    }
    SecondaryButton {
        objectName: "addPoint"
        width: parent.width
        visible: sheet.points.count >= 5
        text: qsTr("One more point")
        onClicked: sheet.addPoint()
    }
    EntryRow {
        objectName: "solidsGravity"
        width: parent.width
        label: qsTr("Gravity of the solids")
        value: sheet.gravity
        onClicked: sheet.typeGravity()
    }
    EntryRow {
        objectName: "maximumUncertainty"
        width: parent.width
        label: qsTr("Standard uncertainty of the maximum")
        value: sheet.uncertainty
        unit: sheet.densityUnit
        onClicked: sheet.typeUncertainty()
    }
    EntryRow {
        objectName: "coarse"
        width: parent.width
        label: qsTr("Coarse particles")
        value: sheet.coarse
        onClicked: sheet.typeCoarse()
    }
    SectionHead {
        width: parent.width
        title: qsTr("Material")
    }
    ChoiceBar {
        objectName: "materialChoice"
        width: parent.width
        visible: words.length > 0 && !sheet.isOld
        words: sheet.materialWords // qmllint disable type
        chosen: sheet.materialIndex
        name: qsTr("Material")
        onPicked: index => sheet.pickMaterial(index)
    }
    ReasonField {
        objectName: "materialName"
        width: parent.width
        label: qsTr("Material")
        text: sheet.material
        onEdited: text => sheet.setMaterial(text)
    }
    ReasonField {
        objectName: "materialDescription"
        width: parent.width
        label: qsTr("What it is, where from")
        text: sheet.description
        onEdited: text => sheet.setDescription(text)
    }
    ReasonField {
        objectName: "soilClass"
        width: parent.width
        label: qsTr("Soil class")
        text: sheet.soilClass
        onEdited: text => sheet.setSoilClass(text)
    }
    SectionHead {
        width: parent.width
        title: qsTr("Test")
    }
    ReasonField {
        objectName: "proctorName"
        width: parent.width
        label: qsTr("Number of the test")
        text: sheet.name
        onEdited: text => sheet.setName(text)
    }
    ReasonField {
        objectName: "proctorStandard"
        width: parent.width
        label: qsTr("Standard")
        text: sheet.standard
        onEdited: text => sheet.setStandard(text)
    }
    ReasonField {
        objectName: "proctorMethod"
        width: parent.width
        label: qsTr("Method")
        text: sheet.method
        onEdited: text => sheet.setMethod(text)
    }
    ReasonField {
        objectName: "proctorWhy"
        width: parent.width
        visible: sheet.asksWhy
        label: qsTr("Why it is amended")
        text: sheet.why
        onEdited: text => sheet.setWhy(text)
    }
    LinkRow {
        objectName: "referenceSheet"
        width: parent.width
        visible: sheet.subject !== ""
        text: qsTr("Sheet of this reference test, to sign")
        onClicked: Desk.paper = "reference:" + sheet.subject
    }
}
