#include "view/place_step.h"

#include "book/kinds.h"
#include "view/figure_text.h"
#include "view/sheet_book.h"

#include <cmath>

/// The record of a test's place, and the texts of the sheet out of it.
namespace groundcount::view {
namespace {

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
