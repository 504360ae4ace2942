#include "book/kinds.h"
#include "book/live.h"
#include "book/state_query.h"
#include "paper/paper_ink.h"
#include "paper/paper_text.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace groundcount::paper {
namespace {

Result<book::GaugeRow> gaugeOf(const Source& source, const std::string& id)
{
    const auto gauges = book::StateQuery(source.store).gauges();
    if (!gauges)
        return tl::unexpected(gauges.error());
    const auto at = std::find_if(gauges->begin(), gauges->end(), [&](const book::GaugeRow& gauge) { return gauge.id == id; });
    if (at == gauges->end())
        return refused("The book has no gauge " + id + ".");
    return *at;
}

Facts papersOf(const book::GaugeRow& gauge)
{
    return {{{Words::tr("Gauge"), text(gauge.name)}, {Words::tr("Serial"), text(gauge.serial)},
             {Words::tr("Calibration"), Words::tr("%1, until %2").arg(text(gauge.calibratedOn), text(gauge.calibrationExpires))},
             {Words::tr("Leak test"), Words::tr("%1, %2, until %3").arg(text(gauge.leakTestedOn), text(gauge.leakTestResult), text(gauge.leakTestExpires))}}};
}

/// Counts over their order, the mean of the sets before as a short stroke, refused ones as diamonds.
void drawCounts(QPainter& painter, const QRectF& box, const std::vector<book::StandardCountRow>& sets, bool moisture)
{
    std::vector<double> values;
    for (const auto& set : sets) {
        values.push_back(moisture ? set.moisture : set.density);
        if (const auto& mean = moisture ? set.moistureMean : set.densityMean)
            values.push_back(*mean);
    }
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    const double room = std::max(1.0, (*high - *low) * 0.15);
    const double bottom = *low - room;
    const double span = *high + room - bottom;
    const QRectF plot = box.adjusted(44, 12, -6, -4);
    const auto y = [&](double value) { return plot.bottom() - plot.height() * (value - bottom) / span; };
    const double step = plot.width() / static_cast<double>(sets.size());
    painter.setFont(labelFont());
    painter.setPen(kInk2);
    painter.drawText(QRectF(box.left(), box.top(), box.width(), 10), moisture ? Words::tr("Moisture counts; strokes: mean of the sets before") : Words::tr("Density counts; strokes: mean of the sets before"));
    for (const double value : {*low, *high})
        painter.drawText(QRectF(box.left(), y(value) - 5, 40, 10), Qt::AlignRight | Qt::AlignVCenter, QString::number(value, 'f', 0));
    painter.setPen(QPen(kInk2, 0.6));
    painter.drawLine(plot.bottomLeft(), plot.topLeft());
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const double x = plot.left() + step * (static_cast<double>(i) + 0.5);
        if (const auto& mean = moisture ? sets[i].moistureMean : sets[i].densityMean) {
            painter.setPen(QPen(kInk, 1));
            painter.drawLine(QPointF(x - step * 0.35, y(*mean)), QPointF(x + step * 0.35, y(*mean)));
        }
        painter.setPen(Qt::NoPen);
        painter.setBrush(sets[i].accepted ? kPass : kFail);
        const QPointF centre(x, y(moisture ? sets[i].moisture : sets[i].density));
        if (sets[i].accepted)
            painter.drawEllipse(centre, 2.6, 2.6);
        else
            painter.drawPolygon(QPolygonF({centre + QPointF(0, -3.6), centre + QPointF(3.6, 0), centre + QPointF(0, 3.6), centre + QPointF(-3.6, 0)}));
    }
}

}  // namespace

Result<Document> standardCountLog(const Source& source, const std::string& id)
{
    const book::StateQuery query(source.store);
    const auto gauge = gaugeOf(source, id);
    const auto job = query.job();
    auto sets = query.standardCounts(id);
    const auto people = query.people();
    if (!gauge || !job || !sets || !people)
        return tl::unexpected(!gauge ? gauge.error() : !job ? job.error() : !sets ? sets.error() : people.error());
    std::reverse(sets->begin(), sets->end());
    Document sheet = headed(source, *job, Words::tr("Standard counts"), text(gauge->name));
    sheet.blocks.push_back(papersOf(*gauge));
    if (!sets->empty()) {
        const auto shown = std::make_shared<std::vector<book::StandardCountRow>>(*sets);
        sheet.blocks.push_back(Drawing{110, [shown](QPainter& p, const QRectF& box) { drawCounts(p, box, *shown, false); }});
        sheet.blocks.push_back(Drawing{110, [shown](QPainter& p, const QRectF& box) { drawCounts(p, box, *shown, true); }});
        sheet.code = text(sets->back().hash);
    }
    Table table{{{Words::tr("Taken"), 2}, {Words::tr("By"), 1.3}, {Words::tr("Density"), 0.8, Align::Right}, {Words::tr("Mean before"), 0.9, Align::Right}, {Words::tr("Off %"), 0.7, Align::Right},
                 {Words::tr("Moisture"), 0.8, Align::Right}, {Words::tr("Mean before"), 0.9, Align::Right}, {Words::tr("Off %"), 0.7, Align::Right}, {Words::tr("Accepted"), 1.2}, {Words::tr("Record"), 1}}, {}, Words::tr("No standard count.")};
    const auto number = [](const std::optional<double>& value, int places) { if (!value)
            return QStringLiteral("–");
        const QString digits = QString::number(*value, 'f', places);
        return figure((digits.toDouble() == 0 && digits.startsWith('-') ? digits.mid(1) : digits).toStdString());
    };
    for (const auto& set : *sets) {
        const auto by = std::find_if(people->begin(), people->end(), [&](const auto& person) { return person.id == set.by; });
        table.rows.push_back({localTime(set.at, set.offsetMinutes), by == people->end() ? QStringLiteral("–") : text(by->name), QString::number(set.density, 'f', 0), number(set.densityMean, 0),
                              number(set.densityDeviationPct, 1), QString::number(set.moisture, 'f', 0), number(set.moistureMean, 0), number(set.moistureDeviationPct, 1),
                              set.accepted ? Words::tr("yes") : set.overrideReason.empty() ? Words::tr("no") : Words::tr("overridden: %1").arg(text(set.overrideReason)), text(set.hash).left(8)});
    }
    sheet.blocks.push_back(Heading{Words::tr("Sets")});
    sheet.blocks.push_back(table);
    sheet.blocks.push_back(governs());
    return sheet;
}

Result<Document> custodyLog(const Source& source, const std::string& id)
{
    const book::StateQuery query(source.store);
    const auto gauge = gaugeOf(source, id);
    const auto job = query.job();
    const auto people = query.people();
    auto records = source.store.records({.subject = id, .kind = "custody"});
    if (!gauge || !job || !people || !records)
        return tl::unexpected(!gauge ? gauge.error() : !job ? job.error() : !people ? people.error() : records.error());
    Document sheet = headed(source, *job, Words::tr("Gauge custody"), text(gauge->name));
    sheet.blocks.push_back(papersOf(*gauge));
    Table table{{{Words::tr("When"), 1.7}, {Words::tr("What"), 1}, {Words::tr("Who"), 1.3}, {Words::tr("Where"), 2}, {Words::tr("Barriers"), 0.8, Align::Right}, {Words::tr("Badge worn"), 0.9}, {Words::tr("Papers in reach"), 1.1}, {Words::tr("Record"), 1}}, {}, Words::tr("No custody record.")};
    const book::LiveRecords live(*records);
    const auto flag = [](const book::Body& body, const char* key) { return !body.contains(key) ? QStringLiteral("–") : body.at(key) == true ? Words::tr("yes") : Words::tr("no"); };
    for (const auto* record : live.all("custody")) {
        const auto by = std::find_if(people->begin(), people->end(), [&](const auto& person) { return person.id == record->by; });
        table.rows.push_back({localTime(record->at, record->offsetMinutes), text(book::textAt(record->body, "event")), by == people->end() ? QStringLiteral("–") : text(by->name), text(book::textAt(record->body, "place")),
                              record->body.contains("barriers") ? QString::number(record->body.at("barriers").get<int>()) : QStringLiteral("–"), flag(record->body, "badge"), flag(record->body, "papers"), text(record->hash).left(8)});
        sheet.code = text(record->hash);
    }
    sheet.blocks.push_back(Heading{Words::tr("Log")});
    sheet.blocks.push_back(table);
    sheet.blocks.push_back(Paragraph{Words::tr("Never leave a gauge unattended. Two independent barriers whenever it is not under direct watch. If it is lost, stolen or struck: keep people back, do not move it, call the radiation safety officer.")});
    sheet.blocks.push_back(governs());
    sheet.blocks.push_back(Signatures{{Words::tr("Radiation safety officer")}});
    return sheet;
}

}  // namespace groundcount::paper
