pragma Singleton

import QtQuick
import Groundcount

QtObject {
    id: root

    // "day", "sun" or "dusk"
    property string name: "day"
    property real textScale: 1
    property bool reducedMotion: false
    property real insetTop: 0
    property real insetBottom: 0

    readonly property bool sun: name === "sun"
    readonly property bool dusk: name === "dusk"

    readonly property color paper: dusk ? "#15171A" : sun ? "#FFFFFF" : "#FAF8F4"
    readonly property color well: dusk ? "#202327" : sun ? "#FFFFFF" : "#F0ECE2"
    readonly property color ink: dusk ? "#E6DFD0" : sun ? "#000000" : "#17181A"
    readonly property color ink2: dusk ? "#BDB5A4" : sun ? "#000000" : "#47463F"
    readonly property color hair: dusk ? "#4A4D50" : sun ? "#000000" : "#C9C2B3"
    readonly property color pass: dusk ? "#8DBDF2" : sun ? "#003A75" : "#004488"
    readonly property color fail: dusk ? "#FF9494" : sun ? "#8F1500" : "#9E1B0D"
    readonly property color act: dusk ? "#E2AE3A" : sun ? "#FFE066" : "#F4B92B"
    readonly property color actInk: dusk ? "#15171A" : sun ? "#000000" : "#17181A"
    readonly property color field: dusk ? "#202327" : "#FFFFFF"

    readonly property int body: sun ? 700 : 500
    readonly property int strong: sun ? 900 : 700
    readonly property int deciding: dusk ? 700 : 900

    readonly property real hairWidth: sun ? 1.5 : 1
    readonly property real ruleWidth: sun ? 3 : 2
    readonly property real tickWidth: sun ? 4 : 3
    readonly property real actEdge: dusk ? 0 : sun ? 4 : 2
    readonly property real iconStroke: sun ? 2.5 : 2
    readonly property real barWidth: 5

    readonly property real sizeUnit: 14 * textScale
    readonly property real sizeBody: 16 * textScale
    readonly property real sizeRow: 18 * textScale
    readonly property real sizeAct: 20 * textScale
    readonly property real sizeMeasured: 22 * textScale
    readonly property real sizeTitle: 28 * textScale
    readonly property real sizeKey: 32 * textScale
    readonly property real sizeDeciding: 40 * textScale
    readonly property real sizeWord: 48 * textScale
    readonly property real sizeVerdict: 88 * textScale
    readonly property real sizeTimer: 104 * textScale

    readonly property real lineBody: 20 * textScale
    readonly property real lineRow: 22 * textScale
    readonly property real lineMeasured: 26 * textScale
    readonly property real lineTitle: 32 * textScale
    readonly property real lineDeciding: 44 * textScale
    readonly property real lineVerdict: 86 * textScale
    readonly property real lineTimer: 98 * textScale

    readonly property real tightDeciding: -0.5
    readonly property real tightVerdict: -2

    readonly property real gap1: 4
    readonly property real gap2: 8
    readonly property real gap3: 12
    readonly property real gap4: 16
    readonly property real gap5: 20
    readonly property real gap6: 28
    readonly property real margin: 20
    readonly property real iconColumn: 36
    readonly property real rowHeight: 56
    readonly property real denseRowHeight: 48
    readonly property real sectionHeight: 34
    readonly property real target: 48
    readonly property real mapControl: 60 // a control that lies on the map
    readonly property real fieldHeight: 64
    readonly property real radius: 4
    readonly property real fieldRadius: 2
    readonly property real barHeight: 78
    readonly property real railWidth: 96
    readonly property real wideFrom: 840
    readonly property real threeFrom: 1100

    readonly property int unfoldTime: reducedMotion ? 0 : 120

    readonly property InkSet inks: InkSet {
        paper: root.paper
        ink: root.ink
        ink2: root.ink2
        hair: root.hair
        pass: root.pass
        fail: root.fail
        ruleWidth: root.ruleWidth
        tickWidth: root.tickWidth
        iconStroke: root.iconStroke
        bodyWeight: root.body
        strongWeight: root.strong
        textScale: root.textScale
    }
}
