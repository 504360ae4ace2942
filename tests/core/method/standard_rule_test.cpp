#include "method/gauge/standard_rule.h"

#include <QTest>

using namespace groundcount;
using namespace groundcount::method;

namespace {

const std::vector<double> kEarlier{2858, 2851, 2854, 2849};  // mean 2853

Limit of(const char* value, const char* unit)
{
    Limit limit;
    limit.value = Decimal::parse(value).value();
    limit.unit = unit;
    limit.source = "COMMON";
    return limit;
}

RuleSet ruled(const char* word)
{
    RuleSet rules = neutralRules();
    rules.choices["standard.rule"].word = word;
    for (const char* key : {"standard.pair_density", "standard.pair_moisture"})
        rules.limits[key] = of("1", "%");
    for (const char* key : {"standard.established_density", "standard.established_moisture"})
        rules.limits[key] = of("2", "%");
    rules.limits["standard.z"] = of("1.96", "sd");
    rules.limits["standard.half_life_density"] = of("10975.556", "d");   // [HL-BO] Cs-137
    rules.limits["standard.half_life_moisture"] = of("157753.472", "d"); // [HL-BO] Am-241
    return rules;
}

StandardInput with(double today)
{
    StandardInput input;
    input.earlier = kEarlier;
    input.today = today;
    return input;
}

}  // namespace

/// The rule that a rule set names, on invented counts; the functions below have their own published figures.
class StandardRuleTest : public QObject {
    Q_OBJECT
private slots:
    void percentComparesWithTheMeanAndTakesTheLimitInclusive()
    {
        // 1 % of 2853 is 28.53
        const auto holds = judgeStandard(ruled("percent"), Channel::Density, with(2881.53));
        QVERIFY(holds && holds->isAccepted);
        QCOMPARE(holds->base, 2853.0);
        QCOMPARE(holds->upper, 2881.53);
        QCOMPARE(holds->lower, 2824.47);
        const auto fails = judgeStandard(ruled("percent"), Channel::Density, with(2881.54));
        QVERIFY(fails && !fails->isAccepted && !fails->asksForSecond);
        QVERIFY(judgeStandard(ruled("percent"), Channel::Moisture, with(2881.54))->isAccepted);  // 2 %
    }

    void twoStepAsksForASecondAndThenDecides()
    {
        const auto first = judgeStandard(ruled("two-step"), Channel::Density, with(2880));  // 1.09 % from 2849
        QVERIFY(first && !first->isAccepted && first->asksForSecond);
        QCOMPARE(first->base, 2849.0);
        StandardInput again = with(2875);
        again.firstToday = 2880;
        const auto second = judgeStandard(ruled("two-step"), Channel::Density, again);
        QVERIFY(second && second->isAccepted);
        again.today = 2840;  // 1.4 % from the first
        QVERIFY(!judgeStandard(ruled("two-step"), Channel::Density, again)->isAccepted);
    }

    void statisticalNeedsThePrescale()
    {
        QVERIFY(!judgeStandard(ruled("statistical"), Channel::Density, with(2860)));
        StandardInput input = with(2853 + 26.1);  // 1.96 sqrt(2853/16) = 26.17
        input.prescale = 16;
        QVERIFY(judgeStandard(ruled("statistical"), Channel::Density, input)->isAccepted);
        input.today = 2853 + 26.3;
        QVERIFY(!judgeStandard(ruled("statistical"), Channel::Density, input)->isAccepted);
    }

    void decayBandNeedsTheCountAtCalibration()
    {
        QVERIFY(!judgeStandard(ruled("decay band"), Channel::Density, with(2860)));
        StandardInput input = with(2840);
        input.calibrationCount = 2900;
        input.daysSinceCalibration = 10975.556;  // one half-life: half of it is left
        const auto half = judgeStandard(ruled("decay band"), Channel::Density, input);
        QVERIFY(half && !half->isAccepted);
        QVERIFY(std::fabs(half->base - 1450) < 1e-9);
        input.daysSinceCalibration = 365;  // 2900 exp(-ln2 365/10975.556) = 2834.1, 1 % is 28.3
        QVERIFY(judgeStandard(ruled("decay band"), Channel::Density, input)->isAccepted);
    }

    void aLimitThatTheRuleNeedsIsNamedWhenMissing()
    {
        RuleSet rules = neutralRules();
        rules.choices["standard.rule"].word = "two-step";
        const auto verdict = judgeStandard(rules, Channel::Moisture, with(2853));
        QVERIFY(!verdict);
        QVERIFY2(verdict.error().what.find("standard.pair_moisture") != std::string::npos, verdict.error().what.c_str());
        rules = ruled("statistical");
        QVERIFY(!judgeStandard(rules, Channel::Density, {{}, 2853, {}, 16, {}, 0}));
    }

    void aRuleSetWithOptionalLimitsIsReadAndWritten()
    {
        const auto again = ruleSetFromJson(toJson(ruled("two-step")));
        QVERIFY(again);
        QCOMPARE(again->limits.size(), ruled("two-step").limits.size());
        QCOMPARE(toJson(*again), toJson(ruled("two-step")));
    }
};

QTEST_GUILESS_MAIN(StandardRuleTest)
#include "standard_rule_test.moc"
