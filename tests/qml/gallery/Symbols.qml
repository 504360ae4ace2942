import QtQuick
import Groundcount

Rectangle {
    id: root
    color: Theme.paper

    Grid {
        x: Theme.margin
        y: Theme.margin
        columns: 4
        spacing: Theme.gap5
        Repeater {
            model: [Mark.Pass, Mark.Fail, Mark.Waiting, Mark.InformationOnly, Mark.Void, Mark.Owed, Mark.Clear, Mark.TooClose, Mark.CannotTell, Mark.Here]
            StateSymbol { required property int modelData; mark: modelData; width: 60; height: 60 }
        }
    }
    Rectangle {
        y: 290
        width: parent.width
        height: 90
        color: "#7A6A4C"
        HatchGround { anchors.fill: parent; anchors.topMargin: 50; brick: true }
        Row {
            anchors.centerIn: parent
            spacing: 8
            Repeater {
                model: [Mark.Pass, Mark.Fail, Mark.Waiting, Mark.InformationOnly, Mark.Void, Mark.Owed, Mark.Here]
                StateSymbol { required property int modelData; mark: modelData; base: StateMarkItem.Imagery; width: 36; height: 36 }
            }
        }
    }
    Flow {
        x: Theme.margin
        y: 400
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap4
        Repeater {
            model: [Glyph.Day, Glyph.Map, Glyph.Lots, Glyph.Kit, Glyph.Back, Glyph.Lock, Glyph.Bearing, Glyph.Tape, Glyph.Backspace, Glyph.Right, Glyph.Left,
                Glyph.Up, Glyph.Down, Glyph.Close, Glyph.Layers, Glyph.Locate, Glyph.Warning, Glyph.North, Glyph.Gauge, Glyph.Check, Glyph.Plus]
            Icon { required property int modelData; glyph: modelData; width: 44; height: 44 }
        }
    }
    SideRail { visible: root.width >= Theme.wideFrom; anchors.right: parent.right; height: parent.height; place: "map" }
}
