#include "method/soil/oversize.h"

#include <QTest>
#include <cmath>
#include <random>

using namespace groundcount;
using namespace groundcount::method;

namespace {

struct Draw {
    std::mt19937_64 source{20260105};
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(source); }
};

const auto kWater = DensityOfWater::lbPerFt3(62.4);

}  // namespace

class OversizeTest : public QObject {
    Q_OBJECT
private slots:
    void fineToTotalAndBackIsTheSameDensity()
    {
        Draw draw;
        for (int i = 0; i < 20000; ++i) {
            const auto fine = DryDensity::lbPerFt3(draw.between(80, 145));
            const auto part = CoarsePart::percent(draw.between(0, 60));
            const double gravity = draw.between(2.4, 3.0);
            const auto total = totalFromFine(fine, part, gravity, kWater);
            QVERIFY(*total >= fine);  // stones are denser than the soil between them
            QVERIFY(total->kgPerM3() <= gravity * kWater.kgPerM3());
            QVERIFY(std::fabs(fineFromTotal(*total, part, gravity, kWater)->kgPerM3() - fine.kgPerM3()) < 1e-8);
            const auto w = WaterContent::percent(draw.between(3, 25));
            const auto coarse = WaterContent::percent(draw.between(0, 3));
            QVERIFY(std::fabs(fineWaterFromTotal(*totalWaterFromFine(w, part, coarse), part, coarse)->percent() - w.percent()) < 1e-9);
        }
    }

    void theTotalIsTheMassOverTheVolumeOfBothParts()
    {
        const double dryFine = 70, dryCoarse = 30;  // kg of a hundred
        const double volume = dryFine / 1850.0 + dryCoarse / (2.65 * 1000.0);
        const auto total = totalFromFine(DryDensity::kgPerM3(1850), CoarsePart::percent(30), 2.65, DensityOfWater::kgPerM3(1000));
        QVERIFY(std::fabs(total->kgPerM3() - 100.0 / volume) < 1e-9);
    }

    void moistFormsGiveTheSamePart()
    {
        Draw draw;
        for (int i = 0; i < 5000; ++i) {
            const double fine = draw.between(1, 20);
            const double coarse = draw.between(0, 10);
            const auto wFine = WaterContent::percent(draw.between(3, 25));
            const auto wCoarse = WaterContent::percent(draw.between(0, 3));
            const auto byFractions = coarsePart(fine, wFine, coarse, wCoarse);
            QVERIFY(byFractions->ifMoist.percent() <= byFractions->part.percent() + 1e-12);
            const auto wTotal = totalWaterFromFine(wFine, byFractions->part, wCoarse);
            const auto byWhole = coarsePartFromMoist(fine + coarse, coarse, *wTotal, wCoarse);
            QVERIFY(std::fabs(byWhole->percent() - byFractions->part.percent()) < 1e-9);
        }
        QVERIFY(!coarsePartFromMoist(10, 11, WaterContent::percent(5), WaterContent::percent(1)));
        QVERIFY(!coarsePartFromMoist(10, 10, WaterContent::percent(5), WaterContent::percent(1)));
        QVERIFY(!coarsePartFromMoist(10, std::nan(""), WaterContent::percent(5), WaterContent::percent(1)));
    }

    void theLimitItselfIsASetting()
    {
        const auto need = [](double percent, AtLowerLimit at) { return oversizeNeed(CoarsePart::percent(percent), {5, at, 30}); };
        QCOMPARE(*need(5.0, AtLowerLimit::NotCorrected), OversizeNeed::None);
        QCOMPARE(*need(5.0, AtLowerLimit::Corrected), OversizeNeed::Correct);
        QCOMPARE(*need(5.01, AtLowerLimit::NotCorrected), OversizeNeed::Correct);
        QCOMPARE(*need(4.99, AtLowerLimit::Corrected), OversizeNeed::None);
        QCOMPARE(*need(30.0, AtLowerLimit::NotCorrected), OversizeNeed::Correct);
        QVERIFY(!need(30.01, AtLowerLimit::NotCorrected));
        QVERIFY(!need(std::nan(""), AtLowerLimit::NotCorrected));
        QVERIFY(!oversizeNeed(CoarsePart::percent(10), {30, AtLowerLimit::Corrected, 5}));
    }

    void refusesWhatCannotBe()
    {
        const auto d = DryDensity::lbPerFt3(115);
        QVERIFY(!totalFromFine(d, CoarsePart::percent(100), 2.65, kWater));
        QVERIFY(!totalFromFine(d, CoarsePart::percent(-0.1), 2.65, kWater));
        QVERIFY(!totalFromFine(d, CoarsePart::percent(20), std::nan(""), kWater));
        QVERIFY(!fineFromTotal(DryDensity::lbPerFt3(160), CoarsePart::percent(98), 2.5, kWater));
        QVERIFY(!fineWaterFromTotal(WaterContent::percent(0.3), CoarsePart::percent(30), WaterContent::percent(2)));
        QVERIFY(!coarsePart(0, 0));
    }
};

QTEST_GUILESS_MAIN(OversizeTest)
#include "oversize_test.moc"
