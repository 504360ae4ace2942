#pragma once

#include "ink_item.h"
#include "view/count_plot.h"

namespace groundcount::paint {

/// Draws `plot` into `box`: axes, outside the limits hatched, sets as state symbols joined by a line, a refused set kept and joined
/// to the one that took its place by a dotted brick line. Axis figures stand left of and under the plot.
void drawCountChart(QPainter& painter, const view::CountPlot& plot, const QRectF& box, const InkSet& inks, const QFont& axis);

/// The standard counts of a gauge in order of time.
class CountChartItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::CountPlot plot READ plot WRITE setPlot NOTIFY plotChanged)

public:
    explicit CountChartItem(QQuickItem* parent = nullptr);
    const view::CountPlot& plot() const { return m_plot; }
    void setPlot(const view::CountPlot& plot) { assign(m_plot, plot, &CountChartItem::plotChanged); }
    void paint(QPainter* painter) override;

signals:
    void plotChanged();

private:
    view::CountPlot m_plot;
};

} // namespace groundcount::paint
