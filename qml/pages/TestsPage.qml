pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// The tests of a lot, or of every lot, newest first, by state, person, gauge, material and day.
FocusScope {
    id: root

    property string lot: ""
    property bool filtersOpen: false

    objectName: "testsPage"
    Keys.onEscapePressed: Desk.lotSheet = ""

    TestsView {
        id: page
        session: Session
        lot: root.lot
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    Column {
        id: head
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        PageHead {
            objectName: "testsHead"
            width: parent.width
            title: qsTr("Tests")
            context: page.title
            hasBack: true
            onBack: Desk.lotSheet = ""
        }
        LinkRow {
            objectName: "filterLink"
            width: parent.width
            glyph: root.filtersOpen ? Glyph.Up : Glyph.Down
            text: page.filterText + " (" + page.tests.count + ")"
            onClicked: root.filtersOpen = !root.filtersOpen
        }
        Rule {
            width: parent.width
        }
    }
    Flickable {
        id: filters
        objectName: "filters"
        anchors.top: head.bottom
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        height: !visible ? 0 : contentHeight < parent.height / 2 ? contentHeight : parent.height / 2
        visible: root.filtersOpen
        contentHeight: bars.implicitHeight
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: bars
            width: parent.width
            topPadding: Theme.gap2
            bottomPadding: Theme.gap3
            spacing: Theme.gap2
            FilterBar {
                objectName: "byState"
                width: parent.width
                name: qsTr("State")
                words: page.stateWords // qmllint disable type
                chosen: page.state
                onPicked: index => page.pick(TestsView.State, index)
            }
            FilterBar {
                objectName: "byPerson"
                width: parent.width
                name: qsTr("Person")
                words: page.personWords // qmllint disable type
                chosen: page.person
                onPicked: index => page.pick(TestsView.Person, index)
            }
            FilterBar {
                objectName: "byGauge"
                width: parent.width
                name: qsTr("Gauge")
                words: page.gaugeWords // qmllint disable type
                chosen: page.gauge
                onPicked: index => page.pick(TestsView.Gauge, index)
            }
            FilterBar {
                objectName: "byMaterial"
                width: parent.width
                name: qsTr("Material")
                words: page.materialWords // qmllint disable type
                chosen: page.material
                onPicked: index => page.pick(TestsView.Material, index)
            }
            FilterBar {
                objectName: "byDay"
                width: parent.width
                name: qsTr("Day")
                words: page.dayWords // qmllint disable type
                chosen: page.day
                onPicked: index => page.pick(TestsView.Day, index)
            }
            SecondaryButton {
                objectName: "allTests"
                width: parent.width
                text: qsTr("Show all")
                onClicked: page.pickAll()
            }
        }
    }
    ListView {
        id: list
        objectName: "testList"
        anchors.top: filters.bottom
        anchors.bottom: parent.bottom
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        clip: true
        focus: true
        keyNavigationEnabled: true
        boundsBehavior: Flickable.StopAtBounds
        reuseItems: true
        model: page.tests
        Keys.onReturnPressed: (list.currentItem as ListRow)?.clicked()
        C.ScrollBar.vertical: C.ScrollBar {
            policy: C.ScrollBar.AsNeeded
        }
        delegate: ListRow {
            id: line
            required property int index
            required property string rowId
            required mark
            required lead
            required title
            required second
            required figure
            required unit
            required word
            required wordMark
            objectName: "test_" + index
            width: list.width
            chosen: ListView.isCurrentItem && list.activeFocus
            onClicked: Desk.openTest(line.rowId)
        }
    }
    Body {
        objectName: "noTests"
        anchors.centerIn: list
        visible: list.count === 0
        text: qsTr("No test is like that.")
    }
}
