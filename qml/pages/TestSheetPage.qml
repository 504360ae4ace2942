import QtQuick
import Groundcount

// The sheet of the test that lies open on the desk.
FocusScope {
    objectName: "testSheetPage"

    TestPage {
        anchors.fill: parent
        sheet: Desk.sheet
        onBack: Desk.closeTest()
    }
}
