pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// The engineer's review of a lot: where it stands and why, what is open, owed, new and unusual; and the word that is sealed.
FocusScope {
    id: root

    property string lot: ""
    readonly property bool compact: height < 700

    objectName: "reviewPage"
    Keys.onEscapePressed: Desk.lotSheet = ""

    ReviewView {
        id: page
        session: Session
        lot: root.lot
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "reviewHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: qsTr("Review")
        context: page.title
        hasBack: true
        onBack: Desk.lotSheet = ""
    }
    Flickable {
        id: scroll
        objectName: "reviewScroll"
        anchors.top: head.bottom
        anchors.bottom: foot.top
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

            StateBadge {
                objectName: "reviewStanding"
                mark: page.standingMark
                word: page.partName + ": " + page.standingWord
            }
            Body {
                objectName: "reviewReason"
                width: parent.width
                topPadding: Theme.gap1
                bottomPadding: Theme.gap2
                color: Theme.ink2
                text: page.reason
            }
            SectionHead {
                width: parent.width
                title: qsTr("Lot and lifts")
            }
            RowColumn {
                objectName: "reviewParts"
                width: parent.width
                rows: page.parts
                chosenId: page.part === "" ? root.lot : page.part
                onPicked: rowId => page.part = rowId
            }
            SectionHead {
                visible: page.failures.count > 0
                width: parent.width
                title: qsTr("Open failures")
                count: page.failures.count
            }
            RowColumn {
                objectName: "reviewFailures"
                width: parent.width
                rows: page.failures
                onPicked: rowId => Desk.openRecord(rowId)
            }
            SectionHead {
                visible: page.owed.count > 0
                width: parent.width
                title: qsTr("Owed")
                count: page.owed.count
            }
            RowColumn {
                objectName: "reviewOwed"
                width: parent.width
                rows: page.owed
            }
            SectionHead {
                visible: page.changes.count > 0
                width: parent.width
                title: qsTr("Since the last review")
                count: page.changes.count
            }
            Repeater {
                model: page.changes
                RecordRow {
                    required property string rowId
                    objectName: "change_" + index
                    width: column.width
                    onClicked: Desk.openRecord(rowId)
                }
            }
            SectionHead {
                width: parent.width
                title: qsTr("Unusual")
                count: page.unusual.count
            }
            Body {
                objectName: "unusualText"
                visible: text !== ""
                width: parent.width
                topPadding: Theme.gap2
                color: Theme.ink2
                text: page.unusualText
            }
            Repeater {
                model: page.unusual
                RecordRow {
                    required property string rowId
                    objectName: "unusual_" + index
                    width: column.width
                    onClicked: Desk.openRecord(rowId)
                }
            }
            SectionHead {
                width: parent.width
                title: qsTr("The word")
                count: page.reviewers.length === 1 ? page.reviewers[0] : ""
            }
            ChoiceBar {
                objectName: "reviewers"
                visible: page.reviewers.length > 1
                width: parent.width
                name: qsTr("Reviewer")
                words: page.reviewers // qmllint disable type
                chosen: page.reviewer
                onPicked: index => page.reviewer = index
            }
            ReasonField {
                id: note
                objectName: "reviewNote"
                width: parent.width
                label: qsTr("Reason, for a return or an exception")
            }
            CautionLine {
                objectName: "reviewTrouble"
                width: parent.width
                text: page.trouble
            }
            Row {
                topPadding: Theme.gap3
                width: parent.width
                spacing: 10
                SecondaryButton {
                    objectName: "reviewReturn"
                    width: (parent.width - 10) / 2
                    text: qsTr("Return")
                    onClicked: if (page.giveBack(note.text))
                        note.text = ""
                }
                SecondaryButton {
                    objectName: "reviewException"
                    width: (parent.width - 10) / 2
                    text: qsTr("With exception")
                    onClicked: if (page.acceptWithException(note.text))
                        note.text = ""
                }
            }
        }
    }
    ActFoot {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width

        PrimaryButton {
            objectName: "reviewAccept"
            width: parent.width
            visible: page.notAccepted === ""
            compact: root.compact
            text: qsTr("Accept: %1").arg(page.partName)
            onClicked: page.accept()
        }
        NotYetButton {
            objectName: "reviewNotYet"
            width: parent.width
            compact: root.compact
            visible: page.notAccepted !== ""
            text: page.notAccepted
        }
    }
}
