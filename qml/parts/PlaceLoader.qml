import QtQuick

// Loads its page when first shown; hidden, the page keeps what was entered.
Loader {
    id: root

    required property url page
    required property bool shown
    readonly property bool settled: !shown || status === Loader.Ready || status === Loader.Error

    anchors.fill: parent
    visible: shown
    focus: shown
    active: false
    source: page
    onShownChanged: if (shown) root.active = true
    Component.onCompleted: if (shown) root.active = true
}
