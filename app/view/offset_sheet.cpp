#include "view/offset_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/figure_text.h"
#include "view/numbered_key.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {

bool OffsetSheet::isMetric() const
{
    return m_session->job().densityUnit == "kg/m3";
}

QString OffsetSheet::densityUnit() const
{
    return isMetric() ? QStringLiteral("kg/m³") : QStringLiteral("lb/ft³");
}

std::string OffsetSheet::densityKey() const
{
    return isMetric() ? "kg_m3" : "lb_ft3";
}

std::string OffsetSheet::gaugeId() const
{
    return has("gauge") ? text("gauge") : m_session->gauge() ? m_session->gauge()->id : std::string();
}

QStringList OffsetSheet::gaugeWords() const
{
    QStringList words;
    if (m_session)
        for (const auto& gauge : m_session->snapshot().gauges)
            words << QString::fromStdString(gauge.name);
    return words;
}

int OffsetSheet::gaugeIndex() const
{
    if (!isReady())
        return -1;
    const auto& all = m_session->snapshot().gauges;
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& g) { return g.id == gaugeId(); });
    return found == all.end() ? -1 : static_cast<int>(found - all.begin());
}

QStringList OffsetSheet::materialWords() const
{
    QStringList words;
    if (m_session)
        for (const auto& material : m_session->snapshot().materials)
            words << QString::fromStdString(material.name);
    return words;
}

int OffsetSheet::materialIndex() const
{
    if (!isReady())
        return -1;
    const auto& all = m_session->snapshot().materials;
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& m) { return m.id == text("material"); });
    return found == all.end() ? -1 : static_cast<int>(found - all.begin());
}

void OffsetSheet::pickKind(int index)
{
    QJsonObject texts{{QStringLiteral("kind"), QString::number(index)}};
    if (!has("on"))
        texts.insert(QStringLiteral("on"), todayOf(*m_session));
    // A trench offset belongs to a place and a day.
    if (index == Trench && !has("expires"))
        texts.insert(QStringLiteral("expires"), todayOf(*m_session));
    if (const auto* today = m_session->standardToday(); index == Trench && today && !has("t1") && !has("t3")) {
        texts.insert(QStringLiteral("t1"), figureText(today->moisture, 0).remove(','));
        texts.insert(QStringLiteral("t3"), figureText(today->density, 0).remove(','));
    }
    typeAll(texts);
}

void OffsetSheet::pickGauge(int index)
{
    const auto& all = m_session->snapshot().gauges;
    if (index >= 0 && index < static_cast<int>(all.size()))
        type(QStringLiteral("gauge"), QString::fromStdString(all[static_cast<std::size_t>(index)].id));
}

void OffsetSheet::pickMaterial(int index)
{
    const auto& all = m_session->snapshot().materials;
    if (index >= 0 && index < static_cast<int>(all.size()))
        type(QStringLiteral("material"), index == materialIndex() ? QString() : QString::fromStdString(all[static_cast<std::size_t>(index)].id));
}

void OffsetSheet::typeDepth()
{
    auto* entry = new NumberEntry(tr("Depth of the tests"), {}, tr("Use it"), this);
    entry->add(tr("Depth"), tr("in."), typed("depth"));
    open(entry, {QStringLiteral("depth")});
}

int OffsetSheet::evidenceCount() const
{
    return std::max(kUsualSamples, typed("n").toInt());
}

void OffsetSheet::typeEvidence()
{
    auto* entry = new NumberEntry(kind() == Trench ? tr("Standard counts") : kind() == Moisture ? tr("Samples") : tr("Spots"), {}, tr("Use these"), this);
    QStringList keys;
    if (kind() == Trench) {
        const QString names[] = {tr("Moisture, trench"), tr("Moisture, outside"), tr("Density, trench"), tr("Density, outside")};
        for (int i = 0; i < 4; ++i) {
            keys << numberedKey("t", i);
            entry->add(names[i], tr("counts"), typed(keys.back()));
        }
    }
    for (int i = 1; kind() != Trench && i <= evidenceCount(); ++i) {
        if (kind() == Moisture) {
            keys << numberedKey("o", i) << numberedKey("r", i) << numberedKey("g", i);
            entry->add(tr("%1: dried").arg(i), QStringLiteral("%"), typed(numberedKey("o", i)));
            entry->add(tr("%1: gauge wet").arg(i), densityUnit(), typed(numberedKey("r", i)));
            entry->add(tr("%1: gauge water").arg(i), densityUnit(), typed(numberedKey("g", i)));
        } else {
            keys << numberedKey("p", i) << numberedKey("q", i);
            entry->add(tr("%1: reference").arg(i), densityUnit(), typed(numberedKey("p", i)));
            entry->add(tr("%1: gauge").arg(i), densityUnit(), typed(numberedKey("q", i)));
        }
    }
    open(entry, keys);
}

void OffsetSheet::addEvidence()
{
    type(QStringLiteral("n"), QString::number(evidenceCount() + 1));
    typeEvidence();
}

void OffsetSheet::judgeEntry(NumberEntry& entry)
{
    if (entry.fields().size() > 1)
        entry.setNote(m_meaning, {}, Mark::Nothing);
}

void OffsetSheet::refresh()
{
    m_title = isSealed() ? tr("Offset") : tr("New offset");
    const int gauge = gaugeIndex();
    m_context = gauge < 0 ? QString() : gaugeWords()[gauge];
    m_context2 = isSealed() ? tr("sealed") : QString();
    m_on = dateText(typed("on"));
    m_expires = dateText(typed("expires"));
    m_figure.clear();
    m_unit.clear();
    m_meaning.clear();
    m_doubt.clear();
    m_value.clear();
    const QString variants[] = {tr("A share of the dry mass: w grows with 100 + w."), tr("A share of the wet density."), tr("A fixed mass of water per volume."),
                                tr("A fixed number of points."), tr("A fixed ratio.")};
    m_variantText = variants[std::clamp(variant(), 0, 4)];
    m_evidenceText = kind() == Trench ? tr("Standard counts on the block, at the distance from the wall and the way round of the test, and outside")
                     : kind() == Moisture ? tr("Samples from under the gauge, dried by another method")
                     : kind() == Density ? tr("Spots measured by the gauge and by another method") : QString();
    m_typeText = m_evidence.count() ? tr("Change the figures") : tr("Type the figures");
    if (kind() == Trench)
        refreshTrench();
    else if (kind() == Moisture)
        refreshMoisture();
    else if (kind() == Density)
        refreshDensity();
    showEvidence();
    m_sealText = tr("Seal the offset");
    m_sealNotYet = whyNotYet();
}

QString OffsetSheet::whyNotYet() const
{
    if (isSealed())
        return tr("Sealed");
    if (kind() < 0)
        return tr("Seal: choose what it corrects");
    if (gaugeIndex() < 0)
        return tr("Seal: the book has no gauge yet");
    if (place().trimmed().isEmpty())
        return tr("Seal: say where");
    if (!has("on"))
        return tr("Seal: type the date");
    if (m_value.empty())
        return kind() == Trench ? tr("Seal: type both moisture counts") : kind() == Moisture ? tr("Seal: type a whole sample") : tr("Seal: type two whole spots");
    return {};
}

}  // namespace groundcount::view
