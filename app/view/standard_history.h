#pragma once

#include "method/gauge/standard_rule.h"
#include "view/count_plot.h"
#include "view/session.h"

#include <optional>
#include <string>
#include <vector>

namespace groundcount::view {

/// What the book knows of a gauge's standard counts.
struct StandardHistory {
    std::vector<std::string> density, moisture;  ///< accepted counts, oldest first, as sealed
    std::optional<std::string> refusedDensity, refusedMoisture;  ///< of the last refused set today with none accepted after it
    int refusedToday = 0;                        ///< refused sets today since the last accepted one
    std::optional<double> prescale;              ///< of the gauge's record
    std::optional<double> calibrationDensity, calibrationMoisture;
    double daysSinceCalibration = 0;

    const std::vector<std::string>& of(method::Channel channel) const { return channel == method::Channel::Density ? density : moisture; }
};

StandardHistory historyOf(Session& session, const std::string& gauge);

/// Judges a count by the rule set in force against the counts `before`, newest first.
Result<method::StandardVerdict> judgeAgainst(const Session& session, const StandardHistory& history, method::Channel channel, double today,
                                             const std::vector<std::string>& before);

/// The newest sets of the gauge as the chart takes them, with the limits that the rule in force gives for the counts each was
/// judged on.
std::vector<PlottedCount> plottedSets(Session& session, const std::string& gauge, const StandardHistory& history, method::Channel channel);

}  // namespace groundcount::view
