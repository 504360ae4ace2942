import QtQuick
import Groundcount

// The foot of a page, under the thumb: a hairline and what to do next.
Rectangle {
    id: root

    default property alias acts: column.data

    objectName: "actFoot"
    color: Theme.paper
    implicitHeight: column.implicitHeight + Theme.gap3 + Theme.gap5

    Hair {
        width: parent.width
    }
    Column {
        id: column
        x: Theme.margin
        y: Theme.gap3
        width: root.width - 2 * Theme.margin
        spacing: Theme.gap2
    }
}
