import QtQuick
import Groundcount

// A state by its shape alone. Whoever uses it puts the word beside it or gives it an accessible name.
StateMarkItem {
    id: root
    objectName: "stateSymbol"

    inks: Theme.inks
    implicitWidth: Theme.sizeMeasured
    implicitHeight: Theme.sizeMeasured
}
