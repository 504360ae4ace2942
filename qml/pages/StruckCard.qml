import QtQuick
import Groundcount

// What to do first when a gauge is struck: general cautions, no figures.
FocusScope {
    id: root

    required property CountStep count
    signal back

    objectName: "struckCard"
    Keys.onEscapePressed: root.back()

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "struckHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: root.count.struckTitle
        hasBack: true
        onBack: root.back()
    }
    Column {
        anchors.top: head.bottom
        anchors.topMargin: Theme.gap2
        x: Theme.margin
        width: parent.width - 2 * Theme.margin

        Rule {
            width: parent.width
        }
        Repeater {
            model: root.count.struckLines

            Item {
                id: line

                required property int index
                required property string modelData

                width: parent.width
                height: lineText.implicitHeight + Theme.gap5
                Text {
                    id: number
                    y: Theme.gap2
                    text: line.index + 1
                    color: Theme.ink
                    font.pixelSize: Theme.sizeMeasured
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                }
                Text {
                    id: lineText
                    x: Theme.iconColumn
                    y: Theme.gap2
                    width: parent.width - x
                    text: line.modelData
                    color: Theme.ink
                    font.pixelSize: Theme.sizeRow
                    font.weight: Theme.strong
                    textFormat: Text.PlainText
                    wrapMode: Text.WordWrap
                }
                Hair {
                    anchors.bottom: parent.bottom
                    width: parent.width
                }
            }
        }
    }
}
