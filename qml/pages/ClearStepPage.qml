pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Step 2: four hazards, each with what is known about it and what can be done.
Column {
    id: root

    property TestSheet sheet: null
    readonly property ClearStep step: sheet ? sheet.clear : null

    objectName: "clearStep"

    Flow {
        width: parent.width
        spacing: Theme.gap3
        topPadding: Theme.gap2
        bottomPadding: Theme.gap2
        Text {
            id: summary
            objectName: "clearSummary"
            text: root.step ? root.step.summary : ""
            color: Theme.ink
            font.pixelSize: Theme.sizeMeasured
            font.weight: Theme.strong
            textFormat: Text.PlainText
        }
        Body {
            id: rulesText
            width: rulesFit.given
            TextFit {
                id: rulesFit
                shown: rulesText
                most: rulesText.parent.width
            }
            topPadding: Theme.gap1
            color: Theme.ink2
            text: root.step ? root.step.rules : ""
        }
    }
    Hair {
        width: parent.width
    }
    Repeater {
        model: root.step ? root.step.hazards : [] // qmllint disable type

        HazardSection {
            id: section

            required property HazardCard modelData

            width: root.width
            card: section.modelData
        }
    }
    LinkRow {
        objectName: "addHazard"
        width: parent.width
        strong: false
        visible: root.step !== null && !root.step.isSealed
        text: qsTr("Add a hazard")
        onClicked: root.step.addHazard()
    }
}
