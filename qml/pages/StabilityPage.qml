import QtQuick
import Groundcount

// The stability test: single counts of an untouched gauge, their scatter against a band.
KitSheet {
    id: root

    property string subject: ""

    objectName: "stabilityPage"
    form: stability

    StabilityTest {
        id: stability
        session: Session
        subject: root.subject
    }
    Body {
        width: parent.width
        text: qsTr("Gauge on its block, untouched from the first count to the last. Single one-minute counts, not averages.")
    }
    StateBadge {
        objectName: "stabilityWord"
        visible: stability.word !== ""
        mark: stability.mark
        word: stability.word
        symbolSize: 28
        wordSize: Theme.sizeMeasured
    }
    Body {
        objectName: "stabilityFollows"
        width: parent.width
        visible: text !== ""
        text: stability.follows
    }
    SectionHead {
        width: parent.width
        title: qsTr("Counts")
        count: stability.typedText
    }
    SecondaryButton {
        objectName: "typeStability"
        width: parent.width
        text: qsTr("Type the counts")
        onClicked: stability.typeCounts()
    }
    Body {
        width: parent.width
        color: Theme.ink2
        text: stability.bandText
    }
    StandardCountSection {
        width: parent.width
        visible: stability.densityText !== ""
        title: qsTr("Density")
        text: stability.densityText
        figure: " "
        line: stability.densityLine
    }
    StandardCountSection {
        width: parent.width
        visible: stability.moistureText !== ""
        title: qsTr("Moisture")
        text: stability.moistureText
        figure: " "
        line: stability.moistureLine
    }
    SectionHead {
        width: parent.width
        visible: stability.history.count > 0
        title: qsTr("Before")
    }
    WrapColumn {
        objectName: "stabilityHistory"
        width: parent.width
        rows: stability.history
    }
}
