import QtQuick
import Groundcount

// The daily standard counts: what to see first, the counts, the judgement as they are typed, what to do when they fail, history.
KitSheet {
    id: root

    property string subject: ""
    readonly property bool single: counts.howIndex === 0

    objectName: "standardCountsPage"
    form: counts
    hasAct: counts.isTaking
    secondText: counts.isTaking ? "" : qsTr("Take another set")
    onSecond: counts.takeAnother()

    StandardCounts {
        id: counts
        session: Session
        subject: root.subject
    }
    StateBadge {
        objectName: "countsWord"
        visible: counts.word !== ""
        mark: counts.mark
        word: counts.word
        symbolSize: 28
        wordSize: Theme.sizeMeasured
        limit: parent.width
    }
    ChoiceBar {
        objectName: "countsGauge"
        width: parent.width
        visible: words.length > 1
        words: counts.gaugeWords // qmllint disable type
        chosen: counts.gaugeIndex
        name: qsTr("Gauge")
        onPicked: index => counts.pickGauge(index)
    }
    Column {
        width: parent.width
        visible: counts.isTaking
        spacing: Theme.gap2
        SectionHead {
            width: parent.width
            title: qsTr("Before you count")
            count: counts.checksText
        }
        CheckColumn {
            objectName: "countsChecks"
            width: parent.width
            rows: counts.checks
            onPicked: rowId => counts.see(rowId)
        }
        CautionLine {
            width: parent.width
            text: counts.caution
        }
        SectionHead {
            width: parent.width
            title: qsTr("Counts")
            count: counts.typedText
        }
        ChoiceBar {
            objectName: "countsHow"
            width: parent.width
            words: counts.howWords // qmllint disable type
            chosen: counts.howIndex
            name: qsTr("How counted")
            onPicked: index => counts.pickHow(index)
        }
        SecondaryButton {
            objectName: "typeCounts"
            width: parent.width
            text: counts.typeText
            onClicked: counts.typeCounts()
        }
        SecondaryButton {
            objectName: "addCount"
            width: parent.width
            visible: root.single && counts.densityFigure !== ""
            text: qsTr("One more count")
            onClicked: counts.addCount()
        }
        SecondaryButton {
            objectName: "typeLog"
            width: parent.width
            visible: counts.asksForLog
            text: counts.logText
            onClicked: counts.typeLog()
        }
    }
    StandardCountSection {
        objectName: "densityCounts"
        width: parent.width
        title: qsTr("Density")
        figure: counts.densityFigure
        text: counts.densityText
        line: counts.densityLine
        spread: counts.densitySpread
        plot: counts.densityPlot
    }
    StandardCountSection {
        objectName: "moistureCounts"
        width: parent.width
        title: qsTr("Moisture")
        figure: counts.moistureFigure
        text: counts.moistureText
        line: counts.moistureLine
        spread: counts.moistureSpread
        plot: counts.moisturePlot
    }
    SectionHead {
        width: parent.width
        visible: counts.todo.count > 0
        title: qsTr("What to do")
    }
    WrapColumn {
        objectName: "countsTodo"
        width: parent.width
        rows: counts.todo
    }
    LinkRow {
        objectName: "toStability"
        width: parent.width
        visible: counts.asksForStability
        text: qsTr("Stability test")
        onClicked: Desk.kit = "stability:" + counts.subject
    }
    ReasonField {
        objectName: "countsReason"
        width: parent.width
        visible: counts.failed
        label: qsTr("To use the gauge all the same: who agreed, and why")
        text: counts.reason
        onEdited: text => counts.setReason(text)
    }
    SectionHead {
        width: parent.width
        title: qsTr("Limits, with their source")
    }
    WrapColumn {
        objectName: "countsLimits"
        width: parent.width
        rows: counts.limits
    }
    LinkRow {
        objectName: "countsLog"
        width: parent.width
        visible: counts.subject !== ""
        text: qsTr("Log of the standard counts, to sign")
        onClicked: Desk.paper = "counts:" + counts.subject
    }
}
