#pragma once

#include "method/explain/explain_steps.h"

#include <QTest>

/// Whether the steps are whole: each named, with a value; each formula with a source; the last value as given.
inline void explains(const std::vector<groundcount::method::ExplainStep>& steps, const QString& lastValue)
{
    QVERIFY(!steps.empty());
    for (const auto& step : steps) {
        QVERIFY(!step.name.empty());
        QVERIFY2(!step.value.empty(), step.name.c_str());
        QVERIFY2(step.formula.empty() || !step.source.empty(), step.name.c_str());
        QVERIFY2(step.numbers.find("nan") == std::string::npos && step.value.find("nan") == std::string::npos, step.name.c_str());
    }
    QCOMPARE(QString::fromStdString(steps.back().value), lastValue);
}

/// Whether a step of that name has that value.
inline void explainsStep(const std::vector<groundcount::method::ExplainStep>& steps, const char* name, const QString& value)
{
    for (const auto& step : steps) {
        if (step.name != name)
            continue;
        QCOMPARE(QString::fromStdString(step.value), value);
        return;
    }
    QFAIL(name);
}

/// The number as Qt writes it, with the real minus sign: a second way to the text.
inline QString places(double value, int count)
{
    return QString::number(value, 'f', count).replace('-', QChar(0x2212));
}

inline QString sixDigits(double value)
{
    return QString::number(value, 'g', 6).replace('-', QChar(0x2212));
}
