import QtQuick
import Groundcount

Window {
    id: root

    property string place: "day"

    objectName: "window"
    width: 412
    height: 915
    minimumWidth: 360
    minimumHeight: 640
    visible: true
    title: qsTr("Groundcount")
    color: Theme.paper

    Binding {
        target: Theme
        property: "name"
        value: Desk.screen.theme
    }
    Binding {
        target: Theme
        property: "textScale"
        value: Desk.screen.textScale
    }
    Shell {
        objectName: "shell"
        anchors.fill: parent
        wide: root.width >= Theme.wideFrom
        focus: true
    }
    onPlaceChanged: Desk.place = root.place
    Component.onCompleted: Desk.place = root.place
}
