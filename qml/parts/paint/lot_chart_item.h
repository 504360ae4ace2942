#pragma once

#include "ink_item.h"
#include "view/lot_plot.h"

namespace groundcount::paint {

/// Results of a lot in order: the drawing that its sheet has too.
class LotChartItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::LotPlot plot READ plot WRITE setPlot NOTIFY plotChanged)

public:
    explicit LotChartItem(QQuickItem* parent = nullptr);
    const view::LotPlot& plot() const { return m_plot; }
    void setPlot(const view::LotPlot& plot) { assign(m_plot, plot, &LotChartItem::plotChanged); }
    void paint(QPainter* painter) override;

signals:
    void plotChanged();

private:
    view::LotPlot m_plot;
};

/// Tests along a line, station across and lift upward: the drawing that the lot's sheet has too.
class ProfileItem : public groundcount::paint::InkItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::ProfilePlot plot READ plot WRITE setPlot NOTIFY plotChanged)

public:
    explicit ProfileItem(QQuickItem* parent = nullptr);
    const view::ProfilePlot& plot() const { return m_plot; }
    void setPlot(const view::ProfilePlot& plot) { assign(m_plot, plot, &ProfileItem::plotChanged); }
    void paint(QPainter* painter) override;

signals:
    void plotChanged();

private:
    view::ProfilePlot m_plot;
};

} // namespace groundcount::paint
