import QtQuick
import Groundcount

// Day in a book without a job.
Column {
    id: root

    property DayView day: null

    Body {
        objectName: "emptyText"
        width: parent.width
        topPadding: Theme.gap3
        text: root.day ? root.day.emptyText : ""
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
