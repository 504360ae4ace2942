#include "glyph_item.h"

namespace groundcount::paint {

GlyphItem::GlyphItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(24, 24);
}

void GlyphItem::paint(QPainter* painter)
{
    const QColor colour = m_colour.isValid() ? m_colour : palette().ink;
    drawGlyph(*painter, static_cast<Glyph>(m_glyph), boundingRect(), colour, palette().iconStroke, m_bearing);
}

} // namespace groundcount::paint
