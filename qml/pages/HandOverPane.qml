import QtQuick
import QtQuick.Dialogs
import Groundcount

// The owner's file: what it will hold, where it goes, how far it is.
Flickable {
    id: root

    property bool hasBack: true
    signal back

    objectName: "handOverPane"
    contentHeight: column.implicitHeight + Theme.gap6
    boundsBehavior: Flickable.StopAtBounds
    clip: true

    HandOverView {
        id: page
        session: Session
    }
    Column {
        id: column
        x: Theme.margin
        y: Theme.gap3
        width: root.width < 600 + 2 * Theme.margin ? root.width - 2 * Theme.margin : 600
        spacing: Theme.gap2

        PageHead {
            width: parent.width
            hasBack: root.hasBack
            title: qsTr("Hand over")
            onBack: root.back()
        }
        ChoiceBar {
            objectName: "formatChoice"
            width: parent.width
            words: page.formatWords // qmllint disable type
            chosen: page.formatIndex
            name: qsTr("Form of the file")
            enabled: !page.running
            onPicked: index => page.pickFormat(index)
        }
        Body {
            objectName: "formatNote"
            width: parent.width
            color: Theme.ink2
            text: page.formatNote
        }
        ChoiceBar {
            objectName: "layerChoice"
            visible: page.asksLayer
            width: parent.width
            words: page.layerWords // qmllint disable type
            chosen: page.layerIndex
            name: qsTr("Layer of the file")
            enabled: !page.running
            onPicked: index => page.pickLayer(index)
        }
        Body {
            objectName: "handOverProgress"
            visible: page.running
            width: parent.width
            text: page.progress
            Accessible.role: Accessible.Indicator
        }
        Body {
            objectName: "handOverDone"
            visible: page.done !== ""
            width: parent.width
            text: page.done
        }
        CautionLine {
            objectName: "handOverTrouble"
            width: parent.width
            text: page.trouble
        }
        NotYetButton {
            objectName: "handOverMissing"
            visible: page.missing !== ""
            width: parent.width
            reason: page.missing
        }
        PrimaryButton {
            objectName: "handOverWrite"
            visible: page.missing === "" && !page.running
            width: parent.width
            text: qsTr("Choose where it goes")
            onClicked: save.open()
        }
        SecondaryButton {
            objectName: "handOverStop"
            visible: page.running
            width: parent.width
            tall: true
            text: qsTr("Stop")
            onClicked: page.stop()
        }
        SectionHead {
            width: parent.width
            title: qsTr("What will be in it")
        }
        RowColumn {
            objectName: "handOverContents"
            width: parent.width
            symbolColumn: false
            rows: page.contents
        }
        LabelledText {
            objectName: "handOverColumns"
            visible: page.asksColumns && page.columns !== ""
            width: parent.width
            label: qsTr("Names of layers and columns out of")
            text: page.columns
        }
        LinkRow {
            objectName: "handOverColumnsPick"
            visible: page.asksColumns && !page.running && page.columns === ""
            width: parent.width
            text: qsTr("The owner's own names for layers and columns")
            onClicked: names.open()
        }
        LinkRow {
            objectName: "handOverColumnsDrop"
            visible: page.asksColumns && !page.running && page.columns !== ""
            width: parent.width
            text: qsTr("Our own names again")
            onClicked: page.dropColumns()
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: qsTr("A file of that name is replaced only when the new one is whole. The field book stays the evidence.")
        }
    }
    FilePick {
        id: names
        objectName: "handOverNames"
        title: qsTr("The owner's own names for layers and columns")
        endings: ["*.json"]
        onPicked: file => page.takeColumns(file)
    }
    // The system's own way to save; where there is none, Qt's. A Shapefile is a folder, named here as a file is.
    FileDialog {
        id: save
        objectName: "handOverSave"
        title: qsTr("Hand over")
        fileMode: FileDialog.SaveFile
        defaultSuffix: page.ending
        nameFilters: [page.ending === "" ? "*" : "*." + page.ending]
        currentFile: page.suggested
        onAccepted: page.write(save.selectedFile)
    }
}
