#pragma once

#include "book/lot_comparison.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

/// The plots of a lot as plain values: what screen and paper draw with one painter.
namespace groundcount::book {

/// Results in the order of testing against the requirement and the control limits, with their moving mean.
struct LotChart {
    struct Point {
        double value = 0;
        TestState state = TestState::Pass;
        std::string number, test;  ///< test: id
        int lift = 0;
        bool isFlagged = false;    ///< beyond the control limits, or the outlier
    };
    std::vector<Point> points;
    std::optional<double> needLow, needHigh;       ///< requirement; beyond it is hatched
    std::optional<double> lower, centre, upper;    ///< control limits
    std::vector<std::pair<std::size_t, double>> moving;  ///< at the last of its results, the mean
    double bottom = 0, top = 1, step = 1;          ///< axis: whole multiples of the step
    std::string unit;                              ///< "%", "points"
};

/// Tests of the lots along one line, station across and lift upward.
struct LineProfile {
    struct Point {
        double stationFt = 0;
        int lift = 0;
        TestState state = TestState::Pass;
        std::string number;
    };
    struct Range {
        std::string name;
        double beginFt = 0, endFt = 0;
        bool isChosen = false;
    };
    double beginFt = 0, endFt = 0;
    std::string unit;             ///< "" for stations in feet; "ft" or "m" for distances along a side, in this unit everywhere above
    double azimuthDeg = 0;        ///< of that side from grid north
    int lowest = 0, highest = 0;  ///< lifts
    std::vector<Range> lots;      ///< by their begin
    std::vector<Point> points;    ///< not void, with a station; retests after what they answer
};

/// The profile along the line of a lot; empty (no lots) when the lot has no stations. @param lot id @source [DESIGN]
LineProfile lineProfile(std::span<const LotRow> lots, std::span<const LiftRow> lifts, std::span<const TestRow> tests, const std::string& lot);

/// Axis for values: 4 to 8 steps of 1, 2 or 5 times a power of ten, with room beyond the extremes. @source [DESIGN]
void fitAxis(LotChart& chart);

/// Control chart of percent compaction: its tests, limits and those outside; requirement of the lot. @param k of the moving mean
LotChart compactionChart(const ChartOfTests& chart, const method::PwlLimits& need, int k);
/// Water content less optimum against the lot's window in percentage points (none for another kind of window).
LotChart moistureChart(const MoistureTrend& trend, const LotRow& lot, int k);

}  // namespace groundcount::book
