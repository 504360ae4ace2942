#include "view/draw_sheet.h"

#include "book/kinds.h"
#include "book/state_query.h"
#include "book/store.h"
#include "gis/lot_draw.h"
#include "view/figure_text.h"
#include "view/lot_state.h"
#include "view/whereabouts.h"

#include <QRandomGenerator>

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

std::optional<double> numberAt(const book::Body& site, const char* key)
{
    bool isNumber = false;
    const double value = QString::fromStdString(book::textAt(site, key)).toDouble(&isNumber);
    return isNumber ? std::optional(value) : std::nullopt;
}

QString drawnWords(const book::Body& site)
{
    book::SiteRow row;
    row.stationFt = numberAt(site, "station");
    row.offsetFt = numberAt(site, "offset_ft");
    row.north = QString::fromStdString(book::withUnit(site, "grid_north", book::Unit::Length).text).toDouble();
    row.east = QString::fromStdString(book::withUnit(site, "grid_east", book::Unit::Length).text).toDouble();
    return siteWords(row);
}

}  // namespace

const book::LotRow* DrawSheet::lotRow() const
{
    const auto& lots = m_session->snapshot().lots;
    const auto at = std::find_if(lots.begin(), lots.end(), [&](const auto& l) { return l.id == m_subject; });
    return at == lots.end() ? nullptr : &*at;
}

const book::LiftRow* DrawSheet::liftRow() const
{
    const auto* lot = lotRow();
    const auto lifts = lot ? liftsOf(m_session->snapshot(), *lot) : std::vector<const book::LiftRow*>();
    const auto index = static_cast<std::size_t>(has("lift") ? typed("lift").toInt() : 0);
    return index < lifts.size() ? lifts[index] : nullptr;
}

QString DrawSheet::seedKey() const
{
    const auto* lift = liftRow();
    return QStringLiteral("seed ") + (lift ? QString::fromStdString(lift->id) : QString());
}

void DrawSheet::pickLift(int index)
{
    type(QStringLiteral("lift"), QString::number(index));
}

void DrawSheet::typeSites()
{
    auto* entry = new NumberEntry(tr("Sites"), tr("as many in each sublot"), tr("Draw these"), this);
    entry->add(tr("Sites"), {}, typed("sites"));
    open(entry, {QStringLiteral("sites")});
}

void DrawSheet::typeEdge()
{
    auto* entry = new NumberEntry(tr("Edge"), tr("along both edges nothing is tested"), tr("Keep this off"), this);
    entry->add(tr("From each edge"), tr("ft"), typed("edge"));
    open(entry, {QStringLiteral("edge")});
}

void DrawSheet::typeSeed()
{
    auto* entry = new NumberEntry(tr("Seed"), tr("whole number; the same seed gives the same sites"), tr("Use this seed"), this);
    entry->add(tr("Seed"), {}, m_seed);
    open(entry, {seedKey()});
}

void DrawSheet::offerSeed()
{
    // Nine digits are typed by hand without a slip.
    if (typed(seedKey()).isEmpty() && liftRow() && !m_session->isReadOnly())
        type(seedKey(), QString::number(QRandomGenerator::system()->bounded(100'000'000, 1'000'000'000)));
}

Result<book::Body> DrawSheet::body() const
{
    const auto* lot = lotRow();
    const auto* lift = liftRow();
    if (!lot || !lift)
        return refused(tr("Sites are drawn for a lift; this lot has none.").toStdString());
    const auto sites = number(QStringLiteral("sites"));
    const double count = has("sites") ? sites.value_or(0) : lot->testsPerLift;
    if (!(count >= 1 && count <= 1000 && count == std::floor(count)))
        return refused(tr("The number of sites is %1; it must be a whole number from 1 to 1000.").arg(has("sites") ? typed("sites") : QString::number(lot->testsPerLift)).toStdString());
    const auto edge = number(QStringLiteral("edge"));
    if (has("edge") && !(edge && *edge >= 0))
        return refused(tr("The strip along the edge is %1; it must be a number of feet from 0.").arg(typed("edge")).toStdString());
    bool isSeed = false;
    const quint64 seed = typed(seedKey()).toULongLong(&isSeed);
    if (!isSeed)
        return refused(tr("The seed is \"%1\"; it must be a whole number.").arg(typed(seedKey())).toStdString());
    const auto lines = book::StateQuery(m_session->store()).alignments();
    if (!lines)
        return tl::unexpected(lines.error());
    const Snapshot& all = m_session->snapshot();
    return gis::drawLot(*lot, lift->id, {all.job, *lines, all.obstacles, m_session->ruleSet()}, {static_cast<int>(count), Length::feet(edge.value_or(0)), seed});
}

Result<std::vector<book::Entry>> DrawSheet::entries() const
{
    auto draw = body();
    if (!draw)
        return tl::unexpected(draw.error());
    book::Entry entry;
    entry.kind = "draw";
    entry.subject = Session::newId();
    entry.body = std::move(*draw);
    return std::vector{std::move(entry)};
}

void DrawSheet::show(const book::Body& draw)
{
    const auto rowsOf = [&](const char* list, Mark mark) {
        std::vector<Row> rows;
        for (const auto& site : draw.at(list)) {
            Row row;
            row.mark = mark;
            row.title = tr("Site %1").arg(site.at("number").get<int>()) + ", " + drawnWords(site);
            row.second = tr("random %1 along, %2 across").arg(QString::fromStdString(book::textAt(site, "r_along")).left(7), QString::fromStdString(book::textAt(site, "r_across")).left(7));
            if (const std::string why = book::textAt(site, "why"); !why.empty()) {
                row.title = drawnWords(site);
                row.second = QString::fromStdString(why);
            }
            rows.push_back(std::move(row));
        }
        return rows;
    };
    m_drawn.setRows(rowsOf("sites", Mark::Owed));
    m_rejected.setRows(rowsOf("rejected", Mark::Void));
    m_policy = QString::fromStdString(book::textAt(draw, "generator") + "; " + book::textAt(draw, "policy"));
}

void DrawSheet::refresh()
{
    const auto* lot = lotRow();
    m_title = tr("Random sites");
    m_context = lot ? tr("Lot %1").arg(QString::fromStdString(lot->name)) : QString();
    m_context2 = tr("sealed by %1").arg(QString::fromStdString(m_session->person().name));
    m_liftWords.clear();
    if (lot)
        for (const auto* lift : liftsOf(m_session->snapshot(), *lot))
            m_liftWords << tr("Lift %1").arg(lift->number);
    m_lift = has("lift") ? typed("lift").toInt() : 0;
    if (typed(seedKey()).isEmpty() && liftRow() && !m_session->isReadOnly()) {
        offerSeed();  // derives again with the seed
        return;
    }
    m_seed = typed(seedKey());
    m_sites = has("sites") ? typed("sites") : QString::number(lot ? lot->testsPerLift : 0);
    m_edge = has("edge") ? typed("edge") : QStringLiteral("0");
    const auto* lift = liftRow();
    const auto& sites = m_session->snapshot().sites;
    const auto drawn = lift ? std::count_if(sites.begin(), sites.end(), [&](const auto& s) { return s.lift == lift->id; }) : 0;
    m_drawnText = drawn > 0 ? tr("%n site(s) of this lift are drawn already.", nullptr, static_cast<int>(drawn)) : QString();
    const auto draw = body();
    m_sealText = draw ? tr("Seal %n site(s)", nullptr, static_cast<int>(draw->at("sites").size())) : QString();
    m_sealNotYet = draw ? QString() : QString::fromStdString(draw.error().what);
    if (draw) {
        show(*draw);
    } else {
        m_drawn.setRows({});
        m_rejected.setRows({});
    }
}

}  // namespace groundcount::view
