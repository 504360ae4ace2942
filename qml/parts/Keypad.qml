pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Digits, point and backspace for the field `into`; the button below names the next field, or says why it cannot be pressed yet.
Rectangle {
    id: root

    property Item into: null
    required property string nextText
    property string notYet: ""
    property bool compact: false
    signal next

    objectName: "keypad"
    color: Theme.well
    implicitHeight: Theme.ruleWidth + keys.implicitHeight + foot.implicitHeight
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Keypad")

    Typist {
        id: typist
    }
    Rule {
        width: parent.width
    }
    Grid {
        id: keys
        y: Theme.ruleWidth
        columns: 3
        Repeater {
            model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0"]
            KeypadKey {
                required property string modelData
                objectName: modelData === "." ? "key_point" : "key_" + modelData
                width: root.width / 3
                height: 64
                text: modelData
                Accessible.name: modelData === "." ? qsTr("Point") : modelData
                onClicked: typist.type(root.into, modelData)
            }
        }
        KeypadKey {
            objectName: "key_backspace"
            width: root.width / 3
            height: 64
            text: qsTr("Backspace")
            glyph: Glyph.Backspace
            autoRepeat: true
            onClicked: typist.eraseLast(root.into)
        }
    }
    Column {
        id: foot
        anchors.top: keys.bottom
        x: Theme.margin
        width: root.width - 2 * Theme.margin
        topPadding: root.compact ? Theme.gap2 : Theme.gap3
        bottomPadding: (root.compact ? Theme.gap3 : Theme.gap5) + Theme.insetBottom
        PrimaryButton {
            objectName: "keypadNext"
            visible: root.notYet === ""
            width: parent.width
            compact: root.compact
            focusPolicy: Qt.TabFocus
            text: root.nextText
            onClicked: root.next()
        }
        NotYetButton {
            objectName: "keypadNotYet"
            visible: root.notYet !== ""
            width: parent.width
            compact: root.compact
            focusPolicy: Qt.TabFocus
            text: root.notYet
        }
    }
}
