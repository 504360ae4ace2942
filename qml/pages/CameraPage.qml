import QtQuick
import QtMultimedia
import Groundcount

// What the device's camera sees, and the shutter. The picture goes the way of an attached file.
FocusScope {
    id: root

    property PhotoTake take
    readonly property string path: root.take?.path ?? ""
    readonly property bool waiting: root.take?.waiting ?? false

    // The camera comes last, when all that it feeds stands still: a part that is put into a pipeline that is about to play may wait for ever (Qt 6.4.2).
    property bool wired: false

    onPathChanged: if (root.path !== "")
        capture.captureToFile(root.path)

    objectName: "cameraPage"
    Keys.onEscapePressed: root.take.close()
    Keys.onReturnPressed: shutter.clicked()
    Component.onCompleted: root.forceActiveFocus()
    onVisibleChanged: if (root.visible)
        root.forceActiveFocus()

    // When this page is made and knows whom to tell.
    Timer {
        interval: 0
        running: root.visible && devices.videoInputs.length === 0
        onTriggered: root.take.missing()
    }
    Timer {
        interval: 0
        running: !root.wired
        onTriggered: root.wired = true
    }
    MediaDevices {
        id: devices
    }
    Camera {
        id: eye
        cameraDevice: devices.defaultVideoInput
        active: root.visible && devices.videoInputs.length > 0
        onErrorOccurred: (error, errorString) => root.take.failed(errorString)
    }
    CaptureSession {
        camera: root.wired ? eye : null
        imageCapture: ImageCapture {
            id: capture
            onImageSaved: (requestId, path) => root.take.arrived(path)
            onErrorOccurred: (requestId, error, message) => root.take.failed(message)
        }
        videoOutput: view
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }
    PageHead {
        id: head
        objectName: "cameraHead"
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        title: qsTr("Photo")
        context: qsTr("What you keep is sealed with the test")
        hasBack: true
        onBack: root.take.close()
    }
    VideoOutput {
        id: view
        objectName: "cameraView"
        anchors.top: head.bottom
        anchors.bottom: foot.top
        width: parent.width
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
    }
    ActFoot {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width

        PrimaryButton {
            id: shutter
            objectName: "shutter"
            width: parent.width
            visible: capture.readyForCapture && !root.waiting
            text: qsTr("Take the photo")
            onClicked: root.take.press()
        }
        NotYetButton {
            objectName: "shutterNotYet"
            width: parent.width
            visible: !shutter.visible
            text: root.waiting ? qsTr("The picture is being kept") : qsTr("The camera is starting")
        }
    }
}
