pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// Which gauge, and whether it may count. `counts` is a model with the roles of GaugeCountLine.
Column {
    id: root

    required property string name
    required property int mark
    required property string standing
    property string missing: ""
    property string papers: ""
    property alias counts: lines.model
    readonly property bool ready: missing === ""

    objectName: "gaugeCard"
    Accessible.role: Accessible.Grouping
    Accessible.name: name + ": " + standing

    Rule {
        width: parent.width
    }
    Item {
        width: parent.width
        height: 36 * Theme.textScale
        Text {
            anchors.left: parent.left
            anchors.right: badge.left
            anchors.rightMargin: Theme.gap2
            anchors.verticalCenter: parent.verticalCenter
            text: root.name
            color: Theme.ink
            font.pixelSize: Theme.sizeRow
            font.weight: Theme.strong
            textFormat: Text.PlainText
            elide: Text.ElideRight
        }
        StateBadge {
            id: badge
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            mark: root.mark
            word: root.standing
            glyph: root.ready ? Glyph.None : Glyph.Lock
        }
    }
    Text {
        objectName: "missing"
        visible: !root.ready
        width: parent.width
        text: root.missing
        color: Theme.ink
        font.pixelSize: Theme.sizeTitle
        font.weight: Theme.strong
        textFormat: Text.PlainText
        wrapMode: Text.WordWrap
        topPadding: Theme.gap1
        bottomPadding: Theme.gap1
    }
    Repeater {
        id: lines
        delegate: GaugeCountLine {
            width: root.width
        }
    }
    Body {
        visible: text !== ""
        width: parent.width
        topPadding: Theme.gap1
        bottomPadding: 10
        color: Theme.ink2
        text: root.papers
    }
}
