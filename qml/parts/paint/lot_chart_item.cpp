#include "lot_chart_item.h"

#include "marks.h"
#include "paper/lot_chart_paint.h"

namespace groundcount::paint {
namespace {

view::Mark markOf(book::TestState state)
{
    switch (state) {
    case book::TestState::Pass: return view::Mark::Pass;
    case book::TestState::Fail: return view::Mark::Fail;
    case book::TestState::InformationOnly: return view::Mark::InformationOnly;
    case book::TestState::Void: return view::Mark::Void;
    case book::TestState::Open:
    case book::TestState::Waiting: break;
    }
    return view::Mark::Waiting;
}

paper::ChartInk screenInk(const InkSet& inks, const QFont& axis)
{
    const auto symbol = [&inks](QPainter& p, book::TestState state, const QRectF& box) { drawMark(p, markOf(state), box, inks, Ground::Drawn); };
    return {inks.paper, inks.ink, inks.ink2, inks.hair, inks.ruleWidth, axis, symbol};
}

} // namespace

LotChartItem::LotChartItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(320, 240);
}

void LotChartItem::paint(QPainter* painter)
{
    paper::drawLotChart(*painter, m_plot.chart, QRectF(0, 0, width(), height()), screenInk(palette(), font(14, palette().bodyWeight)));
}

ProfileItem::ProfileItem(QQuickItem* parent) : InkItem(parent)
{
    setImplicitSize(320, 240);
}

void ProfileItem::paint(QPainter* painter)
{
    paper::drawProfile(*painter, m_plot.profile, QRectF(0, 0, width(), height()), screenInk(palette(), font(14, palette().bodyWeight)));
}

} // namespace groundcount::paint
