import QtQuick

// A list under a head: what makes `headerItem` its parent scrolls above the rows. In a file of its own, because Qt 6.4 makes no header whose
// component is bound to its file. While nobody has scrolled, a head that grows pushes the rows down instead of leaving the view by the top.
ListView {
    id: root

    property bool moved: false
    readonly property real headHeight: headerItem ? headerItem.height : 0

    objectName: "headedList"
    onMovementStarted: moved = true
    onMovementEnded: moved = !atYBeginning
    onHeadHeightChanged: moved || positionViewAtBeginning()
    header: Item {
        implicitHeight: childrenRect.height
    }
}
