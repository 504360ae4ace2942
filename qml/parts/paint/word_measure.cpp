#include "word_measure.h"

#include <QFontMetricsF>
#include <QGuiApplication>

#include <algorithm>

namespace groundcount::paint {

qreal WordMeasure::widest() const
{
    QFont font = QGuiApplication::font();
    font.setPixelSize(std::max(1, qRound(m_pixelSize)));
    font.setWeight(static_cast<QFont::Weight>(m_weight));
    const QFontMetricsF metrics(font);
    qreal widest = 0;
    for (const QString& text : m_words)
        for (const QString& word : text.split(QLatin1Char(' ')))
            widest = std::max(widest, metrics.horizontalAdvance(word));
    return widest;
}

}  // namespace groundcount::paint
