#include "view/sheet_book.h"

#include "book/evidence.h"
#include "book/kinds.h"
#include "book/live.h"
#include "book/state_query.h"
#include "book/store.h"
#include "method/accept/evaluate.h"

#include <algorithm>

namespace groundcount::view {
namespace {

template <class T>
std::vector<T> orNone(Result<std::vector<T>> rows)
{
    return rows ? std::move(*rows) : std::vector<T>{};
}

template <class T>
std::optional<T> withId(const std::vector<T>& rows, const std::string& id)
{
    const auto at = std::find_if(rows.begin(), rows.end(), [&](const T& row) { return row.id == id; });
    return at == rows.end() ? std::nullopt : std::optional<T>(*at);
}

constexpr const char* kSheetStep = "sheet";

}  // namespace

Length RuleLength::lengthOf(double v) const
{
    return key == "in" ? Length::inches(v) : key == "ft" ? Length::feet(v) : key == "mm" ? Length::metres(v / 1000) : Length::metres(v);
}

double RuleLength::of(Length other) const
{
    return key == "in" ? other.inches() : key == "ft" ? other.feet() : key == "mm" ? other.metres() * 1000 : other.metres();
}

const std::vector<book::LotRow>& SheetBook::lots() const
{
    return m_session.snapshot().lots;
}

std::vector<book::LiftRow> SheetBook::lifts(const std::string& lot) const
{
    std::vector<book::LiftRow> rows;
    for (const auto& row : m_session.snapshot().lifts)
        if (row.lot == lot)
            rows.push_back(row);
    return rows;
}

std::optional<book::LotRow> SheetBook::lot(const std::string& id) const
{
    return withId(m_session.snapshot().lots, id);
}

std::optional<book::LiftRow> SheetBook::lift(const std::string& id) const
{
    return withId(m_session.snapshot().lifts, id);
}

const std::vector<book::SiteRow>& SheetBook::sites() const
{
    return m_session.snapshot().sites;
}

const std::vector<book::TestRow>& SheetBook::tests() const
{
    return m_session.snapshot().tests;
}

std::optional<book::TestRow> SheetBook::test(const std::string& id) const
{
    return withId(tests(), id);
}

const std::vector<book::ObstacleRow>& SheetBook::obstacles() const
{
    return m_session.snapshot().obstacles;
}

std::vector<book::Record> SheetBook::records(const std::string& subject) const
{
    const auto all = orNone(m_session.store().records({.subject = subject, .kind = {}}));
    const book::LiveRecords live(all);
    std::vector<book::Record> out;
    for (const char* kind : {"test-site", "clearance", "seating", "reading", "sample", "verdict"})
        for (const auto* record : live.all(kind))
            out.push_back(*record);
    return out;
}

QString SheetBook::voidReason(const std::string& test) const
{
    const auto all = orNone(m_session.store().records({.subject = test, .kind = {}}));
    const auto* out = book::LiveRecords(all).latest("void");
    return out ? QString::fromStdString(out->reason) : QString();
}

std::optional<book::Body> SheetBook::calibration(const std::string& gauge) const
{
    for (const auto& row : m_session.snapshot().gauges) {
        if (row.id != gauge || row.calibrationHash.empty())
            continue;
        if (auto record = m_session.store().record(row.calibrationHash))
            return record->body;
    }
    return std::nullopt;
}

bool SheetBook::hasOffset(const std::string& gauge, const std::string& kind) const
{
    const auto all = orNone(m_session.store().records({.subject = {}, .kind = "offset"}));
    const std::string today = m_session.now().addSecs(m_session.offsetMinutes() * 60).date().toString(Qt::ISODate).toStdString();
    return std::any_of(all.begin(), all.end(), [&](const book::Record& record) {
        const std::string expires = book::textAt(record.body, "expires");
        const bool replaced = std::any_of(all.begin(), all.end(), [&](const book::Record& other) { return other.amends == record.hash; });
        return !replaced && book::textAt(record.body, "gauge") == gauge && book::textAt(record.body, "offset_kind") == kind &&
               book::textAt(record.body, "on") <= today && (expires.empty() || expires >= today);
    });
}

std::optional<book::StandardCountRow> SheetBook::standardCount(const std::string& gauge) const
{
    const auto& rows = m_session.snapshot().standardCounts;
    const auto newest = std::find_if(rows.rbegin(), rows.rend(), [&](const book::StandardCountRow& row) {
        return row.gauge == gauge && (row.accepted || !row.overrideReason.empty()) && m_session.isToday(row.at, row.offsetMinutes);
    });
    return newest == rows.rend() ? std::nullopt : std::optional(*newest);
}

QString SheetBook::nextNumber() const
{
    const auto next = book::StateQuery(m_session.store()).nextTestNumber();
    return next ? QString::fromStdString(*next) : QString();
}

Result<QString> SheetBook::retestNumber(const std::string& test) const
{
    const auto next = book::StateQuery(m_session.store()).nextRetestNumber(test);
    if (!next)
        return tl::unexpected(next.error());
    return QString::fromStdString(*next);
}

RuleLength SheetBook::length(const char* key) const
{
    const auto& limits = m_session.ruleSet().limits;
    const auto at = limits.find(key);
    RuleLength length;
    if (at == limits.end())
        return length;
    length.value = at->second.value.value();
    length.text = at->second.value.text();
    length.key = at->second.unit;
    length.unit = at->second.unit == "in" ? QStringLiteral("in.") : QString::fromStdString(at->second.unit);
    length.inclusive = at->second.inclusive;
    return length;
}

double SheetBook::number(const char* key) const
{
    const auto& limits = m_session.ruleSet().limits;
    const auto at = limits.find(key);
    return at == limits.end() ? 0 : at->second.value.value();
}

std::string SheetBook::choice(const char* key) const
{
    const auto& choices = m_session.ruleSet().choices;
    const auto at = choices.find(key);
    return at == choices.end() ? std::string() : at->second.word;
}

QString SheetBook::ruleSetWords() const
{
    return QString::fromStdString(m_session.ruleSet().name + ", rev. " + m_session.ruleSet().revision);
}

std::optional<SheetBook::LastReading> SheetBook::lastReading(const std::string& test, const std::string& gauge, const std::string& lotId, const QString& depthIn) const
{
    const auto here = lot(lotId);
    const auto& rows = tests();
    const auto last = std::find_if(rows.rbegin(), rows.rend(), [&](const book::TestRow& row) {
        return row.id != test && row.gauge == gauge && here && row.material == here->material && row.state != book::TestState::Void &&
               QString::fromStdString(row.depthInText) == depthIn && (!row.densityCount.empty() || !row.wet.empty());
    });
    if (last == rows.rend())
        return std::nullopt;
    const auto text = [](const std::string& word) { return QString::fromStdString(word); };
    return LastReading{text(last->number), text(last->densityCount), text(last->moistureCount), text(last->wet), text(last->water), text(last->contentPct)};
}

Result<SheetBook::Judged> SheetBook::judge(const std::string& test) const
{
    auto evidence = book::gatherEvidence(m_session.store(), test);
    if (!evidence)
        return tl::unexpected(evidence.error());
    const auto rules = method::evaluationRules(evidence->rules);
    if (!rules)
        return tl::unexpected(rules.error());
    auto evaluation = method::evaluate(evidence->input, *rules);
    if (!evaluation)
        return tl::unexpected(evaluation.error());
    return Judged{evidence->input, *rules, *evaluation};
}

Result<book::Entry> SheetBook::verdict(const std::string& test) const
{
    const auto evidence = book::gatherEvidence(m_session.store(), test);
    if (!evidence)
        return tl::unexpected(evidence.error());
    return book::verdictEntry(*evidence, m_session.person().id, m_session.now().toString(Qt::ISODateWithMs).toStdString(), m_session.offsetMinutes());
}

QByteArray SheetBook::draft(const std::string& key) const
{
    const auto text = m_session.store().draft(key, kSheetStep);
    return text ? QByteArray::fromStdString(*text) : QByteArray();
}

Result<void> SheetBook::saveDraft(const std::string& key, const QByteArray& text)
{
    return m_session.store().saveDraft(key, kSheetStep, text.toStdString());
}

void SheetBook::dropDraft(const std::string& key)
{
    if (const auto dropped = m_session.store().dropDraft(key, kSheetStep); !dropped)
        m_session.setTrouble(QString::fromStdString(dropped.error().what));
}

}  // namespace groundcount::view
