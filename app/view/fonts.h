#pragma once

#include "method/error.h"

#include <QString>

namespace groundcount::view {

/// Reads the three weights of Lato from the program's resources and makes the family the application's font. On the GUI thread, once, after
/// QGuiApplication exists and before a window is made.
/// @return the family name that screen and paper use.
/// @error Unavailable, if a font file cannot be read from the resources.
Result<QString> loadFonts();

/// Has Qt and the system make ready what the texts of the first page are drawn with, while this thread has nothing else to do. After loadFonts.
void warmFonts();

} // namespace groundcount::view
