#include "view/material_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/numbered_key.h"

#include <algorithm>

namespace groundcount::view {
namespace {

const char* const kPeakBy[] = {"three points", "parabola through all points", "natural spline", "by hand"};

}  // namespace

QJsonObject MaterialSheet::fromBook() const
{
    QJsonObject texts;
    const auto put = [&](const QString& at, const std::string& text) {
        if (!text.empty())
            texts.insert(at, QString::fromStdString(text));
    };
    const auto& proctors = m_session->snapshot().proctors;
    const auto row = std::find_if(proctors.begin(), proctors.end(), [&](const auto& p) { return p.id == m_subject; });
    if (m_subject.empty() || row == proctors.end())
        return texts;
    const auto record = m_session->store().record(row->hash);
    if (!record)
        return texts;
    const auto& body = record->body;
    for (const char* same : {"name", "standard", "method", "material"})
        put(QLatin1String(same), book::textAt(body, same));
    put(QStringLiteral("gs"), book::textAt(body, "solids_gravity"));
    put(QStringLiteral("cg"), book::textAt(body, "coarse_gravity"));
    put(QStringLiteral("cw"), book::textAt(body, "coarse_water_content_pct"));
    put(QStringLiteral("u"), book::withUnit(body, "standard_uncertainty", book::Unit::Density).text);
    put(QStringLiteral("hand.d"), book::withUnit(body, "max_dry_density", book::Unit::Density).text);
    put(QStringLiteral("hand.w"), book::textAt(body, "optimum_pct"));
    const auto by = std::find(std::begin(kPeakBy), std::end(kPeakBy), book::textAt(body, "peak_by"));
    texts.insert(QStringLiteral("peak"), QString::number(by == std::end(kPeakBy) ? static_cast<int>(ByHand) : static_cast<int>(by - std::begin(kPeakBy))));
    int n = 0;
    if (const auto points = body.find("points"); points != body.end() && points->is_array()) {
        for (const auto& point : *points) {
            ++n;
            put(numberedKey("w", n), book::textAt(point, "water_content_pct"));
            put(numberedKey("d", n), book::withUnit(point, "dry_density", book::Unit::Density).text);
        }
    }
    texts.insert(QStringLiteral("n"), QString::number(n));
    for (const auto& m : m_session->snapshot().materials) {
        if (m.id != row->material)
            continue;
        put(QStringLiteral("m.name"), m.name);
        put(QStringLiteral("m.description"), m.description);
        put(QStringLiteral("m.class"), m.soilClass);
    }
    return texts;
}

Result<std::vector<book::Entry>> MaterialSheet::entries() const
{
    if (!m_peak)
        return refused("A moisture-density test needs its peak; there is none.");
    std::vector<book::Entry> made;
    std::string materialId = text("material");
    if (materialDiffers()) {
        book::Entry entry;
        entry.kind = "material";
        const bool isKnown = !materialId.empty();
        if (!isKnown)
            materialId = Session::newId();
        entry.subject = materialId;
        entry.body = {{"name", text("m.name")}};
        put(entry.body, "description", "m.description");
        put(entry.body, "soil_class", "m.class");
        if (isKnown) {
            const auto records = m_session->store().records({.subject = materialId, .kind = "material"});
            if (!records || records->empty())
                return refused("The material to be amended is not in the book.");
            entry.amends = records->back().hash;
            entry.reason = has("why") ? text("why") : "described anew with a new test";
        }
        made.push_back(std::move(entry));
    }
    m_newId = isOld() ? m_subject : Session::newId();
    if (!isOld() || testDiffers()) {
        book::Entry entry;
        entry.kind = "proctor";
        entry.subject = m_newId;
        entry.body = {{"name", text("name")}, {"material", materialId}, {"standard", text("standard")}, {"peak_by", kPeakBy[peakIndex()]},
                      {"max_dry_density_" + densityKey(), m_maximum.toStdString()}, {"optimum_pct", m_optimum.toStdString()}};
        put(entry.body, "method", "method");
        put(entry.body, "solids_gravity", "gs");
        put(entry.body, "coarse_gravity", "cg");
        put(entry.body, "coarse_water_content_pct", "cw");
        if (has("u"))
            entry.body["standard_uncertainty_" + densityKey()] = text("u");
        book::Body points = book::Body::array();
        for (int i = 1; i <= pointCount(); ++i)
            if (number(numberedKey("w", i)) && number(numberedKey("d", i)))
                points.push_back({{"water_content_pct", typed(numberedKey("w", i)).toStdString()}, {"dry_density_" + densityKey(), typed(numberedKey("d", i)).toStdString()}});
        if (!points.empty())
            entry.body["points"] = std::move(points);
        for (const auto& row : m_session->snapshot().proctors)
            if (row.id == m_newId)
                entry.amends = row.hash;
        if (!entry.amends.empty())
            entry.reason = text("why");
        made.push_back(std::move(entry));
    }
    return made;
}

void MaterialSheet::afterSeal()
{
    setSubjectQuietly(m_newId);
}

}  // namespace groundcount::view
