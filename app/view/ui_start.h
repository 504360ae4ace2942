#pragma once

#include "method/error.h"

#include <QDateTime>
#include <QSize>
#include <QString>

#include <optional>

class QQmlApplicationEngine;

namespace groundcount::ui {

/// What the command line asked for. Empty strings: not asked.
struct StartOptions {
    QString book;       ///< path of the field book to open
    QString replay;     ///< path of an NMEA 0183 log that stands in for the receiver
    QSize size{412, 915};  ///< window, logical pixels, at least 360 x 640
    QString theme;      ///< day, sun or dusk; empty: what the device keeps
    QString text;       ///< 100, 125 or 150 percent; empty: what the device keeps
    QString language;   ///< en or es; empty: what the device keeps
    QString place = QStringLiteral("day");  ///< day, map, lots or kit
    QString open;       ///< what lies open: new, screen, test:NUMBER or lot:NAME; empty for nothing
    QString screenshot; ///< path of a PNG to write after the first frames; the program then ends
    std::optional<QDateTime> at;  ///< fixed clock for demonstrations; nothing: the machine's clock
};

/// Reads `arguments` (program name first) into options.
/// @error Refused, with the option, its value and what is allowed.
Result<StartOptions> readArguments(const QStringList& arguments);

/// Loads the fonts, lets `engine` find the module Groundcount, and loads the main window as `options` say.
/// @error Unavailable, if the fonts or the window cannot be loaded.
Result<void> start(QQmlApplicationEngine& engine, const StartOptions& options);

/// The book that a person asked for on the page "Field books" since the last call; then the event loop has been told to end, and
/// the program starts anew on that book. Empty: none.
QString takeWantedBook();

} // namespace groundcount::ui
