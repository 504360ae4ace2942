#include "view/stability_sheet.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/figure_text.h"

#include <algorithm>

namespace groundcount::view {
namespace {

constexpr int kCounts = 20;        // single one-minute counts [D2922-TXT], from memory
constexpr int kSeconds = 60;
constexpr double kConfidence = 0.90;  // chi-square band where the rule set gives none: 0.730 to 1.260 for 20 counts [COMPUTED]

}  // namespace

std::string StabilityTest::defaultSubject() const
{
    return m_session->gauge() ? m_session->gauge()->id : std::string();
}

StabilityTest::Band StabilityTest::band() const
{
    Band band;
    const auto& limits = m_session->ruleSet().limits;
    const auto n = limits.find("stability.counts"), low = limits.find("stability.low"), high = limits.find("stability.high");
    band.counts = n == limits.end() ? kCounts : static_cast<int>(n->second.value.value());
    if (low != limits.end() && high != limits.end()) {
        band.low = low->second.value.value();
        band.high = high->second.value.value();
        band.source = tr("rule set, %1, %2").arg(QString::fromStdString(low->second.source), markWord(low->second.mark));
    } else if (const auto computed = method::stabilityBand(band.counts, kConfidence)) {
        band.low = computed->low;
        band.high = computed->high;
        band.source = tr("computed: nine sound gauges of ten lie inside; the rule set gives no band");
    }
    return band;
}

std::optional<double> StabilityTest::prescale() const
{
    for (const auto& row : m_session->snapshot().gauges) {
        if (row.id != m_subject)
            continue;
        const auto record = m_session->store().record(row.hash);
        const auto decimal = Decimal::parse(record ? book::textAt(record->body, "prescale") : std::string());
        if (decimal)
            return decimal->value();
    }
    return std::nullopt;
}

std::vector<double> StabilityTest::counts(const char* stem) const
{
    std::vector<double> all;
    for (int i = 1; i <= band().counts; ++i)
        if (const auto count = number(QLatin1String(stem) + QString::number(i)))
            all.push_back(*count);
    return all;
}

void StabilityTest::typeCounts()
{
    auto* entry = new NumberEntry(tr("Stability test"), {}, tr("Use these counts"), this);
    QStringList keys;
    for (int i = 1; i <= band().counts; ++i) {
        keys << 'd' + QString::number(i) << 'm' + QString::number(i);
        entry->add(tr("Density %1").arg(i), tr("counts"), typed(keys[keys.size() - 2]));
        entry->add(tr("Moisture %1").arg(i), tr("counts"), typed(keys.back()));
    }
    int first = 0;
    while (first + 1 < keys.size() && !typed(keys[first]).isEmpty())
        ++first;
    open(entry, keys);
    entry->goTo(first);
}

void StabilityTest::judgeEntry(NumberEntry& entry)
{
    const auto density = counts("d").size(), moisture = counts("m").size(), asked = static_cast<std::size_t>(band().counts);
    entry.setNotYet(density < asked || moisture < asked ? tr("%1 of %2 typed").arg(density + moisture).arg(2 * asked) : QString());
}

void StabilityTest::show(const char* stem, QString& text, LimitFigure& line) const
{
    const auto& check = *stem == 'd' ? m_density : m_moisture;
    text.clear();
    line = {};
    if (!check)
        return;
    text = tr("s %1 of mean %2: ratio %3, %4").arg(figureText(check->sd, 1), figureText(check->mean, 0), figureText(check->scaledRatio, 2),
                                               check->verdict == method::BandVerdict::Inside      ? tr("inside")
                                               : check->verdict == method::BandVerdict::AboveBand ? tr("above: noise") : tr("below: not random"));
    LimitReading reading;
    reading.low = band().low;
    reading.high = band().high;
    reading.value = check->scaledRatio;
    const LimitScale scale = LimitScale::around(reading, band().high - band().low);
    line = scale.place(reading, check->verdict == method::BandVerdict::Inside ? Mark::Pass : Mark::Fail);
    addLabel(line, scale.fraction(band().low), figureText(band().low, 2), LabelKind::Plain);
    addLabel(line, scale.fraction(band().high), figureText(band().high, 2), LabelKind::Plain);
}

void StabilityTest::refreshHistory()
{
    std::vector<Row> rows;
    const auto records = m_session->store().records({.subject = {}, .kind = "stability-test"});
    for (std::size_t i = records ? records->size() : 0; i-- > 0;) {
        const auto& record = (*records)[i];
        if (book::textAt(record.body, "gauge") != m_subject)
            continue;
        const bool passed = record.body.value("passed", false);
        Row row = Row::ofWords(localText(record.at, record.offsetMinutes, QStringLiteral("MMM d, h:mm")),
                               tr("ratio %1 density, %2 moisture").arg(shownDecimal(book::textAt(record.body, "density_ratio")), shownDecimal(book::textAt(record.body, "moisture_ratio"))),
                               passed ? tr("passed") : tr("failed"));
        row.mark = row.wordMark = passed ? Mark::Pass : Mark::Fail;
        rows.push_back(std::move(row));
    }
    m_history.setRows(std::move(rows));
}

void StabilityTest::refresh()
{
    const auto& gauges = m_session->snapshot().gauges;
    const auto gauge = std::find_if(gauges.begin(), gauges.end(), [&](const auto& g) { return g.id == m_subject; });
    const Band limits = band();
    m_title = tr("Stability test");
    m_context = gauge == gauges.end() ? QString() : QString::fromStdString(gauge->name);
    refreshHistory();
    m_bandText = tr("Ratio %1 to %2 (%3)").arg(figureText(limits.low, 2), figureText(limits.high, 2), limits.source);
    const auto density = counts("d"), moisture = counts("m");
    m_typedText = tr("%1 of %2").arg(std::min(density.size(), moisture.size())).arg(limits.counts);
    const auto factor = prescale();
    const bool whole = density.size() == static_cast<std::size_t>(limits.counts) && moisture.size() == density.size();
    m_density.reset();
    m_moisture.reset();
    if (whole && factor) {
        if (const auto check = method::stabilityCheck(density, *factor, limits.low, limits.high))
            m_density = *check;
        if (const auto check = method::stabilityCheck(moisture, *factor, limits.low, limits.high))
            m_moisture = *check;
    }
    show("d", m_densityText, m_densityLine);
    show("m", m_moistureText, m_moistureLine);
    const bool judged = m_density && m_moisture;
    const bool passed = judged && m_density->verdict == method::BandVerdict::Inside && m_moisture->verdict == method::BandVerdict::Inside;
    m_mark = !judged ? Mark::Nothing : passed ? Mark::Pass : Mark::Fail;
    m_word = !judged ? QString() : passed ? tr("Stable") : tr("Not stable");
    m_follows = !judged ? QString() : passed ? tr("Take the standard counts again.")
                                             : tr("One failure: repeat it, a sound gauge fails now and then. Two in a row: out of service, to the maker or a licensed service.");
    m_sealText = passed ? tr("Seal the stability test") : tr("Seal the failed test");
    m_sealNotYet = gauge == gauges.end() ? tr("Seal: the book has no gauge yet")
                   : !factor             ? tr("Seal: type the gauge's prescale in its papers first")
                   : !judged             ? tr("Seal: type %1 counts of each").arg(limits.counts)
                                         : QString();
}

Result<std::vector<book::Entry>> StabilityTest::entries() const
{
    if (!m_density || !m_moisture)
        return refused("A stability test needs all its single counts.");
    const auto texts = [&](const char* stem) {
        book::Body list = book::Body::array();
        for (int i = 1; i <= band().counts; ++i)
            list.push_back(typed(QLatin1String(stem) + QString::number(i)).toStdString());
        return list;
    };
    book::Entry entry;
    entry.kind = "stability-test";
    entry.subject = Session::newId();
    entry.body = {{"gauge", m_subject}, {"density_counts", texts("d")}, {"moisture_counts", texts("m")}, {"seconds", kSeconds},
                  {"low", reportedText(band().low, 3, TieRule::HalfEven)}, {"high", reportedText(band().high, 3, TieRule::HalfEven)},
                  {"density_ratio", reportedText(m_density->scaledRatio, 3, TieRule::HalfEven)}, {"moisture_ratio", reportedText(m_moisture->scaledRatio, 3, TieRule::HalfEven)},
                  {"passed", m_mark == Mark::Pass}};
    return std::vector{entry};
}

}  // namespace groundcount::view
