// Longer than 250 lines: the map with what lies over it: buttons, panels and sheets are placed by each other.
pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Where it was tested and what is missing: the map with lift picker, legend and the thing that was touched.
FocusScope {
    id: root

    readonly property bool listed: Desk.place === "map" && !Desk.testOpen && width >= Theme.wideFrom - Theme.railWidth
    // wide, the thing that is touched stands beside the map; with less room for three it takes the list's place
    readonly property bool beside: listed && page.chosenId !== ""
    readonly property bool listShown: listed && (!beside || width >= Theme.threeFrom)
    // a map with no room for the lift picker over the buttons has them side by side, and shows the ground on their left
    readonly property real upright: picker.height > buttons.height ? picker.height : buttons.height
    readonly property real room: height - head.height - upright - 2 * Theme.gap4
    readonly property bool low: ground.height < picker.height + buttons.height + 3 * Theme.gap4
    readonly property real controls: (low ? 2 * Theme.mapControl + Theme.gap2 : Theme.mapControl) + 2 * Theme.gap4
    readonly property real listWidth: !listShown ? 0 : beside ? 340 : 412

    objectName: "mapPage"

    MapView {
        id: page
        session: Session
        theme: Theme.name
        coverageShown: Desk.coverageShown
    }
    RowScroll {
        id: list
        objectName: "mapList"
        visible: root.listShown
        width: root.listWidth
        height: parent.height
        dense: true
        rows: page.tests
        chosenId: page.chosenId
        onPicked: rowId => page.choose(rowId)
        Column {
            parent: list.headerItem
            x: Theme.margin
            topPadding: Theme.gap3
            width: list.rowWidth
            PageHead {
                width: parent.width
                title: page.title
                subtitle: page.subtitle
            }
            Rule {
                width: parent.width
            }
        }
    }
    Rectangle {
        visible: root.listShown
        x: list.width
        width: Theme.hairWidth
        height: parent.height
        color: Theme.ink
    }
    Item {
        id: head
        anchors.left: list.right
        anchors.right: parent.right
        visible: !root.listed
        height: visible ? headWords.implicitHeight + Theme.gap3 + Theme.gap2 : 0
        PageHead {
            id: headWords
            x: Theme.margin
            y: Theme.gap3
            width: parent.width - 2 * Theme.margin
            title: page.title
            subtitle: page.subtitle
        }
        Rule {
            width: parent.width
            anchors.bottom: parent.bottom
        }
    }
    GroundMap {
        id: ground
        objectName: "groundMap"
        anchors.top: head.bottom
        anchors.bottom: card.visible ? card.top : heldCard.visible ? heldCard.top : legend.visible ? legend.top : covered.visible ? covered.top : parent.bottom
        anchors.left: list.right
        anchors.leftMargin: root.listShown ? Theme.hairWidth : 0
        anchors.right: pane.left
        clip: true
        focus: true
        source: page.source
        lift: page.lift
        chosenId: page.chosenId
        ownEast: Session.ownEast - page.originEast
        ownNorth: Session.ownNorth - page.originNorth
        ownAccuracyMetres: Session.ownAccuracyMetres
        ownLabel: Session.ownLabel
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
        scaleBarInset: root.low ? Qt.point(width, Theme.gap3) : Qt.point(100, 20)
        fitInset: root.low ? Qt.point(root.controls, Theme.target) : Qt.point(0, 0)
        keepClear: [Qt.rect(picker.x - ground.x, picker.y - ground.y, picker.width, picker.height),
            Qt.rect(buttons.x - ground.x, buttons.y - ground.y, buttons.width, buttons.height)]
        Accessible.role: Accessible.Graphic
        Accessible.name: page.title + ", " + page.subtitle
        onPicked: id => page.choose(id)
        onTappedAt: (east, north) => page.touch(east, north)
        onHeldAt: (east, north) => page.hold(east, north, ground.pixelsPerMetre)
    }
    Body {
        objectName: "mapEmpty"
        visible: !page.hasContent
        anchors.centerIn: ground
        text: qsTr("Nothing to draw yet.")
    }
    Rectangle {
        objectName: "mapReceiver"
        visible: Session.receiverTrouble !== ""
        anchors.top: ground.top
        anchors.left: ground.left
        anchors.right: root.low ? buttons.left : picker.left
        anchors.margins: Theme.gap2
        height: receiverWords.implicitHeight + 2 * Theme.gap2
        color: Theme.paper
        radius: Theme.fieldRadius
        CautionLine {
            id: receiverWords
            x: Theme.gap2
            y: Theme.gap2
            width: parent.width - 2 * Theme.gap2
            text: Session.receiverTrouble
        }
    }
    LiftPicker {
        id: picker
        anchors.top: ground.top
        anchors.right: ground.right
        anchors.margins: Theme.gap4
        lift: page.liftText
        canGoUp: page.canGoUp
        canGoDown: page.canGoDown
        onUp: page.goUp()
        onDown: page.goDown()
    }
    Column {
        id: buttons
        objectName: "mapButtons"
        x: ground.x + ground.width - root.controls + Theme.gap4
        y: root.low ? picker.y : ground.y + ground.height - height - Theme.gap4
        spacing: Theme.gap2
        MapButton {
            objectName: "coverageButton"
            glyph: Glyph.Cells
            text: page.coverageShown ? qsTr("Hide the coverage") : qsTr("Show the coverage")
            onClicked: Desk.coverageShown = !Desk.coverageShown
        }
        MapButton {
            objectName: "legendButton"
            glyph: Glyph.Layers
            text: qsTr("Legend")
            onClicked: legend.open = !legend.open
        }
        MapButton {
            objectName: "locateButton"
            glyph: Glyph.Locate
            text: qsTr("Show where I am")
            onClicked: ground.centreOnOwn() || ground.fitAll()
        }
    }
    Body {
        objectName: "touchedText"
        visible: page.touchedText !== "" && !heldCard.visible
        anchors.left: ground.left
        anchors.bottom: ground.bottom
        anchors.margins: Theme.gap3
        anchors.bottomMargin: root.low ? Theme.gap3 + Theme.mapControl : Theme.gap3 // above the scale bar
        text: page.touchedText
        font.weight: Theme.strong
    }
    MapLegend {
        id: legend
        property bool open: false
        visible: open && !card.visible && !heldCard.visible
        anchors.left: list.right
        anchors.right: pane.left
        anchors.bottom: parent.bottom
        room: root.room
        onClosed: open = false
    }
    MapHeldCard {
        id: heldCard
        anchors.left: list.right
        anchors.right: pane.left
        anchors.bottom: parent.bottom
        page: page
    }
    Rectangle {
        id: card
        objectName: "mapCard"
        visible: page.chosenId !== "" && !root.beside
        anchors.left: list.right
        anchors.right: parent.right
        height: visible ? cardColumn.implicitHeight + Theme.gap4 : 0
        anchors.bottom: parent.bottom
        color: Theme.paper
        Rule {
            width: parent.width
        }
        Column {
            id: cardColumn
            x: Theme.margin
            y: Theme.gap2
            width: parent.width - 2 * Theme.margin
            spacing: Theme.gap2
            ListRow {
                width: parent.width
                mark: page.chosenMark
                title: page.chosenTitle
                second: page.chosenText
                figure: page.chosenFigure
                ruled: false
            }
            Row {
                width: parent.width
                spacing: Theme.gap3
                SecondaryButton {
                    objectName: "cardClose"
                    width: (parent.width - Theme.gap3) / 2
                    text: qsTr("Close")
                    onClicked: page.choose("")
                }
                SecondaryButton {
                    objectName: "cardOpen"
                    visible: page.chosenIsTest || page.chosenMark === Mark.Owed
                    width: (parent.width - Theme.gap3) / 2
                    text: page.chosenIsTest ? qsTr("Open the test") : qsTr("Start a test here")
                    onClicked: page.chosenIsTest ? Desk.openTest(page.chosenId) : Desk.startAt(page.chosenId)
                }
            }
        }
    }
    MapCoverageCard {
        id: covered
        visible: page.coverageShown && !card.visible && !heldCard.visible && !legend.visible
        anchors.left: list.right
        anchors.right: pane.left
        anchors.bottom: parent.bottom
        room: root.room
        page: page
    }
    MapDetail {
        id: pane
        objectName: "mapDetail"
        visible: root.beside
        x: root.beside ? parent.width - width : parent.width
        width: 340
        height: parent.height
        page: page
    }
}
