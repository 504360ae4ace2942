import QtQuick
import Groundcount

// The field books of this device, one per job.
FocusScope {
    id: root

    property string subject: ""
    readonly property BookShelf shelf: Desk.shelf

    objectName: "booksPage"
    Component.onCompleted: root.shelf.refresh()

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    Flickable {
        objectName: "stepScroll"
        anchors.fill: parent
        contentHeight: column.implicitHeight + Theme.gap6
        boundsBehavior: Flickable.StopAtBounds
        clip: true

        Column {
            id: column
            x: Theme.margin
            y: Theme.gap3
            width: root.width < 600 + 2 * Theme.margin ? root.width - 2 * Theme.margin : 600
            spacing: Theme.gap3

            PageHead {
                width: parent.width
                hasBack: true
                title: qsTr("Field books")
                onBack: Desk.kit = ""
            }
            Body {
                width: parent.width
                color: Theme.ink2
                text: qsTr("One book holds one job. What is typed and not sealed stays in its own book as a draft.")
            }
            RowColumn {
                objectName: "bookRows"
                width: parent.width
                symbolColumn: false
                rows: root.shelf.books
                onPicked: rowId => root.shelf.pick(rowId)
            }
            CautionLine {
                objectName: "booksTrouble"
                width: parent.width
                text: root.shelf.trouble
            }
            SecondaryButton {
                objectName: "bookFile"
                width: parent.width
                text: qsTr("Open a book that lies elsewhere")
                onClicked: pick.open()
            }
            FilePick {
                id: pick
                objectName: "bookPick"
                title: qsTr("Open a field book")
                endings: ["*.fieldbook"]
                onPicked: file => root.shelf.openFile(file)
            }
            ReasonField {
                id: name
                objectName: "bookName"
                width: parent.width
                label: qsTr("Name of a new book")
            }
            SecondaryButton {
                objectName: "bookBegin"
                width: parent.width
                text: qsTr("Begin a new book")
                onClicked: root.shelf.begin(name.text)
            }
        }
    }
}
