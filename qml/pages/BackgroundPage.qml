import QtQuick
import Groundcount

// The picture of the ground under the map: chosen, shown or hidden, taken away.
KitSheet {
    id: root

    property string subject: ""

    objectName: "backgroundPage"
    form: sheet
    hasAct: false

    BackgroundSheet {
        id: sheet
        session: Session
    }
    FilePick {
        id: pick
        endings: ["*.tif", "*.tiff", "*.mbtiles", "*.gpkg"]
        onPicked: file => sheet.chooseFile(file)
    }
    Body {
        width: parent.width
        text: qsTr("A GeoTIFF, MBTiles or GeoPackage of tiles lies under the map, faded so that marks stay readable. It is read apart from this program, laid into the job's coordinate system and kept beside the book on this device; nothing of it is sealed.")
    }
    Body {
        width: parent.width
        color: Theme.ink2
        text: qsTr("A photograph shows the ground of its day, and a metre or more beside where it is. Distances to walls and pipes are taped.")
    }
    SecondaryButton {
        objectName: "backgroundChoose"
        width: parent.width
        tall: true
        text: sheet.there ? qsTr("Choose another file") : qsTr("Choose a file")
        onClicked: pick.open()
    }
    ReasonField {
        id: typedPath
        objectName: "backgroundPath"
        width: parent.width
        label: qsTr("Or its place on this device")
        text: sheet.typedPath
    }
    SecondaryButton {
        objectName: "backgroundRead"
        width: parent.width
        text: sheet.reading ? qsTr("Reading the file") : qsTr("Read this file")
        onClicked: sheet.readPath(typedPath.text)
    }
    CautionLine {
        objectName: "backgroundRefusal"
        width: parent.width
        text: sheet.refusal
    }
    Body {
        objectName: "backgroundDone"
        width: parent.width
        visible: text !== ""
        font.weight: Theme.strong
        text: sheet.doneText
    }
    Column {
        width: parent.width
        visible: sheet.there
        spacing: Theme.gap2
        RowColumn {
            width: parent.width
            symbolColumn: false
            rows: sheet.facts
        }
        ChoiceBar {
            objectName: "backgroundShown"
            width: parent.width
            words: sheet.shownWords // qmllint disable type
            chosen: sheet.shown
            name: qsTr("Background of the map")
            onPicked: index => sheet.pickShown(index)
        }
        SecondaryButton {
            objectName: "backgroundTakeAway"
            width: parent.width
            text: qsTr("Take it away from this device")
            onClicked: sheet.takeAway()
        }
    }
}
