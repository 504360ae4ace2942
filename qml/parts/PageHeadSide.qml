import QtQuick
import Groundcount

// The right of a page's head: up to two lines of context or one link.
Column {
    id: root

    property PageHead head: null
    readonly property real room: head ? head.sideRoom : 0

    spacing: Theme.gap1

    Body {
        id: contextText
        anchors.right: parent.right
        width: contextFit.given
        TextFit {
            id: contextFit
            shown: contextText
            most: root.room
        }
        horizontalAlignment: Text.AlignRight
        visible: text !== ""
        color: Theme.ink2
        text: root.head ? root.head.context : ""
    }
    Body {
        id: context2Text
        anchors.right: parent.right
        width: context2Fit.given
        TextFit {
            id: context2Fit
            shown: context2Text
            most: root.room
        }
        horizontalAlignment: Text.AlignRight
        visible: text !== ""
        color: Theme.ink2
        text: root.head ? root.head.context2 : ""
    }
    LinkRow {
        objectName: "headLink"
        visible: text !== ""
        underlined: true
        text: root.head ? root.head.link : ""
        onClicked: root.head.linkActivated()
    }
}
