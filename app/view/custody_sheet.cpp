#include "view/custody_sheet.h"
#include "view/sealed_words.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/figure_text.h"

#include <algorithm>

namespace groundcount::view {
namespace {

const char* const kEvents[] = {"signed out", "in transit", "at site", "signed in"};
constexpr std::size_t kShown = 8;
constexpr int kInTransit = 1;

}  // namespace

std::string CustodySheet::defaultSubject() const
{
    return m_session->gauge() ? m_session->gauge()->id : std::string();
}

QStringList CustodySheet::gaugeWords() const
{
    QStringList words;
    if (m_session)
        for (const auto& gauge : m_session->snapshot().gauges)
            words << QString::fromStdString(gauge.name);
    return words;
}

int CustodySheet::gaugeIndex() const
{
    if (!m_session)
        return -1;
    const auto& gauges = m_session->snapshot().gauges;
    const auto at = std::find_if(gauges.begin(), gauges.end(), [&](const auto& g) { return g.id == m_subject; });
    return at == gauges.end() ? -1 : static_cast<int>(at - gauges.begin());
}

QString CustodySheet::caution() const
{
    return tr("Under control and constant surveillance, or behind at least two independent barriers. Gauges hit by equipment had been left unattended.");
}

QString CustodySheet::governs() const
{
    return tr("The licence, local rules and the manufacturer's instructions govern.");
}

void CustodySheet::pickGauge(int index)
{
    if (isReady() && index >= 0 && index < static_cast<int>(m_session->snapshot().gauges.size()))
        setSubject(QString::fromStdString(m_session->snapshot().gauges[static_cast<std::size_t>(index)].id));
}

void CustodySheet::see(const QString& check)
{
    type(check, typed(check).isEmpty() ? QStringLiteral("yes") : QString());
}

void CustodySheet::refreshHistory()
{
    std::vector<Row> rows;
    const auto records = m_session->store().records({.subject = m_subject, .kind = "custody"});
    for (std::size_t i = records && !m_subject.empty() ? records->size() : 0; i-- > 0 && rows.size() < kShown;) {
        const auto& record = (*records)[i];
        const auto& people = m_session->snapshot().people;
        const auto by = std::find_if(people.begin(), people.end(), [&](const auto& p) { return p.id == record.by; });
        const QString place = QString::fromStdString(book::textAt(record.body, "place"));
        Row row = Row::ofWords(sealedTitle(book::textAt(record.body, "event")),
                               (by == people.end() ? QString() : QString::fromStdString(by->name)) + (place.isEmpty() ? QString() : ", " + place),
                               localText(record.at, record.offsetMinutes, QStringLiteral("MMM d, h:mm")));
        rows.push_back(std::move(row));
    }
    m_now = rows.empty() ? tr("No custody record yet") : rows.front().title;
    m_history.setRows(std::move(rows));
}

void CustodySheet::refresh()
{
    const int at = gaugeIndex();
    m_title = tr("Custody");
    m_context = at < 0 ? QString() : gaugeWords()[at];
    m_context2 = at < 0 ? QString() : tr("serial %1").arg(QString::fromStdString(m_session->snapshot().gauges[static_cast<std::size_t>(at)].serial));
    m_who = QString::fromStdString(m_session->person().name);
    refreshHistory();
    std::vector<Row> rows;
    for (const auto& [id, title, second] : {std::tuple(QStringLiteral("badge"), tr("Badge worn"), tr("Your own dosimeter")),
                                            std::tuple(QStringLiteral("papers"), tr("Papers in reach"), tr("Transport papers, count log, calibration, leak test"))}) {
        const bool seen = !typed(id).isEmpty();
        Row row = Row::ofWords(title, second, seen ? tr("Yes") : tr("No"));
        row.id = id;
        row.mark = seen ? Mark::Pass : Mark::Waiting;
        rows.push_back(std::move(row));
    }
    m_checks.setRows(std::move(rows));
    m_barrierCaution = barrierIndex() >= 0 && barrierIndex() < 2 ? tr("Fewer than two barriers: keep it under your own eyes, or add one before you leave it.") : QString();
    m_badgeCaution = eventIndex() >= 0 && eventIndex() < 3 && !has("badge") ? tr("No badge worn. Sealed so, it stays visible.") : QString();
    m_papersCaution = eventIndex() == kInTransit && !has("papers") ? tr("On the road the transport papers belong within the driver's reach.") : QString();
    m_sealText = eventIndex() < 0 ? QString() : tr("Seal: %1").arg(sealedWord(kEvents[eventIndex()]));
    m_sealNotYet = at < 0               ? tr("Seal: the book has no gauge yet")
                   : eventIndex() < 0   ? tr("Seal: say what happens")
                   : place().trimmed().isEmpty() ? tr("Seal: say where")
                   : barrierIndex() < 0 ? tr("Seal: count the barriers")
                                        : QString();
}

Result<std::vector<book::Entry>> CustodySheet::entries() const
{
    if (eventIndex() < 0 || eventIndex() > 3)
        return refused("What happens to the gauge must be one of signed out, in transit, at site, signed in; nothing is chosen.");
    book::Entry entry;
    entry.kind = "custody";
    entry.subject = m_subject;
    entry.body = {{"event", kEvents[eventIndex()]}, {"place", text("place")}, {"barriers", barrierIndex()}, {"badge", has("badge")}, {"papers", has("papers")}};
    return std::vector{entry};
}

}  // namespace groundcount::view
