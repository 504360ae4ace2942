#include "view/verdict_step.h"

#include "method/site/heading.h"

#include "book/retest_chain.h"
#include "view/figure_text.h"
#include "view/sealed_words.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace groundcount::view {
namespace {

// Half-width of an axis with a single limit: layout, chosen so that a usual result lies well inside.
constexpr double kCompactionRoom = 6;
constexpr double kMoistureRoom = 3;

QString reported(double value, const std::optional<method::Rounding>& rounding)
{
    return figureText(value, rounding ? std::max(0, rounding->places) : 2);
}

std::optional<double> plain(const std::optional<Decimal>& value)
{
    return value ? std::optional(value->value()) : std::nullopt;
}

}  // namespace

void VerdictStep::setReady(const QString& missing)
{
    if (missing == m_missing)
        return;
    m_missing = missing;
    derive();
}

void VerdictStep::refresh()
{
    m_isKnown = false;
    m_refusal.clear();
    m_next.clear();
    m_arithmetic.setSteps({});
    if (!m_missing.isEmpty()) {
        m_refusal = m_missing;
        setNotYet(m_missing);
    } else if (const auto judged = m_facts.book->judge(m_facts.testId)) {
        m_isKnown = true;
        show(*judged);
        setNotYet({});
    } else {
        m_refusal = QString::fromStdString(judged.error().what);
        setNotYet(tr("Seal: the verdict is refused"));
    }
    m_nextSteps.setRows(m_next);
}

void VerdictStep::show(const SheetBook::Judged& judged)
{
    const auto& e = judged.evaluation;
    const auto& rules = judged.rules;
    switch (e.outcome) {
    case method::Outcome::Pass: m_mark = Mark::Pass; m_word = tr("Pass"); break;
    case method::Outcome::Fail: m_mark = Mark::Fail; m_word = tr("Fail"); break;
    case method::Outcome::InformationOnly: m_mark = Mark::InformationOnly; m_word = tr("Information only"); break;
    case method::Outcome::Provisional: m_mark = Mark::Waiting; m_word = tr("Provisional"); break;
    }
    QStringList reasons;
    for (const auto reason : e.reasons)
        reasons.append(sealedWord(method::word(reason)));
    m_reasons = reasons.join(QStringLiteral(", "));
    if (!m_reasons.isEmpty())
        m_reasons[0] = m_reasons[0].toUpper();
    showDensity(judged);
    showMoisture(judged);
    m_wet = reported(e.reported.wet, rules.dry);
    m_dry = reported(e.reported.dry, rules.dry);
    m_maximum = reported(e.reported.maximum, rules.maximum);
    m_coarse = judged.input.sample ? e.coarseCorrected ? tr("Maximum corrected for %1 % coarse particles").arg(figureText(e.coarse.percent(), 1))
                                                        : tr("%1 % coarse particles, no correction").arg(figureText(e.coarse.percent(), 1))
                                   : QString();
    m_arithmetic.setSteps(method::explain(judged.input, rules, e));
    sayNext(judged);
}

void VerdictStep::showDensity(const SheetBook::Judged& judged)
{
    const auto& e = judged.evaluation;
    m_compaction = reported(e.reported.compactionPct, judged.rules.compaction);
    m_compactionSpread = e.expandedUncertaintyPct ? QStringLiteral("±") + figureText(*e.expandedUncertaintyPct, 1) : QString();
    const auto& required = judged.input.requirement;
    const LimitReading reading{plain(required.minimumPct), plain(required.maximumPct), e.reported.compactionPct, e.expandedUncertaintyPct};
    const auto scale = LimitScale::around(reading, kCompactionRoom);
    const bool judgedNow = e.outcome == method::Outcome::Pass || e.outcome == method::Outcome::Fail;
    m_compactionLine = scale.place(reading, !judgedNow ? Mark::Waiting : e.densityMet ? Mark::Pass : Mark::Fail);
    if (required.minimumPct)
        addLabel(m_compactionLine, m_compactionLine.lowLimit, tr("%1 needed").arg(shownDecimal(required.minimumPct->text())), LabelKind::Plain);
    if (required.maximumPct)
        addLabel(m_compactionLine, m_compactionLine.highLimit, tr("at most %1").arg(shownDecimal(required.maximumPct->text())), LabelKind::Plain);
}

void VerdictStep::showMoisture(const SheetBook::Judged& judged)
{
    const auto& e = judged.evaluation;
    const auto& rules = judged.rules;
    m_moisture = reported(e.reported.contentPct, rules.content);
    m_moistureSpread = e.expandedContentPct > 0 ? QStringLiteral("±") + figureText(e.expandedContentPct, 1) : QString();
    m_hasWindow = e.window.lowPct || e.window.highPct;
    const LimitReading reading{e.window.lowPct, e.window.highPct, e.reported.contentPct, e.expandedContentPct};
    const auto scale = LimitScale::around(reading, kMoistureRoom);
    const bool judgedNow = e.outcome == method::Outcome::Pass || e.outcome == method::Outcome::Fail;
    m_moistureLine = scale.place(reading, !judgedNow ? Mark::Waiting : e.moistureMet ? Mark::Pass : Mark::Fail);
    if (e.window.lowPct)
        addLabel(m_moistureLine, m_moistureLine.lowLimit, figureText(*e.window.lowPct, 1), LabelKind::Plain);
    if (e.window.highPct)
        addLabel(m_moistureLine, m_moistureLine.highLimit, figureText(*e.window.highPct, 1), LabelKind::Plain);
    if (m_hasWindow)
        addLabel(m_moistureLine, scale.fraction(e.reported.optimumPct), tr("optimum %1").arg(reported(e.reported.optimumPct, rules.optimum)), LabelKind::Plain);
}

void VerdictStep::addNext(const QString& title, const QString& second)
{
    Row row;
    row.lead = QString::number(m_next.size() + 1);
    row.title = title;
    row.second = second;
    m_next.push_back(row);
}

void VerdictStep::sayNext(const SheetBook::Judged& judged)
{
    const auto& e = judged.evaluation;
    switch (e.outcome) {
    case method::Outcome::Pass:
        addNext(tr("Fill the hole"), tr("With the same material, tamped"));
        addNextSite();
        break;
    case method::Outcome::Fail: {
        const auto& tests = m_facts.session->snapshot().tests;
        const book::RetestChains chains(tests, m_facts.session->metresPerGridUnit(), m_facts.session->snapshot().retestDistance);
        const auto own = m_facts.book->test(m_facts.testId);
        if (const auto* passed = own ? chains.closedBy(*own) : nullptr) {
            addNext(tr("Nothing: retest %1 passed").arg(QString::fromStdString(passed->number)), tr("This failure is closed and stays in the book"));
            break;
        }
        addRework(judged);
        const auto number = m_facts.book->retestNumber(m_facts.testId);
        addNext(number ? tr("Retest %1, same place and lift").arg(*number) : tr("Retest, same place and lift"), tr("The lift stays open until it passes"));
        break;
    }
    case method::Outcome::Provisional:
        addNext(judged.input.awaiting == method::Awaiting::Sample ? tr("Weigh the sample") : tr("Bring the moisture"), tr("Then open this test again and seal its final verdict"));
        addNextSite();
        break;
    case method::Outcome::InformationOnly:
        addNext(tr("Test again where the rules can be kept"), tr("A check was overridden: this test decides nothing"));
        break;
    }
}

void VerdictStep::addRework(const SheetBook::Judged& judged)
{
    const auto& e = judged.evaluation;
    if (e.reasons.has(method::Reason::TooWet))
        addNext(tr("Dry it back, then roll again"), tr("%1 points above the wet limit of %2 %").arg(figureText(e.reported.contentPct - *e.window.highPct, 1), figureText(*e.window.highPct, 1)));
    else if (e.reasons.has(method::Reason::TooDry))
        addNext(tr("Add water and mix, then roll again"), tr("%1 points below the dry limit of %2 %").arg(figureText(*e.window.lowPct - e.reported.contentPct, 1), figureText(*e.window.lowPct, 1)));
    else if (e.reasons.has(method::Reason::DensityLow))
        addNext(tr("Roll again"), tr("%1 points below the %2 % needed").arg(figureText(judged.input.requirement.minimumPct->value() - e.reported.compactionPct, 1), shownDecimal(judged.input.requirement.minimumPct->text())));
    else if (e.reasons.has(method::Reason::DensityHigh))
        addNext(tr("Ask the engineer"), tr("%1 points above the greatest allowed %2 %").arg(figureText(e.reported.compactionPct - judged.input.requirement.maximumPct->value(), 1), shownDecimal(judged.input.requirement.maximumPct->text())));
}

void VerdictStep::addNextSite()
{
    if (!m_facts.place || !m_facts.place->north)
        return;
    std::optional<book::SiteRow> next;
    std::optional<method::Heading> nearest;
    for (const auto& site : m_facts.book->sites()) {
        const auto way = method::headingOf({m_facts.book->gridLength(site.north - *m_facts.place->north), m_facts.book->gridLength(site.east - *m_facts.place->east)});
        if (site.testId.empty() && way && (!nearest || way->distance < nearest->distance)) {
            nearest = *way;
            next = site;
        }
    }
    if (!next)
        return addNext(tr("No drawn site is owed any more"), {});
    addNext(tr("Go to site %1").arg(next->number), tr("%1 ft %2, %3").arg(figureText(nearest->distance.feet(), 0), compassWord(nearest->bearingDeg), stationOffsetText(next->stationFt, next->offsetFt)));
}

Result<std::vector<book::Entry>> VerdictStep::entries() const
{
    if (!m_missing.isEmpty())
        return refused(m_missing.toStdString());
    auto made = m_facts.book->verdict(m_facts.testId);
    if (!made)
        return tl::unexpected(made.error());
    return std::vector{std::move(*made)};
}

}  // namespace groundcount::view
