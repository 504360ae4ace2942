import QtQuick
import Groundcount

Rectangle {
    color: Theme.paper

    Column {
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap2
        PageHead { width: parent.width; title: "Test 27"; context: "Gauge 07"; hasBack: true }
        StepHead { width: parent.width; steps: Steps {} now: 0 }
        Row {
            width: parent.width
            spacing: 18
            FixScatter {
                Accessible.name: "22 fixes, good to 1.4 ft; drawn site 0.4 ft away"
                width: Math.min(182, parent.width * 0.48)
                height: width
                squaresAcross: 3.1
                circleRadius: 1.4
                hasSite: true
                site: Qt.point(-0.57, -0.46)
                fixes: [Qt.point(-0.5, 0.5), Qt.point(-0.3, 0.4), Qt.point(0.35, 0.48), Qt.point(0.4, 0.2), Qt.point(1.08, 0.1), Qt.point(1.38, 0),
                    Qt.point(-0.6, 0.05), Qt.point(-0.62, 0), Qt.point(-0.55, 0.03), Qt.point(-0.5, -0.1), Qt.point(-0.3, -0.07), Qt.point(-0.1, 0.02),
                    Qt.point(0.1, -0.25), Qt.point(0.2, -0.38), Qt.point(0.45, -0.08), Qt.point(0.65, -0.33), Qt.point(-0.1, -0.22), Qt.point(-0.72, -0.25)]
            }
            Column {
                spacing: Theme.gap3
                Figure { label: "Accuracy, 95 %"; figure: "±1.4"; unit: "ft" }
                Figure { label: "Fix"; figure: "Differential"; figureSize: Theme.sizeRow; figureWeight: Theme.strong }
                Figure { label: "Averaged, 20 needed"; figure: "22 fixes"; figureSize: Theme.sizeRow; figureWeight: Theme.strong }
            }
        }
        Caption { text: "Squares of 1 ft. Hold still." }
        Rule { width: parent.width }
        Item {
            width: parent.width
            height: station.implicitHeight
            Figure { id: station; label: "Station"; figure: "53+38.3" }
            Figure { anchors.right: parent.right; label: "Offset"; figure: "14.2"; unit: "ft Rt"; toTheRight: true }
        }
        LotStrip {
            width: parent.width
            Accessible.name: "Lot N-4, lift 7: pass in sublot 1, waiting and failed in 2, here in 3, owed in 4"
            dividers: [0.25, 0.5, 0.75]
            marks: [Mark.Pass, Mark.Waiting, Mark.Fail, Mark.Here, Mark.Owed]
            along: [0.1, 0.35, 0.44, 0.56, 0.87]
            across: [0.7, 0.35, 0.6, 0.6, 0.35]
        }
        ChoiceBar { width: parent.width; name: "Why here"; words: ["Random", "Directed", "Retest of…"]; chosen: 0 }
    }
    ActFoot {
        width: parent.width
        anchors.bottom: parent.bottom
        PrimaryButton { width: parent.width; text: "Seal place" }
    }
}
