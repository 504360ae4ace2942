pragma ComponentBehavior: Bound

import QtQuick
import Groundcount

// The lifts of a lot stacked as built: a line per lift, a cell per sublot, how many are made.
Column {
    id: root

    required property list<string> columns
    required property LiftLines lifts
    readonly property real firstWidth: 48 * Theme.textScale
    readonly property real lastWidth: 72 * Theme.textScale
    readonly property real cellWidth: columns.length > 0 ? (width - firstWidth - lastWidth) / columns.length : 0

    objectName: "liftGrid"

    // Stations that would touch each other stand on two lines in turn.
    readonly property bool staggered: head0.widest + Theme.gap2 > cellWidth

    WordMeasure {
        id: head0
        words: root.columns // qmllint disable type
        pixelSize: Theme.sizeUnit
        weight: Theme.body
    }
    Item {
        width: parent.width
        height: Theme.sectionHeight * Theme.textScale + (root.staggered ? Theme.lineBody : 0)
        Caption {
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Lift")
        }
        Row {
            x: root.firstWidth
            height: parent.height
            Repeater {
                model: root.columns
                delegate: Item {
                    id: head
                    required property int index
                    required property string modelData
                    readonly property real shift: !root.staggered ? 0 : index % 2 === 0 ? -Theme.lineBody / 2 : Theme.lineBody / 2
                    width: root.cellWidth
                    height: parent.height
                    UnitMark {
                        anchors.centerIn: parent
                        anchors.verticalCenterOffset: head.shift
                        text: head.modelData
                    }
                }
            }
        }
        Caption {
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Made")
        }
    }
    Rule {
        width: parent.width
    }
    Repeater {
        model: root.lifts
        delegate: Item {
            id: line
            required property int index
            required property int number
            required property string made
            required property bool complete
            required property list<QtObject> cells
            objectName: "lift" + number
            width: root.width
            height: Theme.rowHeight * Theme.textScale
            Accessible.role: Accessible.Row
            Accessible.name: qsTr("Lift %1, %2").arg(number).arg(made)
            Text {
                anchors.verticalCenter: parent.verticalCenter
                text: line.number
                color: Theme.ink
                font.pixelSize: Theme.sizeMeasured
                font.weight: Theme.strong
                textFormat: Text.PlainText
            }
            Row {
                x: root.firstWidth
                height: parent.height
                Repeater {
                    model: line.cells
                    delegate: Item {
                        id: cell
                        required property QtObject modelData
                        width: root.cellWidth
                        height: line.height
                        Rectangle {
                            width: Theme.hairWidth
                            height: parent.height
                            color: Theme.hair
                        }
                        Row {
                            anchors.centerIn: parent
                            spacing: Theme.gap1
                            Repeater {
                                model: cell.modelData
                                delegate: StateSymbol {
                                    required mark
                                    width: 22
                                    height: 22
                                }
                            }
                        }
                    }
                }
            }
            Rectangle {
                x: root.firstWidth + root.cellWidth * root.columns.length
                width: Theme.hairWidth
                height: parent.height
                color: Theme.hair
            }
            Text {
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                text: line.made
                color: Theme.ink
                font.pixelSize: Theme.sizeBody
                font.weight: line.complete ? Theme.body : Theme.strong
                textFormat: Text.PlainText
            }
            Hair {
                visible: line.index + 1 < root.lifts.count
                width: parent.width
                anchors.bottom: parent.bottom
            }
        }
    }
}
