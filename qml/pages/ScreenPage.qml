import QtQuick
import Groundcount

// How this device shows the pages: theme, size of the text, language.
FocusScope {
    id: root

    readonly property ScreenSettings settings: Desk.screen

    objectName: "screenPage"
    Keys.onEscapePressed: Desk.screenOpen = false

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "screenHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: qsTr("Screen")
        hasBack: true
        onBack: Desk.screenOpen = false
    }
    Flickable {
        id: scroll
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        contentWidth: width
        contentHeight: column.implicitHeight + Theme.gap6
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: column
            x: Theme.margin
            width: scroll.width < 680 + 2 * Theme.margin ? scroll.width - 2 * Theme.margin : 680
            spacing: Theme.gap2

            SectionHead {
                width: parent.width
                title: qsTr("Light")
            }
            ChoiceBar {
                objectName: "themeChoice"
                width: parent.width
                words: root.settings.themeWords // qmllint disable type
                chosen: root.settings.themeIndex
                name: qsTr("Light")
                onPicked: index => root.settings.pickTheme(index)
            }
            SectionHead {
                width: parent.width
                title: qsTr("Text")
            }
            ChoiceBar {
                objectName: "textChoice"
                width: parent.width
                words: root.settings.textWords // qmllint disable type
                chosen: root.settings.textIndex
                name: qsTr("Text")
                onPicked: index => root.settings.pickText(index)
            }
            SectionHead {
                width: parent.width
                title: qsTr("Language")
            }
            ChoiceBar {
                objectName: "languageChoice"
                width: parent.width
                words: root.settings.languageWords // qmllint disable type
                chosen: root.settings.languageIndex
                name: qsTr("Language")
                onPicked: index => root.settings.pickLanguage(index)
            }
            SectionHead {
                width: parent.width
                title: qsTr("End of a count")
            }
            ChoiceBar {
                objectName: "endChoice"
                width: parent.width
                words: root.settings.endWords // qmllint disable type
                chosen: root.settings.endIndex
                name: qsTr("End of a count")
                onPicked: index => root.settings.pickEnd(index)
            }
            CautionLine {
                objectName: "screenTrouble"
                width: parent.width
                text: root.settings.trouble
            }
        }
    }
}
