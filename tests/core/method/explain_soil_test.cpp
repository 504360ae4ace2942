#include "method/explain/explain_hole.h"
#include "method/explain/explain_laboratory.h"
#include "method/explain/explain_soil.h"
#include "method/soil/relative_density.h"

#include "core/method/explained.h"

#include <vector>

using namespace groundcount;
using namespace groundcount::method;

namespace {

constexpr auto kLb = DensityUnit::LbPerFt3;

QString peakText(const Peak& peak) { return places(peak.maximum.lbPerFt3(), 2) + " lb/ft3 at " + places(peak.optimum.percent(), 2) + " %"; }

std::vector<CompactionPoint> points(const std::vector<double>& w, const std::vector<double>& megagrams)
{
    std::vector<CompactionPoint> p;
    for (std::size_t i = 0; i < w.size(); ++i)
        p.push_back({WaterContent::percent(w[i]), DryDensity::kgPerM3(1000 * megagrams[i])});
    return p;
}

}  // namespace

/// The inputs are rows of tests/tables, named by their id; what the function gives must be what the last step says.
class ExplainSoilTest : public QObject {
    Q_OBJECT
private slots:
    void peakOfRowPKMD02()
    {
        const auto p = points({8.3, 9.2, 10.8, 12.6, 13.5}, {1.86, 1.92, 1.95, 1.90, 1.87});
        const auto search = findPeak(p, {}, {}).value();
        const auto steps = explainPeak(p, search, {}, kLb);
        explains(steps, peakText(search.local));
        explainsStep(steps, "All points", peakText(*search.parabola));
        explainsStep(steps, "Spline", peakText(search.spline));
        QVERIFY(search.warnings.empty());
    }

    void everyWarningOfRowPKMD01IsAStep()
    {
        const auto p = points({7.5, 8.9, 10.6, 11.7, 13.3, 14.6, 16.2, 19.6, 21.3, 23.8, 27.4}, {1.351, 1.428, 1.485, 1.525, 1.566, 1.593, 1.614, 1.609, 1.577, 1.532, 1.44});
        const auto search = findPeak(p, {}, {}).value();
        const auto steps = explainPeak(p, search, {}, kLb);
        explains(steps, peakText(search.local));
        QStringList said;
        for (const auto& step : steps)
            if (step.name == "Look again")
                said << QString::fromStdString(step.value);
        QCOMPARE(said, QStringList({"a wide gap beside the highest point", "the three methods disagree"}));
    }

    void zeroAirVoidsAndVoidsOfRowZA04()
    {
        const auto rhoW = DensityOfWater::lbPerFt3(62.4);
        const auto w = WaterContent::percent(15);
        const auto line = dryAtSaturation(2.70, rhoW, w, 100).value();
        explains(explainSaturationLine(2.70, rhoW, w, 100, line, kLb), places(line.lbPerFt3(), 2) + " lb/ft3");
        const auto v = voids(DryDensity::lbPerFt3(107.1), w, 2.70, rhoW).value();
        const auto steps = explainVoids(DryDensity::lbPerFt3(107.1), w, 2.70, rhoW, v, kLb);
        explains(steps, places(v.saturationPercent, 1) + " %");
        explainsStep(steps, "Void ratio", places(v.voidRatio, 4));
        explainsStep(steps, "Air voids", places(v.airVoidsPercent, 1) + " %");
        const auto wet = voids(DryDensity::lbPerFt3(125), w, 2.70, rhoW).value();
        QVERIFY(QString::fromStdString(explainVoids(DryDensity::lbPerFt3(125), w, 2.70, rhoW, wet, kLb).back().value).endsWith("wetter than the soil can be"));
    }

    void oversizeBothWaysComesBack()
    {
        const CoarseCorrection stones{CoarsePart::percent(20), 2.65, DensityOfWater::lbPerFt3(62.4), WaterContent::percent(1.5)};
        const Peak fine{WaterContent::percent(12.8), DryDensity::lbPerFt3(118.6)};
        const Peak total{totalWaterFromFine(fine.optimum, stones.part, stones.coarseWater).value(),
                         totalFromFine(fine.maximum, stones.part, stones.gravity, stones.rhoW).value()};
        const auto there = explainTotalFromFine(fine, stones, total, kLb);
        explains(there, places(total.maximum.lbPerFt3(), 2) + " lb/ft3");
        explainsStep(there, "Optimum water content, corrected", places(total.optimum.percent(), 2) + " %");
        const Peak back{fineWaterFromTotal(total.optimum, stones.part, stones.coarseWater).value(),
                        fineFromTotal(total.maximum, stones.part, stones.gravity, stones.rhoW).value()};
        const auto steps = explainFineFromTotal(total, stones, back, kLb);
        explains(steps, "118.60 lb/ft3");
        explainsStep(steps, "Water content of the fine part", "12.80 %");
    }

    void coarsePartOfMoistMasses()
    {
        const auto masses = coarsePart(2500, WaterContent::percent(12), 640, WaterContent::percent(1.5)).value();
        const auto steps = explainCoarsePart(2500, WaterContent::percent(12), 640, WaterContent::percent(1.5), masses);
        explains(steps, places(masses.part.percent(), 2) + " %");
        explainsStep(steps, "Dry fine part", sixDigits(masses.dryFine));
    }

    void onePointOfRowOF1()
    {
        const auto c = [](double perPoint) { return DryDensity::lbPerFt3(perPoint).kgPerM3(); };
        const FamilyCurve low{WaterContent::percent(15), DryDensity::lbPerFt3(110), c(0.30)}, high{WaterContent::percent(12), DryDensity::lbPerFt3(120), c(0.50)};
        const OnePointWindow window{0.8, 1.0};
        const auto peak = onePointPeak(low, high, WaterContent::percent(11.9), DryDensity::lbPerFt3(113.9), window).value();
        const auto steps = explainOnePoint(low, high, WaterContent::percent(11.9), DryDensity::lbPerFt3(113.9), window, peak, kLb);
        explains(steps, peakText({peak.optimum, peak.maximum}));
        explainsStep(steps, "Water content over optimum", places(peak.ratio, 3));
    }

    void relativeDensityOfRowDR02()
    {
        const auto d = [](double x) { return DryDensity::lbPerFt3(x); };
        const double percent = relativeDensity(d(103.5), d(115), d(93)).value();
        explains(explainRelativeDensity(d(103.5), d(115), d(93), percent, kLb), places(percent, 1) + " %");
    }

    void sandConeAndBalloon()
    {
        const SandMasses sand{6.5, 2.9, 1.6};
        const double volume = holeVolumeBySand(sand, 1500).value();
        const auto wet = wetInHole(2.8, volume).value();
        const auto steps = explainSandCone(sand, 1500, volume, 2.8, wet, DensityUnit::KgPerM3);
        explains(steps, places(wet.kgPerM3(), 2) + " kg/m3");
        explainsStep(steps, "Volume of the hole", sixDigits(volume) + " m3");
        const double dug = holeVolumeByBalloon(0.0004, 0.0019).value();
        const auto inHole = wetInHole(3.1, dug).value();
        explains(explainBalloon(0.0004, 0.0019, dug, 3.1, inHole, DensityUnit::KgPerM3), places(inHole.kgPerM3(), 2) + " kg/m3");
    }

    void holeWithStones()
    {
        const HoleWithStones hole{0.030, 64, 9, 2.65, DensityOfWater::kgPerM3(1000), WaterContent::percent(11), WaterContent::percent(1)};
        const auto control = controlFraction(hole).value();
        const auto steps = explainControlFraction(hole, control, DensityUnit::KgPerM3);
        explains(steps, places(control.dry.kgPerM3(), 2) + " kg/m3");
        explainsStep(steps, "Volume of the stones", sixDigits(control.oversizeVolumeM3) + " m3");
    }

    void ovenOfRowMO02AndCarbideOfRowMO0312()
    {
        const auto oven = driedSample(0, 120, 100).value();
        explains(explainDried(0, 120, 100, oven), places(oven.content.percent(), 2) + " %");
        const auto full = carbideSample(12, CarbideSample::Full).value();
        explains(explainCarbide(12, CarbideSample::Full, full), places(full.content.percent(), 2) + " %");
        const auto half = carbideSample(6, CarbideSample::Half).value();
        explains(explainCarbide(6, CarbideSample::Half, half), places(full.content.percent(), 2) + " %");
    }

    void constantMassSaysGoOnOrConstant()
    {
        explains(explainConstantMass(1000, 999.5, 0.1, constantMass(1000, 999.5, 0.1).value()), "constant");
        explains(explainConstantMass(1000, 995, 0.1, constantMass(1000, 995, 0.1).value()), "go on drying");
    }

    void specimenOfRowMD041()
    {
        const double pound = 0.45359237, cubicFoot = 0.3048 * 0.3048 * 0.3048;
        const auto point = compactedPoint(3.70 * pound, 0, cubicFoot / 30, WaterContent::percent(9.9)).value();
        const auto steps = explainSpecimen(3.70 * pound, 0, cubicFoot / 30, WaterContent::percent(9.9), point, kLb);
        explains(steps, places(point.dry.lbPerFt3(), 2) + " lb/ft3");
        explainsStep(steps, "Wet density", "111.00 lb/ft3");
        const auto energy = compactionEnergyFtLbfPerFt3(5.5, Length::feet(1), 3, 25, cubicFoot / 30).value();
        const auto said = explainCompactionEnergy(5.5, Length::feet(1), 3, 25, cubicFoot / 30, energy);  // row MD-21A
        explains(said, "12375 ft-lbf/ft3");
        QVERIFY2(said[0].numbers.ends_with("0.0333333 ft3"), said[0].numbers.c_str());
    }

    void voidRatiosOfRowDR06AndUsualRanges()
    {
        explains(explainRelativeDensityFromVoids(0.30, 0.92, 0.35, relativeDensityFromVoids(0.30, 0.92, 0.35).value()), "108.8 %");
        const auto usual = [](double value) { return explainPlausibility("Maximum of an SM", value, 110, 125, "lb/ft3", plausibility(value, 110, 125).value(), "DM72"); };
        explains(usual(118), "usual");
        explains(usual(109), "below the usual");
        explains(usual(126), "above the usual");
    }

    void sampleOfTheSieveThatTheLargestParticlePasses()
    {
        for (const auto rule : {MoistureSampleRule::D2216ToOnePercent, MoistureSampleRule::T265, MoistureSampleRule::T255}) {
            const auto rows = moistureSampleRows(rule);
            const auto& row = rows[rows.size() / 2];
            const Length particle = Length::metres(row.largestParticle.metres() * 0.99);
            const auto least = leastMoistureSampleG(rule, particle).value();
            const auto steps = explainMoistureSample(rule, particle, least);
            explains(steps, sixDigits(row.leastMassG) + " g");
            explainsStep(steps, "Sieve that the largest particle passes", places(row.largestParticle.metres() * 1000, 2) + " mm");
        }
    }
};

QTEST_GUILESS_MAIN(ExplainSoilTest)
#include "explain_soil_test.moc"
