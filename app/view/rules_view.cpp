// Longer than 250 lines: one page: a rule set, its copy and the differences between them are the same rows.
#include "view/rules_view.h"

#include "book/store.h"
#include "method/accept/evaluation_rules.h"
#include "view/figure_text.h"
#include "view/sealed_words.h"

#include <algorithm>

namespace groundcount::view {
namespace {

using method::LimitKind;
using method::RuleKey;

QString titleOf(const RuleKey& key)
{
    QString title = QString::fromUtf8(key.meaning.data(), static_cast<qsizetype>(key.meaning.size()));
    title[0] = title[0].toUpper();
    return title;
}

QString keyText(const RuleKey& key)
{
    return QString::fromUtf8(key.key.data(), static_cast<qsizetype>(key.key.size()));
}

const RuleKey* keyNamed(const std::vector<RuleKey>& keys, const QString& name)
{
    const auto at = std::find_if(keys.begin(), keys.end(), [&](const RuleKey& k) { return keyText(k) == name; });
    return at == keys.end() ? nullptr : &*at;
}

/// A limit that the rule set does not have yet: its first allowed unit and the kind that its key says.
method::Limit freshLimit(const RuleKey& key)
{
    method::Limit limit;
    limit.unit = std::string(key.allowed.substr(0, key.allowed.find('|')));
    limit.kind = limit.unit == "%" ? LimitKind::Percent : limit.unit == "sd" ? LimitKind::ZScore : key.key == "stability.low" ? LimitKind::Minimum
                 : key.key == "stability.high" ? LimitKind::Maximum : LimitKind::Value;
    return limit;
}

QStringList wordsOf(const RuleKey& key)
{
    return QString::fromUtf8(key.allowed.data(), static_cast<qsizetype>(key.allowed.size())).split('|');
}

}  // namespace

void RulesSheet::typeLimit(const QString& key)
{
    const RuleKey* known = keyNamed(method::limitKeys(), key);
    if (!known)
        known = keyNamed(method::optionalLimitKeys(), key);
    if (!known)
        return;
    const auto at = m_session->ruleSet().limits.find(key.toStdString());
    const auto limit = at == m_session->ruleSet().limits.end() ? freshLimit(*known) : at->second;
    const QString inForce = at == m_session->ruleSet().limits.end() ? tr("not in this rule set") : tr("in force: %1").arg(shownDecimal(limit.value.text()));
    auto* entry = new NumberEntry(tr("Limit"), {}, tr("Use it in the copy"), this);
    entry->add(tr("New value"), QString::fromStdString(limit.unit), typed("l." + key));
    entry->setNote(titleOf(*known) + "; " + inForce, {}, Mark::Nothing);
    open(entry, {"l." + key});
}

void RulesSheet::openChoice(const QString& key)
{
    m_openChoice = m_openChoice == key ? QString() : key;
    derive();
}

void RulesSheet::pickWord(const QString& word)
{
    const auto at = m_session->ruleSet().choices.find(m_openChoice.toStdString());
    const bool same = at != m_session->ruleSet().choices.end() && QString::fromStdString(at->second.word) == word;
    const QString key = "k." + m_openChoice;
    m_openChoice.clear();
    type(key, same ? QString() : word);
    derive();
}

Result<method::RuleSet> RulesSheet::copy() const
{
    method::RuleSet rules = m_session->ruleSet();
    constexpr method::Mark kMarks[] = {method::Mark::Seen, method::Mark::SecondHand, method::Mark::Memory, method::Mark::Own};
    const auto mark = markIndex() >= 0 ? kMarks[markIndex()] : method::Mark::Memory;
    for (const auto* keys : {&method::limitKeys(), &method::optionalLimitKeys()}) {
        for (const auto& key : *keys) {
            const QString value = typed("l." + keyText(key));
            if (value.isEmpty())
                continue;
            const auto decimal = Decimal::parse(value.toStdString());
            if (!decimal)
                return tl::unexpected(decimal.error());
            const auto at = rules.limits.find(key.key);
            auto limit = at == rules.limits.end() ? freshLimit(key) : at->second;
            if (at != rules.limits.end() && at->second.value == *decimal)
                continue;
            limit.note = at == rules.limits.end() ? "" : "was " + limit.value.text() + " " + limit.unit + " (" + limit.source + ")";
            limit.value = *decimal;
            limit.source = text("source");
            limit.mark = mark;
            limit.verified.clear();
            rules.limits[std::string(key.key)] = std::move(limit);
        }
    }
    for (const auto& key : method::choiceKeys()) {
        const QString word = typed("k." + keyText(key));
        auto& choice = rules.choices[std::string(key.key)];
        if (word.isEmpty() || word.toStdString() == choice.word)
            continue;
        choice = {word.toStdString(), text("source"), mark, "was \"" + choice.word + "\" (" + choice.source + ")"};
    }
    rules.name = text("name").empty() ? rules.name : text("name");
    rules.revision = text("revision").empty() ? rules.revision : text("revision");
    return rules;
}

void RulesSheet::refreshRows()
{
    const auto& rules = m_session->ruleSet();
    std::vector<Row> limits, choices;
    for (const auto* keys : {&method::limitKeys(), &method::optionalLimitKeys()}) {
        for (const auto& key : *keys) {
            const auto at = rules.limits.find(key.key);
            const QString changed = typed("l." + keyText(key));
            if (at == rules.limits.end() && keys == &method::limitKeys())
                continue;
            Row row;
            row.id = keyText(key);
            row.title = titleOf(key);
            row.chevron = true;
            row.figure = !changed.isEmpty() ? changed : at == rules.limits.end() ? QStringLiteral("–") : shownDecimal(at->second.value.text());
            row.unit = sealedWord(at == rules.limits.end() ? freshLimit(key).unit : at->second.unit);
            row.second = !changed.isEmpty()            ? tr("changed in the copy")
                         : at == rules.limits.end()    ? tr("not in this rule set")
                                                       : tr("%1, %2").arg(QString::fromStdString(at->second.source), markWord(at->second.mark));
            limits.push_back(std::move(row));
        }
    }
    for (const auto& key : method::choiceKeys()) {
        const auto at = rules.choices.find(key.key);
        if (at == rules.choices.end())
            continue;
        const QString changed = typed("k." + keyText(key));
        Row row;
        row.id = keyText(key);
        row.title = titleOf(key);
        row.chevron = true;
        row.second = changed.isEmpty() ? tr("%1 (%2, %3)").arg(QString::fromStdString(at->second.word), QString::fromStdString(at->second.source), markWord(at->second.mark))
                                       : tr("%1, changed in the copy").arg(changed);
        choices.push_back(std::move(row));
    }
    m_limits.setRows(std::move(limits));
    m_choices.setRows(std::move(choices));
}

void RulesSheet::refreshDifferences()
{
    std::vector<Row> rows;
    const auto& before = m_session->ruleSet();
    if (const auto after = copy()) {
        for (const auto* keys : {&method::limitKeys(), &method::optionalLimitKeys()}) {
            for (const auto& key : *keys) {
                const auto was = before.limits.find(key.key), is = after->limits.find(key.key);
                if (is == after->limits.end() || (was != before.limits.end() && was->second.value == is->second.value))
                    continue;
                Row row;
                row.id = keyText(key);
                row.title = titleOf(key);
                row.second = was == before.limits.end() ? tr("was not there") : tr("was %1 %2").arg(shownDecimal(was->second.value.text()), QString::fromStdString(was->second.unit));
                row.figure = shownDecimal(is->second.value.text());
                row.unit = sealedWord(is->second.unit);
                rows.push_back(std::move(row));
            }
        }
        for (const auto& key : method::choiceKeys()) {
            const auto was = before.choices.find(key.key), is = after->choices.find(key.key);
            if (was == before.choices.end() || was->second.word == is->second.word)
                continue;
            Row row = Row::ofWords(titleOf(key), tr("was: %1; now: %2").arg(QString::fromStdString(was->second.word), QString::fromStdString(is->second.word)), {});
            row.id = keyText(key);
            rows.push_back(std::move(row));
        }
    }
    m_isCopy = !rows.empty();
    m_differences.setRows(std::move(rows));
}

void RulesSheet::refreshWords()
{
    std::vector<Row> rows;
    const RuleKey* key = keyNamed(method::choiceKeys(), m_openChoice);
    m_wordsTitle = key ? titleOf(*key) : QString();
    m_wordsId = m_openChoice;
    if (key) {
        const auto at = m_session->ruleSet().choices.find(key->key);
        const QString now = typed("k." + m_openChoice).isEmpty() && at != m_session->ruleSet().choices.end() ? QString::fromStdString(at->second.word) : typed("k." + m_openChoice);
        for (const auto& word : wordsOf(*key)) {
            Row row = Row::ofWords(word, {}, {});
            row.id = word;
            row.mark = word == now ? Mark::Pass : Mark::Nothing;
            rows.push_back(std::move(row));
        }
    }
    m_words.setRows(std::move(rows));
}

void RulesSheet::refresh()
{
    const auto& rules = m_session->ruleSet();
    m_title = tr("Rule set");
    m_context = QString::fromStdString(rules.name);
    m_context2 = tr("rev. %1").arg(QString::fromStdString(rules.revision));
    m_note = QString::fromStdString(rules.note);
    refreshRows();
    refreshDifferences();
    refreshWords();
    m_sealText = tr("Seal the copy and put it in force");
    const auto changed = copy();
    const auto usable = changed ? method::evaluationRules(*changed) : Result<method::EvaluationRules>(tl::unexpected(changed.error()));
    m_trouble = usable || !m_isCopy ? QString() : QString::fromStdString(usable.error().what);
    m_sealNotYet = !m_isCopy                                  ? tr("Touch a limit to change it in a copy")
                   : m_session->job().id.empty()              ? tr("Seal: the book has no job yet")
                   : name().trimmed().isEmpty() || revision().trimmed().isEmpty() ? tr("Seal: name the copy and its revision")
                   : source().trimmed().isEmpty()             ? tr("Seal: name the source of the changes")
                   : markIndex() < 0                          ? tr("Seal: say how good the source is")
                   : !usable                                  ? tr("Seal: the limits contradict each other")
                                                              : QString();
}

Result<std::vector<book::Entry>> RulesSheet::entries() const
{
    const auto rules = copy();
    if (!rules)
        return tl::unexpected(rules.error());
    if (const auto usable = method::evaluationRules(*rules); !usable)
        return tl::unexpected(usable.error());
    book::Entry set;
    set.kind = "rule-set";
    set.subject = Session::newId();
    set.body = {{"rules", book::Body::parse(method::toJson(*rules))}};
    const auto jobs = m_session->store().records({.subject = m_session->job().id, .kind = "job"});
    if (!jobs)
        return tl::unexpected(jobs.error());
    if (jobs->empty())
        return refused("A rule set is in force for a job; the book has none.");
    // The job's live record is the one that nothing amends.
    const auto live = std::find_if(jobs->rbegin(), jobs->rend(), [&](const auto& job) {
        return std::none_of(jobs->begin(), jobs->end(), [&](const auto& other) { return other.amends == job.hash; });
    });
    book::Entry job;
    job.kind = "job";
    job.subject = m_session->job().id;
    job.amends = live->hash;
    job.reason = "the rule set " + rules->name + ", rev. " + rules->revision + ", comes into force";
    job.body = live->body;
    job.body["rule_set"] = set.subject;
    return std::vector{set, job};
}

}  // namespace groundcount::view
