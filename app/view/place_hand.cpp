#include "view/place_step.h"

#include "view/figure_text.h"
#include "view/sheet_book.h"
#include "view/whereabouts.h"

#include <cmath>

/// A place without the receiver: by tape along a line, at a drawn site, at a point of the map.
namespace groundcount::view {

void PlaceStep::typePlace()
{
    auto* entry = new NumberEntry(tr("By tape"), m_facts.session->gauge() ? QString::fromStdString(m_facts.session->gauge()->name) : QString(),
                                  tr("Use this place"), this);
    entry->add(tr("Station"), QStringLiteral("ft"), typed("station"));
    entry->add(tr("Offset"), QStringLiteral("ft"), typed("offset"));
    entry->setChoice({tr("Left of the line"), tr("Right of the line")}, typed("side") == "Lt" ? 0 : 1);
    connect(entry, &NumberEntry::typed, this, [this, entry] {
        typeAll({{QStringLiteral("side"), entry->choice() == 0 ? QStringLiteral("Lt") : QStringLiteral("Rt")}, {QStringLiteral("by"), QStringLiteral("tape")}});
    });
    open(entry, {"station", "offset"});
}

void PlaceStep::judgeEntry(NumberEntry& entry)
{
    const bool whole = !entry.typedAt(0).isEmpty() && !entry.typedAt(1).isEmpty();
    const bool found = whole && m_stationFt && m_lot;
    entry.setNote(whole ? found ? tr("%1, lot %2").arg(stationOffsetText(m_stationFt, m_offsetFt), QString::fromStdString(m_lot->name)) : m_placeTrouble
                        : QString(), {}, Mark::Nothing);
    entry.setNotYet(whole ? QString() : tr("Type station and offset"));
}

QStringList PlaceStep::lineWords() const
{
    QStringList words;
    if (m_facts.session)
        for (const auto& line : m_facts.session->lines().all())
            words << line.name;
    return words;
}

int PlaceStep::lineIndex() const
{
    const auto* line = m_facts.session ? tapedLine() : nullptr;
    return line ? static_cast<int>(line - m_facts.session->lines().all().data()) : -1;
}

QString PlaceStep::lineMissing() const
{
    if (!m_facts.session || isSealed() || byHand() || !m_facts.session->lines().isEmpty() || !hasNoReceiver())
        return {};
    return tr("The job has no line to tape along: choose a receiver, or hold a finger on the map where the test is.");
}

void PlaceStep::pickLine(int index)
{
    const auto& lines = m_facts.session->lines().all();
    if (index >= 0 && index < static_cast<int>(lines.size()))
        type("line", QString::fromStdString(lines[static_cast<std::size_t>(index)].id));
}

const JobLine* PlaceStep::tapedLine() const
{
    const auto& lines = m_facts.session->lines();
    const auto* named = lines.named(typed("line").toStdString());
    return named || lines.isEmpty() ? named : &lines.all().front();
}

QString PlaceStep::placeWord() const
{
    return byTape() ? tr("by tape") : tr("on the map");
}

void PlaceStep::aimAt(const book::SiteRow& site)
{
    QJsonObject texts{{QStringLiteral("purpose"), QStringLiteral("random")},
                      {QStringLiteral("draw"), QString::fromStdString(site.draw)},
                      {QStringLiteral("site"), QString::number(site.number)},
                      {QStringLiteral("lift"), QString::fromStdString(site.lift)}};
    if (const auto lot = m_facts.book->lot(site.lot); lot && site.stationFt && site.offsetFt) {
        texts.insert(QStringLiteral("line"), QString::fromStdString(lot->alignment));
        texts.insert(QStringLiteral("station"), QString::number(*site.stationFt, 'f', 1));
        texts.insert(QStringLiteral("offset"), QString::number(std::fabs(*site.offsetFt), 'f', 1));
        texts.insert(QStringLiteral("side"), *site.offsetFt < 0 ? QStringLiteral("Lt") : QStringLiteral("Rt"));
    }
    typeAll(texts);
}

void PlaceStep::aimAtPoint(double north, double east)
{
    const Whereabouts where = whereaboutsOf(*m_facts.session, north, east);
    QJsonObject texts{{QStringLiteral("map_north"), QString::number(north, 'f', 3)}, {QStringLiteral("map_east"), QString::number(east, 'f', 3)}};
    const bool taped = where.line && (!where.lot || isByStations(*where.lot));
    if (taped) {
        texts.insert(QStringLiteral("line"), QString::fromStdString(where.line->id));
        texts.insert(QStringLiteral("station"), QString::number(*where.stationFt, 'f', 1));
        texts.insert(QStringLiteral("offset"), QString::number(std::fabs(*where.offsetRightFt), 'f', 1));
        texts.insert(QStringLiteral("side"), *where.offsetRightFt < 0 ? QStringLiteral("Lt") : QStringLiteral("Rt"));
    }
    // With a receiver the place is measured where the person stands; without one the point stands until it is taped.
    if (!m_facts.session->positionSource())
        texts.insert(QStringLiteral("by"), taped ? QStringLiteral("tape") : QStringLiteral("map"));
    typeAll(texts);
}

}  // namespace groundcount::view
