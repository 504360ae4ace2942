import QtQuick
import Groundcount

StandBackRingItem {
    inks: Theme.inks
    objectName: "standBackRing"
    Accessible.role: Accessible.Graphic
}
