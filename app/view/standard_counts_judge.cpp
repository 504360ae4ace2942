#include "view/standard_counts.h"

#include "book/store.h"
#include "method/spread.h"
#include "method/uncertainty/compaction.h"
#include "view/figure_text.h"
#include "view/numbered_key.h"

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

using method::Channel;

QString percentText(double percent)
{
    return figureText(percent, percent == std::floor(percent) ? 0 : 1);
}

}  // namespace

QString StandardCounts::keyOf(Channel channel, int number)
{
    return numberedKey(channel == Channel::Density ? "d" : "m", number);
}

std::vector<double> StandardCounts::typedCounts(Channel channel) const
{
    std::vector<double> counts;
    for (int i = 1; i <= countsAsked(); ++i)
        if (const auto count = number(keyOf(channel, i)))
            counts.push_back(*count);
    return counts;
}

void StandardCounts::setCountsDoubts(NumberEntry& entry) const
{
    for (const Channel channel : {Channel::Density, Channel::Moisture}) {
        const auto counts = typedCounts(channel);
        const auto judged = judge(channel);
        for (int i = 1; i <= countsAsked(); ++i) {
            auto* field = entry.field(2 * (i - 1) + (channel == Channel::Density ? 0 : 1));
            const auto count = number(keyOf(channel, i));
            QString doubt;
            const double base = judged.verdict ? judged.verdict->base : counts.size() > 1 ? counts.front() : 0;
            // Half or twice what is expected is a slip of the finger or of the field, not scatter.
            if (count && base > 0 && (*count > 2 * base || *count < base / 2) && field != entry.field(entry.at()))
                doubt = tr("%1 is far from the %2 expected. Is it the other count, or a figure too many?").arg(figureText(*count, 0), figureText(base, 0));
            field->setDoubt(doubt);
        }
    }
}

void StandardCounts::judgeEntry(NumberEntry& entry)
{
    if (entry.title() == tr("Newest first")) {
        entry.setNotYet(entry.typedAt(0).isEmpty() || entry.typedAt(1).isEmpty() ? tr("Type at least the newest pair") : QString());
        return;
    }
    setCountsDoubts(entry);
    const auto density = typedCounts(Channel::Density).size(), moisture = typedCounts(Channel::Moisture).size();
    const auto asked = static_cast<std::size_t>(countsAsked());
    entry.setNote(m_word.isEmpty() ? QString() : tr("Density %1, moisture %2").arg(m_densityText, m_moistureText), m_word, m_mark);
    entry.setNotYet(density < asked || moisture < asked ? tr("%1 of %2 typed").arg(density + moisture).arg(2 * asked) : QString());
}

StandardCounts::Judged StandardCounts::judge(Channel channel) const
{
    Judged judged;
    const auto& accepted = m_history.of(channel);
    const auto limit = m_session->ruleSet().limits.find("standard.earlier");
    const std::size_t most = limit == m_session->ruleSet().limits.end() ? kLogCounts : static_cast<std::size_t>(limit->second.value.value());
    for (auto text = accepted.rbegin(); text != accepted.rend() && judged.before.size() < most; ++text)
        judged.before.push_back(*text);
    for (int i = 1; accepted.empty() && i <= kLogCounts; ++i)
        if (number("log." + keyOf(channel, i)))
            judged.before.push_back(typed("log." + keyOf(channel, i)).toStdString());
    const auto counts = typedCounts(channel);
    if (counts.size() < static_cast<std::size_t>(countsAsked()))
        return judged;
    const auto mean = method::meanOf(counts);
    if (!mean)
        return judged;
    judged.today = countsAsked() == 1 ? typed(keyOf(channel, 1)).toStdString() : reportedText(*mean, 1, TieRule::HalfEven);
    const auto verdict = judgeAgainst(*m_session, m_history, channel, Decimal::parse(judged.today)->value(), judged.before);
    if (verdict)
        judged.verdict = *verdict;
    else
        judged.refusal = QString::fromStdString(verdict.error().what);
    return judged;
}

QString StandardCounts::spreadText(const Judged& judged, Channel channel) const
{
    if (!judged.verdict)
        return {};
    if (!m_history.prescale)
        return tr("Expected spread not known: the gauge's prescale is not in its record.");
    const double minutes = howIndex() == 1 ? kAutomaticSeconds / 60.0 : static_cast<double>(typedCounts(channel).size()) * kSecondsPerCount / 60.0;
    const auto sd = method::countDeviationPercent(judged.verdict->base, *m_history.prescale, minutes);
    if (!sd)
        return {};
    const QString plain = tr("Counting alone scatters by %1 % (one standard deviation).").arg(figureText(*sd, 2));
    // Below two standard deviations a sound gauge is refused often.
    return judged.verdict->limitPercent < 2 * *sd ? plain + ' ' + tr("The limit is less than twice that: a sound gauge will fail it often.") : plain;
}

void StandardCounts::showChannel(const Judged& judged, Channel channel)
{
    const bool isDensity = channel == Channel::Density;
    QString figure, text;
    LimitFigure line;
    if (!judged.today.empty())
        figure = figureText(Decimal::parse(judged.today)->value(), 0);
    if (const auto& v = judged.verdict) {
        text = tr("%1 % from %2, ±%3 %").arg(signedText(v->deviationPercent, 1), figureText(v->base, 0), percentText(v->limitPercent));
        LimitReading reading;
        reading.low = v->lower;
        reading.high = v->upper;
        reading.value = Decimal::parse(judged.today)->value();
        const LimitScale scale = LimitScale::around(reading, v->upper - v->lower);
        line = scale.place(reading, v->isAccepted ? Mark::Pass : Mark::Fail);
        addLabel(line, scale.fraction(v->lower), figureText(v->lower, 0), LabelKind::Plain);
        addLabel(line, scale.fraction(v->upper), figureText(v->upper, 0), LabelKind::Plain);
    } else {
        text = judged.refusal;
    }
    (isDensity ? m_densityFigure : m_moistureFigure) = figure;
    (isDensity ? m_densityText : m_moistureText) = text;
    (isDensity ? m_densityLine : m_moistureLine) = line;
    (isDensity ? m_densitySpread : m_moistureSpread) = spreadText(judged, channel);
}

}  // namespace groundcount::view
