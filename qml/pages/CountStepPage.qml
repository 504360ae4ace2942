pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Step 4: the timer and the ring while it counts, then the readings and what they say.
Column {
    id: root

    property TestSheet sheet: null
    readonly property CountStep step: sheet ? sheet.count : null

    objectName: "countStep"
    spacing: Theme.gap2

    TimerFigure {
        width: parent.width
        visible: root.step !== null && root.step.stage !== CountStep.Typed
        caption: root.step ? root.step.timerCaption : ""
        figure: root.step ? root.step.timerFigure : ""
        asideLead: root.step ? root.step.readingTitle : ""
        aside: root.step ? root.step.depthText : ""
        aside2: root.step ? root.step.orientationText : ""
        value: root.step ? root.step.timerValue : 0
        lowLimit: root.step ? root.step.timerLimit : 0
        limitLabel: root.step ? root.step.timerLimitLabel : ""
    }
    Column {
        width: parent.width
        spacing: Theme.gap2
        visible: root.step !== null && root.step.stage !== CountStep.Typed

        Rule {
            width: parent.width
        }
        Item {
            width: parent.width
            height: distance.implicitHeight
            Figure {
                id: distance
                objectName: "ringDistance"
                label: qsTr("You to the gauge")
                figure: root.step ? root.step.ringDistance : ""
                unit: root.step && root.step.ringKnown ? root.step.ringUnit : ""
                uncertainty: root.step ? root.step.ringSpread : ""
            }
            StateBadge {
                objectName: "ringWord"
                anchors.right: parent.right
                anchors.bottom: parent.bottom
                mark: root.step ? root.step.ringMark : Mark.CannotTell
                word: root.step ? root.step.ringWord : ""
                symbolSize: 28
            }
        }
        StandBackRing {
            width: parent.width
            height: parent.width < 340 ? 172 : 300
            distanceInRings: root.step ? root.step.distanceInRings : 0
            accuracyInRings: root.step ? root.step.accuracyInRings : 0
            bearing: root.step ? root.step.ringBearing : 0
            ringLabel: root.step ? root.step.ringLabel : ""
            gaugeLabel: qsTr("Gauge")
            ownLabel: qsTr("You")
            Accessible.name: root.step ? root.step.ringWord : ""
        }
        Body {
            width: parent.width
            color: Theme.ink2
            text: root.step ? root.step.ringSource : ""
        }
    }
    Column {
        width: parent.width
        spacing: Theme.gap2
        visible: root.step !== null && root.step.stage === CountStep.Typed

        SectionHead {
            width: parent.width
            title: root.step ? root.step.readingTitle : ""
            count: root.step ? root.step.depthText : ""
        }
        ChoiceBar {
            objectName: "form"
            width: parent.width
            enabled: root.step !== null && !root.step.isSealed
            words: root.step ? root.step.formWords : []
            chosen: root.step ? root.step.formIndex : -1
            name: qsTr("What is typed")
            onPicked: index => root.step.pickForm(index)
        }
        SecondaryButton {
            objectName: "typeReading"
            width: parent.width
            visible: root.step !== null && !root.step.isSealed
            text: root.step ? root.step.typeText : ""
            onClicked: root.step.enterReading()
        }
        Repeater {
            model: root.step ? root.step.readingLines : []

            LinkRow {
                id: readingLine

                required property int index
                required property string modelData

                objectName: "readingLine_" + index
                width: root.width
                text: readingLine.modelData
                enabled: root.step !== null && !root.step.isSealed
                glyph: enabled ? Glyph.Right : Glyph.None
                onClicked: root.step.retype(readingLine.index + 1)
            }
        }
        CautionLine {
            objectName: "readingTrouble"
            width: parent.width
            text: root.step ? root.step.readingTrouble : ""
        }
        Row {
            width: parent.width
            visible: root.step !== null && root.step.comparison !== ""
            spacing: Theme.gap2
            Body {
                objectName: "comparison"
                width: parent.width - comparisonWord.implicitWidth - Theme.gap2
                text: root.step ? root.step.comparison : ""
            }
            StateInk {
                id: comparisonInk
                mark: root.step ? root.step.comparisonMark : Mark.Nothing
            }
            Body {
                id: comparisonWord
                objectName: "comparisonWord"
                text: root.step ? root.step.comparisonWord : ""
                color: comparisonInk.color
                font.weight: Theme.strong
                wrapMode: Text.NoWrap
            }
        }
        Row {
            width: parent.width
            spacing: 10
            Repeater {
                id: seconds
                model: root.step ? root.step.secondActs : []

                SecondaryButton {
                    id: secondAct

                    required property int index
                    required property string modelData

                    objectName: "second_" + index
                    width: (root.width - 10) / 2
                    text: secondAct.modelData
                    onClicked: root.step.secondAct(secondAct.index)
                }
            }
        }
    }
    LinkRow {
        objectName: "struckLink"
        width: parent.width
        visible: root.step !== null && root.step.stage !== CountStep.Running
        text: root.step ? root.step.struckTitle : ""
        onClicked: root.sheet.struckShown = true
    }
}
