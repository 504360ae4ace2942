import QtQuick
import Groundcount

FixScatterItem {
    inks: Theme.inks
    objectName: "fixScatter"
    Accessible.role: Accessible.Graphic
}
