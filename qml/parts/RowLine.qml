import QtQuick
import Groundcount

// A row of a RowList, as the view of the list makes it.
ListRow {
    id: root

    required property int index
    required property string rowId
    required mark
    required lead
    required title
    required second
    required figure
    required unit
    required word
    required wordMark
    required hasBearing
    required bearing
    required chevron

    objectName: "row" + index
}
