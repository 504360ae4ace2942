#include "book/kinds.h"
#include "book/state_query.h"
#include "method/soil/in_place.h"
#include "method/soil/peak.h"
#include "method/soil/shape_curve.h"
#include "paper/paper_ink.h"
#include "paper/paper_text.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <memory>

namespace groundcount::paper {
namespace {

/// Everything the plot shows, in percent and in the job's density unit.
struct Plot {
    std::vector<QPointF> points, curve, noAirVoids;
    QPointF peak;
    QString unit;
};

double inUnitOf(DryDensity density, const book::JobRow& job)
{
    return job.densityUnit == "kg/m3" ? density.kgPerM3() : density.lbPerFt3();
}

Plot plotOf(const book::Body& body, const book::ProctorRow& row, const book::JobRow& job)
{
    Plot plot;
    plot.unit = densityUnit(job);
    plot.peak = {row.optimumPct, row.maximum};
    std::vector<method::CompactionPoint> points;
    if (body.contains("points"))
        for (const auto& point : body.at("points")) {
            const auto dry = book::withUnit(point, "dry_density", book::Unit::Density);
            const double value = text(dry.text).toDouble();
            const DryDensity density = dry.unit == "kg_m3" ? DryDensity::kgPerM3(value) : DryDensity::lbPerFt3(value);
            const double content = text(book::textAt(point, "water_content_pct")).toDouble();
            points.push_back({WaterContent::percent(content), density});
            plot.points.emplace_back(content, inUnitOf(density, job));
        }
    if (plot.points.empty())
        return plot;
    const auto [first, last] = std::minmax_element(plot.points.begin(), plot.points.end(), [](const auto& a, const auto& b) { return a.x() < b.x(); });
    const double from = first->x();
    const double to = last->x();
    constexpr int kPieces = 80;
    const auto shape = method::ShapeCurve::through(points);
    const double gravity = text(book::textAt(body, "solids_gravity")).toDouble();
    for (int i = 0; i <= kPieces; ++i) {
        const double content = from + (to - from) * i / kPieces;
        if (shape)
            if (const auto dry = shape->at(WaterContent::percent(content)))
                plot.curve.emplace_back(content, inUnitOf(*dry, job));
        if (gravity > 0)
            if (const auto full = method::dryAtSaturation(gravity, DensityOfWater::kgPerM3(1000), WaterContent::percent(content), 1.0))
                plot.noAirVoids.emplace_back(content, inUnitOf(*full, job));
    }
    return plot;
}

void drawPlot(QPainter& painter, const QRectF& box, const Plot& plot)
{
    std::vector<QPointF> all = plot.points;
    all.push_back(plot.peak);
    const auto byX = std::minmax_element(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.x() < b.x(); });
    const auto byY = std::minmax_element(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.y() < b.y(); });
    const double left = std::floor(byX.first->x()) - 1;
    const double right = std::ceil(byX.second->x()) + 1;
    const double step = byY.second->y() - byY.first->y() > 40 ? 20 : 2;
    const double bottom = std::floor(byY.first->y() / step) * step - step;
    const double top = std::ceil(byY.second->y() / step) * step + step;
    const QRectF area = box.adjusted(40, 6, -6, -26);
    const auto at = [&](const QPointF& p) { return QPointF(area.left() + area.width() * (p.x() - left) / (right - left), area.bottom() - area.height() * (p.y() - bottom) / (top - bottom)); };
    painter.setFont(labelFont());
    for (double x = left; x <= right + 1e-9; x += 1) {
        painter.setPen(QPen(kHair, 0.4));
        painter.drawLine(at({x, bottom}), at({x, top}));
        painter.setPen(kInk2);
        painter.drawText(QRectF(at({x, bottom}).x() - 15, area.bottom() + 2, 30, 10), Qt::AlignCenter, QString::number(x, 'f', 0));
    }
    for (double y = bottom; y <= top + 1e-9; y += step) {
        painter.setPen(QPen(kHair, 0.4));
        painter.drawLine(at({left, y}), at({right, y}));
        painter.setPen(kInk2);
        painter.drawText(QRectF(box.left(), at({left, y}).y() - 5, 36, 10), Qt::AlignRight | Qt::AlignVCenter, QString::number(y, 'f', 0));
    }
    painter.drawText(QRectF(area.left(), area.bottom() + 13, area.width(), 12), Qt::AlignCenter, Words::tr("Water content %; dry density %1").arg(plot.unit));
    painter.setClipRect(area);
    const auto stroke = [&](const std::vector<QPointF>& points, const QPen& pen) {
        QPolygonF line;
        for (const auto& point : points)
            line.append(at(point));
        painter.setPen(pen);
        painter.drawPolyline(line);
    };
    stroke(plot.curve, QPen(kInk, 1.4));
    stroke(plot.noAirVoids, QPen(kInk2, 1, Qt::DashLine));
    painter.setPen(QPen(kInk, 1));
    painter.setBrush(Qt::white);
    for (const auto& point : plot.points)
        painter.drawEllipse(at(point), 3, 3);
    painter.setPen(QPen(kPass, 1.4));
    const QPointF peak = at(plot.peak);
    painter.drawLine(peak + QPointF(-7, 0), peak + QPointF(7, 0));
    painter.drawLine(peak + QPointF(0, -7), peak + QPointF(0, 7));
}

}  // namespace

Result<Document> proctorSheet(const Source& source, const std::string& id)
{
    const book::StateQuery query(source.store);
    const auto rows = query.proctors();
    const auto materials = query.materials();
    const auto job = query.job();
    if (!rows || !materials || !job)
        return tl::unexpected(!rows ? rows.error() : !materials ? materials.error() : job.error());
    const auto row = std::find_if(rows->begin(), rows->end(), [&](const auto& one) { return one.id == id; });
    if (row == rows->end())
        return refused("The book has no reference test " + id + ".");
    const auto record = source.store.record(row->hash);
    if (!record)
        return tl::unexpected(record.error());
    const auto& body = record->body;
    const auto material = std::find_if(materials->begin(), materials->end(), [&](const auto& one) { return one.id == row->material; });
    Document sheet = headed(source, *job, Words::tr("Reference test %1").arg(text(row->name)), material == materials->end() ? QString() : text(material->name));
    sheet.blocks.push_back(Facts{{{Words::tr("Material"), material == materials->end() ? QString() : text(material->name)}, {Words::tr("Standard"), text(row->standard) + ' ' + text(book::textAt(body, "method"))},
                                  {Words::tr("Maximum dry density %1").arg(densityUnit(*job)), figure(row->maximumText)}, {Words::tr("Optimum %"), figure(row->optimumText)},
                                  {Words::tr("Peak by"), text(row->peakBy)}, {Words::tr("Standard uncertainty"), figure(book::withUnit(body, "standard_uncertainty", book::Unit::Density).text)},
                                  {Words::tr("Gravity of coarse particles"), figure(book::textAt(body, "coarse_gravity"))}, {Words::tr("Water of coarse particles %"), figure(book::textAt(body, "coarse_water_content_pct"))}}});
    const auto plot = std::make_shared<Plot>(plotOf(body, *row, *job));
    if (!plot->points.empty()) {
        sheet.blocks.push_back(Heading{Words::tr("Points and curve")});
        sheet.blocks.push_back(Drawing{260, [plot](QPainter& p, const QRectF& box) { drawPlot(p, box, *plot); }});
        sheet.blocks.push_back(Paragraph{plot->noAirVoids.empty() ? Words::tr("Curve through the points without overshoot; cross: the peak that tests are judged against. No gravity of the solids is sealed, so no zero-air-voids line is drawn.")
                                                                  : Words::tr("Curve through the points without overshoot; cross: the peak that tests are judged against; broken line: zero air voids.")});
    }
    Table table{{{Words::tr("Point"), 1}, {Words::tr("Water content %"), 2, Align::Right}, {Words::tr("Dry density %1").arg(densityUnit(*job)), 2, Align::Right}}, {}, Words::tr("No points are sealed: the peak was entered by hand.")};
    for (std::size_t i = 0; i < plot->points.size(); ++i)
        table.rows.push_back({QString::number(i + 1), QString::number(plot->points[i].x(), 'f', 1), QString::number(plot->points[i].y(), 'f', 1)});
    sheet.blocks.push_back(table);
    sheet.blocks.push_back(governs());
    sheet.blocks.push_back(Signatures{{Words::tr("Laboratory")}});
    sheet.code = text(row->hash);
    return sheet;
}

}  // namespace groundcount::paper
