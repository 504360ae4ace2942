import QtQuick
import Groundcount

// One way to part the tests: its name over the words to choose from; nothing where there is no choice.
Column {
    id: root

    required property string name
    required property list<string> words
    required property int chosen
    signal picked(int index)

    visible: words.length > 2
    spacing: Theme.gap1
    Caption {
        text: root.name
    }
    ChoiceBar {
        objectName: root.objectName + "_choice"
        width: root.width
        name: root.name
        words: root.words
        chosen: root.chosen
        onPicked: index => root.picked(index)
    }
}
