#include "paper/code_mark.h"

#include <QPainter>

#include <memory>
#include <qrencode.h>

namespace groundcount::paper {

void drawCode(QPainter& painter, const QString& text, const QRectF& square)
{
    if (text.isEmpty())
        return;
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(QRcode_encodeString(text.toLatin1().constData(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), &QRcode_free);
    if (!code)
        return;
    const double module = square.width() / code->width;
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    for (int row = 0; row < code->width; ++row)
        for (int column = 0; column < code->width; ++column)
            if (code->data[row * code->width + column] & 1)
                painter.drawRect(QRectF(square.x() + column * module, square.y() + row * module, module, module));
    painter.restore();
}

QString shortCode(const QString& hash)
{
    QStringList fours;
    for (int at = 0; at < 16 && at < hash.size(); at += 4)
        fours.append(hash.mid(at, 4));
    return fours.join(' ');
}

}  // namespace groundcount::paper
