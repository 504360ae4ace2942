#include "view/offset_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/numbered_key.h"

#include <algorithm>

namespace groundcount::view {
namespace {

const char* const kKinds[] = {"trench", "moisture", "density bias"};
const char* const kVariants[] = {"dry basis", "wet basis", "mass offset", "percent offset", "ratio"};
const char* const kTrenchKeys[] = {"moisture_standard_in_trench", "moisture_standard_outside", "density_standard_in_trench", "density_standard_outside"};

}  // namespace

Result<std::vector<book::Entry>> OffsetSheet::entries() const
{
    if (m_value.empty() || kind() < 0)
        return refused("An offset needs its evidence; there is none.");
    m_newId = Session::newId();
    book::Entry entry;
    entry.kind = "offset";
    entry.subject = m_newId;
    entry.body = {{"gauge", gaugeId()}, {"offset_kind", kKinds[kind()]}, {"on", text("on")}};
    put(entry.body, "expires", "expires");
    put(entry.body, "place", "place");
    put(entry.body, "material", "material");
    put(entry.body, "depth_in", "depth");
    book::Body evidence = book::Body::array();
    if (kind() == Trench) {
        for (int i = 0; i < 4; ++i)
            if (!typed(numberedKey("t", i)).isEmpty())
                entry.body[kTrenchKeys[i]] = typed(numberedKey("t", i)).toStdString();
    } else if (kind() == Moisture) {
        entry.body["variant"] = kVariants[variant()];
        entry.body[variant() == 2 ? "factor_" + densityKey() : std::string("factor")] = m_value;
        for (int i = 1; i <= evidenceCount(); ++i)
            if (number(numberedKey("o", i)) && number(numberedKey("r", i)) && number(numberedKey("g", i)))
                evidence.push_back({{"dried_pct", typed(numberedKey("o", i)).toStdString()}, {"wet_density_" + densityKey(), typed(numberedKey("r", i)).toStdString()},
                                    {"water_density_" + densityKey(), typed(numberedKey("g", i)).toStdString()}});
    } else {
        entry.body["bias_" + densityKey()] = m_value;
        for (int i = 1; i <= evidenceCount(); ++i)
            if (number(numberedKey("p", i)) && number(numberedKey("q", i)))
                evidence.push_back({{"reference_" + densityKey(), typed(numberedKey("p", i)).toStdString()}, {"gauge_" + densityKey(), typed(numberedKey("q", i)).toStdString()}});
    }
    if (!evidence.empty())
        entry.body["evidence"] = std::move(evidence);
    return std::vector{entry};
}

QJsonObject OffsetSheet::fromBook() const
{
    QJsonObject texts;
    const auto records = m_subject.empty() ? Result<std::vector<book::Record>>() : m_session->store().records({.subject = m_subject, .kind = "offset"});
    if (!records || records->empty())
        return texts;
    const auto& body = records->back().body;
    const auto put = [&](const QString& key, const std::string& text) {
        if (!text.empty())
            texts.insert(key, QString::fromStdString(text));
    };
    const auto of = std::find(std::begin(kKinds), std::end(kKinds), book::textAt(body, "offset_kind"));
    if (of != std::end(kKinds))
        texts.insert(QStringLiteral("kind"), QString::number(of - std::begin(kKinds)));
    const auto variantAt = std::find(std::begin(kVariants), std::end(kVariants), book::textAt(body, "variant"));
    if (variantAt != std::end(kVariants))
        texts.insert(QStringLiteral("variant"), QString::number(variantAt - std::begin(kVariants)));
    for (const char* key : {"gauge", "on", "expires", "place", "material"})
        put(QLatin1String(key), book::textAt(body, key));
    put(QStringLiteral("depth"), book::textAt(body, "depth_in"));
    for (int i = 0; i < 4; ++i)
        put(numberedKey("t", i), book::textAt(body, kTrenchKeys[i]));
    int n = 0;
    if (const auto evidence = body.find("evidence"); evidence != body.end() && evidence->is_array()) {
        for (const auto& one : *evidence) {
            ++n;
            put(numberedKey("o", n), book::textAt(one, "dried_pct"));
            put(numberedKey("r", n), book::withUnit(one, "wet_density", book::Unit::Density).text);
            put(numberedKey("g", n), book::withUnit(one, "water_density", book::Unit::Density).text);
            put(numberedKey("p", n), book::withUnit(one, "reference", book::Unit::Density).text);
            put(numberedKey("q", n), book::withUnit(one, "gauge", book::Unit::Density).text);
        }
    }
    texts.insert(QStringLiteral("n"), QString::number(n));
    return texts;
}

}  // namespace groundcount::view
