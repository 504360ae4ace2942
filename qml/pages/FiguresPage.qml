pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic as C
import Groundcount

// The statistics of a lot: the plot that is chosen, then each figure with its arithmetic.
FocusScope {
    id: root

    property string lot: ""

    objectName: "figuresPage"
    Keys.onEscapePressed: Desk.lotSheet = ""

    FiguresView {
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
        objectName: "figuresHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: qsTr("Statistics")
        context: page.title
        hasBack: true
        onBack: Desk.lotSheet = ""
    }
    Flickable {
        id: scroll
        objectName: "figuresScroll"
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

            CautionLine {
                objectName: "figuresTrouble"
                width: parent.width
                text: page.trouble
            }
            ChoiceBar {
                objectName: "plotNames"
                visible: page.plotNames.length > 1
                width: parent.width
                name: qsTr("Plot")
                words: page.plotNames // qmllint disable type
                chosen: page.shownPlot
                onPicked: index => page.shownPlot = index
            }
            LotChart {
                objectName: "lotChart"
                visible: page.plotNames.length > 0
                width: parent.width
                height: root.height < 700 ? 220 : 260
                plot: page.plot
            }
            Column {
                width: parent.width
                Rule {
                    width: parent.width
                }
                Repeater {
                    model: page.figures
                    FigureFold {
                        objectName: "fold_" + index
                        width: column.width
                        unfolded: page.unfolded
                        arithmetic: page.arithmetic
                        onPicked: rowId => page.unfolded = rowId
                    }
                }
            }
        }
    }
}
