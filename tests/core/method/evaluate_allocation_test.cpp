#include "method/accept/evaluate.h"
#include "method/rules/rule_set.h"

#include <QTest>
#include <atomic>
#include <cstdlib>
#include <new>

using namespace groundcount;
using namespace groundcount::method;

namespace {

std::atomic<long> allocations{0};

void* counted(std::size_t size)
{
    ++allocations;
    if (void* p = std::malloc(size ? size : 1))
        return p;
    throw std::bad_alloc();
}

}  // namespace

void* operator new(std::size_t size) { return counted(size); }
void* operator new[](std::size_t size) { return counted(size); }
void operator delete(void* p) noexcept { std::free(p); }
void operator delete[](void* p) noexcept { std::free(p); }
void operator delete(void* p, std::size_t) noexcept { std::free(p); }
void operator delete[](void* p, std::size_t) noexcept { std::free(p); }

namespace {

/// Every optional part of the chain in use: two readings, trench, bias, correction, coarse part, saturation, uncertainty.
TestInput wholeChain()
{
    TestInput in;
    in.gauge.densityStandard = 2853;
    in.gauge.moistureStandard = 671;
    in.gauge.densityCurve = DensityCurve{Length::inches(8), 12.0, 0.019 / kKgPerM3PerLbPerFt3, 0.05, WetDensity::lbPerFt3(90), WetDensity::lbPerFt3(160)};
    in.gauge.waterCurve = WaterCurve{0.012, 0.0165 / kKgPerM3PerLbPerFt3, WaterDensity::lbPerFt3(0), WaterDensity::lbPerFt3(30)};
    in.gauge.trenchDensity = TrenchCounts{2861, 2853};
    in.gauge.trenchMoisture = TrenchCounts{690, 671};
    in.gauge.densityBiasKgPerM3 = 6;
    in.gauge.moistureCorrection = MoistureCorrection{MoistureVariant::DryBasis, -0.004};
    in.readings[0] = {ReadingForm::Counts, 2600, 150, {}, {}, {}};
    in.readings[1] = {ReadingForm::Counts, 2615, 151, {}, {}, {}};
    in.readingCount = 2;
    in.sample = SampleInput{3200, 480, SplitSieve::ThreeQuarterInch};
    in.reference.maximum = DryDensity::lbPerFt3(118.6);
    in.reference.optimum = WaterContent::percent(12.8);
    in.reference.maximumStandardUncertainty = DryDensity::lbPerFt3(0.9);
    in.reference.coarseGravity = 2.62;
    in.reference.coarseWater = WaterContent::percent(1.8);
    in.reference.solidsGravity = 2.68;
    in.requirement.minimumPct = *Decimal::parse("95");
    in.requirement.maximumPct = *Decimal::parse("110");
    in.requirement.window = {WindowKind::PercentOfOptimum, *Decimal::parse("-20"), *Decimal::parse("20")};
    return in;
}

}  // namespace

class EvaluateAllocationTest : public QObject {
    Q_OBJECT
private slots:
    /// A refusal writes its sentence; were the counter blind, it would not see that one either.
    void theCounterSeesTheSentenceOfARefusal()
    {
        const auto rules = evaluationRules(neutralRules()).value();
        auto in = wholeChain();
        in.readings[0].densityCount = 0;
        const long before = allocations;
        const bool worked = evaluate(in, rules).has_value();
        const long after = allocations;
        QVERIFY(!worked);
        QVERIFY(after > before);
    }

    void evaluatingATestAllocatesNothing()
    {
        const auto rules = evaluationRules(neutralRules()).value();
        auto in = wholeChain();
        (void)evaluate(in, rules);
        long wholes = 0;
        const long before = allocations;
        for (int i = 0; i < 1000; ++i) {
            in.readings[0].densityCount = 2600 + i % 10;
            const auto e = evaluate(in, rules);
            wholes += e && e->coarseCorrected && e->saturationPct && e->expandedUncertaintyPct && e->readingCount == 2;
        }
        const long after = allocations;
        QCOMPARE(wholes, 1000L);
        QCOMPARE(after - before, 0L);
    }

    void everyFormOfReadingAllocatesNothing()
    {
        const auto rules = evaluationRules(neutralRules()).value();
        for (const auto form : {ReadingForm::WaterDensity, ReadingForm::WaterContent}) {
            auto in = wholeChain();
            in.readingCount = 1;
            in.readings[0] = {form, 0, 0, WetDensity::lbPerFt3(131.2), WaterDensity::lbPerFt3(14.1), WaterContent::percent(12.1)};
            const long before = allocations;
            const bool worked = evaluate(in, rules).has_value();
            const long after = allocations;
            QVERIFY(worked);
            QCOMPARE(after - before, 0L);
        }
    }
};

QTEST_GUILESS_MAIN(EvaluateAllocationTest)
#include "evaluate_allocation_test.moc"
