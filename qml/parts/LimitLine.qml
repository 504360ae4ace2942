import QtQuick
import Groundcount

// The judged figure on its scale; every position is a fraction that comes from outside.
LimitLineItem {
    inks: Theme.inks
    objectName: "limitLine"
    Accessible.role: Accessible.Graphic
}
