import QtQuick
import Groundcount

Rectangle {
    id: root
    color: Theme.paper

    Column {
        x: Theme.margin
        width: Math.min(parent.width, 412) - 2 * Theme.margin
        PageHead { width: parent.width; title: "Tuesday, June 9"; subtitle: "Cedar Bend, north approach" }
        GaugeCard {
            width: parent.width
            name: "Gauge 07"
            mark: Mark.Pass
            standing: "Ready"
            papers: "Standard counts accepted 6:48. Papers in date."
            counts: ListModel {
                ListElement { label: "Density"; figure: "2,846"; lowLimit: 0.2; highLimit: 0.82; value: 0.43; mark: Mark.Pass; deviation: "−0.2 of ±1 %" }
                ListElement { label: "Moisture"; figure: "648"; lowLimit: 0.2; highLimit: 0.82; value: 0.43; mark: Mark.Pass; deviation: "−0.5 of ±2 %" }
            }
        }
        SectionHead { width: parent.width; title: "Owed here today"; count: "2 of 4" }
        ListRow { width: parent.width; objectName: "site3"; mark: Mark.Owed; lead: "53+38"; title: ", 14 Rt"; second: "Site 3, lot N-4, lift 7"; figure: "91"; unit: "ft"; word: "NE"; hasBearing: true; bearing: 38 }
        ListRow { width: parent.width; objectName: "site4"; mark: Mark.Owed; lead: "55+21"; title: ", 22 Lt"; second: "Site 4, lot N-4, lift 7"; figure: "269"; unit: "ft"; word: "N"; hasBearing: true; bearing: 12; ruled: false }
        SectionHead { width: parent.width; title: "Waiting"; count: "1" }
        ListRow { width: parent.width; objectName: "test25"; mark: Mark.Waiting; lead: "25"; title: "  52+12, 26 Lt"; second: "for the oven since 9:34"; figure: "95.8"; unit: "%"; word: "provisional"; wordStrong: true; ruled: false }
        SectionHead { width: parent.width; title: "Results"; count: "3" }
        ListRow { width: parent.width; objectName: "test23"; mark: Mark.Pass; lead: "23"; title: "  48+86, 11 Lt"; second: "Lot N-3, lift 8"; figure: "96.1"; unit: "%"; word: "Pass"; wordMark: Mark.Pass }
        ListRow { width: parent.width; objectName: "test26"; mark: Mark.Fail; lead: "26"; title: "  52+67, 8 Rt"; second: "Lot N-4, lift 7"; figure: "92.0"; unit: "%"; word: "Fail"; wordMark: Mark.Fail; ruled: false }
    }
    ActFoot {
        width: Math.min(parent.width, 412)
        anchors.bottom: bar.top
        PrimaryButton { width: parent.width; compact: root.height < 700; text: "Start a test here" }
    }
    BottomBar { id: bar; width: parent.width; anchors.bottom: parent.bottom; place: "day" }
}
