pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// A number as it was read, with its unit. Typed on the keypad or on a hardware keyboard: digits and one point.
Item {
    id: root

    required property string label
    property string unit: ""
    property string doubt: ""
    property real labelWidth: 116 * Theme.textScale
    property real unitWidth: 56 * Theme.textScale
    property alias text: field.text
    readonly property bool active: field.activeFocus || shownActive
    property bool shownActive: false
    readonly property Item input: field
    signal edited(string text)
    signal accepted

    objectName: "numberField"
    implicitHeight: Theme.fieldHeight + (doubt === "" ? 0 : doubtRow.implicitHeight + Theme.gap2)

    Text {
        anchors.left: parent.left
        anchors.right: frame.left
        anchors.rightMargin: Theme.gap2
        anchors.verticalCenter: frame.verticalCenter
        text: root.label
        color: Theme.ink
        font.pixelSize: Theme.sizeRow
        font.weight: root.active ? Theme.strong : Theme.body
        textFormat: Text.PlainText
        wrapMode: Text.WordWrap
        maximumLineCount: 2
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    Rectangle {
        id: frame
        x: root.labelWidth
        width: root.width - root.labelWidth - root.unitWidth
        height: Theme.fieldHeight
        color: Theme.field
        radius: Theme.fieldRadius
        border.width: root.active ? Theme.ruleWidth : Theme.hairWidth
        border.color: root.active ? Theme.ink : Theme.ink2

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: root.active ? Theme.barWidth : 3
            radius: Theme.fieldRadius
            color: root.active ? Theme.ink : Theme.ink2
        }
        TextInput {
            id: field
            objectName: root.objectName + "_input"
            anchors.fill: parent
            leftPadding: Theme.gap3
            rightPadding: Theme.gap4
            activeFocusOnTab: true
            horizontalAlignment: TextInput.AlignRight
            verticalAlignment: TextInput.AlignVCenter
            color: Theme.ink
            selectionColor: Theme.ink
            selectedTextColor: Theme.field
            font.pixelSize: Theme.sizeKey
            font.weight: Theme.strong
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            cursorVisible: root.active
            validator: RegularExpressionValidator {
                regularExpression: /[0-9]{0,7}([.][0-9]{0,6})?/
            }
            cursorDelegate: Rectangle {
                visible: root.active
                width: 3
                color: Theme.ink
            }
            Accessible.role: Accessible.EditableText
            Accessible.name: root.label + (root.unit === "" ? "" : ", " + root.unit)
            Accessible.description: root.doubt
            onTextEdited: root.edited(field.text)
            onAccepted: root.accepted()
        }
    }
    UnitMark {
        anchors.left: frame.right
        anchors.leftMargin: 10
        anchors.verticalCenter: frame.verticalCenter
        text: root.unit
        Accessible.ignored: true
    }
    Row {
        id: doubtRow
        objectName: "doubt"
        visible: root.doubt !== ""
        anchors.top: frame.bottom
        anchors.topMargin: Theme.gap2
        width: parent.width
        spacing: Theme.gap2
        Icon {
            glyph: Glyph.Warning
            width: 22
            height: 22
        }
        Body {
            width: parent.width - 22 - Theme.gap2
            text: root.doubt
        }
    }
}
