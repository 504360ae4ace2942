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
                source: "DayNoJob.qml"
                onLoaded: (item as DayNoJob).day = day
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

        // Start a test, or what the gauge or the book lacks before one can be started.
        PrimaryButton {
            objectName: day.canStart ? "startTest" : "kitAct"
            visible: day.canStart || day.kitAct !== ""
            width: parent.width
            text: day.canStart ? day.startText : day.kitActText
            onClicked: {
                if (day.canStart)
                    Desk.start();
                else
                    Desk.kit = day.kitAct;
            }
        }
        Loader {
            active: !day.canStart && day.hasJob
            visible: active
            width: parent.width
            source: "DayNotReady.qml"
            onLoaded: (item as DayNotReady).day = day
        }
    }
}
