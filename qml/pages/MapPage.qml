import QtQuick
import Groundcount

Item {
    objectName: "mapPage"

    PageHead {
        x: Theme.margin
        y: Theme.gap2
        width: parent.width - 2 * Theme.margin
        title: qsTr("Map")
        subtitle: qsTr("No field book is open.")
    }
}
