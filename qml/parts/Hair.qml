import QtQuick
import Groundcount

Rectangle {
    implicitHeight: Theme.hairWidth
    color: Theme.hair
}
