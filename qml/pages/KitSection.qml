import QtQuick
import Groundcount

// One section of Kit: its rows, each leading to its sheet, and the way to a new one.
Column {
    id: root

    required property string title
    required property RowList rows
    property string count: ""
    property string addText: ""
    property string addTo: ""
    property bool symbolColumn: true

    width: parent.width

    SectionHead {
        width: parent.width
        title: root.title
        count: root.count
    }
    WrapColumn {
        width: parent.width
        symbolColumn: root.symbolColumn
        rows: root.rows
        onPicked: rowId => {
            if (rowId !== "")
                Desk.kit = rowId;
        }
    }
    LinkRow {
        objectName: "add_" + root.addTo
        visible: root.addText !== ""
        width: parent.width
        glyph: Glyph.Plus
        text: root.addText
        onClicked: Desk.kit = root.addTo
    }
}
