// Coverage of a lift with 10 thousand tests and a ragged edge, one core: the limit is 1 s.
#include "gis/coverage.h"

#include <benchmark/benchmark.h>
#include <cmath>
#include <numbers>
#include <random>

using namespace groundcount;

namespace {

void coverageOfALift(benchmark::State& state)
{
    std::mt19937_64 random(20260614);
    std::uniform_real_distribution<double> radius(900, 1000), part(0, 1);
    method::PlanArea ground;
    const auto at = [](double angle, double r) { return method::PlanPoint{2'101'234 + r * std::cos(angle), 6'512'345 + r * std::sin(angle)}; };
    for (int i = 0; i < 500; ++i)
        ground.ring.push_back(at(2 * std::numbers::pi * i / 500, radius(random)));
    ground.holes.push_back({at(0, 60), at(1.5, 50), at(3, 60), at(4.5, 50)});
    std::vector<gis::CoverageSite> sites;
    for (int i = 0; i < state.range(0); ++i)
        sites.push_back({std::to_string(i), at(2 * std::numbers::pi * part(random), 900 * std::sqrt(part(random))), gis::SiteAnswer::Pass});
    for (auto _ : state) {
        const auto coverage = gis::coverageOf(ground, sites, static_cast<int>(sites.size()), Length::surveyFeet(1));
        if (!coverage)
            state.SkipWithError(coverage.error().what.c_str());
        benchmark::DoNotOptimize(coverage);
    }
    state.SetItemsProcessed(state.iterations() * state.range(0));
}

}  // namespace

BENCHMARK(coverageOfALift)->Arg(1'000)->Arg(10'000)->Unit(benchmark::kMillisecond);
BENCHMARK_MAIN();
