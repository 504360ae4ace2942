import QtQuick
import Groundcount

// A file of the plans: what it holds, what it does not say, what each layer is, drawn over the job; then it is sealed.
KitSheet {
    id: root

    property string subject: ""

    objectName: "siteFilePage"
    form: sheet

    SiteFileSheet {
        id: sheet
        session: Session
    }
    FilePick {
        id: pick
        endings: ["*.gpkg", "*.shp", "*.geojson", "*.json", "*.kml", "*.dxf", "*.xml", "*.landxml"]
        onPicked: file => sheet.chooseFile(file)
    }
    Body {
        objectName: "siteDone"
        width: parent.width
        visible: text !== ""
        font.weight: Theme.strong
        text: sheet.doneText
    }
    Body {
        width: parent.width
        visible: !sheet.there
        text: qsTr("Alignments, lot areas, walls, pipes and structures out of GeoPackage, Shapefile, GeoJSON, KML, DXF or LandXML. The file is read apart from this program and stays as it is.")
    }
    Body {
        width: parent.width
        color: Theme.ink2
        text: qsTr("A line on a plan shows where somebody drew it. Call before digging.")
    }
    SecondaryButton {
        objectName: "siteChoose"
        width: parent.width
        tall: !sheet.there
        text: sheet.there ? qsTr("Choose another file") : qsTr("Choose a file")
        onClicked: pick.open()
    }
    Column {
        width: parent.width
        visible: !sheet.there
        spacing: Theme.gap2
        ReasonField {
            id: typedPath
            objectName: "sitePath"
            width: parent.width
            label: qsTr("Or its place on this device")
            text: sheet.path
        }
        SecondaryButton {
            objectName: "siteRead"
            width: parent.width
            text: sheet.reading ? qsTr("Reading the file") : qsTr("Read this file")
            onClicked: sheet.readPath(typedPath.text)
        }
    }
    CautionLine {
        objectName: "siteRefusal"
        width: parent.width
        text: sheet.refusal
    }
    Column {
        width: parent.width
        visible: sheet.there
        SectionHead {
            width: parent.width
            title: qsTr("Found")
        }
        RowColumn {
            objectName: "siteFound"
            width: parent.width
            symbolColumn: false
            rows: sheet.found
        }
    }
    SiteFileQuestions {
        width: parent.width
        sheet: sheet
    }
    Column {
        width: parent.width
        visible: sheet.there
        spacing: Theme.gap2
        SectionHead {
            width: parent.width
            title: qsTr("Layers")
            count: sheet.layers.count
        }
        RowColumn {
            objectName: "siteLayers"
            width: parent.width
            symbolColumn: false
            rows: sheet.layers
            chosenId: sheet.layer
            onPicked: rowId => sheet.pickLayer(rowId)
        }
        Body {
            width: parent.width
            text: qsTr("What is %1?").arg(sheet.layerName)
        }
        ChoiceBar {
            objectName: "siteKind"
            width: parent.width
            words: sheet.kindWords // qmllint disable type
            chosen: sheet.kind
            name: qsTr("Kind of the layer")
            onPicked: index => sheet.pickKind(index)
        }
    }
    SiteFileNeeds {
        width: parent.width
        sheet: sheet
    }
    CautionLine {
        objectName: "siteDoubt"
        width: parent.width
        text: sheet.doubt
    }
    SiteFilePreview {
        width: parent.width
        sheet: sheet
    }
}
