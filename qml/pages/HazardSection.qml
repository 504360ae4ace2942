pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// One hazard with its remedies, a remark, and the way past the rule.
Column {
    id: root

    required property HazardCard card

    objectName: "hazardSection_" + card.key

    HazardRow {
        id: row
        objectName: "hazardRow_" + root.card.key
        width: root.width
        name: root.card.name
        known: root.card.known
        mark: root.card.mark
        word: root.card.word
        settled: root.card.settled
        lowLimit: root.card.line.lowLimit
        value: root.card.line.value
        spreadLow: root.card.line.spreadLow
        spreadHigh: root.card.line.spreadHigh
        labels: root.card.line.labels
        labelAt: root.card.line.labelAt
        measuredLabel: root.card.line.measuredLabel
        onClicked: root.card.startOver()

        Repeater {
            model: root.card.acts

            SecondaryButton {
                id: act

                required property int index
                required property string modelData

                objectName: "act_" + root.card.key + "_" + act.index
                width: (root.width - 10) / 2
                text: act.modelData
                onClicked: root.card.act(act.index)
            }
        }
    }
    Row {
        width: root.width
        visible: root.card.remark !== ""
        topPadding: Theme.gap2
        bottomPadding: Theme.gap2
        spacing: Theme.gap2
        Icon {
            glyph: Glyph.Warning
            width: 22
            height: 22
        }
        Body {
            objectName: "remark_" + root.card.key
            width: parent.width - 22 - Theme.gap2
            text: root.card.remark
        }
    }
    LinkRow {
        objectName: "toOffset_" + root.card.key
        visible: root.card.wantsTrenchOffset
        width: root.width
        text: qsTr("Take the trench offset")
        onClicked: Desk.kit = "offset"
    }
    ReasonField {
        objectName: "override_" + root.card.key
        topPadding: Theme.gap2
        bottomPadding: Theme.gap3
        width: root.width
        visible: root.card.canOverride || overriding
        readonly property bool overriding: root.card.overrideReason !== "" && !root.card.isSealed
        label: qsTr("Test all the same, information only, because")
        text: root.card.overrideReason
        onEdited: text => root.card.overrideWith(text)
    }
}
