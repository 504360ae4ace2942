#include "view/offset_sheet.h"

#include "view/figure_text.h"
#include "view/numbered_key.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

using method::MoistureVariant;

constexpr MoistureVariant kMethodVariants[] = {MoistureVariant::DryBasis, MoistureVariant::WetBasis, MoistureVariant::MassOffset, MoistureVariant::PercentOffset,
                                               MoistureVariant::Ratio};
constexpr double kLevel = 0.05;       // two-sided significance of a density bias, as in the handbook's section 7

}  // namespace

std::vector<method::MoistureSample> OffsetSheet::samples() const
{
    std::vector<method::MoistureSample> all;
    for (int i = 1; i <= evidenceCount(); ++i) {
        const auto oven = number(numberedKey("o", i)), wet = number(numberedKey("r", i)), water = number(numberedKey("g", i));
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
        const auto p = number(numberedKey("p", i)), q = number(numberedKey("q", i));
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
            if (!typed(numberedKey("t", i)).isEmpty())
                add(names[i], typed(numberedKey("t", i)), tr("counts"));
    }
    for (int i = 1; kind() > Trench && i <= evidenceCount(); ++i) {
        if (kind() == Moisture && !typed(numberedKey("o", i)).isEmpty())
            add(tr("Sample %1: gauge %2 of %3").arg(i).arg(typed(numberedKey("g", i)), typed(numberedKey("r", i))), typed(numberedKey("o", i)), QStringLiteral("%"));
        if (kind() == Density && !typed(numberedKey("p", i)).isEmpty())
            add(tr("Spot %1: gauge %2").arg(i).arg(typed(numberedKey("q", i))), typed(numberedKey("p", i)), densityUnit());
    }
    m_evidence.setRows(std::move(rows));
}

}  // namespace groundcount::view
