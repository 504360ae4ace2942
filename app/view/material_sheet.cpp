#include "view/material_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "method/explain/explain_soil.h"
#include "method/soil/in_place.h"
#include "view/figure_text.h"
#include "view/test_rows.h"

#include <algorithm>

namespace groundcount::view {
namespace {

const char* const kPeakBy[] = {"three points", "parabola through all points", "natural spline", "by hand"};
constexpr std::size_t kMostTests = 60;  // more cannot be told apart on a phone

QString key(const char* what, int number)
{
    return QLatin1String(what) + QString::number(number);
}

}  // namespace

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
            put(key("w", n), book::textAt(point, "water_content_pct"));
            put(key("d", n), book::withUnit(point, "dry_density", book::Unit::Density).text);
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
        keys << key("w", i) << key("d", i);
        entry->add(tr("Moisture %1").arg(i), QStringLiteral("%"), typed(key("w", i)));
        entry->add(tr("Dry %1").arg(i), densityUnit(), typed(key("d", i)));
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

std::vector<method::CompactionPoint> MaterialSheet::typedPoints() const
{
    std::vector<method::CompactionPoint> points;
    for (int i = 1; i <= pointCount(); ++i) {
        const auto w = number(key("w", i)), d = number(key("d", i));
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
        if (typed(key("w", i)).isEmpty() && typed(key("d", i)).isEmpty())
            continue;
        Row row;
        row.title = tr("%1 %").arg(typed(key("w", i)).isEmpty() ? QStringLiteral("–") : typed(key("w", i)));
        row.figure = typed(key("d", i)).isEmpty() ? QStringLiteral("–") : typed(key("d", i));
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
            if (number(key("w", i)) && number(key("d", i)))
                points.push_back({{"water_content_pct", typed(key("w", i)).toStdString()}, {"dry_density_" + densityKey(), typed(key("d", i)).toStdString()}});
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
