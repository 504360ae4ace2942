import QtQuick
import QtQuick.Dialogs

// The system's own way to choose a file; where there is none, Qt's.
FileDialog {
    id: root

    property list<string> endings
    signal picked(url file)

    objectName: "filePick"
    fileMode: FileDialog.OpenFile
    nameFilters: [qsTr("Files that fit (%1)").arg(root.endings.join(" "))] // qmllint disable type
    onAccepted: root.picked(root.selectedFile)
}
