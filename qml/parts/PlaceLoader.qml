import QtQuick

// Loads its page when first shown; hidden, the page keeps what was entered. Held back, it stands for a page whose rows are still being read.
Loader {
    id: root

    required property url page
    required property bool shown
    property bool held: false
    readonly property bool open: shown && !held
    readonly property bool settled: !shown || status === Loader.Ready || status === Loader.Error

    anchors.fill: parent
    visible: open
    focus: open
    active: false
    source: page
    onOpenChanged: if (open) root.active = true
    Component.onCompleted: if (open) root.active = true
}
