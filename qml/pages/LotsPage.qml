import QtQuick
import Groundcount

Item {
    objectName: "lotsPage"

    PageHead {
        x: Theme.margin
        y: Theme.gap2
        width: parent.width - 2 * Theme.margin
        title: qsTr("Lots")
        subtitle: qsTr("No field book is open.")
    }
}
