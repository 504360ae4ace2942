#include "view/place_step.h"

#include "book/kinds.h"
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

/// Keys that go with the purpose of the test, not with where it stands.
bool isOfPurpose(const std::string& key)
{
    return key == "retest_of" || key == "rework" || key == "draw" || key == "site";
}

std::string decimal(double value, int places)
{
    return QString::number(value, 'f', places).toStdString();
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

book::Body PlaceStep::keptPosition(book::Body body) const
{
    for (auto it = m_facts.placeBody.begin(); it != m_facts.placeBody.end(); ++it)
        if (!body.contains(it.key()) && !isOfPurpose(it.key()))
            body[it.key()] = it.value();
    return body;
}

Result<book::Body> PlaceStep::body() const
{
    book::Body body{{"number", m_facts.number.toStdString()}, {"gauge", m_facts.placeBody.contains("gauge") ? book::textAt(m_facts.placeBody, "gauge") : m_facts.session->gauge()->id}, {"lot", m_lot->id}, {"lift", m_lift->id}, {"purpose", typed("purpose").toStdString()}};
    if (typed("purpose") == "retest") {
        if (const auto number = shownNumber(); number.isEmpty())
            return refused("The test to be retested is not in the book.");
        else
            body["number"] = number.toStdString();
        body["retest_of"] = typed("retest_of").toStdString();
        if (has("rework"))
            body["rework"] = typed("rework").toStdString();
    } else if (typed("purpose") == "random") {
        body["draw"] = m_site->draw;
        body["site"] = m_site->number;
    }
    if (m_facts.placeBody.contains("gauge_override_reason"))
        body["gauge_override_reason"] = m_facts.placeBody.at("gauge_override_reason");
    if (keepsPosition())
        return keptPosition(std::move(body));
    if (m_north) {
        body["latitude_deg"] = decimal(*m_latitude, 9);
        body["longitude_deg"] = decimal(*m_longitude, 9);
        body["grid_north_" + m_facts.book->gridKey()] = decimal(*m_north, 3);
        body["grid_east_" + m_facts.book->gridKey()] = decimal(*m_east, 3);
    } else {
        body["position"] = "not recorded";
    }
    if (m_stationFt)
        body["station"] = byTape() ? typed("station").toStdString() : decimal(*m_stationFt, 2);
    if (m_offsetFt)
        body["offset_ft"] = byTape() ? (typed("side") == "Lt" ? "-" : "") + typed("offset").toStdString() : decimal(*m_offsetFt, 2);
    if (!m_gaugeMissing.isEmpty())
        body["gauge_override_reason"] = m_gaugeMissing.toStdString() + " " + typed("gauge_reason").toStdString();
    if (m_line && m_facts.session->lines().all().size() > 1)
        body["alignment"] = m_line->id;
    if (byHand()) {
        body["fix_kind"] = byTape() ? "by tape" : "on the map";
        return body;
    }
    const auto average = m_averager.average();
    body["fixes"] = average->count;
    body["fix_kind"] = average->qualityWord.toStdString();
    if (average->heightEllipsoid)
        body["ellipsoid_height_m"] = decimal(*average->heightEllipsoid, 3);
    if (average->radiusM) {
        // 2DRMS shared evenly between the axes, so that 2 sqrt(sN^2 + sE^2) gives the circle that was shown.
        const std::string sigma = decimal(*average->radiusM / (2 * std::sqrt(2.0)), 3);
        body["sigma_north_m"] = sigma;
        body["sigma_east_m"] = sigma;
    }
    for (const auto& sentence : average->raw)
        body["nmea"].push_back(sentence.trimmed().toStdString());
    return body;
}

Result<std::vector<book::Entry>> PlaceStep::entries() const
{
    if (const QString why = whyNotYet(); !why.isEmpty())
        return refused((m_placeTrouble.isEmpty() ? why : m_placeTrouble).toStdString());
    auto made = body();
    if (!made)
        return tl::unexpected(made.error());
    return std::vector{entry("test-site", std::move(*made))};
}

QJsonObject PlaceStep::textOf(const book::Body& site)
{
    const auto text = [&](const char* key) { return QString::fromStdString(book::textAt(site, key)); };
    QJsonObject texts{{QStringLiteral("purpose"), text("purpose")}, {QStringLiteral("retest_of"), text("retest_of")}, {QStringLiteral("rework"), text("rework")}, {QStringLiteral("lot"), text("lot")},
                      {QStringLiteral("lift"), text("lift")}, {QStringLiteral("fix_kind"), text("fix_kind")}, {QStringLiteral("station_number"), text("station")}, {QStringLiteral("offset_number"), text("offset_ft")},
                      {QStringLiteral("draw"), text("draw")}, {QStringLiteral("by"), text("fix_kind") == "by tape" ? QStringLiteral("tape") : text("fix_kind") == "on the map" ? QStringLiteral("map") : QString()},
                      {QStringLiteral("line"), text("alignment")},
                      {QStringLiteral("north"), QString::fromStdString(book::withUnit(site, "grid_north", book::Unit::Length).text)},
                      {QStringLiteral("east"), QString::fromStdString(book::withUnit(site, "grid_east", book::Unit::Length).text)}};
    texts.insert(QStringLiteral("map_north"), texts.value(QStringLiteral("north")));
    texts.insert(QStringLiteral("map_east"), texts.value(QStringLiteral("east")));
    const QString offset = text("offset_ft");
    texts.insert(QStringLiteral("station"), text("station"));
    texts.insert(QStringLiteral("offset"), offset.startsWith('-') ? offset.mid(1) : offset);
    texts.insert(QStringLiteral("side"), offset.startsWith('-') ? QStringLiteral("Lt") : QStringLiteral("Rt"));
    if (site.contains("site"))
        texts.insert(QStringLiteral("site"), QString::number(site.at("site").get<int>()));
    if (site.contains("fixes"))
        texts.insert(QStringLiteral("fixes"), QString::number(site.at("fixes").get<int>()));
    const double north = text("sigma_north_m").toDouble();
    const double east = text("sigma_east_m").toDouble();
    if (north > 0 || east > 0)
        texts.insert(QStringLiteral("accuracy"), figureText(Length::metres(2 * std::hypot(north, east)).feet(), 1));
    return texts;
}

}  // namespace groundcount::view
