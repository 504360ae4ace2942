import QtQuick

// The width a text is given: its own on one line, `most` where it is wider. Measured apart, because the implicit width of a text that
// wraps is made anew with its width, and a binding of one to the other loops.
TextMetrics {
    required property Text shown
    property real most: 0
    readonly property real given: text === "" ? 0 : advanceWidth + 1 > most ? most : advanceWidth + 1

    font: shown.font
    text: shown.text
}
