import QtQuick
import QtQuick.Dialogs

// The system's own way to choose a file, or where to save one; where there is none, Qt's.
FileDialog {
    id: root

    property list<string> endings
    property bool saves: false
    signal picked(url file)

    objectName: "filePick"
    fileMode: root.saves ? FileDialog.SaveFile : FileDialog.OpenFile
    nameFilters: [qsTr("Files that fit (%1)").arg(root.endings.join(" "))] // qmllint disable type
    onAccepted: root.picked(root.selectedFile)
}
