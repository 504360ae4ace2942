#include "method/accept/evaluation_rules.h"
#include "method/rules/rule_set.h"

#include <QTest>
#include <nlohmann/json.hpp>

using namespace groundcount::method;

namespace {

std::string edited(const QString& from, const QString& to)
{
    QString text = QString::fromStdString(toJson(neutralRules()));
    text.replace(text.indexOf(from), from.size(), to);
    return text.toStdString();
}

}  // namespace

class RuleSetTest : public QObject {
    Q_OBJECT
private slots:
    void fillsASealedRuleSetOfTheFirstVersionAndNoOther()
    {
        nlohmann::json old = nlohmann::json::parse(toJson(neutralRules()));
        old["name"] = "sealed in the first version";
        for (const auto key : laterKeys())
            for (const char* section : {"limits", "choices"})
                old[section].erase(std::string(key));
        QVERIFY(!ruleSetFromJson(old.dump()));  // what a person writes is never filled
        const auto filled = ruleSetFromSealed(old.dump());
        QVERIFY2(filled, filled ? "" : filled.error().what.c_str());
        QCOMPARE(filled->name, std::string("sealed in the first version"));
        QCOMPARE(filled->limits.size(), neutralRules().limits.size());
        QCOMPARE(filled->limits.at("standard.age").value.text(), neutralRules().limits.at("standard.age").value.text());
        QCOMPARE(filled->limits.at("standard.age").note, std::string("added after this rule set was sealed"));
        QCOMPARE(filled->choices.at("pwl.tie").word, neutralRules().choices.at("pwl.tie").word);
        old["limits"].erase("clearance.people");
        QVERIFY(!ruleSetFromSealed(old.dump()));
        QVERIFY(!ruleSetFromSealed("no json"));
    }

    void neutralRulesHaveEveryKeyWithSourceAndMark()
    {
        const auto& rules = neutralRules();
        QCOMPARE(rules.limits.size(), limitKeys().size());
        QCOMPARE(rules.choices.size(), choiceKeys().size());
        for (const auto& [key, limit] : rules.limits) {
            QVERIFY2(!limit.source.empty(), key.c_str());
            QVERIFY2(limit.mark != Mark::Memory || limit.verified.empty(), key.c_str());
        }
        QVERIFY(evaluationRules(rules));
    }

    void writingAndReadingIsTheSame()
    {
        const auto again = ruleSetFromJson(toJson(neutralRules()));
        QVERIFY(again);
        QCOMPARE(toJson(*again), toJson(neutralRules()));
    }

    void refusals_data()
    {
        QTest::addColumn<QString>("from");
        QTest::addColumn<QString>("to");
        QTest::addColumn<QString>("part");
        QTest::newRow("misspelt limit") << "clearance.people" << "clearance.peeple" << "clearance.peeple";
        QTest::newRow("unit") << "\"unit\": \"in\"" << "\"unit\": \"furlong\"" << "furlong";
        QTest::newRow("number") << "\"value\": \"24\"" << "\"value\": \"two\"" << "two";
        QTest::newRow("negative") << "\"value\": \"24\"" << "\"value\": \"-24\"" << "0 or more";
        QTest::newRow("word") << "unrounded dry density" << "guessed" << "guessed";
        QTest::newRow("density unit") << "\"density_unit\": \"lb/ft3\"" << "\"density_unit\": \"stone\"" << "stone";
    }
    void refusals()
    {
        QFETCH(QString, from);
        QFETCH(QString, to);
        QFETCH(QString, part);
        const auto rules = ruleSetFromJson(edited(from, to));
        QVERIFY(!rules);
        QVERIFY2(QString::fromStdString(rules.error().what).contains(part), rules.error().what.c_str());
    }

    void aMissingLimitIsNamed()
    {
        RuleSet rules = neutralRules();
        rules.limits.erase("count.seconds");
        const auto e = evaluationRules(rules);
        QVERIFY(!e);
        QVERIFY(e.error().what.find("count.seconds") != std::string::npos);
    }

    void aRangeThatHoldsNothingIsRefused()
    {
        RuleSet rules = neutralRules();
        rules.limits["range.wet_density_least"].value = *groundcount::Decimal::parse("250");
        QVERIFY(!evaluationRules(rules));
        rules = neutralRules();
        rules.limits["range.count_most"].value = *groundcount::Decimal::parse("10000001");
        QVERIFY(!evaluationRules(rules));
    }

    void percentLimitWithAbsoluteRuleIsRefused()
    {
        RuleSet rules = neutralRules();
        rules.choices["second_reading.kind"].word = "absolute";
        QVERIFY(!evaluationRules(rules));
    }
};

QTEST_GUILESS_MAIN(RuleSetTest)
#include "rule_set_test.moc"
