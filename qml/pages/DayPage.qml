import QtQuick
import Groundcount

// The technician's sheet for today: may I test, where next, what waits, how did it go.
FocusScope {
    id: root

    objectName: "dayPage"

    FrameGate {
        id: firstFrame
    }
    DayView {
        id: day
        session: Session
        whole: firstFrame.open
    }
    Flickable {
        objectName: "dayScroll"
        anchors.fill: parent
        anchors.bottomMargin: foot.height
        contentHeight: sheet.implicitHeight + Theme.gap5
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: sheet
            x: Theme.margin
            y: Theme.gap3
            width: parent.width - 2 * Theme.margin

            PageHead {
                width: parent.width
                title: day.title
                subtitle: day.place
            }
            Body {
                objectName: "trouble"
                visible: Session.trouble !== ""
                width: parent.width
                bottomPadding: Theme.gap2
                text: Session.trouble
                color: Theme.fail
            }
            Loader {
                active: !day.hasJob
                visible: active
                width: parent.width
                sourceComponent: Column {
                    Body {
                        objectName: "emptyText"
                        width: parent.width
                        topPadding: Theme.gap3
                        text: day.emptyText
                    }
                    LinkRow {
                        objectName: "joinJob"
                        width: parent.width
                        text: qsTr("Join a job: shared server or bundle file")
                        onClicked: {
                            Desk.place = "lots";
                            Desk.lot = "server";
                        }
                    }
                    LinkRow {
                        objectName: "otherBook"
                        width: parent.width
                        text: qsTr("Open another field book")
                        onClicked: Desk.kit = "books"
                    }
                }
            }
            GaugeCard {
                visible: day.hasJob
                width: parent.width
                name: day.gaugeName
                mark: day.gaugeMark
                standing: day.gaugeStanding
                missing: day.gaugeMissing
                papers: day.gaugePapers
                counts: day.counts
            }
            SectionHead {
                visible: day.hasJob
                width: parent.width
                title: qsTr("Owed here today")
                count: day.owedText
            }
            Loader {
                active: day.hasJob && day.owed.count === 0
                visible: active
                width: parent.width
                sourceComponent: Body {
                    height: 40
                    color: Theme.ink2
                    text: qsTr("Nothing owed.")
                }
            }
            RowColumn {
                objectName: "owedRows"
                width: parent.width
                rows: day.owed
                onPicked: rowId => Desk.startAt(rowId)
            }
            SectionHead {
                visible: day.waiting.count > 0
                width: parent.width
                title: qsTr("Waiting")
                count: day.waiting.count
            }
            RowColumn {
                objectName: "waitingRows"
                width: parent.width
                rows: day.waiting
                onPicked: rowId => Desk.openTest(rowId)
            }
            SectionHead {
                visible: day.hasJob
                width: parent.width
                title: qsTr("Results")
                count: day.results.count
            }
            // They come with the second frame: what the day begins with does not wait for what it has brought so far.
            RowColumn {
                objectName: "resultsRows"
                width: parent.width
                rows: firstFrame.open ? day.results : null
                onPicked: rowId => Desk.openTest(rowId)
            }
            Loader {
                active: firstFrame.open && day.results.count > 0
                visible: active
                width: parent.width
                sourceComponent: LinkRow {
                    objectName: "daySheet"
                    text: qsTr("Today's sheet, to sign")
                    onClicked: Desk.paper = "day"
                }
            }
        }
    }
    ActFoot {
        id: foot
        width: parent.width
        anchors.bottom: parent.bottom

        Loader {
            active: day.canStart
            visible: active
            width: parent.width
            sourceComponent: PrimaryButton {
                objectName: "startTest"
                text: day.startText
                onClicked: Desk.start()
            }
        }
        Loader {
            active: day.kitAct !== ""
            visible: active
            width: parent.width
            sourceComponent: PrimaryButton {
                objectName: "kitAct"
                text: day.kitActText
                onClicked: Desk.kit = day.kitAct
            }
        }
        Loader {
            active: !day.canStart && day.hasJob
            visible: active
            width: parent.width
            sourceComponent: NotYetButton {
                objectName: "startTestNotYet"
                reason: day.startText
            }
        }
        Loader {
            active: day.canStartWithReason
            visible: active
            width: parent.width
            sourceComponent: SecondaryButton {
                objectName: "startWithReason"
                text: qsTr("Start all the same, with a reason")
                onClicked: Desk.start()
            }
        }
    }
}
