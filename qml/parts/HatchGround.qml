import QtQuick
import Groundcount

HatchItem {
    inks: Theme.inks
}
