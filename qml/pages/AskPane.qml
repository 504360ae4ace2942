import QtQuick
import Groundcount

// A change that wants a reason: what happens, why, and the act.
FocusScope {
    id: root

    required property SheetAsk ask
    signal answered(string reason)

    objectName: "askPane"
    Keys.onEscapePressed: root.ask.close()

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "askHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: root.ask.title
        hasBack: true
        onBack: root.ask.close()
    }
    Column {
        anchors.top: head.bottom
        anchors.topMargin: Theme.gap2
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap4

        Body {
            objectName: "askWhat"
            width: parent.width
            text: root.ask.what
        }
        ReasonField {
            id: reason
            objectName: "askReason"
            width: parent.width
            label: qsTr("Reason")
        }
        CautionLine {
            objectName: "askMissing"
            width: parent.width
            text: root.ask.missing
        }
    }
    ActFoot {
        anchors.bottom: parent.bottom
        width: parent.width

        PrimaryButton {
            objectName: "askAct"
            width: parent.width
            text: root.ask.act
            onClicked: root.answered(reason.text)
        }
    }
}
