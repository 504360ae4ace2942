#pragma once

#include "method/error.h"

#include <QString>

namespace groundcount::view {

/// Reads the three weights of Lato from the program's resources; on any thread, while no text is written.
/// @return the family name that screen and paper use.
/// @error Unavailable, if a font file cannot be read from the resources.
Result<QString> readFonts();

/// Makes the family that was read the application's font. On the GUI thread, once, after QGuiApplication exists and before a window is made.
Result<QString> useFonts(Result<QString> family);

/// Both, one after the other. @error as readFonts
Result<QString> loadFonts();

} // namespace groundcount::view
