#include "book/kinds.h"
#include "view/count_step.h"
#include "view/figure_text.h"
#include "view/seat_step.h"
#include "view/sheet_book.h"

namespace groundcount::view {

ReadingPapers CountStep::papers() const
{
    ReadingPapers papers;
    const auto& gauge = m_facts.session->gauge();
    if (!gauge || !m_facts.seat)
        return papers;
    if (const auto calibration = m_facts.book->calibration(gauge->id))
        papers = papersOf(*calibration, m_facts.seat->depthIn);
    if (const auto standard = m_facts.book->standardCount(gauge->id)) {
        papers.densityStandard = standard->density;
        papers.moistureStandard = standard->moisture;
    }
    return papers;
}

std::optional<TypedReading> CountStep::typedReading(int reading) const
{
    bool first = false;
    bool second = false;
    TypedReading typedOne{form(), at("first", reading).toDouble(&first), at("second", reading).toDouble(&second)};
    return first && second ? std::optional(typedOne) : std::nullopt;
}

void CountStep::showReadings()
{
    m_readingLines.clear();
    m_comparison.clear();
    m_comparisonWord.clear();
    m_readingTrouble.clear();
    m_comparisonMark = Mark::Nothing;
    m_isApart = false;
    std::optional<ReadingMeaning> meanings[2];
    for (int n = 1; n <= 2; ++n) {
        const auto reading = typedReading(n);
        if (!reading || (n == 2 && !has("second")))
            continue;
        const QString unit = form() == TypedForm::Counts ? tr("counts") : m_facts.book->densityUnit();
        const QString waterUnit = form() == TypedForm::WaterContent ? QStringLiteral("%") : unit;
        m_readingLines.append(tr("Reading %1: %2 %3, moisture %4 %5").arg(n).arg(at("first", n), unit, at("second", n), waterUnit));
        const auto meaning = meaningOf(*reading, papers(), m_facts.session->rules(), m_facts.book->densityUnit());
        if (!meaning)
            m_readingTrouble = QString::fromStdString(meaning.error().what);
        else
            meanings[n - 1] = *meaning;
    }
    if (!meanings[0] || !meanings[1])
        return;
    const auto both = compared(*meanings[0], *meanings[1], m_facts.session->rules(), m_facts.book->densityUnit());
    if (!both)
        return;
    m_comparison = both->sentence;
    m_isApart = !both->isTogether;
    m_comparisonWord = m_isApart ? tr("another spot") : tr("use the mean");
    m_comparisonMark = m_isApart ? Mark::Fail : Mark::Pass;
}

bool CountStep::isSecondAlways() const
{
    return m_facts.book->choice("second_reading") == "always";
}

void CountStep::offerSecond()
{
    m_secondActs.clear();
    m_secondActList.clear();
    if (isSealed() || !hasReading(1) || !m_readingTrouble.isEmpty())
        return;
    if (!has("second") && m_facts.book->choice("second_reading") != "never")
        m_secondActList = {SecondAct::Turn90, SecondAct::Turn180};
    else if (m_isApart)
        m_secondActList = {SecondAct::CountAgain, SecondAct::NewSpot};
    else if (has("second") && !hasReading(2) && !isSecondAlways() && m_facts.readings.size() < 2)
        m_secondActList = {SecondAct::Drop};
    for (const auto act : m_secondActList) {
        switch (act) {
        case SecondAct::Turn90: m_secondActs.append(tr("Second, 90°")); break;
        case SecondAct::Turn180: m_secondActs.append(tr("Second, 180°")); break;
        case SecondAct::Drop: m_secondActs.append(tr("No second reading")); break;
        case SecondAct::CountAgain: m_secondActs.append(tr("Count again")); break;
        case SecondAct::NewSpot: m_secondActs.append(tr("A new spot")); break;
        }
    }
}

void CountStep::secondAct(int index)
{
    if (index < 0 || index >= static_cast<int>(m_secondActList.size()))
        return;
    const QJsonObject noSecond{{QStringLiteral("first2"), QString()}, {QStringLiteral("second2"), QString()}, {QStringLiteral("started2"), QString()}, {QStringLiteral("counted2"), QString()}};
    switch (m_secondActList[static_cast<std::size_t>(index)]) {
    case SecondAct::Turn90: type("second", QStringLiteral("turned 90")); break;
    case SecondAct::Turn180: type("second", QStringLiteral("turned 180")); break;
    case SecondAct::Drop: type("second", {}); break;
    case SecondAct::CountAgain: typeAll(noSecond); break;
    case SecondAct::NewSpot: emit newSpotWanted(tr("second reading %1; a new spot is tested instead").arg(m_comparison)); break;
    }
}

QString CountStep::whyNotYet() const
{
    if (!m_facts.seat)
        return tr("Seal: seat the gauge first");
    const int n = readingAtHand();
    if (m_stage == Running)
        return tr("Seal: the count runs");
    if (m_stage == Ready)
        return n == 2 ? tr("Seal: take the second reading") : tr("Seal: count first");
    if (!hasReading(n))
        return tr("Seal: type both numbers");
    if (!m_readingTrouble.isEmpty())
        return tr("Seal: the numbers do not fit");
    if (m_facts.isTrench && form() != TypedForm::Counts)
        return tr("Seal: a trench correction needs counts");
    if (m_isApart)
        return tr("Seal: the readings are apart");
    if (n == 1 && isSecondAlways())
        return tr("Seal: take the second reading");
    return {};
}

book::Body CountStep::readingBody(int n) const
{
    const std::string first = at("first", n).toStdString();
    const std::string second = at("second", n).toStdString();
    book::Body body{{"number", n}, {"mode", m_facts.seat->mode.toStdString()}, {"depth_in", m_facts.seat->depthIn.toStdString()}, {"orientation", orientation(n).toStdString()}, {"seconds", at("counted", n).toInt()}};
    if (form() == TypedForm::Counts) {
        body["density_count"] = at("first", n).toLongLong();
        body["moisture_count"] = at("second", n).toLongLong();
        for (const auto& sealed : m_facts.readings)
            if (sealed.at("number").get<int>() == n && sealed.contains("standard_count"))
                body["standard_count"] = sealed.at("standard_count");
        if (body.contains("standard_count"))
            return body;
        if (const auto standard = m_facts.book->standardCount(m_facts.session->gauge()->id))
            body["standard_count"] = standard->hash;
        return body;
    }
    body["wet_density_" + m_facts.book->densityKey()] = first;
    if (form() == TypedForm::WaterDensity)
        body["water_density_" + m_facts.book->densityKey()] = second;
    else
        body["water_content_pct"] = second;
    return body;
}

Result<std::vector<book::Entry>> CountStep::entries() const
{
    if (const QString why = whyNotYet(); !why.isEmpty())
        return refused((m_readingTrouble.isEmpty() ? m_isApart ? m_comparison + '.' : why : m_readingTrouble).toStdString());
    if (form() == TypedForm::Counts && (at("first", 1).contains('.') || at("second", 1).contains('.') || at("first", 2).contains('.') || at("second", 2).contains('.')))
        return refused("Counts are whole numbers; one of them has a decimal point. For the gauge's own readout choose Readout.");
    return readingEntries();
}

std::vector<book::Entry> CountStep::readingEntries() const
{
    std::vector<book::Entry> made{entry("reading", readingBody(1))};
    if (has("second") && hasReading(2))
        made.push_back(entry("reading", readingBody(2)));
    return made;
}

QJsonObject CountStep::textOf(const std::vector<book::Body>& readings)
{
    QJsonObject texts;
    for (const auto& reading : readings) {
        const int n = reading.at("number").get<int>();
        const auto put = [&](const char* key, const QString& text) { texts.insert(numbered(key, n), text); };
        if (n == 2)
            texts.insert(QStringLiteral("second"), QString::fromStdString(book::textAt(reading, "orientation")));
        put("counted", QString::number(reading.at("seconds").get<int>()));
        if (reading.contains("density_count")) {
            texts.insert(QStringLiteral("form"), QStringLiteral("counts"));
            put("first", QString::number(reading.at("density_count").get<long long>()));
            put("second", QString::number(reading.at("moisture_count").get<long long>()));
            continue;
        }
        put("first", QString::fromStdString(book::withUnit(reading, "wet_density", book::Unit::Density).text));
        const auto water = book::withUnit(reading, "water_density", book::Unit::Density);
        texts.insert(QStringLiteral("form"), water.text.empty() ? QStringLiteral("water content") : QStringLiteral("water density"));
        put("second", QString::fromStdString(water.text.empty() ? book::textAt(reading, "water_content_pct") : water.text));
    }
    return texts;
}

}  // namespace groundcount::view
