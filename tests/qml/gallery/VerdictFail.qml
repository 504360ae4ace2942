import QtQuick
import Groundcount

Rectangle {
    color: Theme.paper

    Column {
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        PageHead { width: parent.width; title: "Test 27"; context: "53+38, 14 Rt"; context2: "Lot N-4, lift 7"; hasBack: true }
        StepHead {
            width: parent.width
            now: 5
            steps: ListModel {
                ListElement { word: "Place"; isSealed: true }
                ListElement { word: "Clear"; isSealed: true }
                ListElement { word: "Seat"; isSealed: true }
                ListElement { word: "Count"; isSealed: true }
                ListElement { word: "Dig"; isSealed: true }
                ListElement { word: "Verdict"; isSealed: false }
            }
        }
        Item { width: 1; height: Theme.gap2 }
        StateBadge { mark: Mark.Fail; word: "Fail"; symbolSize: 60; wordSize: Theme.sizeWord; spacing: Theme.gap5 }
        Figure { label: "Percent compaction"; figure: "92.0"; unit: "%"; uncertainty: "±1.7"; figureSize: Theme.sizeVerdict }
        LimitLine {
            width: parent.width
            lowLimit: 0.5; value: 0.25; spreadLow: 0.107; spreadHigh: 0.39; mark: Mark.Fail
            labels: ["95 needed"]; labelAt: [0.5]
            Accessible.name: "92.0 %, 95 needed"
        }
        Hair { width: parent.width }
        Item { width: 1; height: Theme.gap2 }
        FigureRow { width: parent.width; label: "Moisture"; figure: "12.5"; unit: "%"; uncertainty: "±0.8" }
        LimitLine {
            width: parent.width
            lowLimit: 0.225; highLimit: 0.725; value: 0.43; spreadLow: 0.335; spreadHigh: 0.535; mark: Mark.Pass
            labels: ["10.8", "optimum 12.8", "14.8"]; labelAt: [0.225, 0.475, 0.725]
            Accessible.name: "12.5 %, 10.8 to 14.8 allowed"
        }
        Hair { width: parent.width }
        ArithmeticList {
            width: parent.width
            rows: ListModel {
                ListElement { name: "Dry density"; formula: "wet density / (1 + water content)"; numbers: "129.9 / (1 + 0.125)"; value: "115.5 lb/ft³"; source: "Common practice, no source" }
            }
        }
    }
    ActFoot {
        width: parent.width
        anchors.bottom: parent.bottom
        PrimaryButton { width: parent.width; text: "Seal the verdict" }
    }
}
