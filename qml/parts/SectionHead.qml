import QtQuick
import Groundcount

// The rule, the section's name and, at the right, how many.
Item {
    id: root

    required property string title
    property string count: ""
    property bool ruled: true

    objectName: "sectionHead"
    readonly property real words: titleText.implicitHeight > countText.implicitHeight ? titleText.implicitHeight : countText.implicitHeight
    implicitHeight: words + Theme.gap3 > Theme.sectionHeight * Theme.textScale ? words + Theme.gap3 : Theme.sectionHeight * Theme.textScale

    Rule {
        visible: root.ruled
        width: parent.width
    }
    Text {
        id: titleText
        anchors.left: parent.left
        anchors.right: countText.left
        anchors.rightMargin: Theme.gap2
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        text: root.title
        color: Theme.ink
        font.pixelSize: Theme.sizeRow
        font.weight: Theme.strong
        textFormat: Text.PlainText
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Body {
        id: countText
        width: countFit.given
        TextFit {
            id: countFit
            shown: countText
            most: root.width / 2
        }
        horizontalAlignment: Text.AlignRight
        color: Theme.ink2
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        text: root.count
    }
}
