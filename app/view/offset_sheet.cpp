#include "view/offset_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/figure_text.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

using method::MoistureVariant;

const char* const kKinds[] = {"trench", "moisture", "density bias"};
const char* const kVariants[] = {"dry basis", "wet basis", "mass offset", "percent offset", "ratio"};
constexpr MoistureVariant kMethodVariants[] = {MoistureVariant::DryBasis, MoistureVariant::WetBasis, MoistureVariant::MassOffset, MoistureVariant::PercentOffset,
                                               MoistureVariant::Ratio};
const char* const kTrenchKeys[] = {"moisture_standard_in_trench", "moisture_standard_outside", "density_standard_in_trench", "density_standard_outside"};
constexpr int kUsualSamples = 3;      // fewer say little about their scatter; common practice, no source
constexpr double kLevel = 0.05;       // two-sided significance of a density bias, as in the handbook's section 7

QString at(const char* what, int number)
{
    return QLatin1String(what) + QString::number(number);
}

}  // namespace

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
            keys << at("t", i);
            entry->add(names[i], tr("counts"), typed(keys.back()));
        }
    }
    for (int i = 1; kind() != Trench && i <= evidenceCount(); ++i) {
        if (kind() == Moisture) {
            keys << at("o", i) << at("r", i) << at("g", i);
            entry->add(tr("%1: dried").arg(i), QStringLiteral("%"), typed(at("o", i)));
            entry->add(tr("%1: gauge wet").arg(i), densityUnit(), typed(at("r", i)));
            entry->add(tr("%1: gauge water").arg(i), densityUnit(), typed(at("g", i)));
        } else {
            keys << at("p", i) << at("q", i);
            entry->add(tr("%1: reference").arg(i), densityUnit(), typed(at("p", i)));
            entry->add(tr("%1: gauge").arg(i), densityUnit(), typed(at("q", i)));
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

std::vector<method::MoistureSample> OffsetSheet::samples() const
{
    std::vector<method::MoistureSample> all;
    for (int i = 1; i <= evidenceCount(); ++i) {
        const auto oven = number(at("o", i)), wet = number(at("r", i)), water = number(at("g", i));
        if (oven && wet && water)
            all.push_back({WaterContent::percent(*oven), isMetric() ? WetDensity::kgPerM3(*wet) : WetDensity::lbPerFt3(*wet),
                           isMetric() ? WaterDensity::kgPerM3(*water) : WaterDensity::lbPerFt3(*water)});
    }
    return all;
}

void OffsetSheet::refreshTrench()
{
    const auto in = number(QStringLiteral("t0")), out = number(QStringLiteral("t1"));
    if (!in || !out)
        return;
    const auto offset = method::trenchOffset(*in, *out);
    if (!offset) {
        m_doubt = QString::fromStdString(offset.error().what);
        return;
    }
    m_value = reportedText(offset->counts, 1, TieRule::HalfEven);
    m_figure = view::signedText(offset->counts, 0);
    m_unit = tr("moisture counts");
    const auto density = number(QStringLiteral("t2")) && number(QStringLiteral("t3")) ? method::trenchOffset(*number(QStringLiteral("t2")), *number(QStringLiteral("t3")))
                                                                                        : Result<method::TrenchOffset>(tl::unexpected(Error{}));
    m_meaning = tr("%1 % of the standard count; taken off each moisture count in the trench.").arg(figureText(offset->percentOfStandard, 1)) +
                (density ? ' ' + tr("Density %1 counts.").arg(view::signedText(density->counts, 0)) : QString());
    const auto limit = m_session->ruleSet().limits.find("trench.offset_warning");
    if (limit != m_session->ruleSet().limits.end() && offset->percentOfStandard > limit->second.value.value())
        m_doubt = tr("More than %1 % of the standard count. Was the block where the test will be, and are the two the right way round?").arg(shownDecimal(limit->second.value.text()));
    else if (offset->counts < 0)
        m_doubt = tr("Fewer counts in the trench than outside. A wall adds counts; are the two the wrong way round?");
}

void OffsetSheet::refreshMoisture()
{
    const auto all = samples();
    if (all.empty())
        return;
    const auto fit = method::moistureCalibration(kMethodVariants[variant()], all, 1);
    if (!fit) {
        m_doubt = QString::fromStdString(fit.error().what);
        return;
    }
    const double f = fit->correction.factor;
    const bool isMille = variant() <= 1;
    const double shown = isMille ? 1000 * f : variant() == 2 ? (isMetric() ? f : WaterDensity::kgPerM3(f).lbPerFt3()) : f;
    const int places = variant() == 4 ? 4 : 2;
    m_value = reportedText(shown, places, TieRule::HalfEven);
    m_figure = view::signedText(shown, places);
    m_unit = isMille ? tr("per mille") : variant() == 2 ? densityUnit() : variant() == 3 ? tr("points") : QString();
    m_meaning = tr("%1 samples; dried minus gauge %2 points").arg(all.size()).arg(view::signedText(fit->meanDifference, 2)) +
                (all.size() > 1 ? tr(", scatter %1").arg(figureText(fit->sdDifference, 2)) : QString()) + '.';
    if (all.size() < kUsualSamples)
        m_doubt = tr("%1 samples say little about their scatter.").arg(all.size());
}

void OffsetSheet::refreshDensity()
{
    std::vector<WetDensity> reference, gauge;
    for (int i = 1; i <= evidenceCount(); ++i) {
        const auto p = number(at("p", i)), q = number(at("q", i));
        if (p && q) {
            reference.push_back(isMetric() ? WetDensity::kgPerM3(*p) : WetDensity::lbPerFt3(*p));
            gauge.push_back(isMetric() ? WetDensity::kgPerM3(*q) : WetDensity::lbPerFt3(*q));
        }
    }
    if (reference.size() < 2)
        return;
    const auto bias = method::densityBias(reference, gauge, kLevel);
    if (!bias) {
        m_doubt = QString::fromStdString(bias.error().what);
        return;
    }
    const auto shown = [&](double kg) { return isMetric() ? kg : WetDensity::kgPerM3(kg).lbPerFt3(); };
    m_value = reportedText(shown(bias->kgPerM3), 2, TieRule::HalfEven);
    m_figure = view::signedText(shown(bias->kgPerM3), 2);
    m_unit = densityUnit();
    m_meaning = tr("Mean of %1 differences, scatter %2; added to each wet density.").arg(reference.size()).arg(figureText(shown(bias->sdKgPerM3), 2));
    if (!bias->isSignificant)
        m_doubt = tr("The scatter is as large as the bias: chance alone may give it (t %1, critical %2).").arg(figureText(std::fabs(bias->t), 2), figureText(bias->tCritical, 2));
}

void OffsetSheet::showEvidence()
{
    std::vector<Row> rows;
    const auto add = [&](const QString& title, const QString& figure, const QString& unit) {
        Row row;
        row.title = title;
        row.figure = figure;
        row.unit = unit;
        rows.push_back(std::move(row));
    };
    if (kind() == Trench) {
        const QString names[] = {tr("Moisture in the trench"), tr("Moisture outside"), tr("Density in the trench"), tr("Density outside")};
        for (int i = 0; i < 4; ++i)
            if (!typed(at("t", i)).isEmpty())
                add(names[i], typed(at("t", i)), tr("counts"));
    }
    for (int i = 1; kind() > Trench && i <= evidenceCount(); ++i) {
        if (kind() == Moisture && !typed(at("o", i)).isEmpty())
            add(tr("Sample %1: gauge %2 of %3").arg(i).arg(typed(at("g", i)), typed(at("r", i))), typed(at("o", i)), QStringLiteral("%"));
        if (kind() == Density && !typed(at("p", i)).isEmpty())
            add(tr("Spot %1: gauge %2").arg(i).arg(typed(at("q", i))), typed(at("p", i)), densityUnit());
    }
    m_evidence.setRows(std::move(rows));
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
            if (!typed(at("t", i)).isEmpty())
                entry.body[kTrenchKeys[i]] = typed(at("t", i)).toStdString();
    } else if (kind() == Moisture) {
        entry.body["variant"] = kVariants[variant()];
        entry.body[variant() == 2 ? "factor_" + densityKey() : std::string("factor")] = m_value;
        for (int i = 1; i <= evidenceCount(); ++i)
            if (number(at("o", i)) && number(at("r", i)) && number(at("g", i)))
                evidence.push_back({{"dried_pct", typed(at("o", i)).toStdString()}, {"wet_density_" + densityKey(), typed(at("r", i)).toStdString()},
                                    {"water_density_" + densityKey(), typed(at("g", i)).toStdString()}});
    } else {
        entry.body["bias_" + densityKey()] = m_value;
        for (int i = 1; i <= evidenceCount(); ++i)
            if (number(at("p", i)) && number(at("q", i)))
                evidence.push_back({{"reference_" + densityKey(), typed(at("p", i)).toStdString()}, {"gauge_" + densityKey(), typed(at("q", i)).toStdString()}});
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
        put(at("t", i), book::textAt(body, kTrenchKeys[i]));
    int n = 0;
    if (const auto evidence = body.find("evidence"); evidence != body.end() && evidence->is_array()) {
        for (const auto& one : *evidence) {
            ++n;
            put(at("o", n), book::textAt(one, "dried_pct"));
            put(at("r", n), book::withUnit(one, "wet_density", book::Unit::Density).text);
            put(at("g", n), book::withUnit(one, "water_density", book::Unit::Density).text);
            put(at("p", n), book::withUnit(one, "reference", book::Unit::Density).text);
            put(at("q", n), book::withUnit(one, "gauge", book::Unit::Density).text);
        }
    }
    texts.insert(QStringLiteral("n"), QString::number(n));
    return texts;
}

}  // namespace groundcount::view
