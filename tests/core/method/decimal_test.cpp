#include "method/decimal.h"

#include <QTest>
#include <boost/multiprecision/cpp_int.hpp>
#include <cmath>
#include <limits>
#include <random>

using namespace groundcount;
using Big = boost::multiprecision::cpp_int;

namespace {

Big tenTo(int n)
{
    Big p = 1;
    for (int i = 0; i < n; ++i)
        p *= 10;
    return p;
}

/// n/d to the nearest, by whole numbers of any size and the remainder's distance to both neighbours.
Big nearest(const Big& n, const Big& d, TieRule rule)
{
    const Big magnitude = n < 0 ? Big(-n) : n;
    Big q = magnitude / d;
    const Big below = magnitude - q * d;
    const Big above = d - below;
    if (above < below || (above == below && (rule == TieRule::HalfUp || q % 2 == 1)))
        ++q;
    return n < 0 ? Big(-q) : q;
}

Decimal decimal(const char* text)
{
    return Decimal::parse(text).value();
}

std::string withPlaces(const Big& digits, int places)
{
    std::string s = Big(digits < 0 ? Big(-digits) : digits).str();
    if (static_cast<int>(s.size()) <= places)
        s.insert(0, static_cast<std::size_t>(places) + 1 - s.size(), '0');
    if (places > 0)
        s.insert(s.size() - static_cast<std::size_t>(places), 1, '.');
    return digits < 0 ? "-" + s : s;
}

}  // namespace

/// The 64-bit roundings against whole numbers of any size (Boost.Multiprecision), ties included.
class DecimalTest : public QObject {
    Q_OBJECT
private slots:
    void roundsAsWholeNumbersOfAnySizeDo()
    {
        std::mt19937_64 random(7);
        long ties = 0;
        for (int i = 0; i < 200000; ++i) {
            const int places = static_cast<int>(random() % 16);
            const int size = static_cast<int>(random() % 18) + 1;
            long long digits = static_cast<long long>(random() % static_cast<unsigned long long>(tenTo(size)));
            const int to = static_cast<int>(random() % 16);
            if (to < places && i % 3 == 0) {  // a third are ties: ...5 and zeros below the last kept place
                const auto unit = static_cast<long long>(tenTo(places - to));
                digits = digits / unit * unit + unit / 2;
                if (digits >= static_cast<long long>(tenTo(18)))
                    continue;
                ++ties;
            }
            if (random() % 2)
                digits = -digits;
            const Decimal value = Decimal::parse(withPlaces(digits, places)).value();
            for (const auto rule : {TieRule::HalfEven, TieRule::HalfUp}) {
                const std::string got = value.rounded(to, rule).text();
                const Big want = to < places ? nearest(digits, tenTo(places - to), rule) : Big(digits) * tenTo(to - places);
                if (want >= tenTo(18) || want <= -tenTo(18))
                    continue;  // such a widening keeps the value as it is
                QCOMPARE(got, withPlaces(want, to));
            }
        }
        QVERIFY(ties > 10000);
    }

    void reportsAsWholeNumbersOfAnySizeDo()
    {
        std::mt19937_64 random(11);
        std::uniform_real_distribution<double> spread(-1e8, 1e8), usual(0, 200);
        for (int i = 0; i < 200000; ++i) {
            double value = i % 2 ? usual(random) : spread(random);
            if (i % 5 == 0)
                value = std::round(value * 20) / 20;  // half of them lie on a tie of one place
            const auto snapped = static_cast<long long>(std::llround(value * 1e9));
            QCOMPARE(nearestWhole(value * 1e9), snapped);
            for (int places = -6; places <= 8; ++places)
                for (const auto rule : {TieRule::HalfEven, TieRule::HalfUp}) {
                    const Big want = nearest(snapped, tenTo(9 - places), rule);
                    const double expected = places >= 0 ? static_cast<double>(want) / static_cast<double>(tenTo(places)) : static_cast<double>(Big(want * tenTo(-places)));
                    QCOMPARE(roundReported(value, places, rule), expected);
                }
        }
    }

    void wholesAreThoseOfTheLibrary()
    {
        for (const double value : {0.49999999999999994, 0.5, -0.5, 1.5, 2.5, -2.5, 4503599627370495.5, 4503599627370497.5, 9007199254740993.0, -0.0, 8.9e18})
            QCOMPARE(nearestWhole(value), std::llround(value));
    }

    void multiplesAreTheNearest_data()
    {
        QTest::addColumn<QString>("value");
        QTest::addColumn<QString>("unit");
        QTest::addColumn<QString>("even");
        QTest::addColumn<QString>("up");
        // [E29-TXT] rounding to a multiple: value/unit to the nearest whole, times unit; numbers made here
        QTest::newRow("fifty below") << "1024" << "50" << "1000" << "1000";
        QTest::newRow("fifty tie") << "1025" << "50" << "1000" << "1050";
        QTest::newRow("fifty odd tie") << "1075" << "50" << "1100" << "1100";
        QTest::newRow("five tie") << "97.5" << "5" << "100" << "100";
        QTest::newRow("five even tie") << "92.5" << "5" << "90" << "95";
        QTest::newRow("half") << "12.74" << "0.5" << "12.5" << "12.5";
        QTest::newRow("half tie") << "12.75" << "0.5" << "13.0" << "13.0";
        QTest::newRow("half even tie") << "12.25" << "0.5" << "12.0" << "12.5";
        QTest::newRow("negative") << "-12.25" << "0.5" << "-12.0" << "-12.5";
        QTest::newRow("twentieth") << "0.125" << "0.05" << "0.10" << "0.15";
    }
    void multiplesAreTheNearest()
    {
        QFETCH(QString, value);
        QFETCH(QString, unit);
        QFETCH(QString, even);
        QFETCH(QString, up);
        const Decimal v = decimal(value.toLatin1()), u = decimal(unit.toLatin1());
        QCOMPARE(QString::fromStdString(v.roundedTo(u, TieRule::HalfEven)->text()), even);
        QCOMPARE(QString::fromStdString(v.roundedTo(u, TieRule::HalfUp)->text()), up);
        const int places = u.places() > 0 ? u.places() : unit == "50" ? -1 : 0;
        for (const auto& [tie, want] : {std::pair{TieRule::HalfEven, even}, {TieRule::HalfUp, up}}) {
            const Rounding rounding{places, tie, 5};
            QCOMPARE(roundReported(v.value(), rounding), decimal(want.toLatin1()).value());
            QCOMPARE(QString::fromStdString(reportedText(v.value(), rounding)), want);
        }
    }

    void aUnitOfNothingIsRefused()
    {
        for (const char* unit : {"0", "-5"}) {
            const auto rounded = decimal("97").roundedTo(decimal(unit), TieRule::HalfEven);
            QVERIFY(!rounded);
            QVERIFY(rounded.error().what.find(unit) != std::string::npos);
        }
        QVERIFY(!decimal("999999999999999999").roundedTo(decimal("500000000000000000"), TieRule::HalfUp));
    }

    void comparesAcrossPlaces()
    {
        QVERIFY(decimal("95") == decimal("95.0"));
        QVERIFY(decimal("95") < decimal("95.000000000000001"));
        QVERIFY(decimal("-0.1") < decimal("0"));
    }
};

QTEST_GUILESS_MAIN(DecimalTest)
#include "decimal_test.moc"
