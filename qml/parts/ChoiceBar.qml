pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Words in one frame, one of them chosen; more than four stand in rows of four (six in rows of three), fewer where a word would not fit, so that a glove still finds each.
// `chosen` is its index, -1 for none yet.
Rectangle {
    id: root

    required property list<string> words
    property int chosen: -1
    property string name: ""
    property real cellHeight: 56
    readonly property int wanted: words.length === 6 ? 3 : words.length > 4 ? 4 : words.length
    readonly property real widest: measure.widest + Theme.gap3
    readonly property int across: wanted * widest <= width || wanted < 2 ? wanted : (wanted > 3 && 3 * widest <= width && words.length > 4) ? 3 : 2 * widest <= width ? 2 : 1
    signal picked(int index)

    objectName: "choiceBar"
    implicitHeight: grid.implicitHeight
    implicitWidth: 350
    color: Theme.paper
    radius: Theme.radius
    border.width: Theme.ruleWidth
    border.color: Theme.ink
    Accessible.role: Accessible.Grouping
    Accessible.name: name

    WordMeasure {
        id: measure
        words: root.words // qmllint disable type
        pixelSize: Theme.sizeBody
        weight: Theme.strong
    }
    Grid {
        id: grid
        columns: root.across
        width: parent.width
        Repeater {
            model: root.words
            Pressable {
                id: cell

                required property int index
                required property string modelData
                readonly property bool isChosen: index === root.chosen

                objectName: "choice_" + index
                width: root.width / root.across
                height: root.cellHeight
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
                    wrapMode: Text.WordWrap
                }
                Rectangle {
                    visible: cell.index >= root.across
                    width: parent.width
                    height: Theme.hairWidth
                    color: Theme.ink
                }
                Rectangle {
                    visible: cell.index % root.across > 0
                    width: Theme.hairWidth
                    height: parent.height
                    color: Theme.ink
                }
            }
        }
    }
}
