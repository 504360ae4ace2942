#include "book/canonical.h"

#include <QtTest>
#include <bit>
#include <cmath>
#include <limits>

using groundcount::book::canonicalNumber;
using groundcount::book::canonicalText;
using groundcount::book::readJson;

/// RFC 8785, sections 3.2.2, 3.2.3 and appendix B. The examples below were written down from memory of the RFC (it could
/// not be fetched here); the numbers are checked a second time against ECMA-262's rule, through a round trip.
class CanonicalTest : public QObject {
    Q_OBJECT

private slots:
    void ordersByUtf16CodeUnits();
    void writesTheStringsAndLiteralsExample();
    void writesAppendixBNumbers_data();
    void writesAppendixBNumbers();
    void everyNumberComesBackBitForBit();
    void whatIsWrittenIsWrittenAgainTheSame();
    void refusesWhatHasNoCanonicalForm();
    void refusesDoubledNamesAndDeepNesting();
    void textThatIsReadGivesTheSameBytesAgain();
};

void CanonicalTest::ordersByUtf16CodeUnits()
{
    // RFC 8785, 3.2.3: the expected order of the values is the one printed there.
    const auto json = readJson("{\"\\u20ac\":\"Euro Sign\",\"\\r\":\"Carriage Return\",\"\\ufb33\":\"Hebrew Letter Dalet With Dagesh\","
                               "\"1\":\"One\",\"\\ud83d\\ude00\":\"Emoji: Grinning Face\",\"\\u0080\":\"Control\","
                               "\"\\u00f6\":\"Latin Small Letter O With Diaeresis\"}");
    QVERIFY(json);
    const auto text = canonicalText(*json);
    QVERIFY(text);
    const QByteArray bytes = QByteArray::fromStdString(*text);
    const QList<QByteArray> order{"Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign",
                                  "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"};
    qsizetype last = -1;
    for (const QByteArray& name : order) {
        const qsizetype at = bytes.indexOf(name);
        QVERIFY2(at > last, name.constData());
        last = at;
    }
}

void CanonicalTest::writesTheStringsAndLiteralsExample()
{
    // RFC 8785, 3.2.2 and 3.2.4
    const auto json = readJson("{\"numbers\": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],"
                               "\"string\": \"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\","
                               "\"literals\": [null, true, false]}");
    QVERIFY(json);
    QCOMPARE(QByteArray::fromStdString(canonicalText(*json).value()),
             QByteArray("{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                        "\"string\":\"\xE2\x82\xAC$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}"));
}

void CanonicalTest::writesAppendixBNumbers_data()
{
    QTest::addColumn<quint64>("bits");
    QTest::addColumn<QByteArray>("text");
    const auto row = [](quint64 bits, const char* text) { QTest::newRow(text) << bits << QByteArray(text); };
    row(0x0000000000000000, "0");
    QTest::newRow("minus zero") << quint64(0x8000000000000000) << QByteArray("0");
    row(0x0000000000000001, "5e-324");
    row(0x8000000000000001, "-5e-324");
    row(0x7fefffffffffffff, "1.7976931348623157e+308");
    row(0xffefffffffffffff, "-1.7976931348623157e+308");
    row(0x4340000000000000, "9007199254740992");
    row(0xc340000000000000, "-9007199254740992");
    row(0x4430000000000000, "295147905179352830000");
    row(0x44b52d02c7e14af5, "9.999999999999997e+22");
    row(0x44b52d02c7e14af6, "1e+23");
    row(0x44b52d02c7e14af7, "1.0000000000000001e+23");
    row(0x444b1ae4d6e2ef4e, "999999999999999700000");
    row(0x444b1ae4d6e2ef4f, "999999999999999900000");
    row(0x444b1ae4d6e2ef50, "1e+21");
    row(0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7");
    row(0x3eb0c6f7a0b5ed8d, "0.000001");
    row(0x41b3de4355555553, "333333333.3333332");
    row(0x41b3de4355555554, "333333333.33333325");
    row(0x41b3de4355555555, "333333333.3333333");
    row(0x41b3de4355555556, "333333333.3333334");
    row(0x41b3de4355555557, "333333333.33333343");
    row(0xbecbf647612f3696, "-0.0000033333333333333333");
    row(0x43143ff3c1cb0959, "1424953923781206.2");
}

void CanonicalTest::writesAppendixBNumbers()
{
    QFETCH(quint64, bits);
    QFETCH(QByteArray, text);
    QCOMPARE(QByteArray::fromStdString(canonicalNumber(std::bit_cast<double>(bits)).value()), text);
}

void CanonicalTest::everyNumberComesBackBitForBit()
{
    quint64 state = 0x9E3779B97F4A7C15;
    int tried = 0;
    for (int i = 0; i < 50000; ++i) {
        state ^= state << 13U;
        state ^= state >> 7U;
        state ^= state << 17U;
        const double value = std::bit_cast<double>(state);
        if (!std::isfinite(value))
            continue;
        ++tried;
        const auto text = canonicalNumber(value).value();
        QCOMPARE(std::bit_cast<quint64>(std::strtod(text.c_str(), nullptr)), state);
    }
    QVERIFY(tried > 49000);
}

void CanonicalTest::whatIsWrittenIsWrittenAgainTheSame()
{
    // Doubles without a fraction are written as digits, which a reader takes for integers: found by the fuzzer with 1e17.
    for (const double value : {1e15, 9007199254740992.0, 1e16, 1e17, 1234567890123456789.0, 9223372036854775808.0, 1e19,
                               18446744073709551616.0, 1e20, 999999999999999934464.0, 1e21, 1e22, 0.1, -0.0}) {
        for (const double either : {value, -value}) {
            const auto once = canonicalText(nlohmann::json{either}).value();
            const auto read = readJson(once);
            QVERIFY(read);
            const auto again = canonicalText(*read);
            QVERIFY2(again, once.c_str());
            QCOMPARE(*again, once);
        }
    }
}

void CanonicalTest::refusesWhatHasNoCanonicalForm()
{
    QVERIFY(!canonicalNumber(std::numeric_limits<double>::quiet_NaN()));
    QVERIFY(!canonicalText(std::numeric_limits<double>::infinity()));
    QVERIFY(!canonicalText(nlohmann::json{{"a", 9007199254740993LL}}));
    QVERIFY(!canonicalText(nlohmann::json{{"a", -9007199254740993LL}}));
    QVERIFY(!canonicalText(nlohmann::json{{"a", std::numeric_limits<std::int64_t>::max()}}));
    QVERIFY(!canonicalText(nlohmann::json{{"a", std::numeric_limits<std::uint64_t>::max()}}));
    QVERIFY(canonicalText(nlohmann::json{{"a", -9007199254740991LL}}));
    for (const char* bad : {"\x80", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "a\xE2\x82"}) {
        QVERIFY(!canonicalText(std::string(bad)));
        QVERIFY(!canonicalText(nlohmann::json{{bad, 1}}));
    }
    QVERIFY(!canonicalText(nlohmann::json::binary({1, 2})));
}

void CanonicalTest::refusesDoubledNamesAndDeepNesting()
{
    const auto doubled = readJson("{\"a\":{\"b\":1,\"b\":2}}");
    QVERIFY(!doubled);
    QVERIFY(doubled.error().what.find("\"b\" stands twice") != std::string::npos);
    QVERIFY(readJson("[{\"b\":1},{\"b\":2}]"));
    QVERIFY(!readJson(std::string(100000, '[')));
    QVERIFY(!readJson(std::string(80, '[') + std::string(80, ']')));
    QVERIFY(readJson(std::string(60, '[') + std::string(60, ']')));
    for (const char* bad : {"", "{", "{\"a\":NaN}", "{\"a\":1}x", "{'a':1}", "\"\xFF\"", "{\"a\":1e999}"})
        QVERIFY2(!readJson(bad), bad);
}

void CanonicalTest::textThatIsReadGivesTheSameBytesAgain()
{
    const std::string canonical = "{\"a\":[1,-2,0.5,\"\\u0001\\u001f\"],\"b\":{},\"c\":\"\xF0\x9F\x98\x80\"}";
    QCOMPARE(canonicalText(readJson(canonical).value()).value(), canonical);
}

QTEST_GUILESS_MAIN(CanonicalTest)
#include "canonical_test.moc"
