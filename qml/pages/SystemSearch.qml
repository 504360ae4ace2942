import QtQuick
import Groundcount

// A coordinate system, found by code, name or place and chosen from what was found.
Column {
    id: root

    required property string chosen
    required property RowList systems
    property string trouble: ""
    signal asked(string words)
    signal picked(string code)

    objectName: "systemSearch"
    spacing: Theme.gap2

    LabelledText {
        objectName: root.objectName + "_chosen"
        width: parent.width
        label: qsTr("Coordinate system")
        text: root.chosen
    }
    ReasonField {
        id: words
        objectName: root.objectName + "_words"
        width: parent.width
        label: qsTr("Find it by code, name or place")
    }
    SecondaryButton {
        objectName: root.objectName + "_find"
        width: parent.width
        text: qsTr("Find")
        onClicked: root.asked(words.text)
    }
    CautionLine {
        objectName: root.objectName + "_trouble"
        width: parent.width
        text: root.trouble
    }
    RowColumn {
        objectName: root.objectName + "_found"
        width: parent.width
        symbolColumn: false
        rows: root.systems
        onPicked: rowId => root.picked(rowId)
    }
}
