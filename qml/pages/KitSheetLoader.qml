pragma ComponentBehavior: Bound

import QtQuick

// Loads the sheet that lies open on Kit and gives it its subject; a sheet that is left keeps its draft in the book.
Loader {
    id: root

    required property string sheet
    required property string subject

    active: sheet !== ""
    visible: active
    source: sheet === "" ? "" : sheet === "counts" ? "StandardCountsPage.qml" : sheet === "stability" ? "StabilityPage.qml"
        : sheet === "custody" ? "CustodyPage.qml" : sheet === "gauge" ? "GaugePapersPage.qml" : sheet === "material" ? "MaterialPage.qml"
        : sheet === "person" ? "PersonPage.qml" : sheet === "rules" ? "RulesPage.qml"
        : sheet === "site-file" ? "SiteFilePage.qml" : sheet === "background" ? "BackgroundPage.qml" : sheet === "receiver" ? "ReceiverPage.qml"
        : sheet === "job" ? "JobPage.qml" : sheet === "line" ? "LinePage.qml" : sheet === "lot" ? "LotPage.qml" : sheet === "lift" ? "LiftPage.qml" : sheet === "books" ? "BooksPage.qml"
        : sheet === "offset" ? "OffsetPage.qml" : ""

    Binding {
        target: root.item
        property: "subject"
        value: root.subject
        when: root.status === Loader.Ready
    }
}
