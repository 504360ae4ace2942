#pragma once

#include <QColor>
#include <QFont>

namespace groundcount::paper {

/// Fonts and inks of paper, points.
QFont bodyFont();
QFont labelFont();
QFont strongFont();
QFont headFont();
QFont titleFont();
inline const QColor kInk{0x17, 0x18, 0x1A};
inline const QColor kInk2{0x47, 0x46, 0x3F};
inline const QColor kHair{0x9A, 0x94, 0x86};
inline const QColor kPass{0x00, 0x44, 0x88};
inline const QColor kFail{0x9E, 0x1B, 0x0D};

/// Loads the shipped fonts for a program without pages. Call once, after the application object exists.
/// @return whether each was read
bool loadPaperFonts();

}  // namespace groundcount::paper
