import QtQuick
import Groundcount

// The file over the job's line and lots, before anything is sealed.
Column {
    id: root

    required property SiteFileSheet sheet

    objectName: "siteFilePreview"
    visible: root.sheet.placed
    spacing: Theme.gap2

    SectionHead {
        width: parent.width
        title: qsTr("On the map")
    }
    Body {
        objectName: "sitePlaceNote"
        width: parent.width
        visible: text !== ""
        text: root.sheet.placeNote
    }
    Rectangle {
        width: parent.width
        height: 300
        color: Theme.paper
        border.width: Theme.hairWidth
        border.color: Theme.ink2
        GroundMap {
            objectName: "sitePreview"
            anchors.fill: parent
            anchors.margins: Theme.hairWidth
            clip: true
            source: root.sheet.preview
            ink: Theme.ink
            ink2: Theme.ink2
            paper: Theme.paper
            hair: Theme.hair
            pass: Theme.pass
            fail: Theme.fail
            bodyWeight: Theme.body
            strongWeight: Theme.strong
            decidingWeight: Theme.deciding
            strokeScale: Theme.hairWidth
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("The file over the job's line and lots")
        }
    }
}
