import QtQuick
import Groundcount

// What leads off the device, in the lot's place. Always there: leaving a pane does not stop its work.
Item {
    id: root

    required property string which
    property bool hasBack: true
    signal back

    objectName: "lotPanes"

    HandOverPane {
        visible: root.which === "hand-over"
        anchors.fill: parent
        hasBack: root.hasBack
        onBack: root.back()
    }
    ServerPane {
        visible: root.which === "server"
        anchors.fill: parent
        hasBack: root.hasBack
        onBack: root.back()
    }
    PublishPane {
        visible: root.which === "publish"
        anchors.fill: parent
        onBack: root.back()
    }
}
