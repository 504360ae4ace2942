import QtQuick

// Loads the sheet that lies open beside or over a lot.
Loader {
    id: root

    required property string sheet
    required property string lot

    active: sheet !== "" && (lot !== "" || sheet === "tests")
    visible: active
    source: sheet === "review" ? "ReviewPage.qml" 
        : sheet === "figures" ? "FiguresPage.qml" : sheet === "draw" ? "DrawPage.qml"
        : sheet === "tests" ? "TestsPage.qml" : sheet === "profile" ? "ProfilePage.qml" : ""

    Binding {
        target: root.item
        property: "lot"
        value: root.lot
        when: root.status === Loader.Ready
    }
}
