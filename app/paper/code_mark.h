#pragma once

#include <QRectF>
#include <QString>

class QPainter;

namespace groundcount::paper {

/// Draws a text as a QR code (ISO/IEC 18004, medium correction) into a square; draws nothing for an empty text.
void drawCode(QPainter& painter, const QString& text, const QRectF& square);

/// The first 16 digits of a hash in fours: "5355 7f32 d704 096c".
QString shortCode(const QString& hash);

}  // namespace groundcount::paper
