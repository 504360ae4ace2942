import QtQuick
import Groundcount

// A reason in a person's own words: the label above, the text below.
Column {
    id: root

    required property string label
    property alias text: field.text
    signal edited(string text)

    objectName: "reasonField"
    spacing: Theme.gap1

    Body {
        width: root.width
        text: root.label
        Accessible.ignored: true
    }
    Rectangle {
        width: root.width
        height: 56
        color: Theme.field
        radius: Theme.fieldRadius
        border.width: field.activeFocus ? Theme.ruleWidth : Theme.hairWidth
        border.color: field.activeFocus ? Theme.ink : Theme.ink2

        TextInput {
            id: field
            objectName: root.objectName + "_input"
            anchors.fill: parent
            leftPadding: Theme.gap3
            rightPadding: Theme.gap3
            activeFocusOnTab: true
            clip: true
            verticalAlignment: TextInput.AlignVCenter
            color: Theme.ink
            selectionColor: Theme.ink
            selectedTextColor: Theme.field
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.body
            Accessible.role: Accessible.EditableText
            Accessible.name: root.label
            onTextEdited: root.edited(field.text)
        }
    }
}
