#include "method/accept/evaluate.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

/// Fixed seed and own scaling: ISO C++ leaves the algorithms of its distributions open.
class Draws {
public:
    double between(double low, double high) { return low + (high - low) * (static_cast<double>(m_random() >> 11) * 0x1p-53); }
    bool oneIn(unsigned n) { return m_random() % n == 0; }

private:
    std::mt19937_64 m_random{20261127};
};

ReadingInput reading(Draws& draw, ReadingForm form)
{
    ReadingInput r;
    r.form = form;
    r.densityCount = std::round(draw.between(1, 20000));
    r.moistureCount = std::round(draw.between(1, 4000));
    r.wet = WetDensity::lbPerFt3(draw.between(60, 180));
    r.water = WaterDensity::lbPerFt3(draw.between(0, 40));
    r.content = WaterContent::percent(draw.between(0, 60));
    return r;
}

MoistureCorrection correction(Draws& draw)
{
    const auto variant = static_cast<MoistureVariant>(static_cast<int>(draw.between(0, 5)));
    switch (variant) {
    case MoistureVariant::DryBasis:
    case MoistureVariant::WetBasis: return {variant, draw.between(-0.03, 0.03)};
    case MoistureVariant::MassOffset: return {variant, draw.between(-40, 40)};
    case MoistureVariant::PercentOffset: return {variant, draw.between(-3, 3)};
    case MoistureVariant::Ratio: break;
    }
    return {variant, draw.between(0.7, 1.4)};
}

/// Any test that may lawfully be typed, whole ranges and every part of the chain.
TestInput any(Draws& draw)
{
    TestInput in;
    const auto form = static_cast<ReadingForm>(static_cast<int>(draw.between(0, 3)));
    in.readings[0] = reading(draw, form);
    in.readings[1] = in.readings[0];
    in.readings[1].densityCount = std::round(in.readings[0].densityCount * draw.between(0.97, 1.03));
    in.readingCount = draw.oneIn(2) ? 2 : 1;
    in.gauge.densityStandard = std::round(draw.between(500, 5000));
    in.gauge.moistureStandard = std::round(draw.between(200, 1200));
    const double b = draw.between(0.008, 0.037) / kKgPerM3PerLbPerFt3;
    in.gauge.densityCurve = DensityCurve{Length::inches(8), draw.between(2, 30), b, draw.between(-0.1, 0.2), WetDensity::lbPerFt3(100), WetDensity::lbPerFt3(150)};
    in.gauge.waterCurve = WaterCurve{draw.between(-0.02, 0.05), draw.between(0.005, 0.04) / kKgPerM3PerLbPerFt3, {}, WaterDensity::lbPerFt3(30)};
    if (form == ReadingForm::Counts && draw.oneIn(3))
        in.gauge.trenchMoisture = TrenchCounts{in.gauge.moistureStandard + std::round(draw.between(-20, 80)), in.gauge.moistureStandard};
    in.gauge.densityBiasKgPerM3 = draw.oneIn(2) ? draw.between(-60, 60) : 0;
    if (draw.oneIn(2))
        in.gauge.moistureCorrection = correction(draw);
    if (draw.oneIn(2)) {
        const double total = std::round(draw.between(500, 9000));
        in.sample = SampleInput{total, std::round(total * draw.between(0, 0.6)), draw.oneIn(2) ? SplitSieve::No4 : SplitSieve::ThreeQuarterInch};
        in.reference.coarseGravity = draw.between(2.2, 3);
    }
    if (draw.oneIn(3))
        in.otherContent = WaterContent::percent(draw.between(0, 60));
    in.reference.maximum = DryDensity::lbPerFt3(draw.between(60, 160));
    in.reference.optimum = WaterContent::percent(draw.between(2, 40));
    in.reference.maximumStandardUncertainty = DryDensity::lbPerFt3(draw.between(0, 3));
    if (draw.oneIn(2))
        in.reference.solidsGravity = draw.between(2.5, 2.9);
    in.requirement.minimumPct = *Decimal::parse("95");
    in.requirement.window = {WindowKind::Points, *Decimal::parse("-2"), *Decimal::parse("2")};
    return in;
}

bool isWhole(const Evaluation& e)
{
    const double figures[] = {e.wet.kgPerM3(), e.dry.kgPerM3(), e.maximum.kgPerM3(), e.compaction.percent(), e.reported.wet, e.reported.dry, e.reported.maximum};
    for (const double value : figures)
        if (!std::isfinite(value) || value <= 0)
            return false;
    const double others[] = {e.water.kgPerM3(), e.content.percent(), e.optimum.percent(), e.coarse.percent(), e.reported.water, e.reported.contentPct, e.saturationPct.value_or(0),
                             e.expandedUncertaintyPct.value_or(0), e.expandedContentPct};
    for (const double value : others)
        if (!std::isfinite(value) || value < 0)
            return false;
    return e.dry.kgPerM3() <= e.wet.kgPerM3();
}

/// A sentence for a person: not empty, ends like one, no figure that is none.
bool isSentence(const std::string& what)
{
    return what.size() > 20 && (what.back() == '.' || what.back() == '?') && what.find("nan") == std::string::npos && what.find("inf") == std::string::npos;
}

constexpr int kTests = 200000;

}  // namespace

/// What physics says of every test that may be typed, over 200 thousand of them: fixed seed, no case picked by hand.
class EvaluatePropertyTest : public QObject {
    Q_OBJECT
private slots:
    void aTestIsRefusedInASentenceOrWhole()
    {
        Draws draw;
        const auto rules = evaluationRules(neutralRules()).value();
        int whole = 0;
        for (int i = 0; i < kTests; ++i) {
            const auto e = evaluate(any(draw), rules);
            if (!e) {
                QVERIFY2(isSentence(e.error().what), e.error().what.c_str());
                continue;
            }
            ++whole;
            QVERIFY2(isWhole(*e), qPrintable(QString::number(i)));
            QCOMPARE(e->outcome == Outcome::Pass, e->densityMet && e->moistureMet);
        }
        qInfo("%d of %d whole, the others refused", whole, kTests);
        QVERIFY(whole > kTests / 10 && whole < kTests * 9 / 10);
    }

    void denserReadingsAndALowerMaximumNeverLowerThePercent()
    {
        Draws draw;
        const auto rules = evaluationRules(neutralRules()).value();
        int compared = 0;
        for (int i = 0; i < kTests; ++i) {
            TestInput in = any(draw);
            in.readingCount = 1;
            const auto before = evaluate(in, rules);
            TestInput lower = in, denser = in;
            lower.reference.maximum = DryDensity::kgPerM3(in.reference.maximum.kgPerM3() * 0.97);
            denser.readings[0].densityCount = std::max(1.0, std::round(in.readings[0].densityCount * 0.97));  // fewer counts come through denser soil
            denser.readings[0].wet = WetDensity::kgPerM3(in.readings[0].wet.kgPerM3() * 1.03);
            const auto byLower = evaluate(lower, rules), byDenser = evaluate(denser, rules);
            if (before && byLower)
                QVERIFY2(byLower->reported.compactionPct >= before->reported.compactionPct, qPrintable(QString::number(i)));
            // a ratio or the water's own figure goes with the wet density only where the content does not rise with it
            const bool isPlain = !in.gauge.moistureCorrection || in.otherContent;
            if (before && byDenser && isPlain) {
                QVERIFY2(byDenser->reported.dry >= before->reported.dry, qPrintable(QString::number(i)));
                ++compared;
            }
        }
        qInfo("%d pairs compared", compared);
        QVERIFY(compared > 5000);
    }

    void wetterReadingsNeverRaiseTheDryDensity()
    {
        Draws draw;
        const auto rules = evaluationRules(neutralRules()).value();
        int compared = 0;
        for (int i = 0; i < kTests; ++i) {
            TestInput in = any(draw);
            in.readingCount = 1;
            TestInput wetter = in;
            wetter.readings[0].moistureCount = std::round(in.readings[0].moistureCount * 1.05) + 1;
            wetter.readings[0].water = WaterDensity::kgPerM3(in.readings[0].water.kgPerM3() * 1.05);
            wetter.readings[0].content = WaterContent::percent(in.readings[0].content.percent() * 1.05);
            if (in.otherContent)
                wetter.otherContent = WaterContent::percent(in.otherContent->percent() * 1.05);
            const auto before = evaluate(in, rules), after = evaluate(wetter, rules);
            if (!before || !after)
                continue;
            ++compared;
            QVERIFY2(after->reported.dry <= before->reported.dry && after->content >= before->content, qPrintable(QString::number(i)));
        }
        QVERIFY(compared > 5000);
    }
};

QTEST_GUILESS_MAIN(EvaluatePropertyTest)
#include "evaluate_property_test.moc"
