#include "view/place_step.h"

#include "method/site/station.h"
#include "view/figure_text.h"
#include "view/sheet_book.h"
#include "view/test_rows.h"
#include "view/whereabouts.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace groundcount::view {
namespace {

QString stationShort(double station)
{
    return QString::fromStdString(method::stationText(station, 100.0, 0));
}

}  // namespace

void PlaceStep::findLot()
{
    m_lot.reset();
    m_lift.reset();
    m_liftWords.clear();
    m_liftIndex = -1;
    m_lotText = m_sublotText = m_stripBegin = m_stripMiddle = m_stripEnd = QString();
    m_stripDividers.clear();
    m_stripMarks.clear();
    m_stripAlong.clear();
    m_stripAcross.clear();
    if (!m_north && !(m_line && m_stationFt && m_offsetFt)) {
        m_lotText = tr("No lot yet");
        return;
    }
    const std::optional<method::PlanPoint> point = m_north ? std::optional(method::PlanPoint{*m_north, *m_east}) : std::nullopt;
    const Whereabouts where = m_line && m_stationFt ? whereaboutsOn(*m_facts.session, *m_line, *m_stationFt, *m_offsetFt, point)
                                                    : whereaboutsOf(*m_facts.session, *m_north, *m_east);
    m_lot = isSealed() && has("lot") ? m_facts.book->lot(typed("lot").toStdString()) : where.lot;
    m_line = where.line;
    if (!m_stationFt) {
        m_stationFt = where.stationFt;
        m_offsetFt = where.offsetRightFt;
    }
    if (!m_lot) {
        m_lotText = tr("Outside every lot");
        return;
    }
    chooseLift();
    m_lotText = m_lift ? tr("Lot %1, lift %2").arg(QString::fromStdString(m_lot->name)).arg(m_lift->number) : tr("Lot %1").arg(QString::fromStdString(m_lot->name));
    if (isByStations(*m_lot) && m_stationFt && m_offsetFt)
        showStrip(*m_lot);
    else
        m_sublotText = tr("found on the map");
}

void PlaceStep::chooseLift()
{
    // Lifts are built upwards, so the highest one in the book is the one under work unless another is chosen.
    const auto lifts = m_facts.book->lifts(m_lot->id);
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        m_liftWords.append(tr("Lift %1").arg(lifts[i].number));
        const bool chosen = typed("lift").toStdString() == lifts[i].id;
        const bool highest = !m_lift || lifts[i].number > m_lift->number;
        if (chosen || (highest && (!m_lift || typed("lift").toStdString() != m_lift->id))) {
            m_lift = lifts[i];
            m_liftIndex = static_cast<int>(i);
        }
    }
}

void PlaceStep::showStrip(const book::LotRow& lot)
{
    const double begin = *lot.beginStationFt;
    const double length = *lot.endStationFt - begin;
    if (!(length > 0))
        return;
    if (lot.sublots > 1) {
        for (int i = 1; i < lot.sublots; ++i)
            m_stripDividers.append(static_cast<double>(i) / lot.sublots);
        const int at = std::min(lot.sublots, static_cast<int>((*m_stationFt - begin) / length * lot.sublots) + 1);
        m_sublotText = tr("sublot %1, found on the map").arg(at);
    } else {
        m_sublotText = tr("found on the map");
    }
    m_stripBegin = stationShort(begin);
    m_stripMiddle = stationShort(begin + length / 2);
    m_stripEnd = stationShort(*lot.endStationFt);
    for (const auto& test : m_facts.book->tests())
        if (m_lift && test.lift == m_lift->id && test.id != m_facts.testId && test.stationFt && test.offsetFt)
            addStripMark(lot, *test.stationFt, *test.offsetFt, markOf(test.state));
    for (const auto& site : m_facts.book->sites())
        if (m_lift && site.lift == m_lift->id && site.testId.empty() && site.stationFt && site.offsetFt)
            addStripMark(lot, *site.stationFt, *site.offsetFt, Mark::Owed);
    addStripMark(lot, *m_stationFt, *m_offsetFt, Mark::Here);
}

void PlaceStep::addStripMark(const book::LotRow& lot, double stationFt, double offsetFt, Mark mark)
{
    const double length = *lot.endStationFt - *lot.beginStationFt;
    const double width = lot.leftFt.value_or(0) + lot.rightFt.value_or(0);
    m_stripMarks.append(static_cast<int>(mark));
    m_stripAlong.append(std::clamp((stationFt - *lot.beginStationFt) / length, 0.0, 1.0));
    m_stripAcross.append(width > 0 ? std::clamp((offsetFt + lot.leftFt.value_or(0)) / width, 0.0, 1.0) : 0.5);
}

void PlaceStep::findSite()
{
    m_site.reset();
    m_siteText.clear();
    if (!m_north)
        return;
    if (typed("purpose") == "retest" && has("retest_of")) {
        const auto parent = m_facts.book->test(typed("retest_of").toStdString());
        if (parent) {
            const double away = m_facts.book->gridLength(std::hypot(parent->north - *m_north, parent->east - *m_east)).feet();
            m_siteText = tr("Test %1 was %2 ft away").arg(QString::fromStdString(parent->number), figureText(away, 1));
        }
        return;
    }
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& site : m_facts.book->sites()) {
        const bool aimed = has("draw");
        const bool wanted = aimed ? typed("draw").toStdString() == site.draw && typed("site").toInt() == site.number
                                  : m_lift && site.lift == m_lift->id;
        if (!wanted || (!site.testId.empty() && site.testId != m_facts.testId))
            continue;
        const double away = m_facts.book->gridLength(std::hypot(site.north - *m_north, site.east - *m_east)).feet();
        if (away < nearest) {
            nearest = away;
            m_site = site;
        }
    }
    if (m_site)
        m_siteText = tr("Drawn site %1 is %2 ft away").arg(m_site->number).arg(figureText(nearest, 1));
}

void PlaceStep::showPurpose()
{
    m_retestText.clear();
    std::vector<Row> rows;
    if (typed("purpose") == "retest") {
        const auto parent = m_facts.book->test(typed("retest_of").toStdString());
        if (parent)
            m_retestText = tr("Retest of %1").arg(QString::fromStdString(parent->number));
        for (const auto& test : m_facts.book->tests())
            if (test.state == book::TestState::Fail)
                rows.push_back(testRow(test));
    }
    m_failures.setRows(std::move(rows));
    // An amendment does not ask again whether the gauge was ready on the day of the test.
    m_gaugeMissing = isSealed() || m_facts.place ? QString() : m_facts.session->gaugeMissing();
}

QString PlaceStep::shownNumber() const
{
    // A test that is moved keeps the number it was sealed with.
    if (m_facts.place || typed("purpose") != "retest" || !has("retest_of"))
        return m_facts.number;
    const auto number = m_facts.book->retestNumber(typed("retest_of").toStdString());
    return number ? *number : QString();
}

QString PlaceStep::whyNotYet() const
{
    if (!m_facts.session->gauge())
        return tr("Seal: choose a gauge first");
    if (!m_gaugeMissing.isEmpty() && !has("gauge_reason"))
        return tr("Seal: the gauge is not ready");
    if (!m_north && !(byTape() && m_stationFt))
        return byHand() || !m_placeTrouble.isEmpty() ? tr("Seal: no place yet") : tr("Seal: wait for a position");
    const int needed = static_cast<int>(m_facts.book->number("place.fixes"));
    if (!byHand() && !keepsPosition() && m_averager.count() < needed)
        return tr("Seal: hold still, %1 of %2 fixes").arg(m_averager.count()).arg(needed);
    if (!m_lot)
        return tr("Seal: outside every lot");
    if (!m_lift)
        return tr("Seal: the lot has no lift");
    if (purposeIndex() < 0)
        return tr("Seal: say random, directed or retest");
    if (asksRetestOf())
        return tr("Seal: say which test is retested");
    if (typed("purpose") == "random" && !m_site)
        return tr("Seal: no drawn site is owed here");
    if (typed("purpose") == "random" && !m_north)
        return tr("Seal: a random test needs coordinates");
    return {};
}

}  // namespace groundcount::view
