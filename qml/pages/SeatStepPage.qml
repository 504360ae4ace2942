import QtQuick
import Groundcount

// Step 3: surface, no rocking, depth and hole.
Column {
    id: root

    property TestSheet sheet: null
    readonly property SeatStep step: sheet ? sheet.seat : null
    readonly property bool open: step !== null && !step.isSealed

    objectName: "seatStep"
    spacing: Theme.gap2

    SectionHead {
        width: parent.width
        title: qsTr("Surface")
    }
    ChoiceBar {
        objectName: "surface"
        width: parent.width
        enabled: root.open
        words: root.step ? root.step.surfaceWords : []
        chosen: root.step ? root.step.surfaceIndex : -1
        name: qsTr("Surface")
        onPicked: index => root.step.pickSurface(index)
    }
    Body {
        width: parent.width
        color: Theme.ink2
        text: root.step ? root.step.voids : ""
    }
    ChoiceBar {
        objectName: "rocks"
        width: parent.width
        enabled: root.open
        words: root.step ? root.step.rockWords : []
        chosen: root.step ? root.step.rockIndex : -1
        name: qsTr("Rocking")
        onPicked: index => root.step.pickRock(index)
    }
    SectionHead {
        width: parent.width
        title: qsTr("Depth")
        count: root.step ? root.step.lift : ""
    }
    ChoiceBar {
        objectName: "depth"
        width: parent.width
        enabled: root.open
        words: root.step ? root.step.depthWords : []
        chosen: root.step ? root.step.depthIndex : -1
        name: qsTr("Depth of the test")
        onPicked: index => root.step.pickDepth(index)
    }
    Column {
        width: parent.width
        visible: root.step !== null && root.step.needsHole
        Pressable {
            objectName: "typeHole"
            width: parent.width
            height: Theme.fieldHeight * Theme.textScale
            enabled: root.open
            groundRadius: 0
            text: qsTr("Hole depth")
            Accessible.name: text + " " + (root.step ? root.step.hole : "")
            onClicked: root.step.typeHole()
            contentItem: Item {
                Text {
                    anchors.left: parent.left
                    anchors.right: holeFigure.left
                    anchors.rightMargin: Theme.gap2
                    anchors.verticalCenter: parent.verticalCenter
                    wrapMode: Text.WordWrap
                    text: qsTr("Hole depth")
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                }
                Figure {
                    id: holeFigure
                    anchors.right: chevron.left
                    anchors.rightMargin: Theme.gap2
                    anchors.verticalCenter: parent.verticalCenter
                    figureSize: Theme.sizeMeasured
                    figure: root.step && root.step.hole !== "" ? root.step.hole : "–"
                    unit: qsTr("in.")
                }
                Icon {
                    id: chevron
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    glyph: Glyph.Right
                    width: 22
                    height: 22
                }
            }
        }
        Body {
            objectName: "holeNeed"
            width: parent.width
            color: Theme.ink2
            visible: text !== ""
            text: root.step ? root.step.holeNeed : ""
        }
        CautionLine {
            objectName: "holeTrouble"
            width: parent.width
            text: root.step ? root.step.holeTrouble : ""
        }
    }
    Hair {
        width: parent.width
    }
    CautionLine {
        objectName: "rodCaution"
        width: parent.width
        text: root.step ? root.step.caution : ""
    }
}
