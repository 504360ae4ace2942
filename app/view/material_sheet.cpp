#include "view/material_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "method/explain/explain_soil.h"
#include "method/soil/in_place.h"
#include "view/figure_text.h"
#include "view/numbered_key.h"
#include "view/test_rows.h"

#include <algorithm>

namespace groundcount::view {

bool MaterialSheet::isMetric() const
{
    return m_session && m_session->job().densityUnit == "kg/m3";
}

std::string MaterialSheet::densityKey() const
{
    return isMetric() ? "kg_m3" : "lb_ft3";
}

QString MaterialSheet::densityUnit() const
{
    return isMetric() ? QStringLiteral("kg/m³") : QStringLiteral("lb/ft³");
}

DryDensity MaterialSheet::dry(double value) const
{
    return isMetric() ? DryDensity::kgPerM3(value) : DryDensity::lbPerFt3(value);
}

QStringList MaterialSheet::materialWords() const
{
    QStringList words;
    if (m_session)
        for (const auto& material : m_session->snapshot().materials)
            words << QString::fromStdString(material.name);
    return words.isEmpty() ? words : words << tr("New");
}

int MaterialSheet::materialIndex() const
{
    if (!m_session)
        return -1;
    const auto& all = m_session->snapshot().materials;
    const auto at = std::find_if(all.begin(), all.end(), [&](const auto& m) { return m.id == text("material"); });
    return static_cast<int>(at - all.begin());
}

void MaterialSheet::pickMaterial(int index)
{
    const auto& all = m_session->snapshot().materials;
    const bool isKnown = index >= 0 && index < static_cast<int>(all.size());
    const auto textOf = [&](const std::string& text) { return isKnown ? QString::fromStdString(text) : QString(); };
    const book::MaterialRow none;
    const auto& m = isKnown ? all[static_cast<std::size_t>(index)] : none;
    typeAll({{QStringLiteral("material"), textOf(m.id)}, {QStringLiteral("m.name"), textOf(m.name)}, {QStringLiteral("m.description"), textOf(m.description)},
             {QStringLiteral("m.class"), textOf(m.soilClass)}});
}

int MaterialSheet::pointCount() const
{
    return std::max(typed("n").toInt(), isOld() ? 0 : kUsualPoints);
}

void MaterialSheet::typePoints()
{
    auto* entry = new NumberEntry(tr("Points"), name(), tr("Use these points"), this);
    QStringList keys;
    const int count = std::max(pointCount(), kUsualPoints);
    for (int i = 1; i <= count; ++i) {
        keys << numberedKey("w", i) << numberedKey("d", i);
        entry->add(tr("Moisture %1").arg(i), QStringLiteral("%"), typed(numberedKey("w", i)));
        entry->add(tr("Dry %1").arg(i), densityUnit(), typed(numberedKey("d", i)));
    }
    if (count != typed("n").toInt())
        type(QStringLiteral("n"), QString::number(count));
    int first = 0;
    while (first + 1 < keys.size() && !typed(keys[first]).isEmpty())
        ++first;
    open(entry, keys);
    entry->goTo(first);
}

void MaterialSheet::addPoint()
{
    type(QStringLiteral("n"), QString::number(pointCount() + 1));
    typePoints();
}

void MaterialSheet::typeByHand()
{
    auto* entry = new NumberEntry(tr("Peak by hand"), name(), tr("Use this peak"), this);
    entry->add(tr("Maximum"), densityUnit(), typed("hand.d"));
    entry->add(tr("Optimum"), QStringLiteral("%"), typed("hand.w"));
    open(entry, {QStringLiteral("hand.d"), QStringLiteral("hand.w")});
}

void MaterialSheet::typeGravity()
{
    auto* entry = new NumberEntry(tr("Gravity of solids"), {}, tr("Use it"), this);
    entry->add(tr("Gravity"), {}, typed("gs"));
    open(entry, {QStringLiteral("gs")});
}

void MaterialSheet::typeUncertainty()
{
    auto* entry = new NumberEntry(tr("Uncertainty"), {}, tr("Use it"), this);
    entry->add(tr("Maximum ±"), densityUnit(), typed("u"));
    open(entry, {QStringLiteral("u")});
}

void MaterialSheet::typeCoarse()
{
    auto* entry = new NumberEntry(tr("Coarse particles"), {}, tr("Use these"), this);
    entry->add(tr("Gravity"), {}, typed("cg"));
    entry->add(tr("Moisture"), QStringLiteral("%"), typed("cw"));
    open(entry, {QStringLiteral("cg"), QStringLiteral("cw")});
}

void MaterialSheet::judgeEntry(NumberEntry& entry)
{
    if (entry.title() != tr("Points"))
        return;
    entry.setNote(m_peak ? tr("%1 points, peak %2 %3 at %4 %").arg(typedPoints().size()).arg(m_maximum, densityUnit(), m_optimum) : m_refusal, {}, Mark::Nothing);
}

bool MaterialSheet::materialDiffers() const
{
    const QJsonObject sealed = fromBook();
    const auto& all = m_session->snapshot().materials;
    const auto at = std::find_if(all.begin(), all.end(), [&](const auto& m) { return m.id == text("material"); });
    return at == all.end() || at->name != text("m.name") || at->description != text("m.description") || at->soilClass != text("m.class");
}

bool MaterialSheet::testDiffers() const
{
    QJsonObject sealed = fromBook(), now = draft();
    for (auto* texts : {&sealed, &now})
        for (const char* other : {"m.name", "m.description", "m.class", "why", "n"})
            texts->remove(QLatin1String(other));
    return sealed != now;
}

void MaterialSheet::refresh()
{
    m_title = isOld() ? tr("Proctor %1").arg(name()) : tr("New material");
    m_context = material() + (soilClass().isEmpty() || material().isEmpty() ? QString() : ", " + soilClass());
    m_context2 = standard() + (method().isEmpty() ? QString() : tr(", method %1").arg(method()));
    std::vector<Row> rows;
    for (int i = 1; i <= pointCount(); ++i) {
        if (typed(numberedKey("w", i)).isEmpty() && typed(numberedKey("d", i)).isEmpty())
            continue;
        Row row;
        row.title = tr("%1 %").arg(typed(numberedKey("w", i)).isEmpty() ? QStringLiteral("–") : typed(numberedKey("w", i)));
        row.figure = typed(numberedKey("d", i)).isEmpty() ? QStringLiteral("–") : typed(numberedKey("d", i));
        row.unit = densityUnit();
        rows.push_back(std::move(row));
    }
    m_pointsText = QString::number(typedPoints().size());
    m_points.setRows(std::move(rows));
    m_spread = has("u") ? QChar(0x00B1) + figureText(2 * number(QStringLiteral("u")).value_or(0), 1) : QString();
    m_coarse = has("cg") ? tr("gravity %1").arg(typed("cg")) + (has("cw") ? tr(", %1 %").arg(typed("cw")) : QString()) : QString();
    m_byHand = has("hand.d") && has("hand.w") ? tr("%1 at %2 %").arg(typed("hand.d"), typed("hand.w")) : QString();
    refreshPeak();
    m_asksWhy = isOld() && (testDiffers() || materialDiffers());
    m_sealText = isOld() ? tr("Amend the test") : tr("Seal material and test");
    m_sealNotYet = whyNotYet();
}

QString MaterialSheet::whyNotYet() const
{
    if (isOld() && !testDiffers() && !materialDiffers())
        return tr("Sealed. Nothing has changed");
    if (material().trimmed().isEmpty())
        return tr("Seal: name the material");
    if (name().trimmed().isEmpty() || standard().trimmed().isEmpty())
        return tr("Seal: type the test's number and standard");
    if (!m_peak)
        return peakIndex() == ByHand ? tr("Seal: type the peak") : typedPoints().size() < 3 ? tr("Seal: type three points or more") : tr("Seal: no peak this way");
    if (m_asksWhy && why().trimmed().isEmpty())
        return tr("Seal: say why it is amended");
    return {};
}

}  // namespace groundcount::view
