import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// A lot's line seen from the side: station across, lift upward, each test's state; below, how each lift stands.
FocusScope {
    id: root

    property string lot: ""

    objectName: "profilePage"
    Keys.onEscapePressed: Desk.lotSheet = ""

    ProfileView {
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
        objectName: "profileHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: qsTr("Profile")
        context: page.title
        hasBack: true
        onBack: Desk.lotSheet = ""
    }
    Flickable {
        id: scroll
        objectName: "profileScroll"
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
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
            spacing: Theme.gap2
            Body {
                objectName: "noProfile"
                width: parent.width
                visible: !page.plot.there
                text: qsTr("This lot has neither stations nor corners, so it has no profile.")
            }
            Body {
                objectName: "profileNote"
                width: parent.width
                visible: page.note.length > 0
                text: page.note
            }
            ProfileItem {
                objectName: "profile"
                inks: Theme.inks
                visible: page.plot.there
                width: parent.width
                height: page.plot.lifts > 6 ? 340 : 240
                plot: page.plot
                Accessible.role: Accessible.Graphic
                Accessible.name: page.plot.spoken
            }
            Column {
                width: parent.width
                SectionHead {
                    width: parent.width
                    title: qsTr("Lifts")
                    count: page.lifts.count
                }
                RowColumn {
                    objectName: "profileLifts"
                    width: parent.width
                    rows: page.lifts
                    onPicked: Desk.lotSheet = "review"
                }
            }
        }
    }
}
