// groundcount_values distributions|geodesics|alignments: what core computes, one value a line, "name<TAB>arguments...<TAB>value", for a
// general-purpose library to compute again (reference_scipy.py, reference_geodsolve.py, reference_curves.py).
#include "book/lot_statistics.h"
#include "gis/geodesy.h"
#include "method/accept/control_chart.h"
#include "method/accept/distributions.h"
#include "method/accept/outlier.h"
#include "method/accept/pwl.h"
#include "method/gauge/stability.h"
#include "method/rules/rule_set.h"
#include "method/site/alignment.h"

#include <cmath>
#include <cstdio>
#include <cstring>
#include <initializer_list>
#include <random>
#include <string>
#include <vector>

using namespace groundcount;
using namespace groundcount::method;

namespace {

constexpr double kPerDegree = 0.017453292519943295;

void print(const char* name, std::initializer_list<double> arguments, double value)
{
    std::printf("%s", name);
    for (const double a : arguments)
        std::printf("\t%.17g", a);
    std::printf("\t%.17g\n", value);
}

void lots()
{
    for (const int n : {3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 30, 50, 100, 200, 1000})
        for (double q = -3.2; q < 3.25; q += 0.1)
            print("percent_within", {q, double(n)}, percentWithin(q, n).value());
    for (const int n : {3, 4, 5, 8, 15, 50, 200})
        for (double percent = 1; percent < 100; percent += 1)
            print("quality_index", {percent, double(n)}, qualityIndexFor(percent, n).value());
    for (double percent = 0.5; percent < 100; percent += 0.5)
        print("normal_index", {percent}, qualityIndexForManyResults(percent).value());
}

void tests()
{
    for (const double df : {1.0, 2.0, 3.0, 5.0, 8.0, 12.5, 17.776, 30.0, 120.0, 1000.0}) {
        for (const double upper : {0.5, 0.25, 0.1, 0.05, 0.025, 0.01, 0.005, 0.001, 0.0001})
            print("student_upper", {upper, df}, studentUpper(upper, df));
        for (double t = -6; t <= 6; t += 0.75)
            print("student_two_sided", {t, df}, studentTwoSidedP(t, df));
        for (const double other : {1.0, 2.0, 4.0, 7.0, 15.0, 60.0}) {
            for (const double upper : {0.5, 0.1, 0.05, 0.025, 0.01, 0.005})
                print("fisher_upper", {upper, df, other}, fisherUpper(upper, df, other));
            for (const double f : {0.01, 0.2, 0.8, 1.0, 1.7, 4.0, 25.0})
                print("fisher_cdf", {f, df, other}, fisherCdf(f, df, other));
        }
    }
    for (double z = -6; z <= 6; z += 0.25)
        print("normal_cdf", {z}, normalCdf(z));
}

void chiSquareAndOutliers()
{
    for (const int n : {2, 3, 5, 10, 20, 31, 32, 100}) {
        for (const double confidence : {0.5, 0.8, 0.9, 0.95, 0.99, 0.999}) {
            const auto band = stabilityBand(n, confidence).value();
            print("stability_low", {double(n), confidence}, band.low);
            print("stability_high", {double(n), confidence}, band.high);
        }
        for (const double low : {0.0, 0.5, 0.75})
            for (const double high : {1.1, 1.25, 1.6})
                print("chance_outside", {double(n), low, high}, chanceOutside(n, low, high).value());
    }
    for (int n = 3; n <= 100; n += n < 30 ? 1 : 7)
        for (const double alpha : {0.1, 0.05, 0.025, 0.01, 0.001}) {
            print("outlier_one", {double(n), alpha}, outlierCritical(n, alpha, Sides::One).value());
            print("outlier_two", {double(n), alpha}, outlierCritical(n, alpha, Sides::Two).value());
        }
    for (int n = 2; n <= 25; ++n) {
        const auto factors = chartFactors(n).value();
        print("chart_d2", {double(n)}, factors.d2);
        print("chart_d3", {double(n)}, factors.d3);
    }
}

void printList(const char* name, const std::vector<double>& arguments, double value)
{
    std::printf("%s", name);
    for (const double a : arguments)
        std::printf("\t%.17g", a);
    std::printf("\t%.17g\n", value);
}

/// Lots of a made-up programme through the code of pages and groundbook: limit and results, then the figure.
void programme()
{
    std::mt19937_64 random(20260612);
    auto rules = neutralRules();
    const auto exact = book::statisticsRules(rules).value();
    rules.choices["pwl.mean"].word = "0.1";
    rules.choices["pwl.sd"].word = "0.01";
    rules.choices["pwl.q"].word = "0.01";
    const auto chained = book::statisticsRules(rules).value();
    for (int i = 0; i < 120; ++i) {
        book::LotRow lot;
        lot.id = "lot";
        lot.minimumPctText = i % 2 ? "95" : "92.5";
        std::vector<book::TestRow> tests(static_cast<std::size_t>(3 + i % 28));
        std::vector<double> list{i % 2 ? 95 : 92.5};
        for (std::size_t n = 0; n < tests.size(); ++n) {
            // a sum of four evenly spread numbers: ISO C++ leaves the normal law's own algorithm open
            double pct = 93 + (i % 7) * 0.6;
            for (int k = 0; k < 4; ++k)
                pct += static_cast<double>(random() >> 11) * 0x1p-53 * 1.8;
            char text[16];
            std::snprintf(text, sizeof text, "%.1f", pct);
            tests[n].id = "t" + std::to_string(n);
            tests[n].lot = "lot";
            tests[n].state = std::stod(text) < list[0] ? book::TestState::Fail : book::TestState::Pass;
            tests[n].compactionPct = text;
            char at[40];
            std::snprintf(at, sizeof at, "2026-06-09T12:%02d:00.000Z", static_cast<int>(n));
            tests[n].startedAt = at;
            list.push_back(std::stod(text));
        }
        const auto s = book::lotStatistics(lot, {}, tests, 0.3048, exact).value();
        printList("programme_mean", list, *s.mean.value);
        printList("programme_sd", list, s.spread.value->sd);
        printList("programme_pwl", list, s.pwl.value->pwl);
        printList("programme_outlier", list, s.outlier.value->g);
        printList("programme_pwl_chain", list, book::lotStatistics(lot, {}, tests, 0.3048, chained)->pwl.value->pwl);
        if (!s.movingMeans.empty())
            printList("programme_last_moving_mean", list, s.movingMeans.back());
        printList("programme_chart_upper", list, book::controlCharts(tests, "lot")->front().chart.value->values.upper);
    }
}

/// Lines of a job's size and of the globe's, on two ellipsoids, none near the antipodes only.
void geodesics()
{
    std::mt19937_64 random(20260611);
    const auto between = [&](double low, double high) { return low + (high - low) * (static_cast<double>(random() >> 11) * 0x1p-53); };
    for (const char* name : {"WGS 84", "Clarke 1866"}) {
        const gis::Ellipsoid ellipsoid = gis::ellipsoidNamed(name).value();
        for (int i = 0; i < 40; ++i) {
            const bool local = i % 2 == 0;
            gis::LatLon from, to;
            from.latitudeDeg = between(-80, 80);
            from.longitudeDeg = between(-180, 180);
            to.latitudeDeg = local ? from.latitudeDeg + between(-0.02, 0.02) : between(-80, 80);
            to.longitudeDeg = local ? from.longitudeDeg + between(-0.02, 0.02) : between(-180, 180);
            const auto line = gis::geodesicBetween(ellipsoid, from, to).value();
            const auto end = gis::geodesicFrom(ellipsoid, from, line.azimuth1Deg, line.lengthM * 0.75).value();
            std::printf("%.17g\t%.17g", ellipsoid.semiMajorM, ellipsoid.inverseFlattening);
            for (const double value : {from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg, line.azimuth1Deg, line.azimuth2Deg, line.lengthM,
                                       end.latitudeDeg, end.longitudeDeg})
                std::printf("\t%.17g", value);
            std::printf("\n");
        }
    }
}

void printPoint(const char* word, PlanPoint p, std::initializer_list<double> more)
{
    std::printf("%s\t%.17g\t%.17g", word, p.northFt, p.eastFt);
    for (const double value : more)
        std::printf("\t%.17g", value);
    std::printf("\n");
}

/// Lines through points of intersection with curves of every size, then places beside them: north, east, station, offset to the right.
void alignments()
{
    std::mt19937_64 random(20260613);
    const auto between = [&](double low, double high) { return low + (high - low) * (static_cast<double>(random() >> 11) * 0x1p-53); };
    for (int i = 0; i < 30; ++i) {
        PlanPoint at{between(0, 2000), between(0, 2000)};
        const PlanPoint begin = at;
        double heading = between(0, 360);
        std::vector<IntersectionPoint> curves;
        for (int k = 0; k < 3; ++k) {
            at = {at.northFt + 600 * std::cos(heading * kPerDegree), at.eastFt + 600 * std::sin(heading * kPerDegree)};
            curves.push_back({at, between(80, 350)});
            heading += (k % 2 == 0 ? 1 : -1) * between(4, 75);
        }
        const PlanPoint end{at.northFt + 600 * std::cos(heading * kPerDegree), at.eastFt + 600 * std::sin(heading * kPerDegree)};
        const auto line = Alignment::fromIntersections(begin, curves, end, 1000, {}).value();
        printPoint("begin", begin, {});
        for (const auto& curve : curves)
            printPoint("curve", curve.point, {curve.radiusFt});
        printPoint("end", end, {line.lengthFt()});
        for (int n = 0; n < 40; ++n) {
            const auto place = line.at(1000 + line.lengthFt() * between(0.001, 0.999), between(-60, 60)).value();
            const auto found = line.locate(place.northFt, place.eastFt).value();
            printPoint("place", place, {found.station.feet, found.offsetRightFt});
        }
    }
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc == 2 && std::strcmp(argv[1], "distributions") == 0) {
        lots();
        tests();
        chiSquareAndOutliers();
        programme();
        return 0;
    }
    if (argc == 2 && std::strcmp(argv[1], "geodesics") == 0) {
        geodesics();
        return 0;
    }
    if (argc == 2 && std::strcmp(argv[1], "alignments") == 0) {
        alignments();
        return 0;
    }
    std::fprintf(stderr, "Usage: groundcount_values distributions|geodesics|alignments\n");
    return 2;
}
