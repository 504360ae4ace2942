// Longer than 250 lines: five ways to say where a test is, of which one is open at a time: they share the step, the keypad and the place of the button.
pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Step 1: accuracy as a drawing, station and offset large, lot and lift, why the test is made.
Column {
    id: root

    property TestSheet sheet: null
    readonly property PlaceStep step: sheet ? sheet.place : null
    readonly property bool narrow: width < 340

    objectName: "placeStep"
    spacing: Theme.gap2

    Item {
        width: parent.width
        height: note.y + note.height
        visible: root.step !== null && !root.step.byHand && !root.step.isSealed

        FixScatter {
            id: scatter
            width: root.narrow ? 140 : 182
            height: width
            fixes: root.step ? root.step.scatter : []
            circleRadius: root.step ? root.step.circleRadius : 0
            squaresAcross: root.step ? root.step.squaresAcross : 3
            hasSite: root.step ? root.step.hasScatterSite : false
            site: root.step ? root.step.scatterSite : Qt.point(0, 0)
            Accessible.name: qsTr("Fixes round their mean, north up")
        }
        Column {
            id: fixWords
            anchors.left: scatter.right
            anchors.leftMargin: Theme.gap4
            anchors.right: parent.right
            spacing: Theme.gap2
            Figure {
                allowed: parent.width
                objectName: "accuracy"
                label: root.step ? root.step.accuracyLabel : ""
                figure: root.step && root.step.accuracy !== "" ? root.step.accuracy : "–"
                unit: root.step && root.step.accuracy !== "" ? qsTr("ft") : ""
            }
            LabelledText {
                objectName: "fixKind"
                width: parent.width
                label: qsTr("Fix")
                text: root.step ? root.step.fixKind : ""
            }
            LabelledText {
                objectName: "fixCount"
                width: parent.width
                label: root.step ? root.step.fixesLabel : ""
                text: root.step ? root.step.fixesText : ""
            }
        }
        Caption {
            id: note
            y: (fixWords.implicitHeight > scatter.height ? fixWords.implicitHeight : scatter.height) + Theme.gap1
            width: parent.width
            text: root.step ? root.step.scatterNote : ""
        }
    }
    CautionLine {
        objectName: "receiverTrouble"
        width: parent.width
        visible: text !== "" && root.step !== null && !root.step.byHand && !root.step.isSealed
        text: Session.receiverTrouble
    }
    LinkRow {
        objectName: "chooseReceiver"
        width: parent.width
        visible: root.step !== null && !root.step.byHand && !root.step.isSealed && root.step.noReceiver
        text: qsTr("Choose a receiver")
        onClicked: Desk.kit = "receiver"
    }
    Body {
        objectName: "positionTrouble"
        width: parent.width
        visible: text !== "" && root.step !== null && !root.step.byHand
        text: root.step ? root.step.positionTrouble : ""
    }
    LabelledText {
        width: parent.width
        visible: root.step !== null && (root.step.byHand || root.step.isSealed)
        label: qsTr("Place")
        text: root.step ? root.step.fixKind : ""
    }
    Body {
        objectName: "lineMissing"
        width: parent.width
        visible: text !== ""
        text: root.step ? root.step.lineMissing : ""
    }
    Rule {
        width: parent.width
    }
    ChoiceBar {
        objectName: "lineChoice"
        width: parent.width
        visible: root.step !== null && root.step.byTape && !root.step.isSealed && words.length > 1
        words: root.step ? root.step.lineWords : []
        chosen: root.step ? root.step.lineIndex : -1
        name: qsTr("Line that the tape was laid along")
        onPicked: index => root.step.pickLine(index)
    }
    Item {
        id: where
        // Large text: the offset stands below the station.
        readonly property bool below: stationFigure.implicitWidth + offsetFigure.implicitWidth + Theme.gap4 > width
        width: parent.width
        height: stationFigure.implicitHeight + (below ? offsetFigure.implicitHeight + Theme.gap2 : 0)
        Figure {
            id: stationFigure
            objectName: "station"
            label: qsTr("Station")
            figure: root.step ? root.step.station : ""
        }
        Figure {
            id: offsetFigure
            objectName: "offset"
            x: where.below ? 0 : parent.width - implicitWidth
            y: where.below ? stationFigure.implicitHeight + Theme.gap2 : 0
            width: implicitWidth
            toTheRight: !where.below
            label: qsTr("Offset")
            figure: root.step ? root.step.offset : ""
            unit: root.step ? root.step.offsetUnit : ""
        }
    }
    Row {
        width: parent.width
        spacing: 10
        visible: root.step !== null && !root.step.isSealed
        SecondaryButton {
            objectName: "typePlace"
            width: root.step && root.step.byHand ? (parent.width - 10) / 2 : parent.width
            visible: root.step !== null && root.step.lineWords.length > 0
            glyph: Glyph.Tape
            text: root.step && root.step.byTape ? qsTr("By tape") : qsTr("Place it by tape")
            onClicked: root.step.typePlace()
        }
        SecondaryButton {
            objectName: "useReceiver"
            width: root.step && root.step.lineWords.length > 0 ? (parent.width - 10) / 2 : parent.width
            visible: root.step !== null && root.step.byHand
            glyph: Glyph.Locate
            text: qsTr("Receiver")
            onClicked: root.step.useReceiver()
        }
    }
    Row {
        width: parent.width
        spacing: Theme.gap3
        visible: root.step !== null && root.step.siteText !== ""
        StateSymbol {
            mark: Mark.Owed
            width: 24
            height: 24
        }
        Body {
            objectName: "siteText"
            width: parent.width - 24 - Theme.gap3
            text: root.step ? root.step.siteText : ""
        }
    }
    Hair {
        width: parent.width
    }
    Flow {
        width: parent.width
        spacing: Theme.gap3
        Text {
            id: lotText
            objectName: "lotText"
            text: root.step ? root.step.lotText : ""
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.strong
            textFormat: Text.PlainText
        }
        Body {
            id: sublotText
            width: sublotFit.given
            TextFit {
                id: sublotFit
                shown: sublotText
                most: sublotText.parent.width
            }
            color: Theme.ink2
            text: root.step ? root.step.sublotText : ""
        }
    }
    LotStrip {
        width: parent.width
        height: 36
        visible: root.step !== null && root.step.stripBegin !== ""
        dividers: root.step ? root.step.stripDividers : []
        marks: root.step ? root.step.stripMarks : []
        along: root.step ? root.step.stripAlong : []
        across: root.step ? root.step.stripAcross : []
        Accessible.name: qsTr("The lot with its tests")
    }
    Item {
        width: parent.width
        height: Theme.lineBody
        visible: root.step !== null && root.step.stripBegin !== ""
        Caption {
            text: root.step ? root.step.stripBegin : ""
        }
        Caption {
            anchors.horizontalCenter: parent.horizontalCenter
            text: root.step ? root.step.stripMiddle : ""
        }
        Caption {
            anchors.right: parent.right
            text: root.step ? root.step.stripEnd : ""
        }
    }
    ChoiceBar {
        objectName: "liftChoice"
        width: parent.width
        visible: root.step !== null && !root.step.isSealed && words.length > 1
        words: root.step ? root.step.liftWords : []
        chosen: root.step ? root.step.liftIndex : -1
        name: qsTr("Lift")
        onPicked: index => root.step.pickLift(index)
    }
    Flow {
        width: parent.width
        spacing: Theme.gap4
        Caption {
            text: root.step ? root.step.gridLabel : ""
        }
        Body {
            objectName: "grid"
            text: root.step ? root.step.grid : ""
            wrapMode: Text.NoWrap
        }
    }
    ChoiceBar {
        objectName: "purpose"
        width: parent.width
        enabled: root.step !== null && !root.step.isSealed
        words: root.step ? root.step.purposeWords : []
        chosen: root.step ? root.step.purposeIndex : -1
        name: qsTr("Why this test is made")
        onPicked: index => root.step.pickPurpose(index)
    }
    Body {
        objectName: "retestText"
        width: parent.width
        visible: text !== ""
        font.weight: Theme.strong
        text: root.step ? root.step.retestText : ""
    }
    Repeater {
        model: root.step && root.step.asksRetestOf ? root.step.failures : null

        ListRow {
            required property string rowId
            required mark
            required lead
            required title
            required second
            required figure
            required word
            required wordMark

            objectName: "failure_" + rowId
            width: root.width
            onClicked: root.step.pickFailure(rowId)
        }
    }
    ReasonField {
        objectName: "rework"
        width: parent.width
        visible: root.step !== null && root.step.purposeIndex === 2 && !root.step.isSealed
        label: qsTr("What was reworked")
        text: root.step ? root.step.rework : ""
        onEdited: text => root.step.rework = text
    }
    ReasonField {
        objectName: "gaugeReason"
        width: parent.width
        visible: root.step !== null && root.step.gaugeMissing !== ""
        label: root.step ? qsTr("%1. Go on all the same, because").arg(root.step.gaugeMissing) : ""
        text: root.step ? root.step.gaugeReason : ""
        onEdited: text => root.step.giveGaugeReason(text)
    }
}
