pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// The six steps. `steps` is a model with the roles `word` (string) and `isSealed` (bool); `now` is the index of the open step.
Row {
    id: root

    property alias steps: cells.model
    property int now: 0
    signal picked(int index)

    objectName: "stepHead"
    spacing: 3
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Steps of the test")

    Repeater {
        id: cells

        Pressable {
            id: cell

            required property int index
            required property string word
            required property bool isSealed
            readonly property bool isNow: index === root.now

            objectName: "step_" + index
            width: (root.width - 5 * root.spacing) / 6
            height: 58
            text: word
            groundRadius: 0
            Accessible.role: Accessible.PageTab
            Accessible.selected: isNow
            Accessible.description: isSealed ? qsTr("sealed") : isNow ? qsTr("now") : qsTr("ahead")
            onClicked: root.picked(cell.index)

            contentItem: Item {
                Rectangle {
                    width: parent.width
                    height: cell.isSealed || cell.isNow ? Theme.barWidth : Theme.hairWidth
                    color: cell.isSealed || cell.isNow ? Theme.ink : Theme.hair
                }
                Icon {
                    visible: cell.isSealed && !cell.isNow
                    x: 1
                    y: 10
                    width: 17
                    height: 17
                    glyph: Glyph.Check
                    colour: Theme.ink2
                }
                Text {
                    visible: !cell.isSealed || cell.isNow
                    y: 9
                    text: cell.index + 1
                    color: cell.isNow ? Theme.ink : Theme.ink2
                    font.pixelSize: Theme.sizeBody
                    font.weight: Theme.strong
                }
                Text {
                    visible: Theme.textScale < 1.25 || cell.isNow
                    // The last words stay inside the window when the text is large.
                    x: cell.x + implicitWidth > root.width ? root.width - cell.x - implicitWidth : 0
                    y: 29
                    text: cell.word
                    color: cell.isNow ? Theme.ink : Theme.ink2
                    font.pixelSize: Theme.sizeBody
                    font.weight: cell.isNow ? Theme.strong : Theme.body
                    textFormat: Text.PlainText
                }
            }
        }
    }
}
