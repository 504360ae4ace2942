pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// What is sealed of a test: who, when, why; a conflict and the way out; notes, photos; and taking the test out.
FocusScope {
    id: root

    required property TestSheet sheet
    readonly property SheetRecord record: sheet.record
    signal back

    objectName: "recordPage"
    Keys.onEscapePressed: root.back()

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "recordHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: root.sheet.title
        context: root.record.summary
        hasBack: true
        onBack: root.back()
    }
    Flickable {
        id: scroll
        objectName: "recordScroll"
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        contentWidth: width
        contentHeight: column.implicitHeight + Theme.gap6
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        C.ScrollBar.vertical: C.ScrollBar {
            policy: C.ScrollBar.AsNeeded
        }

        Column {
            id: column
            x: Theme.margin
            width: scroll.width - 2 * Theme.margin

            Body {
                objectName: "voidText"
                width: parent.width
                visible: text !== ""
                bottomPadding: Theme.gap2
                font.weight: Theme.strong
                text: root.sheet.voidText
            }
            CautionLine {
                objectName: "recordTrouble"
                width: parent.width
                text: root.record.trouble
            }
            CautionLine {
                objectName: "conflictText"
                width: parent.width
                text: root.record.conflictText
            }
            Repeater {
                model: root.record.conflict

                RecordRow {
                    id: rival

                    required property string rowId

                    objectName: "keep_" + rival.index
                    width: column.width
                    onClicked: root.record.keep(rival.rowId)
                }
            }
            SectionHead {
                width: parent.width
                title: qsTr("Notes and photos")
            }
            ReasonField {
                id: note
                objectName: "note"
                width: parent.width
                label: qsTr("Note")
            }
            Item {
                width: parent.width
                height: Theme.gap2
            }
            SecondaryButton {
                objectName: "addNote"
                width: parent.width
                text: qsTr("Seal the note")
                onClicked: if (root.record.addNote(note.text))
                    note.text = ""
            }
            CautionLine {
                objectName: "cameraTrouble"
                width: parent.width
                topPadding: Theme.gap2
                text: root.record.camera.trouble
            }
            Row {
                topPadding: Theme.gap2
                bottomPadding: Theme.gap3
                width: parent.width
                spacing: 10
                SecondaryButton {
                    objectName: "takePhoto"
                    width: (parent.width - 10) / 2
                    text: qsTr("Take a photo")
                    onClicked: root.record.camera.ask()
                }
                SecondaryButton {
                    objectName: "addPhoto"
                    width: (parent.width - 10) / 2
                    text: qsTr("Attach a photo")
                    onClicked: photoPick.open()
                }
            }
            Repeater {
                model: root.record.photos

                Column {
                    id: photo

                    required property int index
                    required property string modelData

                    objectName: "photo_" + index
                    width: column.width
                    bottomPadding: Theme.gap3
                    Image {
                        width: parent.width
                        height: implicitHeight < 240 ? implicitHeight : 240
                        fillMode: Image.PreserveAspectFit
                        horizontalAlignment: Image.AlignLeft
                        source: photo.modelData
                        Accessible.role: Accessible.Graphic
                        Accessible.name: root.record.photoNames[photo.index] ?? ""
                    }
                    Caption {
                        text: root.record.photoNames[photo.index] ?? ""
                    }
                }
            }
            SectionHead {
                width: parent.width
                title: qsTr("Sealed")
            }
            Repeater {
                model: root.record.history

                RecordRow {
                    objectName: "history_" + index
                    width: column.width
                    pressable: false
                }
            }
            LinkRow {
                objectName: "testSheetLink"
                width: parent.width
                text: qsTr("Sheet of this test, to sign")
                onClicked: Desk.paper = "test:" + root.sheet.testId
            }
            LinkRow {
                objectName: "voidLink"
                width: parent.width
                visible: root.sheet.voidText === ""
                text: qsTr("Void this test")
                onClicked: root.sheet.askVoid()
            }
        }
    }
    CameraLoader {
        objectName: "cameraLoader"
        anchors.fill: parent
        take: root.record.camera
    }
    FilePick {
        id: photoPick
        objectName: "photoPick"
        title: qsTr("Attach a photo")
        endings: ["*.jpg", "*.jpeg", "*.png", "*.JPG", "*.JPEG", "*.PNG"]
        onPicked: file => root.record.addPhoto(file)
    }
}
