#include "view/standard_history.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/figure_text.h"

#include <algorithm>
#include <limits>

namespace groundcount::view {
namespace {

constexpr std::size_t kShownSets = 14;  // as many as stay apart at 360 px
constexpr std::size_t kReadSets = 20;   // more than any rule set averages
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

std::optional<double> numberAt(const book::Body& body, const char* key)
{
    const auto decimal = Decimal::parse(book::textAt(body, key));
    return decimal ? std::optional(decimal->value()) : std::nullopt;
}

std::vector<std::string> textsAt(const book::Body& body, const char* key)
{
    std::vector<std::string> texts;
    const auto list = body.find(key);
    if (list != body.end() && list->is_array())
        for (const auto& text : *list)
            if (text.is_string())
                texts.push_back(text.get<std::string>());
    return texts;
}

const char* stem(method::Channel channel)
{
    return channel == method::Channel::Density ? "density" : "moisture";
}

}  // namespace

StandardHistory historyOf(Session& session, const std::string& gauge)
{
    StandardHistory history;
    const auto& sets = session.snapshot().standardCounts;
    for (auto set = sets.rbegin(); set != sets.rend() && history.density.size() < kReadSets; ++set) {
        if (set->gauge != gauge)
            continue;
        const bool isRefusedToday = !set->accepted && history.density.empty() && session.isToday(set->at, set->offsetMinutes);
        if (!set->accepted && !isRefusedToday)
            continue;
        const auto record = session.store().record(set->hash);
        if (!record)
            continue;
        const std::string density = book::textAt(record->body, "density_count");
        const std::string moisture = book::textAt(record->body, "moisture_count");
        if (set->accepted) {
            history.density.insert(history.density.begin(), density);
            history.moisture.insert(history.moisture.begin(), moisture);
        } else if (++history.refusedToday == 1) {
            history.refusedDensity = density;
            history.refusedMoisture = moisture;
        }
    }
    for (const auto& row : session.snapshot().gauges) {
        if (row.id != gauge)
            continue;
        if (const auto record = session.store().record(row.hash))
            history.prescale = numberAt(record->body, "prescale");
        if (row.calibrationHash.empty())
            continue;
        if (const auto record = session.store().record(row.calibrationHash)) {
            history.calibrationDensity = numberAt(record->body, "density_standard");
            history.calibrationMoisture = numberAt(record->body, "moisture_standard");
            const QDate on = QDate::fromString(QString::fromStdString(row.calibratedOn), Qt::ISODate);
            history.daysSinceCalibration = static_cast<double>(on.daysTo(session.now().toOffsetFromUtc(session.offsetMinutes() * 60).date()));
        }
    }
    return history;
}

Result<method::StandardVerdict> judgeAgainst(const Session& session, const StandardHistory& history, method::Channel channel, double today,
                                             const std::vector<std::string>& before)
{
    std::vector<double> earlier;
    for (auto text = before.rbegin(); text != before.rend(); ++text)
        if (const auto decimal = Decimal::parse(*text))
            earlier.push_back(decimal->value());
    const bool isDensity = channel == method::Channel::Density;
    method::StandardInput input;
    input.today = today;
    input.prescale = history.prescale;
    input.calibrationCount = isDensity ? history.calibrationDensity : history.calibrationMoisture;
    input.daysSinceCalibration = history.daysSinceCalibration;
    if (const auto& first = isDensity ? history.refusedDensity : history.refusedMoisture)
        if (const auto decimal = Decimal::parse(*first))
            input.firstToday = decimal->value();
    // Without an earlier count, the one at calibration stands in for it.
    if (earlier.empty() && input.calibrationCount)
        earlier.push_back(*input.calibrationCount);
    input.earlier = earlier;
    return method::judgeStandard(session.ruleSet(), channel, input);
}

std::vector<PlottedCount> plottedSets(Session& session, const std::string& gauge, const StandardHistory& history, method::Channel channel)
{
    std::vector<PlottedCount> sets;
    StandardHistory then = history;
    then.refusedDensity.reset();
    then.refusedMoisture.reset();
    const auto& rows = session.snapshot().standardCounts;
    for (auto set = rows.rbegin(); set != rows.rend() && sets.size() < kShownSets; ++set) {
        if (set->gauge != gauge)
            continue;
        const auto record = session.store().record(set->hash);
        if (!record)
            continue;
        PlottedCount plotted;
        plotted.day = localText(set->at, set->offsetMinutes, QStringLiteral("MMM d"));
        plotted.value = channel == method::Channel::Density ? set->density : set->moisture;
        plotted.accepted = set->accepted;
        plotted.isToday = session.isToday(set->at, set->offsetMinutes);
        plotted.base = plotted.lower = plotted.upper = kNone;
        const auto before = textsAt(record->body, (std::string(stem(channel)) + "_before").c_str());
        if (const auto verdict = judgeAgainst(session, then, channel, plotted.value, before)) {
            plotted.base = verdict->base;
            plotted.lower = verdict->lower;
            plotted.upper = verdict->upper;
        }
        sets.insert(sets.begin(), std::move(plotted));
    }
    return sets;
}

}  // namespace groundcount::view
