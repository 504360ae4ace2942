pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// The test or site that is chosen on the map, beside it: figure, facts, and the way into it.
FocusScope {
    id: root

    required property MapView page

    Keys.onEscapePressed: root.page.choose("")

    Rectangle {
        width: Theme.hairWidth
        height: parent.height
        color: Theme.ink
    }
    Column {
        x: Theme.margin
        y: Theme.gap3
        width: parent.width - 2 * Theme.margin
        PageHead {
            width: parent.width
            title: root.page.chosenTitle
            subtitle: root.page.chosenText
        }
        Rule {
            width: parent.width
        }
        StateBadge {
            visible: root.page.chosenFigure !== ""
            height: 64
            mark: root.page.chosenMark
            word: root.page.chosenFigure
            wordSize: Theme.sizeDeciding
            symbolSize: 30
        }
        Repeater {
            model: root.page.chosenFacts
            Item {
                id: fact
                required property int index
                required property string modelData
                width: parent.width
                height: words.implicitHeight + Theme.gap3
                Body {
                    id: label
                    y: Theme.gap1
                    color: Theme.ink2
                    text: root.page.chosenFactLabels[fact.index] ?? ""
                }
                Body {
                    id: words
                    y: Theme.gap1
                    anchors.right: parent.right
                    width: parent.width - label.implicitWidth - Theme.gap3
                    horizontalAlignment: Text.AlignRight
                    text: fact.modelData
                }
                Hair {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
            }
        }
    }
    ActFoot {
        anchors.bottom: parent.bottom
        x: Theme.hairWidth
        width: parent.width - Theme.hairWidth
        SecondaryButton {
            objectName: "detailOpen"
            width: parent.width
            visible: root.page.chosenIsTest || root.page.chosenMark === Mark.Owed
            text: root.page.chosenIsTest ? qsTr("Open the test") : qsTr("Start a test here")
            onClicked: root.page.chosenIsTest ? Desk.openTest(root.page.chosenId) : Desk.startAt(root.page.chosenId)
        }
        SecondaryButton {
            objectName: "detailRecord"
            width: parent.width
            visible: root.page.chosenIsTest
            text: qsTr("What is sealed")
            onClicked: Desk.openRecord(root.page.chosenId)
        }
        SecondaryButton {
            objectName: "detailClose"
            width: parent.width
            text: qsTr("Close")
            onClicked: root.page.choose("")
        }
    }
}
