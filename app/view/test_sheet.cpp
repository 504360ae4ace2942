#include "view/test_sheet.h"

#include "view/figure_text.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace groundcount::view {
TestSheet::TestSheet(QObject* parent)
    : QObject(parent), m_place(new PlaceStep(m_facts, this)), m_clear(new ClearStep(m_facts, this)), m_seat(new SeatStep(m_facts, this)),
      m_count(new CountStep(m_facts, this)), m_dig(new DigStep(m_facts, this)), m_verdict(new VerdictStep(m_facts, this)), m_record(new SheetRecord(m_facts, this)), m_ask(new SheetAsk(this))
{
    m_cards = {m_place, m_clear, m_seat, m_count, m_dig, m_verdict};
    for (auto* step : m_cards) {
        connect(step, &SheetStep::edited, this, &TestSheet::saveDraft);
        connect(step, &SheetStep::changed, this, &TestSheet::show);
        connect(step, &SheetStep::entryOpened, this, &TestSheet::setEntry);
    }
    connect(m_clear, &ClearStep::moveWanted, this, &TestSheet::moveTest);
    connect(m_count, &CountStep::newSpotWanted, this, &TestSheet::takeNewSpot);
    connect(m_record, &SheetRecord::sealed, this, [this] { readAgain(-1); goTo(m_step); });
}

TestSheet::~TestSheet()
{
    for (auto* step : m_cards)
        disconnect(step, nullptr, this, nullptr);
}

void TestSheet::setSession(Session* session)
{
    if (session == m_facts.session)
        return;
    m_facts.session = session;
    m_book = session ? std::make_unique<SheetBook>(*session) : nullptr;
    m_facts.book = m_book.get();
    if (session)
        connect(session, &Session::placeChanged, this, [this] {
            if (isOpen() && m_step == Count && !m_count->isSealed())
                m_count->derive();
        });
    emit sessionChanged();
}

std::string TestSheet::newDraftKey() const
{
    return m_facts.session->person().id;
}

void TestSheet::begin()
{
    if (!m_facts.session || !m_facts.session->isOpen())
        return setTrouble(tr("No field book is open."));
    if (const QString begun = begunTest(); !begun.isEmpty())
        return open(begun);
    beginNew();
}

QString TestSheet::begunTest() const
{
    const auto begun = QJsonDocument::fromJson(m_book->draft(newDraftKey())).object().value(QStringLiteral("test")).toString();
    return !begun.isEmpty() && !m_book->test(begun.toStdString()) ? begun : QString();
}

bool TestSheet::resumes(const QJsonObject& place)
{
    const QString begun = begunTest();
    if (begun.isEmpty())
        return false;
    const QJsonObject typed = QJsonDocument::fromJson(m_book->draft(begun.toStdString())).object().value(QStringLiteral("place")).toObject();
    for (auto one = place.begin(); one != place.end(); ++one)
        if (typed.value(one.key()) != one.value())
            return false;
    open(begun);
    return true;
}

void TestSheet::beginNew()
{
    m_facts.testId = Session::newId();
    const QJsonObject pointer{{QStringLiteral("test"), testId()}};
    if (const auto saved = m_book->saveDraft(newDraftKey(), QJsonDocument(pointer).toJson(QJsonDocument::Compact)); !saved)
        setTrouble(QString::fromStdString(saved.error().what));
    readSealed();
    readDraft();
    goTo(Place);
}

void TestSheet::beginAt(const QString& siteId)
{
    if (!m_facts.session || !m_facts.session->isOpen())
        return setTrouble(tr("No field book is open."));
    const auto slash = siteId.lastIndexOf('/');
    const auto draw = siteId.left(slash).toStdString();
    const int number = siteId.mid(slash + 1).toInt();
    for (const auto& site : m_book->sites()) {
        if (site.draw != draw || site.number != number)
            continue;
        if (resumes({{QStringLiteral("draw"), siteId.left(slash)}, {QStringLiteral("site"), QString::number(number)}}))
            return;
        beginNew();
        m_place->aimAt(site);
        return;
    }
    setTrouble(tr("This drawn site is not in the book."));
}

void TestSheet::beginAtPoint(double north, double east)
{
    if (!m_facts.session || !m_facts.session->isOpen())
        return setTrouble(tr("No field book is open."));
    beginNew();
    m_place->aimAtPoint(north, east);
}

void TestSheet::beginRetest(const QString& testId)
{
    if (!m_facts.session || !m_facts.session->isOpen())
        return setTrouble(tr("No field book is open."));
    if (!m_book->test(testId.toStdString()))
        return setTrouble(tr("The test to be retested is not in the book."));
    if (resumes({{QStringLiteral("retest_of"), testId}}))
        return;
    beginNew();
    m_place->pickFailure(testId);
}

void TestSheet::open(const QString& testId)
{
    if (!m_facts.session || !m_facts.session->isOpen())
        return setTrouble(tr("No field book is open."));
    m_facts.testId = testId.toStdString();
    readSealed();
    readDraft();
    // A sample that is still awaited holds nothing up until its provisional verdict is sealed.
    const int first = firstUnsealed();
    const bool isAwaited = first == Dig && !m_sealedHash[Dig].empty() && m_dig->isWaiting() && !m_verdict->isSealed();
    goTo(isAwaited ? static_cast<int>(Verdict) : first);
}

int TestSheet::firstUnsealed() const
{
    for (int i = 0; i < kSteps; ++i)
        if (!card(i)->isSealed())
            return i;
    return Verdict;
}

void TestSheet::goTo(int step)
{
    m_step = step;
    m_place->listen(step == Place && !m_place->isSealed());
    m_verdict->setReady(missingForVerdict());
    if (step == Verdict || step == Count)
        card(step)->derive();
    show();
}

void TestSheet::pickStep(int index)
{
    if (index >= 0 && index < kSteps && isOpen()) {
        m_ask->close();
        setEntry(nullptr);
        goTo(index);
    }
}

QString TestSheet::missingForVerdict() const
{
    const QStringList words{tr("Seal: place first"), tr("Seal: settle the hazards first"), tr("Seal: seat the gauge first"), tr("Seal: count first"), tr("Seal: the sample first")};
    for (int i = Place; i <= Dig; ++i)
        if (m_sealedHash[static_cast<std::size_t>(i)].empty())
            return words[i];
    return {};
}

QString TestSheet::lockOf(int step) const
{
    if (step == Verdict || card(step)->isSealed())
        return {};
    const QStringList words{tr("Seal: place first"), tr("Seal: settle the hazards first"), tr("Seal: seat the gauge first"), tr("Seal: count first")};
    for (int i = Place; i < step; ++i)
        if (!card(i)->isSealed())
            return words[i];
    return {};
}

void TestSheet::show()
{
    if (!isOpen())
        return;
    const QStringList words{tr("Place"), tr("Clear"), tr("Seat"), tr("Count"), tr("Dig"), tr("Verdict")};
    std::vector<StepModel::Item> items;
    for (int i = 0; i < kSteps; ++i)
        items.push_back({words[i], card(i)->isSealed()});
    m_steps.setItems(std::move(items));
    m_title = tr("Test %1").arg(m_place->shownNumber());
    m_context = m_facts.session->gauge() ? QString::fromStdString(m_facts.session->gauge()->name) : QString();
    m_context2.clear();
    if (m_facts.place) {
        m_context = stationOffsetText(m_facts.place->stationFt, m_facts.place->offsetFt);
        const auto lot = m_book->lot(m_facts.place->lot);
        const auto lift = m_book->lift(m_facts.place->lift);
        if (lot && lift)
            m_context2 = tr("Lot %1, lift %2").arg(QString::fromStdString(lot->name)).arg(lift->number);
    }
    const bool isSealed = card(m_step)->isSealed();
    m_sealText = isSealed || isVoid() ? QString() : card(m_step)->sealText();
    m_lock = lockOf(m_step);
    m_sealNotYet = isSealed || isVoid() ? QString() : m_lock.isEmpty() ? card(m_step)->notYet() : m_lock;
    m_sealedText = isVoid() ? m_voidText : isSealed ? tr("%1 is sealed").arg(words[m_step]) : QString();
    m_canAmend = isSealed && !isVoid() && m_step != Verdict && m_amendStep < 0 && !m_facts.session->isReadOnly();
    m_amending = m_amendStep == m_step ? tr("Amending: %1").arg(m_amendReason) : QString();
    emit changed();
}

void TestSheet::setTrouble(const QString& sentence)
{
    if (sentence == m_trouble)
        return;
    m_trouble = sentence;
    emit troubleChanged();
}

void TestSheet::setEntry(NumberEntry* entry)
{
    if (entry == m_entry)
        return;
    if (m_entry)
        m_entry->deleteLater();
    m_entry = entry;
    emit entryChanged();
}

void TestSheet::closeEntry()
{
    setEntry(nullptr);
}

void TestSheet::close()
{
    m_ask->close();
    setEntry(nullptr);
    m_place->listen(false);
    m_facts.testId.clear();
    setTrouble({});
    emit changed();
}

}  // namespace groundcount::view
