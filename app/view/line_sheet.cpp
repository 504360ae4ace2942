#include "view/line_sheet.h"

#include "gis/alignment_reader.h"
#include "gis/site_bodies.h"
#include "method/site/station.h"
#include "view/figure_text.h"

namespace groundcount::view {
namespace {

constexpr double kPerStation = 100;

}  // namespace

QString LineSheet::unit() const
{
    return m_session ? m_session->job().gridUnit == "m" ? QStringLiteral("m") : QStringLiteral("ft") : QString();
}

void LineSheet::typeBegin()
{
    auto* entry = new NumberEntry(tr("Begin station"), tr("5000 for 50+00"), tr("Use this station"), this);
    entry->add(tr("Station"), unit(), typed("begin"));
    open(entry, {QStringLiteral("begin")});
}

void LineSheet::typePoint(const QString& title, const QString& end)
{
    auto* entry = new NumberEntry(title, tr("grid coordinates off the plans"), tr("Use this point"), this);
    const QString north = 'n' + end, east = 'e' + end;
    entry->add(tr("North"), unit(), typed(north));
    entry->add(tr("East"), unit(), typed(east));
    open(entry, {north, east});
}

QString LineSheet::pointText(const char* north, const char* east) const
{
    return has(north) && has(east) ? tr("N %1, E %2").arg(typed(north), typed(east)) : QString();
}

Result<book::Body> LineSheet::body() const
{
    if (!number(QStringLiteral("begin")))
        return refused(tr("Seal: type the begin station").toStdString());
    const auto n1 = number(QStringLiteral("n1")), e1 = number(QStringLiteral("e1")), n2 = number(QStringLiteral("n2")), e2 = number(QStringLiteral("e2"));
    if (!n1 || !e1)
        return refused(tr("Seal: type the begin of the line").toStdString());
    if (!n2 || !e2)
        return refused(tr("Seal: type the end of the line").toStdString());
    auto line = gis::straightAlignment(m_session->job(), text("name"), text("begin"), {*n1, *e1}, {*n2, *e2});
    if (line) {  // as typed off the plans
        (*line)["begin_north"] = text("n1");
        (*line)["begin_east"] = text("e1");
    }
    return line;
}

void LineSheet::refresh()
{
    m_title = tr("New line");
    m_begin = has("begin") ? QString::fromStdString(method::stationText(number(QStringLiteral("begin")).value_or(0), kPerStation, 0)) : QString();
    m_from = pointText("n1", "e1");
    m_to = pointText("n2", "e2");
    const auto made = body();
    m_lineText.clear();
    if (const auto line = made ? gis::alignmentFrom(made->dump()) : tl::unexpected(made.error())) {
        const double begin = line->stations().beginFt();
        m_lineText = tr("%1 %2 long, azimuth %3° from grid north, to station %4")
                         .arg(figureText(line->lengthFt(), 2), unit(), QString::number(line->azimuthDeg(begin).value_or(0), 'f', 4),
                              QString::fromStdString(method::stationText(begin + line->lengthFt(), kPerStation, 2)));
    }
    m_sealText = tr("Seal the line");
    m_sealNotYet = m_session->job().id.empty()  ? tr("Seal: the book has no job yet")
                   : name().trimmed().isEmpty() ? tr("Seal: type the line's name")
                   : !made                      ? QString::fromStdString(made.error().what)
                                                : QString();
}

Result<std::vector<book::Entry>> LineSheet::entries() const
{
    auto made = body();
    if (!made)
        return tl::unexpected(made.error());
    book::Entry entry;
    entry.kind = "alignment";
    entry.subject = Session::newId();
    entry.body = std::move(*made);
    return std::vector{entry};
}

}  // namespace groundcount::view
