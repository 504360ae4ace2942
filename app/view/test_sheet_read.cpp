#include "book/kinds.h"
#include "book/live.h"
#include "view/test_sheet.h"

#include <QJsonDocument>

#include <algorithm>

namespace groundcount::view {
namespace {

const char* const kStepKeys[] = {"place", "clear", "seat", "count", "dig"};
const char* const kStepKinds[] = {"test-site", "clearance", "seating", "reading", "sample", "verdict"};
const QString kAmend = QStringLiteral("amend");

}  // namespace

void TestSheet::takeRecord(const book::Record& record, std::vector<book::Body>& readings)
{
    const auto at = std::find(std::begin(kStepKinds), std::end(kStepKinds), record.kind);
    const auto index = static_cast<std::size_t>(at - std::begin(kStepKinds));
    if (index >= kSteps)
        return;
    m_sealedHash[index] = record.hash;
    const auto& body = record.body;
    switch (index) {
    case Place: {
        m_sealedDraft[Place] = PlaceStep::textOf(body);
        m_facts.placeBody = body;
        const auto number = [&](const char* key) {
            bool ok = false;
            const double value = m_sealedDraft[Place].value(QLatin1String(key)).toString().toDouble(&ok);
            return ok ? std::optional(value) : std::nullopt;
        };
        const double accuracy = number("accuracy").value_or(0);
        m_facts.place = SealedPlace{number("north"), number("east"), Length::feet(accuracy).metres(), book::textAt(body, "lot"), book::textAt(body, "lift"), number("station_number"), number("offset_number")};
        m_facts.number = QString::fromStdString(book::textAt(body, "number"));
        break;
    }
    case Clear:
        m_sealedDraft[Clear] = ClearStep::textOf(body);
        m_facts.isTrench = m_sealedDraft[Clear].value(QStringLiteral("face.remedy")).toString() == "trench correction";
        break;
    case Seat:
        m_sealedDraft[Seat] = SeatStep::textOf(body);
        m_facts.seat = SealedSeat{SeatStep::modeOf(QString::fromStdString(book::textAt(body, "depth_in"))), QString::fromStdString(book::textAt(body, "depth_in"))};
        break;
    case Count:
        readings.push_back(body);
        m_readingHash[body.at("number").get<int>() == 2 ? 1 : 0] = record.hash;
        break;
    case Dig: m_sealedDraft[Dig] = DigStep::textOf(body); break;
    default: break;
    }
}

void TestSheet::readSealed()
{
    m_amendReason.clear();
    m_amendStep = -1;
    m_lateReason.clear();
    m_facts.place.reset();
    m_facts.placeBody = book::Body::object();
    m_facts.readings.clear();
    m_facts.seat.reset();
    m_facts.isTrench = false;
    m_sealedHash.fill({});
    m_readingHash.fill({});
    m_sealedDraft.fill({});
    std::vector<book::Body> readings;
    const auto records = m_book->records(m_facts.testId);
    for (const auto& record : records)
        takeRecord(record, readings);
    m_facts.readings = readings;
    if (!readings.empty())
        m_sealedDraft[Count] = CountStep::textOf(readings);
    if (!m_facts.place)
        m_facts.number = m_book->nextNumber();
    m_voidText = m_book->voidReason(m_facts.testId);
    if (!m_voidText.isEmpty())
        m_voidText = tr("Void: %1").arg(m_voidText);
    for (std::size_t i = 0; i < kSteps; ++i) {
        if (!m_sealedHash[i].empty() || isVoid())
            m_cards[i]->showSealed(m_sealedDraft[i]);
        else
            m_cards[i]->restore({});
    }
    m_record->refresh();
    if (isVoid())
        return;
    // A sample that waits is taken up again: it is amended when it has come, and so is the verdict after it.
    if (m_dig->isSealed() && m_dig->isWaiting())
        m_dig->reopen();
    // A verdict that does not name what is sealed now is out of date; the newest change says why it is made again.
    const auto late = book::notJudged(records);
    for (const auto* record : late)
        if (!record->amends.empty())
            m_lateReason = QString::fromStdString(record->reason);
    if (m_verdict->isSealed() && !late.empty())
        m_verdict->reopen();
}

void TestSheet::readDraft()
{
    const QJsonObject draft = QJsonDocument::fromJson(m_book->draft(m_facts.testId)).object();
    const QJsonObject amended = draft.value(kAmend).toObject();
    const QString reason = amended.value(QStringLiteral("reason")).toString();
    for (int i = Place; i <= Dig; ++i) {
        if (!reason.isEmpty() && amended.value(QStringLiteral("step")).toString() == QLatin1String(kStepKeys[i]) && card(i)->isSealed() && !isVoid()) {
            m_amendStep = i;
            m_amendReason = reason;
            card(i)->reopen();
        }
        const auto typed = draft.value(QLatin1String(kStepKeys[i]));
        if (typed.isObject() && !card(i)->isSealed())
            card(i)->restore(typed.toObject());
    }
}

void TestSheet::saveDraft()
{
    if (!isOpen())
        return;
    QJsonObject draft;
    for (int i = Place; i <= Dig; ++i)
        if (!card(i)->isSealed() && !card(i)->draft().isEmpty())
            draft.insert(QLatin1String(kStepKeys[i]), card(i)->draft());
    if (m_amendStep >= 0)
        draft.insert(kAmend, QJsonObject{{QStringLiteral("step"), QLatin1String(kStepKeys[m_amendStep])}, {QStringLiteral("reason"), m_amendReason}});
    const auto saved = m_book->saveDraft(m_facts.testId, QJsonDocument(draft).toJson(QJsonDocument::Compact));
    setTrouble(saved ? QString() : QString::fromStdString(saved.error().what));
}

}  // namespace groundcount::view
