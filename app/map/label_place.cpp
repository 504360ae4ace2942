#include "map/label_place.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace groundcount::map {

QFont mapFont(const MapLook& look, double px, int weight)
{
    QFont font = look.fontFamily.isEmpty() ? QGuiApplication::font() : QFont(look.fontFamily);
    font.setPixelSize(static_cast<int>(px));
    font.setWeight(static_cast<QFont::Weight>(weight));
    font.setHintingPreference(QFont::PreferNoHinting); // a word keeps its width at every pixel ratio
    return font;
}

void writeHaloed(QPainter& painter, const QString& text, const QFont& font, const QColor& colour, const QColor& halo, const QRectF& box)
{
    const QFontMetricsF metrics(font);
    const double base = box.center().y() + (metrics.capHeight() > 0 ? metrics.capHeight() : metrics.ascent() * 0.7) / 2;
    QPainterPath path;
    path.addText(box.left(), base, font, text);
    painter.strokePath(path, QPen(halo, 5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.fillPath(path, colour);
}

LabelPlacer::LabelPlacer(QPainter& painter, const MapLook& look, const QRectF& field, bool imagery)
    : m_painter(painter), m_field(field), m_halo(imagery ? QColor(Qt::white) : look.symbols.paper)
{
}

QRectF LabelPlacer::boxOf(const QString& text, const QFont& font, QPointF anchor, double gap, Hang hang)
{
    const QFontMetricsF metrics(font);
    const double w = metrics.horizontalAdvance(text);
    const double h = font.pixelSize() * 1.1;
    switch (hang) {
    case Hang::RightOf: return {anchor.x() + gap, anchor.y() - h / 2, w, h};
    case Hang::LeftOf: return {anchor.x() - gap - w, anchor.y() - h / 2, w, h};
    case Hang::Above: return {anchor.x() - w / 2, anchor.y() - gap - h, w, h};
    case Hang::Below: return {anchor.x() - w / 2, anchor.y() + gap, w, h};
    case Hang::Centred: break;
    }
    return {anchor.x() - w / 2, anchor.y() - h / 2, w, h};
}

bool LabelPlacer::isFree(const QRectF& box) const
{
    return m_field.contains(box) && std::none_of(m_taken.begin(), m_taken.end(), [&](const QRectF& t) { return t.intersects(box); });
}

bool LabelPlacer::write(const QString& text, const QFont& font, const QColor& colour, QPointF anchor, double gap,
                        std::initializer_list<Hang> places)
{
    if (text.isEmpty())
        return false;
    for (const Hang hang : places) {
        const QRectF box = boxOf(text, font, anchor, gap, hang);
        if (!isFree(box))
            continue;
        m_taken.push_back(box.adjusted(-3, -1, 3, 1));
        writeHaloed(m_painter, text, font, colour, m_halo, box);
        return true;
    }
    return false;
}

}  // namespace groundcount::map
