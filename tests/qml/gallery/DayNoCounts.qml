import QtQuick
import Groundcount

Rectangle {
    color: Theme.paper

    Column {
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        PageHead { width: parent.width; title: "Tuesday, June 9"; subtitle: "Cedar Bend, north approach" }
        GaugeCard {
            width: parent.width
            name: "Gauge 07"
            mark: Mark.Nothing
            standing: "Not ready"
            missing: "Standard counts missing"
            papers: "Calibration and leak test in date."
            counts: ListModel {
                ListElement { label: "Density"; figure: ""; lowLimit: 0.2; highLimit: 0.8; value: 0.5; mark: Mark.Nothing; deviation: "last four 2,853 ±1 %" }
                ListElement { label: "Moisture"; figure: ""; lowLimit: 0.2; highLimit: 0.8; value: 0.5; mark: Mark.Nothing; deviation: "last four 651 ±2 %" }
            }
        }
        SectionHead { width: parent.width; title: "Before you count"; count: "all four seen" }
        ListRow { width: parent.width; objectName: "warm"; symbolColumn: false; title: "Warmed up"; second: "On since 6:26, 10 min needed"; word: "12 min" }
        LinkRow { width: parent.width; text: "Limits, with their source" }
        LinkRow { width: parent.width; objectName: "arithmetic"; text: "Show the arithmetic"; glyph: Glyph.Down }
    }
    ActFoot {
        width: parent.width
        anchors.bottom: bar.top
        PrimaryButton { width: parent.width; text: "Take standard counts" }
        NotYetButton { width: parent.width; tall: false; text: "Start a test: needs standard counts" }
    }
    BottomBar { id: bar; width: parent.width; anchors.bottom: parent.bottom; place: "kit" }
}
