// Longer than 250 lines: one state machine, from the locked count to the second orientation.
#include "view/count_step.h"

#include "method/site/heading.h"

#include "method/site/clearance.h"
#include "view/figure_text.h"
#include "view/limit_scale.h"
#include "view/seat_step.h"
#include "view/sheet_book.h"
#include "view/typing_guard.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

const char* const kFormKeys[] = {"counts", "water density", "water content"};

}  // namespace

QString CountStep::numbered(const char* key, int reading)
{
    return QLatin1String(key) + QString::number(reading);
}

CountStep::CountStep(SheetFacts& facts, QObject* parent) : SheetStep(facts, parent)
{
    m_timer.setInterval(250);
    connect(&m_timer, &QTimer::timeout, this, &CountStep::tick);
}

QString CountStep::at(const char* key, int reading) const
{
    return draft().value(numbered(key, reading)).toString();
}

QStringList CountStep::formWords() const
{
    return {tr("Counts"), tr("Readout"), tr("Readout, %")};
}

int CountStep::formIndex() const
{
    for (int i = 0; i < 3; ++i)
        if (typed("form") == QLatin1String(kFormKeys[i]))
            return i;
    return 0;
}

TypedForm CountStep::form() const
{
    return static_cast<TypedForm>(formIndex());
}

QStringList CountStep::struckLines() const
{
    return {tr("First aid first. Call for help."), tr("Keep people back and secure the area."), tr("Do not move the gauge. Hold the equipment and its operator."),
            tr("Call the radiation safety officer."), tr("Nobody leaves before a survey says so."), tr("The licence and local rules govern.")};
}

int CountStep::readingAtHand() const
{
    return hasReading(1) && has("second") ? 2 : 1;
}

int CountStep::leastSeconds() const
{
    return static_cast<int>(std::ceil(m_facts.book->number("count.seconds")));
}

int CountStep::elapsedSeconds() const
{
    const QDateTime begun = QDateTime::fromString(at("started", readingAtHand()), Qt::ISODateWithMs);
    return begun.isValid() ? static_cast<int>(std::max<qint64>(0, begun.secsTo(m_facts.session->now()))) : 0;
}

void CountStep::start()
{
    if (m_stage == Ready)
        typeAll({{numbered("started", readingAtHand()), m_facts.session->now().toUTC().toString(Qt::ISODateWithMs)}});
}

void CountStep::stop()
{
    if (m_stage == Running)
        typeAll({{numbered("started", readingAtHand()), QString()}});
}

void CountStep::pickForm(int index)
{
    // The numbers of another form mean something else, so they go with it.
    if (index >= 0 && index < 3 && index != formIndex())
        typeAll({{QStringLiteral("form"), QLatin1String(kFormKeys[index])}, {QStringLiteral("first1"), QString()}, {QStringLiteral("second1"), QString()}, {QStringLiteral("first2"), QString()}, {QStringLiteral("second2"), QString()}});
}

void CountStep::retype(int reading)
{
    if (!isSealed() && hasReading(reading))
        openEntry(reading);
}

void CountStep::enterReading()
{
    const int n = readingAtHand();
    if (isSealed() || (m_stage == Running && elapsedSeconds() < leastSeconds()) || m_stage == Ready)
        return;
    typeAll({{numbered("counted", n), QString::number(leastSeconds())}});
    openEntry(n);
}

void CountStep::openEntry(int n)
{
    m_entryReading = n;
    auto* entry = new NumberEntry(tr("Reading %1").arg(n), orientationWord(n), tr("Done"), this);
    const bool counts = form() == TypedForm::Counts;
    const QString unit = counts ? tr("counts") : m_facts.book->densityUnit();
    entry->add(counts ? tr("Density") : tr("Wet density"), unit, at("first", n));
    entry->add(tr("Moisture"), form() == TypedForm::WaterContent ? QStringLiteral("%") : unit, at("second", n));
    open(entry, {numbered("first", n).toStdString(), numbered("second", n).toStdString()});
}

void CountStep::judgeEntry(NumberEntry& entry)
{
    const int n = m_entryReading;
    entry.field(0)->setDoubt({});
    entry.field(1)->setDoubt({});
    entry.setNote({}, {}, Mark::Nothing);
    entry.setNotYet(hasReading(n) ? QString() : tr("Type both numbers"));
    const QString slip = slipOf(n, entry);
    const auto reading = typedReading(n);
    if (!reading)
        return;
    const auto meaning = meaningOf(*reading, papers(), m_facts.session->rules(), m_facts.book->densityUnit());
    if (!meaning) {
        entry.field(1)->setDoubt(QString::fromStdString(meaning.error().what));
        return;
    }
    entry.field(0)->setDoubt(meaning->firstDoubt.isEmpty() ? slip : meaning->firstDoubt);
    if (!meaning->secondDoubt.isEmpty())
        entry.field(1)->setDoubt(meaning->secondDoubt);
    if (n == 2)
        entry.setNote(m_comparison, m_comparisonWord, m_comparisonMark);
}

QString CountStep::slipOf(int reading, NumberEntry& entry) const
{
    QString first = at("first", 1);
    QString second = at("second", 1);
    if (reading == 1) {
        const auto& gauge = m_facts.session->gauge();
        const auto last = gauge && m_facts.place && m_facts.seat ? m_facts.book->lastReading(m_facts.testId, gauge->id, m_facts.place->lot, m_facts.seat->depthIn) : std::nullopt;
        if (!last)
            return {};
        first = form() == TypedForm::Counts ? last->densityCount : last->wet;
        second = form() == TypedForm::Counts ? last->moistureCount : form() == TypedForm::WaterDensity ? last->water : last->content;
        if (!first.isEmpty())
            entry.setNote(tr("Test %1 with this gauge and material: %2 and %3").arg(last->number, first, second), {}, Mark::Nothing);
    }
    entry.field(1)->setDoubt(likelySlip(at("second", reading), second));
    return likelySlip(at("first", reading), first);
}

void CountStep::tick()
{
    if (m_stage != Running)
        return;
    const bool wasShort = !m_enterNotYet.isEmpty();
    derive();
    if (wasShort && m_stage == Running && m_enterNotYet.isEmpty())
        emit minimumOver();
}

QString CountStep::orientation(int reading) const
{
    return reading == 1 ? QStringLiteral("along") : typed("second");
}

QString CountStep::orientationWord(int reading) const
{
    return orientation(reading) == "along" ? tr("along the line") : orientation(reading) == "turned 90" ? tr("turned 90°") : tr("turned 180°");
}

void CountStep::refresh()
{
    const int n = readingAtHand();
    m_stage = isSealed() || hasReading(n) || !at("counted", n).isEmpty() ? Typed : !at("started", n).isEmpty() ? Running : Ready;
    if (m_stage == Running && !m_timer.isActive())
        m_timer.start();
    else if (m_stage != Running)
        m_timer.stop();
    m_readingTitle = tr("Reading %1").arg(n);
    const QString depth = m_facts.seat ? m_facts.seat->depthIn : QString();
    m_depthText = depth.isEmpty() ? QString() : depth.toDouble() > 0 ? tr("direct, %1 in.").arg(depth) : tr("backscatter");
    m_orientationText = orientationWord(n);
    showTimer();
    showRing();
    showReadings();
    offerSecond();
    setNotYet(isSealed() ? QString() : whyNotYet());
}

double CountStep::timerLimit() const
{
    return 0.8;
}

void CountStep::showTimer()
{
    const int least = leastSeconds();
    const auto clock = [](int seconds) { return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0')); };
    const int gone = m_stage == Running ? elapsedSeconds() : 0;
    const int left = std::max(0, least - gone);
    m_timerCaption = left > 0 ? tr("Left of the minimum") : tr("The minimum is over");
    m_timerFigure = clock(left);
    m_timerLimitLabel = clock(least);
    m_timerValue = least > 0 ? std::min(1.0, timerLimit() * gone / least) : 0;
    m_enterNotYet = m_stage == Running && left > 0 ? tr("Enter the reading in %1").arg(clock(left)) : QString();
}

void CountStep::showRing()
{
    const auto ring = m_facts.book->length("clearance.people");
    m_ringLabel = QString::fromStdString(ring.text) + ' ' + ring.unit;
    m_ringSource = tr("Ring: %1, from the rule set. The licence and the radiation safety officer govern.").arg(m_ringLabel);
    const auto own = m_facts.session->ownPlace();
    m_ringKnown = own && m_facts.place && m_facts.place->north && ring.value > 0;
    m_ringMark = Mark::CannotTell;
    m_ringWord = tr("Cannot tell");
    m_distanceInRings = m_accuracyInRings = kNoFraction;
    m_ringDistance = m_ringKnown ? QString() : QStringLiteral("–");
    m_ringUnit = ring.unit;
    m_ringSpread.clear();
    if (!m_ringKnown)
        return;
    const bool unsureKnown = !std::isnan(own->accuracyMetres);
    const double north = own->north - *m_facts.place->north;
    const double east = own->east - *m_facts.place->east;
    const auto way = method::headingOf({m_facts.book->gridLength(north), m_facts.book->gridLength(east)});
    if (!way)
        return;
    const double away = ring.of(way->distance);
    const double unsure = ring.of(Length::metres(own->accuracyMetres + m_facts.place->accuracyMetres));
    const auto answer = method::judgeClearance(ring.lengthOf(away), ring.lengthOf(unsure), ring.length(), ring.inclusive ? method::Inclusive::Yes : method::Inclusive::No);
    m_ringDistance = figureText(away, 0);
    m_ringSpread = unsureKnown ? QStringLiteral("±") + figureText(unsure, 0) : QString();
    m_distanceInRings = away / ring.value;
    m_accuracyInRings = unsure / ring.value;
    m_ringBearing = way->bearingDeg;
    if (!answer || *answer == method::ClearanceAnswer::CannotTell)
        return;
    const bool outside = *answer == method::ClearanceAnswer::Clear;
    m_ringMark = outside ? Mark::Clear : Mark::TooClose;
    m_ringWord = outside ? tr("Outside the ring") : tr("Inside the ring");
}

}  // namespace groundcount::view
