#pragma once

#include "map/overlay_job.h"

#include <QFont>

#include <vector>

class QPainter;

namespace groundcount::map {

/// How a word hangs on its anchor.
enum class Hang { RightOf, LeftOf, Above, Below, Centred };

/// Writes words on the map so that none covers another or a symbol. First come, first served: the caller writes the important first.
class LabelPlacer {
public:
    LabelPlacer(QPainter& painter, const MapLook& look, const QRectF& field, bool imagery);

    void keepClear(const QRectF& box) { m_taken.push_back(box); }
    bool isFree(const QRectF& box) const;

    /// Writes the word at the first of the places that is free; `gap` px away from the anchor.
    /// @return true if it was written
    bool write(const QString& text, const QFont& font, const QColor& colour, QPointF anchor, double gap, std::initializer_list<Hang> places);

    /// The box the word would cover at this place.
    static QRectF boxOf(const QString& text, const QFont& font, QPointF anchor, double gap, Hang hang);

private:
    QPainter& m_painter;
    QRectF m_field;
    QColor m_halo;
    std::vector<QRectF> m_taken;
};

/// Writes a word with its surroundings knocked out, its box's left middle given. Also used by the map's furniture.
void writeHaloed(QPainter& painter, const QString& text, const QFont& font, const QColor& colour, const QColor& halo, const QRectF& box);

}  // namespace groundcount::map
