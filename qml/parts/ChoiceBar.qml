pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Two or three words in one frame, one of them chosen. `chosen` is its index, -1 for none yet.
Rectangle {
    id: root

    required property list<string> words
    property int chosen: -1
    property string name: ""
    property real cellHeight: 56
    signal picked(int index)

    objectName: "choiceBar"
    implicitHeight: cellHeight
    implicitWidth: 350
    color: Theme.paper
    radius: Theme.radius
    border.width: Theme.ruleWidth
    border.color: Theme.ink
    Accessible.role: Accessible.Grouping
    Accessible.name: name

    Row {
        anchors.fill: parent
        Repeater {
            model: root.words
            Pressable {
                id: cell

                required property int index
                required property string modelData
                readonly property bool isChosen: index === root.chosen

                objectName: "choice_" + index
                width: root.width / root.words.length
                height: root.height
                text: modelData
                ground: isChosen ? Theme.ink : "transparent"
                Accessible.role: Accessible.RadioButton
                Accessible.checkable: true
                Accessible.checked: isChosen
                onClicked: root.picked(cell.index)

                contentItem: Text {
                    text: cell.text
                    color: cell.isChosen && !cell.pressed ? Theme.paper : Theme.ink
                    font.pixelSize: Theme.sizeBody
                    font.weight: cell.isChosen ? Theme.strong : Theme.body
                    textFormat: Text.PlainText
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    elide: Text.ElideRight
                }
                Rectangle {
                    visible: cell.index > 0
                    width: Theme.hairWidth
                    height: parent.height
                    color: Theme.ink
                }
            }
        }
    }
}
