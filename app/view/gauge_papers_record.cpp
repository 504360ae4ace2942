#include "view/gauge_papers.h"

#include "book/kinds.h"
#include "book/store.h"

#include <algorithm>

namespace groundcount::view {
namespace {

void putSigned(QJsonObject& into, const QString& key, const std::string& text)
{
    if (text.empty())
        return;
    into.insert(key, QString::fromStdString(text.front() == '-' ? text.substr(1) : text));
    if (text.front() == '-')
        into.insert(key + ".sign", QStringLiteral("1"));
}

}  // namespace

QJsonObject GaugePapers::fromBook() const
{
    QJsonObject texts;
    if (m_subject.empty())
        return texts;
    const auto put = [&](const char* key, const std::string& text) {
        if (!text.empty())
            texts.insert(QLatin1String(key), QString::fromStdString(text));
    };
    for (const auto& row : m_session->snapshot().gauges) {
        if (row.id != m_subject)
            continue;
        if (const auto record = m_session->store().record(row.hash))
            for (const char* key : {"name", "serial", "sources", "prescale"})
                put(key, book::textAt(record->body, key));
        put("leak.on", row.leakTestedOn);
        put("leak.expires", row.leakTestExpires);
        if (!row.leakTestResult.empty())
            put("leak.result", row.leakTestResult == "leak" ? "1" : "0");
        if (row.calibrationHash.empty())
            continue;
        const auto record = m_session->store().record(row.calibrationHash);
        if (!record)
            continue;
        const auto& body = record->body;
        put("cal.on", book::textAt(body, "on"));
        put("cal.expires", book::textAt(body, "expires"));
        put("cal.d", book::textAt(body, "density_standard"));
        put("cal.m", book::textAt(body, "moisture_standard"));
        int n = 0;
        for (const auto& curve : body.at("curves")) {
            const QString stem = 'c' + QString::number(++n) + '.';
            putSigned(texts, stem + "depth", book::textAt(curve, "depth_in"));
            putSigned(texts, stem + "a", book::textAt(curve, "a"));
            putSigned(texts, stem + "b", book::withUnit(curve, "b", book::Unit::PerDensity).text);
            putSigned(texts, stem + "c", book::textAt(curve, "c"));
            putSigned(texts, stem + "low", book::withUnit(curve, "range_low", book::Unit::Density).text);
            putSigned(texts, stem + "high", book::withUnit(curve, "range_high", book::Unit::Density).text);
        }
        texts.insert(QStringLiteral("n"), QString::number(n));
        putSigned(texts, QStringLiteral("w.e"), book::textAt(body.at("water"), "e"));
        putSigned(texts, QStringLiteral("w.slope"), book::withUnit(body.at("water"), "slope", book::Unit::PerDensity).text);
        putSigned(texts, QStringLiteral("w.low"), book::withUnit(body.at("water"), "range_low", book::Unit::Density).text);
        putSigned(texts, QStringLiteral("w.high"), book::withUnit(body.at("water"), "range_high", book::Unit::Density).text);
    }
    return texts;
}

book::Entry GaugePapers::gaugeEntry(const std::string& gauge) const
{
    book::Entry entry;
    entry.kind = "gauge";
    entry.subject = gauge;
    entry.body = {{"name", text("name")}, {"serial", text("serial")}};
    put(entry.body, "sources", "sources");
    put(entry.body, "prescale", "prescale");
    for (const auto& row : m_session->snapshot().gauges)
        if (row.id == gauge)
            entry.amends = row.hash;
    if (!entry.amends.empty())
        entry.reason = text("why");
    return entry;
}

book::Entry GaugePapers::calibrationEntry(const std::string& gauge) const
{
    book::Entry entry;
    entry.kind = "calibration";
    entry.subject = Session::newId();
    entry.body = {{"gauge", gauge}, {"on", text("cal.on")}};
    put(entry.body, "expires", "cal.expires");
    put(entry.body, "density_standard", "cal.d");
    put(entry.body, "moisture_standard", "cal.m");
    book::Body curves = book::Body::array();
    for (int i = 1; i <= curveCount(); ++i) {
        const QString stem = 'c' + QString::number(i) + '.';
        const auto depth = number(stem + "depth");
        book::Body curve{{"depth_in", typed(stem + "depth").toStdString()}, {"mode", depth && *depth == 0 ? "backscatter" : "direct"},
                         {"a", typed(stem + "a").toStdString()}, {"b_per_" + densityKey(), typed(stem + "b").toStdString()}, {"c", signedText(stem + "c")}};
        if (!typed(stem + "low").isEmpty())
            curve["range_low_" + densityKey()] = typed(stem + "low").toStdString();
        if (!typed(stem + "high").isEmpty())
            curve["range_high_" + densityKey()] = typed(stem + "high").toStdString();
        curves.push_back(std::move(curve));
    }
    entry.body["curves"] = std::move(curves);
    entry.body["water"] = {{"e", signedText(QStringLiteral("w.e"))}, {"slope_per_" + densityKey(), text("w.slope")}};
    for (const auto& [key, at] : {std::pair("range_low_", "w.low"), std::pair("range_high_", "w.high")})
        if (has(at))
            entry.body["water"][key + densityKey()] = text(at);
    return entry;
}

book::Entry GaugePapers::leakEntry(const std::string& gauge) const
{
    book::Entry entry;
    entry.kind = "leak-test";
    entry.subject = Session::newId();
    entry.body = {{"gauge", gauge}, {"on", text("leak.on")}, {"result", leakIndex() == 1 ? "leak" : "no leak"}};
    put(entry.body, "expires", "leak.expires");
    return entry;
}

}  // namespace groundcount::view
