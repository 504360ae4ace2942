// Percent within limits of a lot, and one day's random sites in a large area, one core.
#include "method/accept/draw.h"
#include "method/accept/pwl.h"

#include <benchmark/benchmark.h>
#include <cmath>
#include <numbers>
#include <random>
#include <vector>

using namespace groundcount::method;

namespace {

/// Invented lots of percent compaction, `n` results each, around a limit of 95.
std::vector<std::vector<double>> lots(std::size_t n)
{
    std::mt19937_64 random(20260612);
    std::normal_distribution<double> mean(96, 1), spread(0, 1.2);
    std::vector<std::vector<double>> all(1024, std::vector<double>(n));
    for (auto& lot : all) {
        const double m = mean(random);
        for (double& result : lot)
            result = std::round((m + spread(random)) * 10) / 10;
    }
    return all;
}

/// From n results to percent within a lower limit, exact beta form.
void percentWithinLimits(benchmark::State& state)
{
    const auto all = lots(static_cast<std::size_t>(state.range(0)));
    std::size_t i = 0;
    double sum = 0;
    for (auto _ : state) {
        sum += lotPwl(all[i++ & 1023], {95.0, {}}, {})->pwl;
        benchmark::DoNotOptimize(sum);
    }
    state.SetItemsProcessed(state.iterations());
}

/// A fill with a ragged edge of 10 thousand corners, about 2000 ft across.
PlanArea raggedArea()
{
    std::mt19937_64 random(20260613);
    std::uniform_real_distribution<double> radius(900, 1000);
    PlanArea area;
    for (int i = 0; i < 10'000; ++i) {
        const double angle = 2 * std::numbers::pi * i / 10'000, r = radius(random);
        PlanPoint corner{};
        corner.eastFt = 10'000 + r * std::sin(angle);
        corner.northFt = 20'000 + r * std::cos(angle);
        area.ring.push_back(corner);
    }
    return area;
}

/// 100 random sites at least 5 ft inside.
void sitesOfADay(benchmark::State& state)
{
    const auto area = raggedArea();
    std::uint64_t seed = 1;
    for (auto _ : state) {
        const auto draw = drawInArea(area, 100, 5, seed++);
        if (!draw || draw->sites.size() != 100)
            state.SkipWithError("no 100 sites");
        benchmark::DoNotOptimize(draw);
    }
    state.SetItemsProcessed(state.iterations() * 100);
}

}  // namespace

BENCHMARK(percentWithinLimits)->Arg(5)->Arg(10)->Arg(30);
BENCHMARK(sitesOfADay)->Unit(benchmark::kMillisecond);
BENCHMARK_MAIN();
