import QtQuick
import Groundcount

ListModel {
    ListElement { word: "Place"; isSealed: true }
    ListElement { word: "Clear"; isSealed: false }
    ListElement { word: "Seat"; isSealed: false }
    ListElement { word: "Count"; isSealed: false }
    ListElement { word: "Dig"; isSealed: false }
    ListElement { word: "Verdict"; isSealed: false }
}
