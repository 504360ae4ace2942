import QtQuick
import Groundcount

// One hazard: name and how it is known left, mark and word right. While unsettled it stays open: its limit line, then its remedies,
// which are the children of this part, side by side.
Column {
    id: root

    required property string name
    required property string known
    required property int mark
    required property string word
    property bool settled: false
    property alias lowLimit: line.lowLimit
    property alias value: line.value
    property alias spreadLow: line.spreadLow
    property alias spreadHigh: line.spreadHigh
    property alias labels: line.labels
    property alias labelAt: line.labelAt
    property alias measuredLabel: line.measuredLabel
    default property alias remedies: remedyRow.data
    signal clicked

    objectName: "hazardRow"

    Pressable {
        objectName: "hazard_" + root.name
        width: parent.width
        height: words.implicitHeight + Theme.gap3 > Theme.rowHeight * Theme.textScale ? words.implicitHeight + Theme.gap3 : Theme.rowHeight * Theme.textScale
        groundRadius: 0
        text: root.name
        Accessible.name: root.name + ", " + root.known + ", " + root.word
        onClicked: root.clicked()

        Item {
            anchors.fill: parent
            Column {
                id: words
                anchors.left: parent.left
                anchors.right: badge.left
                anchors.rightMargin: Theme.gap2
                anchors.verticalCenter: parent.verticalCenter
                Text {
                    width: parent.width
                    text: root.name
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                    wrapMode: Text.WordWrap
                }
                Body {
                    width: parent.width
                    color: Theme.ink2
                    text: root.known
                }
            }
            StateBadge {
                id: badge
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                mark: root.mark
                word: root.word
                symbolSize: 28
                limit: parent.width * 0.5
            }
        }
    }
    Item {
        width: parent.width
        clip: true
        visible: height > 0
        height: root.settled ? 0 : body.implicitHeight
        Behavior on height {
            NumberAnimation {
                duration: Theme.unfoldTime
            }
        }

        Column {
            id: body
            width: parent.width
            spacing: Theme.gap2
            bottomPadding: Theme.gap3
            LimitLine {
                id: line
                objectName: "hazardLine"
                width: parent.width
                mark: root.mark
                Accessible.name: root.name + ", " + root.known + ", " + root.word
            }
            Row {
                id: remedyRow
                width: parent.width
                spacing: 10
            }
        }
    }
    Hair {
        width: parent.width
    }
}
