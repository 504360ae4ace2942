pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// A sheet as it will lie on paper: its pages one under the other, and the file it becomes.
FocusScope {
    id: root

    property alias what: paper.what
    property bool large: false
    readonly property real pageWidth: (scroll.width < 860 ? scroll.width - 2 * Theme.gap3 : 820) * (large ? 2.2 : 1)
    signal back

    objectName: "paperPage"
    Keys.onEscapePressed: root.back()

    PaperSheet {
        id: paper
        session: Session
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "paperHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: paper.title === "" ? qsTr("Sheet") : paper.title
        hasBack: true
        onBack: root.back()
    }
    Flickable {
        id: scroll
        objectName: "paperScroll"
        anchors.top: head.bottom
        anchors.bottom: foot.top
        width: parent.width
        contentWidth: pages.width + 2 * Theme.gap3
        contentHeight: pages.height + 2 * Theme.gap3
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        C.ScrollBar.vertical: C.ScrollBar {
            policy: C.ScrollBar.AsNeeded
        }

        Rectangle {
            width: scroll.width > scroll.contentWidth ? scroll.width : scroll.contentWidth
            height: scroll.contentHeight
            color: Theme.well
        }
        Column {
            id: pages
            x: scroll.width > width + 2 * Theme.gap3 ? (scroll.width - width) / 2 : Theme.gap3
            y: Theme.gap3
            spacing: Theme.gap3
            Repeater {
                model: paper.pageCount
                PaperPageItem {
                    required property int index
                    objectName: "paperPage_" + index
                    sheet: paper
                    page: index
                    width: root.pageWidth
                    height: root.pageWidth * paper.heightOfWidth
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Page %1 of %2").arg(index + 1).arg(paper.pageCount)
                }
            }
        }
    }
    ActFoot {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width

        Body {
            objectName: "paperTrouble"
            width: parent.width
            visible: text !== ""
            text: paper.trouble
        }
        Body {
            objectName: "paperSaved"
            width: parent.width
            visible: text !== ""
            text: paper.saved
            wrapMode: Text.WrapAnywhere
        }
        Row {
            width: parent.width
            spacing: Theme.gap2
            visible: paper.pageCount > 0
            ChoiceBar {
                objectName: "paperFormat"
                width: (parent.width - Theme.gap2) / 2
                words: paper.formatWords // qmllint disable type
                chosen: paper.formatIndex
                name: qsTr("Paper")
                onPicked: index => paper.pickFormat(index)
            }
            SecondaryButton {
                objectName: "paperLarger"
                width: (parent.width - Theme.gap2) / 2
                text: root.large ? qsTr("Whole page") : qsTr("Larger")
                onClicked: root.large = !root.large
            }
        }
        PrimaryButton {
            objectName: "paperSave"
            width: parent.width
            visible: paper.pageCount > 0
            text: qsTr("Save as PDF")
            onClicked: {
                pick.currentFile = pick.currentFolder + "/" + paper.fileName;
                pick.open();
            }
        }
    }
    FilePick {
        id: pick
        objectName: "paperPick"
        title: qsTr("Save as PDF")
        saves: true
        endings: ["*.pdf"]
        onPicked: file => paper.save(file)
    }
}
