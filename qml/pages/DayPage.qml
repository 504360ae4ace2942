import QtQuick
import Groundcount

Item {
    objectName: "dayPage"

    PageHead {
        x: Theme.margin
        y: Theme.gap2
        width: parent.width - 2 * Theme.margin
        title: qsTr("Day")
        subtitle: qsTr("No field book is open.")
    }
}
