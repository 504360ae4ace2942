#pragma once

#include "method/error.h"

#include <QString>

namespace groundcount::view {

/// Loads the three weights of Lato from the program's resources and makes the family the application's font.
/// Call once after QGuiApplication exists and before an engine loads QML.
/// @return the family name that screen and paper use.
/// @error Unavailable, if a font file cannot be read from the resources.
Result<QString> loadFonts();

} // namespace groundcount::view
