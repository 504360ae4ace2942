import QtQuick
import Groundcount

// The camera, loaded by its name only when it is asked for: without Qt's multimedia module or without a camera a sentence says so.
Loader {
    id: root

    required property PhotoTake take

    active: take.held
    source: "CameraPage.qml"
    visible: take.open && status === Loader.Ready

    Binding {
        target: root.item
        property: "take"
        value: root.take
        when: root.status === Loader.Ready
    }
    onStatusChanged: if (status === Loader.Error)
        root.take.missing()
}
