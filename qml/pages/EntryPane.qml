pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Numbers that belong together, the keypad under them.
FocusScope {
    id: root

    required property NumberEntry entry
    property bool compact: false
    signal back

    objectName: "entryPane"
    Keys.onEscapePressed: root.back()

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "entryHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: root.entry.title
        context: root.entry.context
        hasBack: true
        onBack: root.back()
    }
    Flickable {
        id: scroll
        anchors.top: head.bottom
        anchors.bottom: keypad.top
        width: parent.width
        contentWidth: width
        contentHeight: column.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column
            x: Theme.margin
            width: scroll.width - 2 * Theme.margin
            spacing: Theme.gap1

            Repeater {
                id: fields
                model: root.entry.fields // qmllint disable type

                NumberField {
                    id: field

                    required property int index
                    required property EntryField modelData

                    objectName: "entryField_" + index
                    width: column.width
                    label: field.modelData.label
                    unit: field.modelData.unit
                    doubt: field.modelData.doubt
                    readonly property bool hasFocus: input.activeFocus
                    shownActive: root.entry.at === index
                    onShownActiveChanged: {
                        if (!shownActive)
                            return;
                        input.forceActiveFocus();
                        // The field that is typed into stays in sight above the keypad, with the one after it.
                        if (y < scroll.contentY)
                            scroll.contentY = y;
                        else if (y + height + Theme.fieldHeight > scroll.contentY + scroll.height && scroll.contentHeight > scroll.height)
                            scroll.contentY = y + height + Theme.fieldHeight > scroll.contentHeight ? scroll.contentHeight - scroll.height
                                : y + height + Theme.fieldHeight - scroll.height;
                    }
                    onHasFocusChanged: if (hasFocus) root.entry.at = index
                    onEdited: text => field.modelData.text = text
                    onAccepted: root.entry.next()
                    Component.onCompleted: {
                        field.text = field.modelData.text;
                        if (shownActive)
                            input.forceActiveFocus();
                    }
                }
            }
            ChoiceBar {
                objectName: "entryChoice"
                width: column.width
                visible: root.entry.choiceWords.length > 0
                cellHeight: 48
                words: root.entry.choiceWords // qmllint disable type
                chosen: root.entry.choice
                name: qsTr("Side")
                onPicked: index => root.entry.choice = index
            }
            Row {
                width: column.width
                visible: root.entry.note !== ""
                topPadding: Theme.gap1
                spacing: Theme.gap2
                Body {
                    objectName: "entryNote"
                    width: parent.width - noteWord.implicitWidth - Theme.gap2
                    text: root.entry.note
                }
                StateInk {
                    id: wordInk
                    mark: root.entry.noteMark
                }
                Body {
                    id: noteWord
                    objectName: "entryNoteWord"
                    text: root.entry.noteWord
                    color: wordInk.color
                    font.weight: Theme.strong
                    wrapMode: Text.NoWrap
                }
            }
        }
    }
    Keypad {
        id: keypad

        readonly property NumberField typed: fields.count > 0 ? fields.itemAt(root.entry.at) as NumberField : null

        anchors.bottom: parent.bottom
        width: parent.width
        compact: root.compact
        into: typed ? typed.input : null
        nextText: root.entry.nextText
        notYet: root.entry.nextNotYet
        onNext: root.entry.next()
    }
}
