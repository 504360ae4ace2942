pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// A sheet as it will lie on paper: its pages one under the other, and the file it becomes.
FocusScope {
    id: root

    property bool large: false
    readonly property real pageWidth: (scroll.width < 860 ? scroll.width - 2 * Theme.gap3 : 820) * (large ? 2.2 : 1)
    readonly property real pageSpeed: 1600

    objectName: "paperPage"
    // The page that led here had the keys.
    Component.onCompleted: root.forceActiveFocus()
    Keys.onEscapePressed: Desk.paper = ""
    Keys.onUpPressed: bar.decrease()
    Keys.onDownPressed: bar.increase()
    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_PageDown || event.key === Qt.Key_Space)
            scroll.flick(0, -root.pageSpeed);
        else if (event.key === Qt.Key_PageUp)
            scroll.flick(0, root.pageSpeed);
        else if (event.key === Qt.Key_Home)
            bar.position = 0;
        else if (event.key === Qt.Key_End)
            bar.position = 1 - bar.size;
        else if (event.key === Qt.Key_Plus || event.key === Qt.Key_Minus)
            root.large = event.key === Qt.Key_Plus;
        else if (event.matches(StandardKey.Print))
            toViewer.clicked();
        else if (event.matches(StandardKey.Save))
            save.clicked();
        else
            event.accepted = false;
    }

    PaperSheet {
        id: paper
        session: Session
        what: Desk.paper
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
        onBack: Desk.paper = ""
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
            id: bar
            policy: C.ScrollBar.AsNeeded
            stepSize: 0.05
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
        Row {
            width: parent.width
            spacing: Theme.gap2
            visible: paper.pageCount > 0
            SecondaryButton {
                id: toViewer
                objectName: "paperPrint"
                width: (parent.width - Theme.gap2) / 2
                height: save.height
                text: qsTr("Open to print")
                onClicked: {
                    const file = paper.forViewer();
                    if (file.toString() !== "")
                        paper.viewerAnswered(Qt.openUrlExternally(file));
                }
            }
            PrimaryButton {
                id: save
                objectName: "paperSave"
                width: (parent.width - Theme.gap2) / 2
                text: qsTr("Save as PDF")
                onClicked: {
                    pick.currentFile = pick.currentFolder + "/" + paper.fileName;
                    pick.open();
                }
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
