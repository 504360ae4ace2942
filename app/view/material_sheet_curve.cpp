#include "view/material_sheet.h"

#include "method/explain/explain_soil.h"
#include "method/soil/in_place.h"
#include "view/figure_text.h"
#include "view/numbered_key.h"
#include "view/test_rows.h"

#include <algorithm>

namespace groundcount::view {
namespace {

constexpr std::size_t kMostTests = 60;  // more cannot be told apart on a phone

}  // namespace

std::vector<method::CompactionPoint> MaterialSheet::typedPoints() const
{
    std::vector<method::CompactionPoint> points;
    for (int i = 1; i <= pointCount(); ++i) {
        const auto w = number(numberedKey("w", i)), d = number(numberedKey("d", i));
        if (w && d)
            points.push_back({WaterContent::percent(*w), dry(*d)});
    }
    return points;
}

void MaterialSheet::refreshPeak()
{
    m_peak.reset();
    m_refusal.clear();
    m_saturation.clear();
    std::vector<Row> warnings, others;
    const auto points = typedPoints();
    const auto gs = number(QStringLiteral("gs"));
    std::optional<method::SolidsAndWater> solids;
    if (gs)
        solids = method::SolidsAndWater{*gs, m_session->rules().waterDensity};
    const auto search = points.empty() ? Result<method::PeakSearch>(tl::unexpected(Error{})) : method::findPeak(points, solids, {});
    if (search) {
        for (const auto warning : search->warnings)
            warnings.push_back(Row::ofWords(QString::fromLatin1(method::sentenceOf(warning)), {}, {}));
        for (auto& row : warnings)
            row.title[0] = row.title[0].toUpper();
        const auto shown = [&](const QString& name, const method::Peak& peak) {
            Row row = Row::ofWords(name, {}, tr("at %1 %").arg(figureText(peak.optimum.percent(), 1)));
            row.figure = figureText(method::inUnit(peak.maximum, m_session->rules().unit), 1);
            row.unit = densityUnit();
            others.push_back(std::move(row));
        };
        shown(tr("Three points"), search->local);
        if (search->parabola)
            shown(tr("Parabola, all points"), *search->parabola);
        shown(tr("Spline, all points"), search->spline);
        m_peak = peakIndex() == Parabola ? search->parabola : peakIndex() == Spline ? std::optional(search->spline) : std::optional(search->local);
        if (!m_peak)
            m_refusal = tr("The parabola through all points opens upward: no peak this way.");
    } else if (points.size() >= 3) {
        m_refusal = QString::fromStdString(search.error().what);
    }
    if (peakIndex() == ByHand) {
        const auto w = number(QStringLiteral("hand.w")), d = number(QStringLiteral("hand.d"));
        m_peak = w && d && *w > 0 && *d > 0 ? std::optional(method::Peak{WaterContent::percent(*w), dry(*d)}) : std::nullopt;
    }
    m_warnings.setRows(std::move(warnings));
    m_otherPeaks.setRows(std::move(others));
    const auto rounded = [](double value, const std::optional<method::Rounding>& rounding) {
        return QString::fromStdString(reportedText(value, rounding ? rounding->places : 1, rounding ? rounding->tie : TieRule::HalfEven));
    };
    // A peak by hand is kept as it was typed; a computed one as the rule set reports it.
    const bool hand = peakIndex() == ByHand;
    m_maximum = !m_peak ? QString() : hand ? typed("hand.d") : rounded(isMetric() ? m_peak->maximum.kgPerM3() : m_peak->maximum.lbPerFt3(), m_session->rules().maximum);
    m_optimum = !m_peak ? QString() : hand ? typed("hand.w") : rounded(m_peak->optimum.percent(), m_session->rules().optimum);
    if (m_peak && gs) {
        const auto saturated = method::saturationPercent(m_peak->maximum, m_peak->optimum, *gs, m_session->rules().waterDensity);
        m_saturation = saturated ? tr("%1 % saturated at the peak.").arg(figureText(*saturated, 0)) : QString::fromStdString(saturated.error().what);
    }
    refreshPlot(points);
}

void MaterialSheet::refreshPlot(const std::vector<method::CompactionPoint>& points)
{
    ProctorDrawing drawing;
    drawing.points = points;
    drawing.peak = m_peak;
    drawing.solidsGravity = number(QStringLiteral("gs"));
    drawing.water = m_session->rules().waterDensity;
    drawing.unit = isMetric() ? method::DensityUnit::KgPerM3 : method::DensityUnit::LbPerFt3;
    const auto& tests = m_session->snapshot().tests;
    for (auto test = tests.rbegin(); isOld() && test != tests.rend() && drawing.tests.size() < kMostTests; ++test) {
        const auto d = Decimal::parse(test->dry), w = Decimal::parse(test->contentPct);
        if (test->proctor == m_subject && d && w && test->state != book::TestState::Void)
            drawing.tests.push_back({w->value(), d->value(), static_cast<int>(markOf(test->state))});
    }
    for (const auto& lot : m_session->snapshot().lots) {
        if (!isOld() || lot.proctor != m_subject)
            continue;
        const auto numberOf = [](const std::string& text) { const auto d = Decimal::parse(text); return d ? std::optional(d->value()) : std::nullopt; };
        drawing.leastPercent = numberOf(lot.minimumPctText);
        if (lot.windowKind == "points") {
            drawing.windowLowPoints = numberOf(lot.windowLowText);
            drawing.windowHighPoints = numberOf(lot.windowHighText);
        }
        break;
    }
    m_plot = plotOf(drawing);
}

}  // namespace groundcount::view
