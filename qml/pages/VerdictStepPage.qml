import QtQuick
import Groundcount

// Step 6: the mark and the figures at arm's length, the arithmetic one tap away, what to do next.
Column {
    id: root

    property TestSheet sheet: null
    readonly property VerdictStep step: sheet ? sheet.verdict : null
    readonly property bool known: step !== null && step.isKnown
    property bool unfolded: false

    objectName: "verdictStep"
    spacing: Theme.gap2

    CautionLine {
        objectName: "refusal"
        width: parent.width
        text: root.step ? root.step.refusal : ""
    }
    Row {
        spacing: Theme.gap4
        visible: root.known
        StateSymbol {
            width: 60
            height: 60
            mark: root.step ? root.step.mark : Mark.Nothing
        }
        Column {
            anchors.verticalCenter: parent.verticalCenter
            width: root.width - 60 - Theme.gap4
            Text {
                objectName: "verdictWord"
                width: parent.width
                text: root.step ? root.step.word : ""
                color: wordInk.color
                font.pixelSize: Theme.sizeWord
                font.weight: Theme.deciding
                minimumPixelSize: Theme.sizeTitle
                fontSizeMode: Text.HorizontalFit
                textFormat: Text.PlainText
            }
            StateInk {
                id: wordInk
                mark: root.step ? root.step.mark : Mark.Nothing
            }
            Body {
                objectName: "verdictReasons"
                width: parent.width
                visible: text !== ""
                font.weight: Theme.strong
                text: root.step ? root.step.reasons : ""
            }
        }
    }
    Column {
        width: parent.width
        spacing: Theme.gap2
        visible: root.known

        Figure {
            allowed: parent.width
            objectName: "compaction"
            label: qsTr("Percent compaction")
            figure: root.step ? root.step.compaction : ""
            unit: "%"
            uncertainty: root.step ? root.step.compactionSpread : ""
            figureSize: Theme.sizeVerdict
        }
        LimitLine {
            objectName: "compactionLine"
            width: parent.width
            lowLimit: root.step ? root.step.compactionLine.lowLimit : NaN
            highLimit: root.step ? root.step.compactionLine.highLimit : NaN
            value: root.step ? root.step.compactionLine.value : NaN
            spreadLow: root.step ? root.step.compactionLine.spreadLow : NaN
            spreadHigh: root.step ? root.step.compactionLine.spreadHigh : NaN
            mark: root.step ? root.step.compactionLine.mark : Mark.Nothing
            labels: root.step ? root.step.compactionLine.labels : []
            labelAt: root.step ? root.step.compactionLine.labelAt : []
            Accessible.name: qsTr("Percent compaction against its limit")
        }
        Hair {
            width: parent.width
        }
        FigureRow {
            objectName: "moistureFigure"
            width: parent.width
            label: qsTr("Moisture")
            figure: root.step ? root.step.moisture : ""
            unit: "%"
            uncertainty: root.step ? root.step.moistureSpread : ""
        }
        LimitLine {
            objectName: "moistureLine"
            width: parent.width
            visible: root.step !== null && root.step.hasWindow
            lowLimit: root.step ? root.step.moistureLine.lowLimit : NaN
            highLimit: root.step ? root.step.moistureLine.highLimit : NaN
            value: root.step ? root.step.moistureLine.value : NaN
            spreadLow: root.step ? root.step.moistureLine.spreadLow : NaN
            spreadHigh: root.step ? root.step.moistureLine.spreadHigh : NaN
            mark: root.step ? root.step.moistureLine.mark : Mark.Nothing
            labels: root.step ? root.step.moistureLine.labels : []
            labelAt: root.step ? root.step.moistureLine.labelAt : []
            Accessible.name: qsTr("Moisture against its window")
        }
        Hair {
            width: parent.width
        }
        Flow {
            width: parent.width
            readonly property real third: width / 3
            Figure {
                width: implicitWidth + Theme.gap2 > parent.third ? implicitWidth + Theme.gap5 : parent.third
                objectName: "wet"
                label: qsTr("Wet %1").arg(root.step ? root.step.densityUnit : "")
                figure: root.step ? root.step.wet : ""
                figureSize: Theme.sizeMeasured
                figureWeight: Theme.strong
            }
            Figure {
                width: implicitWidth + Theme.gap2 > parent.third ? implicitWidth + Theme.gap5 : parent.third
                objectName: "dry"
                label: qsTr("Dry %1").arg(root.step ? root.step.densityUnit : "")
                figure: root.step ? root.step.dry : ""
                figureSize: Theme.sizeMeasured
                figureWeight: Theme.strong
            }
            Figure {
                width: implicitWidth + Theme.gap2 > parent.third ? implicitWidth + Theme.gap5 : parent.third
                objectName: "maximum"
                label: qsTr("Max. %1").arg(root.step ? root.step.densityUnit : "")
                figure: root.step ? root.step.maximum : ""
                figureSize: Theme.sizeMeasured
                figureWeight: Theme.strong
            }
        }
        Body {
            objectName: "coarse"
            width: parent.width
            visible: text !== ""
            color: Theme.ink2
            text: root.step ? root.step.coarse : ""
        }
        Hair {
            width: parent.width
        }
        LinkRow {
            objectName: "showArithmetic"
            width: parent.width
            text: root.unfolded ? qsTr("Hide the arithmetic") : qsTr("Show the arithmetic")
            glyph: root.unfolded ? Glyph.Up : Glyph.Down
            onClicked: root.unfolded = !root.unfolded
        }
        Loader {
            width: parent.width
            active: root.unfolded
            visible: active
            sourceComponent: ArithmeticList {
                // qmllint disable unqualified
                width: root.width
                rows: root.step.arithmetic
                // qmllint enable unqualified
            }
        }
        SectionHead {
            width: parent.width
            title: qsTr("What to do next")
        }
        Repeater {
            model: root.step ? root.step.nextSteps : null

            Item {
                id: next

                required property string lead
                required property string title
                required property string second

                width: root.width // qmllint disable unqualified
                height: nextTitle.implicitHeight + nextSecond.implicitHeight + Theme.gap4
                Text {
                    y: Theme.gap2
                    text: next.lead
                    color: Theme.ink
                    font.pixelSize: Theme.sizeMeasured
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                }
                Text {
                    id: nextTitle
                    x: Theme.iconColumn
                    y: Theme.gap2
                    width: parent.width - x
                    text: next.title
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                    wrapMode: Text.WordWrap
                }
                Body {
                    id: nextSecond
                    x: Theme.iconColumn
                    anchors.top: nextTitle.bottom
                    width: parent.width - x
                    color: Theme.ink2
                    text: next.second
                }
                Hair {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
            }
        }
    }
}
