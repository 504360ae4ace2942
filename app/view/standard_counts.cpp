#include "view/standard_counts.h"

#include "book/kinds.h"
#include "book/store.h"
#include "method/spread.h"
#include "method/uncertainty/compaction.h"
#include "view/figure_text.h"
#include "view/numbered_key.h"
#include "view/sealed_words.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

using method::Channel;

constexpr int kMostCounts = 20;

QString limitText(const method::RuleSet& rules, const char* key)
{
    const auto limit = rules.limits.find(key);
    return limit == rules.limits.end() ? QString() : QString::fromStdString(limit->second.value.text() + " " + limit->second.unit);
}

}  // namespace

const QStringList StandardCounts::kChecks{QStringLiteral("warm"), QStringLiteral("block"), QStringLiteral("gauges"), QStringLiteral("around")};

std::string StandardCounts::defaultSubject() const
{
    return m_session->gauge() ? m_session->gauge()->id : std::string();
}

QStringList StandardCounts::gaugeWords() const
{
    QStringList words;
    if (m_session)
        for (const auto& gauge : m_session->snapshot().gauges)
            words << QString::fromStdString(gauge.name);
    return words;
}

int StandardCounts::gaugeIndex() const
{
    if (!m_session)
        return -1;
    const auto& gauges = m_session->snapshot().gauges;
    const auto at = std::find_if(gauges.begin(), gauges.end(), [&](const auto& g) { return g.id == m_subject; });
    return at == gauges.end() ? -1 : static_cast<int>(at - gauges.begin());
}

QString StandardCounts::caution() const
{
    return tr("Stand back while it counts, keep people and vehicles out, and never leave the gauge unattended. The licence, local rules and the "
              "manufacturer's instructions govern.");
}

void StandardCounts::pickGauge(int index)
{
    if (isReady() && index >= 0 && index < static_cast<int>(m_session->snapshot().gauges.size()))
        setSubject(QString::fromStdString(m_session->snapshot().gauges[static_cast<std::size_t>(index)].id));
}

void StandardCounts::pickHow(int index)
{
    type(QStringLiteral("how"), index == 1 ? QStringLiteral("auto") : QStringLiteral("single"));
}

void StandardCounts::see(const QString& check)
{
    type("seen." + check, typed("seen." + check).isEmpty() ? QStringLiteral("yes") : QString());
}

int StandardCounts::countsAsked() const
{
    return howIndex() == 1 ? 1 : std::max(kLeastCounts, typed("n").toInt());
}

void StandardCounts::addCount()
{
    type(QStringLiteral("n"), QString::number(std::min(countsAsked() + 1, kMostCounts)));
    typeCounts();
}

void StandardCounts::typeCounts()
{
    const int count = countsAsked();
    auto* entry = new NumberEntry(count == 1 ? tr("Automatic count") : tr("Standard counts"), {}, tr("Use these counts"), this);
    QStringList keys;
    for (int i = 1; i <= count; ++i) {
        for (const Channel channel : {Channel::Density, Channel::Moisture}) {
            const QString name = channel == Channel::Density ? tr("Density") : tr("Moisture");
            keys << keyOf(channel, i);
            entry->add(count == 1 ? name : name + ' ' + QString::number(i), tr("counts"), typed(keys.back()));
        }
    }
    int first = 0;
    while (first + 1 < keys.size() && !typed(keys[first]).isEmpty())
        ++first;
    open(entry, keys);
    entry->goTo(first);
}

void StandardCounts::typeLog()
{
    auto* entry = new NumberEntry(tr("Newest first"), {}, tr("Use these counts"), this);
    QStringList keys;
    for (int i = 1; i <= kLogCounts; ++i) {
        for (const Channel channel : {Channel::Density, Channel::Moisture}) {
            keys << "log." + keyOf(channel, i);
            entry->add((channel == Channel::Density ? tr("Density") : tr("Moisture")) + ' ' + QString::number(i), tr("counts"), typed(keys.back()));
        }
    }
    open(entry, keys);
}

const book::StandardCountRow* StandardCounts::newestToday() const
{
    const auto& sets = m_session->snapshot().standardCounts;
    const auto at = std::find_if(sets.rbegin(), sets.rend(), [&](const auto& set) { return set.gauge == m_subject && m_session->isToday(set.at, set.offsetMinutes); });
    return at == sets.rend() ? nullptr : &*at;
}

void StandardCounts::refreshChecks()
{
    const auto& rules = m_session->ruleSet();
    const QString titles[] = {tr("Warmed up"), tr("Block on dry, level ground"), tr("Other gauges away"), tr("Walls and vehicles away")};
    const QString needs[] = {tr("%1 needed").arg(limitText(rules, "standard.warm_up")), tr("Gauge seated firmly, right way round on it"),
                             tr("%1 needed").arg(limitText(rules, "clearance.other_gauges")), tr("%1 needed").arg(limitText(rules, "clearance.vehicles"))};
    std::vector<Row> rows;
    int seen = 0;
    for (int i = 0; i < 4; ++i) {
        const bool isSeen = !typed("seen." + kChecks[i]).isEmpty();
        seen += isSeen;
        Row row = Row::ofWords(titles[i], needs[i], isSeen ? tr("Seen") : tr("Not yet"));
        row.id = kChecks[i];
        row.mark = isSeen ? Mark::Pass : Mark::Waiting;
        rows.push_back(std::move(row));
    }
    m_checks.setRows(std::move(rows));
    m_checksText = seen == 4 ? tr("all four seen") : tr("%1 of 4 seen").arg(seen);
    m_sealNotYet = seen == 4 ? QString() : tr("Seal: %1 things not seen yet").arg(4 - seen);
}

void StandardCounts::refreshHistory()
{
    m_densityPlot = plotOf(plottedSets(*m_session, m_subject, m_history, Channel::Density));
    m_moisturePlot = plotOf(plottedSets(*m_session, m_subject, m_history, Channel::Moisture));
    m_asksForLog = m_history.density.empty();
    m_logText = number(QStringLiteral("log.d1")) ? tr("Counts of the log: change") : tr("Type counts of the log");
    std::vector<Row> rows;
    QStringList done;
    for (const Channel channel : {Channel::Density, Channel::Moisture}) {
        for (const auto& key : method::standardLimitKeys(m_session->ruleSet(), channel)) {
            const auto limit = m_session->ruleSet().limits.find(key);
            if (limit == m_session->ruleSet().limits.end() || done.contains(QString::fromStdString(key)))
                continue;
            done << QString::fromStdString(key);
            Row row;
            for (const auto* keys : {&method::limitKeys(), &method::optionalLimitKeys()})
                for (const auto& known : *keys)
                    if (known.key == key)
                        row.title = QString::fromUtf8(known.meaning.data(), static_cast<qsizetype>(known.meaning.size()));
            row.title[0] = row.title[0].toUpper();
            row.second = tr("%1, %2").arg(QString::fromStdString(limit->second.source), markWord(limit->second.mark));
            row.figure = shownDecimal(limit->second.value.text());
            row.unit = sealedWord(limit->second.unit);
            rows.push_back(std::move(row));
        }
    }
    m_limits.setRows(std::move(rows));
}

void StandardCounts::refreshFailure()
{
    std::vector<Row> rows;
    m_asksForStability = m_failed ? m_history.refusedToday >= 1 : m_history.refusedToday >= 2;
    if (m_failed || m_history.refusedToday > 0) {
        rows.push_back(Row::ofWords(tr("1. Look again"), tr("Block dry and level, gauge seated, right way round"), {}));
        rows.push_back(Row::ofWords(tr("2. Other gauges, walls, vehicles"), tr("Farther off than the rule asks"), {}));
        rows.push_back(Row::ofWords(tr("3. Repeat the set"), m_history.refusedToday ? tr("%1 refused today").arg(m_history.refusedToday) : tr("Once; two in a row is a fault"), {}));
        rows.push_back(Row::ofWords(tr("4. Refused again: stability test"), tr("Then out of service if that fails"), {}));
    }
    m_todo.setRows(std::move(rows));
}

void StandardCounts::refresh()
{
    const int at = gaugeIndex();
    m_title = tr("Standard counts");
    m_context = at < 0 ? QString() : gaugeWords()[at];
    m_context2 = at < 0 ? QString() : tr("serial %1").arg(QString::fromStdString(m_session->snapshot().gauges[static_cast<std::size_t>(at)].serial));
    m_mark = Mark::Nothing;
    m_word.clear();
    m_failed = false;
    m_history = historyOf(*m_session, m_subject);
    refreshHistory();
    const Judged density = judge(Channel::Density), moisture = judge(Channel::Moisture);
    showChannel(density, Channel::Density);
    showChannel(moisture, Channel::Moisture);
    const auto typedNow = typedCounts(Channel::Density).size();
    m_typedText = typedNow == 0 ? tr("Nothing typed yet") : tr("%1 of %2 counts typed").arg(typedNow).arg(countsAsked());
    m_typeText = typedNow == 0 ? tr("Type the counts") : tr("Change the counts");
    const bool isTyped = !density.today.empty() && !moisture.today.empty();
    if (isTyped) {
        const bool judged = density.verdict && moisture.verdict;
        const bool accepted = judged && density.verdict->isAccepted && moisture.verdict->isAccepted;
        const bool second = judged && (density.verdict->asksForSecond || moisture.verdict->asksForSecond);
        m_failed = !accepted;
        m_mark = accepted ? Mark::Pass : judged ? Mark::Fail : Mark::CannotTell;
        m_word = accepted ? tr("Accepted") : second ? tr("Take a second set") : judged ? tr("Not accepted") : tr("Cannot be judged");
    } else if (const auto* today = newestToday()) {
        m_mark = today->accepted ? Mark::Pass : Mark::Fail;
        m_word = (today->accepted ? tr("Accepted today at %1") : tr("Not accepted today at %1")).arg(m_session->localTime(today->at, today->offsetMinutes));
    }
    const auto* before = newestToday();
    m_isTaking = !before || !before->accepted || !draft().isEmpty();
    if (before && !isTyped) {
        m_densityFigure = figureText(before->density, 0);
        m_moistureFigure = figureText(before->moisture, 0);
        const auto text = [](const std::optional<double>& deviation, const std::optional<double>& mean) {
            return deviation && mean ? tr("%1 % from %2").arg(signedText(*deviation, 1), figureText(*mean, 0)) : QString();
        };
        m_densityText = text(before->densityDeviationPct, before->densityMean);
        m_moistureText = text(before->moistureDeviationPct, before->moistureMean);
    }
    refreshFailure();
    m_sealText = !m_failed ? tr("Seal the standard counts") : has("reason") ? tr("Seal, used with a reason") : tr("Seal the refused set");
    m_sealNotYet.clear();
    refreshChecks();
    if (at < 0)
        m_sealNotYet = m_session->snapshot().gauges.empty() ? tr("Seal: the book has no gauge yet") : tr("Seal: choose the gauge");
    else if (!isTyped)
        m_sealNotYet = tr("Seal: type %1 counts of each").arg(countsAsked());
}

}  // namespace groundcount::view
