#pragma once

#include "glyphs.h"
#include "ink_item.h"

namespace groundcount::paint {

/// One sign of our set, in `colour` or else the first ink; `bearing` (degrees clockwise from up) turns Bearing and North.
class GlyphItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int glyph READ glyph WRITE setGlyph NOTIFY glyphChanged)
    Q_PROPERTY(qreal bearing READ bearing WRITE setBearing NOTIFY bearingChanged)
    Q_PROPERTY(QColor colour READ colour WRITE setColour NOTIFY colourChanged)

public:
    explicit GlyphItem(QQuickItem* parent = nullptr);

    int glyph() const { return m_glyph; }
    void setGlyph(int glyph) { assign(m_glyph, glyph, &GlyphItem::glyphChanged); }
    qreal bearing() const { return m_bearing; }
    void setBearing(qreal bearing) { assign(m_bearing, bearing, &GlyphItem::bearingChanged); }
    QColor colour() const { return m_colour; }
    void setColour(const QColor& colour) { assign(m_colour, colour, &GlyphItem::colourChanged); }

    void paint(QPainter* painter) override;

signals:
    void glyphChanged();
    void bearingChanged();
    void colourChanged();

private:
    int m_glyph = 0;
    qreal m_bearing = 0;
    QColor m_colour;
};

} // namespace groundcount::paint
