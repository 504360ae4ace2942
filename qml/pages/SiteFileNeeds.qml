import QtQuick
import Groundcount

// What a lot or a line of a site file needs beside its ground.
Column {
    id: root

    required property SiteFileSheet sheet

    objectName: "siteFileNeeds"
    visible: root.sheet.asksLot || root.sheet.asksBegin
    spacing: Theme.gap2

    Body {
        width: parent.width
        visible: root.sheet.asksLot
        text: qsTr("Reference test of the lots")
    }
    ChoiceBar {
        objectName: "siteReference"
        width: parent.width
        visible: root.sheet.asksLot
        words: root.sheet.referenceWords // qmllint disable type
        chosen: root.sheet.reference
        name: qsTr("Reference test of the lots")
        onPicked: index => root.sheet.pickReference(index)
    }
    EntryRow {
        objectName: "siteTests"
        width: parent.width
        visible: root.sheet.asksLot
        label: qsTr("Tests per lift")
        value: root.sheet.testsText
        onClicked: root.sheet.typeTests()
    }
    EntryRow {
        objectName: "siteBegin"
        width: parent.width
        visible: root.sheet.asksBegin
        label: qsTr("Begin station")
        value: root.sheet.beginText
        onClicked: root.sheet.typeBegin()
    }
}
