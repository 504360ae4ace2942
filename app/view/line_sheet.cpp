#include "view/line_sheet.h"

#include "method/site/heading.h"
#include "method/site/station.h"
#include "view/figure_text.h"

namespace groundcount::view {
namespace {

constexpr double kShortest = 1;  // a line shorter than one foot is a slip of the finger
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

Result<LineSheet::Straight> LineSheet::straight() const
{
    const auto begin = number(QStringLiteral("begin")), n1 = number(QStringLiteral("n1")), e1 = number(QStringLiteral("e1")), n2 = number(QStringLiteral("n2")), e2 = number(QStringLiteral("e2"));
    if (!begin)
        return refused(tr("type the begin station").toStdString());
    if (!n1 || !e1 || !n2 || !e2)
        return refused((!n1 || !e1 ? tr("type the begin of the line") : tr("type the end of the line")).toStdString());
    const double unitMetres = m_session->job().metresPerGridUnit;
    const auto heading = method::headingOf({Length::metres(unitMetres * (*n2 - *n1)), Length::metres(unitMetres * (*e2 - *e1))});
    if (!heading)
        return tl::unexpected(heading.error());
    if (heading->distance.feet() < kShortest)
        return refused(tr("begin and end are the same point").toStdString());
    return Straight{*begin, *n1, *e1, heading->bearingDeg, heading->distance.metres() / unitMetres};
}

void LineSheet::refresh()
{
    const auto line = straight();
    m_title = tr("New line");
    m_begin = has("begin") ? QString::fromStdString(method::stationText(number(QStringLiteral("begin")).value_or(0), kPerStation, 0)) : QString();
    m_from = pointText("n1", "e1");
    m_to = pointText("n2", "e2");
    m_lineText = line ? tr("%1 %2 long, azimuth %3° from grid north, to station %4")
                            .arg(figureText(line->length, 2), unit(), QString::number(line->azimuthDeg, 'f', 4),
                                 QString::fromStdString(method::stationText(line->begin + line->length, kPerStation, 2)))
                      : QString();
    m_sealText = tr("Seal the line");
    m_sealNotYet = m_session->job().id.empty()  ? tr("Seal: the book has no job yet")
                   : name().trimmed().isEmpty() ? tr("Seal: type the line's name")
                   : !line                      ? tr("Seal: %1").arg(QString::fromStdString(line.error().what))
                                                : QString();
}

Result<std::vector<book::Entry>> LineSheet::entries() const
{
    const auto line = straight();
    if (!line)
        return tl::unexpected(line.error());
    const auto decimal = [](double value, int places) { return QString::number(value, 'f', places).toStdString(); };
    book::Entry entry;
    entry.kind = "alignment";
    entry.subject = Session::newId();
    entry.body = {{"name", text("name")},
                  {"unit", m_session->job().gridUnit},
                  {"begin_station", text("begin")},
                  {"begin_north", text("n1")},
                  {"begin_east", text("e1")},
                  {"begin_azimuth_deg", decimal(line->azimuthDeg, 9)},
                  {"elements", book::Body::array({book::Body{{"kind", "line"}, {"length", decimal(line->length, 4)}}})}};
    return std::vector{entry};
}

}  // namespace groundcount::view
