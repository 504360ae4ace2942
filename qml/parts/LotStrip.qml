import QtQuick
import Groundcount

LotStripItem {
    inks: Theme.inks
    objectName: "lotStrip"
    Accessible.role: Accessible.Graphic
}
