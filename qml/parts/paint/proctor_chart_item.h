#pragma once

#include "ink_item.h"
#include "view/proctor_plot.h"

namespace groundcount::paint {

/// Draws `plot` into `box`: hair grid, curve and points, the peak as a cross with its lines to the axes, beyond zero air voids
/// hatched, the acceptance window dashed, field tests as state symbols.
void drawProctorChart(QPainter& painter, const view::ProctorPlot& plot, const QRectF& box, const InkSet& inks, const QFont& axis, const QFont& name);

/// The moisture-density test of a material.
class ProctorChartItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::ProctorPlot plot READ plot WRITE setPlot NOTIFY plotChanged)

public:
    explicit ProctorChartItem(QQuickItem* parent = nullptr);
    const view::ProctorPlot& plot() const { return m_plot; }
    void setPlot(const view::ProctorPlot& plot) { assign(m_plot, plot, &ProctorChartItem::plotChanged); }
    void paint(QPainter* painter) override;

signals:
    void plotChanged();

private:
    view::ProctorPlot m_plot;
};

} // namespace groundcount::paint
