#include "paper/lot_plan_paint.h"

#include "paper/paper_ink.h"
#include "paper/paper_text.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace groundcount::paper {

namespace {

/// Grid to paper: equal scale both ways, in the middle of the box.
class Onto {
public:
    Onto(const std::vector<method::PlanPoint>& ring, const QRectF& box)
    {
        const auto east = std::minmax_element(ring.begin(), ring.end(), [](const auto& a, const auto& b) { return a.eastFt < b.eastFt; });
        const auto north = std::minmax_element(ring.begin(), ring.end(), [](const auto& a, const auto& b) { return a.northFt < b.northFt; });
        const double wide = std::max(east.second->eastFt - east.first->eastFt, 1e-6);
        const double high = std::max(north.second->northFt - north.first->northFt, 1e-6);
        m_scale = std::min(box.width() / wide, box.height() / high);
        m_east = east.first->eastFt + wide / 2;
        m_north = north.first->northFt + high / 2;
        m_centre = box.center();
    }
    QPointF at(double north, double east) const { return m_centre + QPointF((east - m_east) * m_scale, (m_north - north) * m_scale); }
    QPolygonF ring(const std::vector<method::PlanPoint>& points) const
    {
        QPolygonF out;
        for (const auto& p : points)
            out << at(p.northFt, p.eastFt);
        if (!out.isEmpty() && out.front() != out.back())
            out << out.front();
        return out;
    }
    double scale() const { return m_scale; }

private:
    double m_scale = 1, m_east = 0, m_north = 0;
    QPointF m_centre;
};

void drawArrow(QPainter& painter, QPointF foot)
{
    painter.setPen(QPen(kInk, 0.8));
    painter.setBrush(kInk);
    painter.drawLine(foot, foot - QPointF(0, 18));
    painter.drawPolygon(QPolygonF({foot - QPointF(0, 24), foot - QPointF(3, 16), foot - QPointF(-3, 16)}));
    painter.drawText(QRectF(foot.x() - 10, foot.y() + 1, 20, 10), Qt::AlignCenter, Words::tr("N"));
}

/// A bar of 1, 2 or 5 times a power of ten, at most `most` points long.
void drawBar(QPainter& painter, QPointF right, double most, double scale, const QString& unit)
{
    double length = std::pow(10, std::floor(std::log10(most / scale)));
    length *= length * 5 * scale <= most ? 5 : length * 2 * scale <= most ? 2 : 1;
    const QPointF left = right - QPointF(length * scale, 0);
    painter.setPen(QPen(kInk, 1.2));
    painter.drawLine(left, right);
    for (const QPointF end : {left, right})
        painter.drawLine(end - QPointF(0, 2.5), end + QPointF(0, 2.5));
    painter.drawText(QRectF(right.x() - 120, right.y() - 14, 120, 10), Qt::AlignRight | Qt::AlignVCenter, QString::number(length) + ' ' + unit);
}

}  // namespace

void drawTestMark(QPainter& painter, QPointF at, const book::TestRow& test)
{
    painter.setPen(QPen(kInk, 0.8));
    if (test.state == book::TestState::Pass) {
        painter.setBrush(kPass);
        painter.drawEllipse(at, 3.6, 3.6);
    } else if (test.state == book::TestState::Fail) {
        painter.setBrush(kFail);
        painter.drawPolygon(QPolygonF({at + QPointF(0, -5), at + QPointF(5, 0), at + QPointF(0, 5), at + QPointF(-5, 0)}));
    } else {
        painter.setBrush(Qt::white);
        painter.drawEllipse(at, 3.6, 3.6);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(kInk);
    painter.drawText(QRectF(at.x() + 6, at.y() - 5, 40, 10), Qt::AlignLeft | Qt::AlignVCenter, text(test.number));
}

void drawOwedMark(QPainter& painter, QPointF at)
{
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(kInk, 0.8, Qt::DotLine));
    painter.drawEllipse(at, 4, 4);
}

void drawLotPlan(QPainter& painter, const QRectF& box, const LotPlan& plan)
{
    if (plan.ground.ring.size() < 3)
        return;
    const Onto onto(plan.ground.ring, box.adjusted(40, 8, -60, -8));
    painter.setFont(labelFont());
    painter.setPen(QPen(kInk, 1.2));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(onto.ring(plan.ground.ring));
    for (const auto& hole : plan.ground.holes) {
        painter.setPen(QPen(kInk, 0.8));
        painter.setBrush(QBrush(kHair, Qt::BDiagPattern));
        painter.drawPolygon(onto.ring(hole));
    }
    for (const auto& site : plan.owed)
        if (site.north != 0 || site.east != 0)
            drawOwedMark(painter, onto.at(site.north, site.east));
    for (const auto& test : plan.tests)
        if ((test.north != 0 || test.east != 0) && test.state != book::TestState::Void)
            drawTestMark(painter, onto.at(test.north, test.east), test);
    drawArrow(painter, QPointF(box.left() + 16, box.top() + 34));
    drawBar(painter, box.bottomRight() - QPointF(4, 10), std::min(box.width() / 4, 120.0), onto.scale(), plan.unit);
}

}  // namespace groundcount::paper
