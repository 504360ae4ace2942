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
    readonly property alias sideRoom: side.room
    readonly property real words: titleText.implicitHeight + (subtitle === "" ? Theme.gap2 : subtitleText.implicitHeight + 2 * Theme.gap1)
    readonly property real least: subtitle === "" ? 56 : 66 * Theme.textScale
    readonly property real most: words > side.implicitHeight ? words : side.implicitHeight
    implicitHeight: most > least ? most : least

    WordMeasure {
        id: longest
        words: [root.title]
        pixelSize: Theme.sizeTitle
        weight: Theme.strong
    }
    // Files of their own: Day, the first page, has neither a way back nor a context and does without them.
    Loader {
        active: root.hasBack
        visible: active
        x: -Theme.margin
        width: 52
        height: 56
        source: "PageBack.qml"
        onLoaded: (item as PageBack).head = root
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
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Body {
        id: subtitleText
        visible: root.subtitle !== ""
        color: Theme.ink2
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: titleText.bottom
        anchors.topMargin: Theme.gap1
        text: root.subtitle
    }
    Loader {
        id: side
        // The title has the right of way; the context wraps in what is left.
        readonly property real titleRoom: longest.widest > root.width * 0.55 ? longest.widest + 1 : root.width * 0.55
        readonly property real room: root.width - titleText.anchors.leftMargin - Theme.gap3 - (titleText.implicitWidth < titleRoom ? titleText.implicitWidth : titleRoom)
        active: root.context !== "" || root.context2 !== "" || root.link !== ""
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        source: "PageHeadSide.qml"
        onLoaded: (item as PageHeadSide).head = root
    }
}
