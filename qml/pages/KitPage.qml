import QtQuick
import Groundcount

Item {
    objectName: "kitPage"

    PageHead {
        x: Theme.margin
        y: Theme.gap2
        width: parent.width - 2 * Theme.margin
        title: qsTr("Kit")
        subtitle: qsTr("No field book is open.")
    }
}
