import QtQuick
import Groundcount

// What a site file does not say by itself: its coordinate system and the unit of its coordinates.
Column {
    id: root

    required property SiteFileSheet sheet

    objectName: "siteFileQuestions"
    visible: root.sheet.asksSystem
    spacing: Theme.gap2

    SectionHead {
        width: parent.width
        title: qsTr("The file does not say")
    }
    SystemSearch {
        objectName: "siteSystem"
        width: parent.width
        chosen: root.sheet.systemText
        systems: root.sheet.systems
        onAsked: words => root.sheet.searchSystem(words)
        onPicked: code => root.sheet.pickSystem(code)
    }
    Body {
        width: parent.width
        visible: root.sheet.asksUnit
        text: qsTr("Unit of the coordinates")
    }
    ChoiceBar {
        objectName: "siteUnit"
        width: parent.width
        visible: root.sheet.asksUnit
        words: root.sheet.unitWords // qmllint disable type
        chosen: root.sheet.unit
        name: qsTr("Unit of the coordinates")
        onPicked: index => root.sheet.pickUnit(index)
    }
    Body {
        objectName: "siteUnitNote"
        width: parent.width
        visible: text !== ""
        color: Theme.ink2
        text: root.sheet.unitNote
    }
}
