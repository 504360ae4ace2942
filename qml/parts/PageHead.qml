import QtQuick
import Groundcount

// Title left, up to two lines of context or one link right; a second line under the title where there is no way back.
Item {
    id: root

    required property string title
    property string subtitle: ""
    property string context: ""
    property string context2: ""
    property bool hasBack: false
    property string link: ""
    signal back
    signal linkActivated

    objectName: "pageHead"
    implicitHeight: subtitle === "" ? 56 : 66 * Theme.textScale

    Pressable {
        id: backTarget
        objectName: "back"
        visible: root.hasBack
        x: -Theme.margin
        width: 52
        height: 56
        text: qsTr("Back")
        onClicked: root.back()
        contentItem: Item {
            Icon {
                glyph: Glyph.Back
                x: 12
                anchors.verticalCenter: parent.verticalCenter
            }
        }
    }
    Text {
        id: titleText
        objectName: "title"
        anchors.left: parent.left
        anchors.leftMargin: root.hasBack ? 32 : 0
        anchors.right: side.left
        anchors.rightMargin: Theme.gap2
        anchors.verticalCenter: root.subtitle === "" ? parent.verticalCenter : undefined
        anchors.top: root.subtitle === "" ? undefined : parent.top
        anchors.topMargin: Theme.gap1
        text: root.title
        color: Theme.ink
        font.pixelSize: Theme.sizeTitle
        font.weight: Theme.strong
        textFormat: Text.PlainText
        elide: Text.ElideRight
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Caption {
        visible: root.subtitle !== ""
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: titleText.bottom
        anchors.topMargin: Theme.gap1
        text: root.subtitle
    }
    Column {
        id: side
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.gap1
        Caption {
            anchors.right: parent.right
            visible: text !== ""
            text: root.context
        }
        Caption {
            anchors.right: parent.right
            visible: text !== ""
            text: root.context2
        }
        LinkRow {
            objectName: "headLink"
            visible: root.link !== ""
            underlined: true
            text: root.link
            onClicked: root.linkActivated()
        }
    }
}
