// Counts to verdict, whole chain with coarse correction and uncertainty, one core. Prints Google Benchmark's JSON or table.
#include "method/accept/evaluate.h"
#include "method/rules/rule_set.h"

#include <benchmark/benchmark.h>
#include <random>
#include <vector>

using namespace groundcount;
using namespace groundcount::method;

namespace {

/// Invented tests of one invented gauge, spread over the range that fill gives.
std::vector<TestInput> tests(std::size_t n)
{
    std::mt19937_64 random(20260609);
    std::uniform_real_distribution<double> density(2200, 3400), moisture(110, 190), retained(200, 700);
    TestInput one;
    one.gauge.densityStandard = 2853;
    one.gauge.moistureStandard = 671;
    one.gauge.densityCurve = DensityCurve{Length::inches(8), 12.0, 0.019 / kKgPerM3PerLbPerFt3, 0.05, WetDensity::lbPerFt3(90), WetDensity::lbPerFt3(160)};
    one.gauge.waterCurve = WaterCurve{0.012, 0.0165 / kKgPerM3PerLbPerFt3, WaterDensity::lbPerFt3(0), WaterDensity::lbPerFt3(30)};
    one.reference.maximum = DryDensity::lbPerFt3(118.6);
    one.reference.optimum = WaterContent::percent(12.8);
    one.reference.maximumStandardUncertainty = DryDensity::lbPerFt3(0.9);
    one.reference.coarseGravity = 2.62;
    one.reference.coarseWater = WaterContent::percent(1.8);
    one.requirement.minimumPct = *Decimal::parse("95");
    one.requirement.window = {WindowKind::Points, *Decimal::parse("-2"), *Decimal::parse("2")};
    std::vector<TestInput> all(n, one);
    for (auto& t : all) {
        t.readings[0] = {ReadingForm::Counts, std::round(density(random)), std::round(moisture(random)), {}, {}, {}};
        t.sample = SampleInput{3200, std::round(retained(random)), SplitSieve::ThreeQuarterInch};
    }
    return all;
}

void countsToVerdict(benchmark::State& state)
{
    const auto all = tests(4096);
    const auto rules = *evaluationRules(neutralRules());
    std::size_t i = 0;
    long passed = 0;
    for (auto _ : state) {
        const auto e = evaluate(all[i++ & 4095], rules);
        passed += e && e->outcome == Outcome::Pass;
        benchmark::DoNotOptimize(passed);
    }
    state.SetItemsProcessed(state.iterations());
}

}  // namespace

BENCHMARK(countsToVerdict);
BENCHMARK_MAIN();
