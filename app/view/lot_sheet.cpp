#include "view/lot_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "method/site/station.h"
#include "view/figure_text.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace groundcount::view {
namespace {

constexpr std::array<const char*, 3> kWindows{"none", "points", "percent of optimum"};
constexpr double kPerStation = 100;

/// Keys of a sealed lot and the texts they are typed under.
constexpr std::array<std::pair<const char*, const char*>, 10> kSame{{{"name", "name"}, {"zone", "zone"}, {"alignment", "line"}, {"proctor", "proctor"},
    {"begin_station", "begin"}, {"end_station", "end"}, {"left_ft", "left"}, {"right_ft", "right"}, {"minimum_pct", "min"}, {"maximum_pct", "max"}}};

QString stationAt(const QString& text)
{
    return QString::fromStdString(method::stationText(text.toDouble(), kPerStation, 0));
}

}  // namespace

const book::LotRow* LotSheet::row() const
{
    if (!m_session || m_subject.empty())
        return nullptr;
    const auto& lots = m_session->snapshot().lots;
    const auto at = std::find_if(lots.begin(), lots.end(), [&](const auto& lot) { return lot.id == m_subject; });
    return at == lots.end() ? nullptr : &*at;
}

bool LotSheet::hasCorners() const
{
    return row() && !row()->area.empty();
}

QJsonObject LotSheet::fromBook() const
{
    QJsonObject texts;
    const auto* lot = row();
    if (!lot)
        return texts;
    const auto record = m_session->store().record(lot->hash);
    if (!record)
        return texts;
    const auto put = [&](const char* at, const std::string& text) {
        if (!text.empty())
            texts.insert(QLatin1String(at), QString::fromStdString(text));
    };
    for (const auto& [key, at] : kSame)
        put(at, book::textAt(record->body, key));
    for (const auto& [number, at] : {std::pair(lot->testsPerLift, "tests"), std::pair(lot->sublots, "sublots")})
        if (number > 0)
            put(at, std::to_string(number));
    const auto kind = std::find(kWindows.begin(), kWindows.end(), lot->windowKind);
    if (kind != kWindows.end() && kind != kWindows.begin())
        put("window", std::to_string(kind - kWindows.begin()));
    // The keypad has no sign: which side of optimum is a choice of its own.
    for (const auto& [at, sealed, plainIsNegative] : {std::tuple("low", lot->windowLowText, true), std::tuple("high", lot->windowHighText, false)}) {
        const bool isNegative = sealed.starts_with('-');
        put(at, isNegative ? sealed.substr(1) : sealed);
        if (lot->windowKind == kWindows[1] && isNegative != plainIsNegative && !sealed.empty())
            texts.insert(QLatin1String(at) + QStringLiteral(".side"), QStringLiteral("1"));
    }
    return texts;
}

QStringList LotSheet::lineWords() const
{
    QStringList words;
    if (m_session)
        for (const auto& line : m_session->lines().all())
            words << line.name;
    return words;
}

int LotSheet::lineIndex() const
{
    if (!m_session)
        return -1;
    const auto& lines = m_session->lines().all();
    const auto at = std::find_if(lines.begin(), lines.end(), [&](const auto& line) { return line.id == text("line"); });
    return at == lines.end() ? lines.size() == 1 ? 0 : -1 : static_cast<int>(at - lines.begin());
}

void LotSheet::pickLine(int index)
{
    const auto& lines = m_session->lines().all();
    if (index >= 0 && index < static_cast<int>(lines.size()))
        type(QStringLiteral("line"), QString::fromStdString(lines[static_cast<std::size_t>(index)].id));
}

QStringList LotSheet::referenceWords() const
{
    QStringList words;
    if (m_session)
        for (const auto& proctor : m_session->snapshot().proctors)
            words << QString::fromStdString(proctor.name);
    return words;
}

int LotSheet::referenceIndex() const
{
    if (!m_session)
        return -1;
    const auto& all = m_session->snapshot().proctors;
    const auto at = std::find_if(all.begin(), all.end(), [&](const auto& p) { return p.id == text("proctor"); });
    return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

void LotSheet::pickReference(int index)
{
    const auto& all = m_session->snapshot().proctors;
    if (index >= 0 && index < static_cast<int>(all.size()))
        type(QStringLiteral("proctor"), QString::fromStdString(all[static_cast<std::size_t>(index)].id));
}

void LotSheet::typeStations()
{
    auto* entry = new NumberEntry(tr("Stations"), tr("5000 for 50+00"), tr("Use these"), this);
    entry->add(tr("Begin station"), tr("ft"), typed("begin"));
    entry->add(tr("End station"), tr("ft"), typed("end"));
    open(entry, {QStringLiteral("begin"), QStringLiteral("end")});
}

void LotSheet::typeSides()
{
    auto* entry = new NumberEntry(tr("Width"), tr("from the line to each edge"), tr("Use these"), this);
    entry->add(tr("Left"), tr("ft"), typed("left"));
    entry->add(tr("Right"), tr("ft"), typed("right"));
    open(entry, {QStringLiteral("left"), QStringLiteral("right")});
}

void LotSheet::typeCompaction()
{
    auto* entry = new NumberEntry(tr("Percent compaction"), tr("as the specification asks; the most may stay empty"), tr("Use these"), this);
    entry->add(tr("At least"), QStringLiteral("%"), typed("min"));
    entry->add(tr("At most"), QStringLiteral("%"), typed("max"));
    open(entry, {QStringLiteral("min"), QStringLiteral("max")});
}

void LotSheet::typeDriest()
{
    typeLimit(tr("Driest"), "low", true);
}

void LotSheet::typeWettest()
{
    typeLimit(tr("Wettest"), "high", false);
}

void LotSheet::typeLimit(const QString& title, const char* key, bool belowFirst)
{
    auto* entry = new NumberEntry(title, isPoints() ? tr("percentage points off optimum") : tr("percent of the optimum"), tr("Use it"), this);
    entry->add(title, QStringLiteral("%"), typed(key));
    const QString side = QLatin1String(key) + QStringLiteral(".side");
    if (!isPoints())
        return open(entry, {QLatin1String(key)});
    const QStringList words{tr("Below optimum"), tr("Above optimum")};
    entry->setChoice(belowFirst ? words : QStringList{words[1], words[0]}, typed(side).toInt());
    open(entry, {QLatin1String(key)}, side);
}

QString LotSheet::limit(const char* key, bool belowFirst) const
{
    const bool isBelow = isPoints() && belowFirst != (typed(QLatin1String(key) + QStringLiteral(".side")) == QStringLiteral("1"));
    return isBelow && number(QLatin1String(key)).value_or(0) != 0 ? '-' + typed(key) : typed(key);
}

void LotSheet::typeTests()
{
    auto* entry = new NumberEntry(tr("Tests per lift"), tr("as the specification asks; one sublot each unless said"), tr("Use these"), this);
    entry->add(tr("Tests per lift"), {}, typed("tests"));
    entry->add(tr("Sublots"), {}, typed("sublots"));
    open(entry, {QStringLiteral("tests"), QStringLiteral("sublots")});
}

void LotSheet::refresh()
{
    m_title = isOld() ? tr("Lot %1").arg(QString::fromStdString(row()->name)) : tr("New lot");
    m_lacksLine = !hasCorners() && m_session->lines().isEmpty();
    m_lacksReference = m_session->snapshot().proctors.empty();
    m_stations = has("begin") && has("end") ? tr("%1 to %2").arg(stationAt(typed("begin")), stationAt(typed("end"))) : QString();
    m_sides = has("left") && has("right") ? tr("%1 Lt, %2 Rt").arg(typed("left"), typed("right")) : QString();
    m_compaction = !has("min") && !has("max") ? QString() : !has("max") ? QStringLiteral("≥ %1 %").arg(typed("min")) : tr("%1 to %2 %").arg(typed("min"), typed("max"));
    m_driest = shownDecimal(limit("low", true).toStdString());
    m_wettest = shownDecimal(limit("high", false).toStdString());
    QJsonObject now = draft();
    now.remove(QStringLiteral("why"));
    m_asksWhy = isOld() && now != fromBook();
    m_sealText = isOld() ? tr("Seal what changed") : tr("Seal the lot");
    m_sealNotYet = notYet();
}

Result<std::vector<book::Entry>> LotSheet::entries() const
{
    const auto* lot = row();
    m_newId = lot ? m_subject : Session::newId();
    book::Entry entry;
    entry.kind = "lot";
    entry.subject = m_newId;
    if (lot) {
        const auto record = m_session->store().record(lot->hash);
        if (!record)
            return tl::unexpected(record.error());
        entry.body = record->body;
        entry.amends = lot->hash;
        entry.reason = text("why");
    }
    for (const auto& [key, at] : kSame) {
        entry.body.erase(key);
        put(entry.body, key, at);
    }
    if (!hasCorners())
        entry.body["alignment"] = m_session->lines().all()[static_cast<std::size_t>(lineIndex())].id;
    entry.body["material"] = m_session->snapshot().proctors[static_cast<std::size_t>(referenceIndex())].material;
    entry.body["window"] = {{"kind", kWindows[static_cast<std::size_t>(windowIndex())]}};
    if (windowIndex() > 0) {
        entry.body["window"]["low"] = limit("low", true).toStdString();
        entry.body["window"]["high"] = limit("high", false).toStdString();
    }
    entry.body["tests_per_lift"] = tests().toInt();
    // One sublot for each test unless somebody said; a sealed lot without any stays without.
    entry.body.erase("sublots");
    if (has("sublots") || !lot)
        entry.body["sublots"] = has("sublots") ? sublots().toInt() : tests().toInt();
    return std::vector{entry};
}

}  // namespace groundcount::view
