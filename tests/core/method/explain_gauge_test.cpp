#include "method/explain/explain_calibration.h"
#include "method/explain/explain_gauge.h"
#include "method/explain/explain_offsets.h"
#include "method/explain/explain_site.h"
#include "method/site/hole_depth.h"

#include "core/method/explained.h"

#include <vector>

using namespace groundcount;
using namespace groundcount::method;

/// The inputs are rows of tests/tables, named by their id; what the function gives must be what the last step says.
class ExplainGaugeTest : public QObject {
    Q_OBJECT
private slots:
    void percentCheckOfRowGC04D()
    {
        const std::vector<double> earlier{2861, 2849, 2856, 2846};
        const auto check = percentCheck(earlier, 2879, 1.0, {}).value();
        const auto steps = explainPercentCheck(earlier, 2879, 1.0, {}, check);
        explains(steps, "accepted");
        explainsStep(steps, "Mean of the last 4", sixDigits(check.mean) + " counts");
        explainsStep(steps, "Deviation", places(check.deviationPercent, 2) + " %");
        explains(explainPercentCheck(earlier, 2890, 1.0, {}, percentCheck(earlier, 2890, 1.0, {}).value()), "not accepted");
    }

    void twoStepRuleOfRowsGC01AndGC02()
    {
        const TwoStepLimits limits{1.0, 1.0, 2.0};
        explains(explainTwoStep(2850, 2874, {}, limits, twoStepCheck(2850, 2874, {}, limits).value()), "take the first");
        const auto check = twoStepCheck(2850, 2885, 2893, limits).value();
        const auto steps = explainTwoStep(2850, 2885, 2893, limits, check);
        explains(steps, "take the second");
        explainsStep(steps, "First count", places(check.firstPercent, 2) + " %");
        explainsStep(steps, "Two counts", places(*check.pairPercent, 2) + " %");
        explainsStep(steps, "Second count", places(*check.secondPercent, 2) + " %");
        explains(explainTwoStep(2850, 2885, {}, limits, twoStepCheck(2850, 2885, {}, limits).value()), "take a second count");
        explains(explainTwoStep(2850, 2885, 2960, limits, twoStepCheck(2850, 2885, 2960, limits).value()), "fail");
    }

    void statisticalRuleOfRowGC10()
    {
        const auto check = statisticalCheck(2853, 2960, 1, 1.96).value();
        const auto steps = explainStatistical(2853, 2960, 1, 1.96, check);
        explains(steps, "not accepted");
        explainsStep(steps, "Limit", places(check.limitCounts, 1) + " counts");
        explainsStep(steps, "Difference", "107 counts");
    }

    void decayBandOfRowsGC30AndGC31()
    {
        const auto band = decayBand(2853, 1826, 11023, 0.01, 2545).value();
        const auto steps = explainDecayBand(2853, 1826, 11023, 0.01, 2545, band);
        explains(steps, "accepted");
        explainsStep(steps, "Band", places(band.lower, 1) + " to " + places(band.upper, 1) + " counts");
        explains(explainDecayBand(2853, 1826, 11023, 0.01, 2510, decayBand(2853, 1826, 11023, 0.01, 2510).value()), "not accepted");
    }

    void stabilityOfRowGC40()
    {
        const std::vector<double> counts{2853, 2799, 2901, 2866, 2744, 2890, 2921, 2812, 2838, 2874, 2795, 2930, 2847, 2861, 2779, 2883, 2906, 2829, 2858, 2816};
        const auto check = stabilityCheck(counts, 1, 0.75, 1.25).value();
        const auto steps = explainStability(counts, 1, 0.75, 1.25, check);
        explains(steps, "inside");
        explainsStep(steps, "Ratio of pulses", places(check.scaledRatio, 4));
        QVERIFY(QString::fromStdString(steps.front().numbers).endsWith("(20 in all)"));
        const std::vector<double> still{2850, 2851, 2850, 2849};
        explains(explainStability(still, 1, 0.75, 1.25, stabilityCheck(still, 1, 0.75, 1.25).value()), "below: not random");
        const std::vector<double> wild{2850, 3051, 2650, 2949};
        explains(explainStability(wild, 1, 0.75, 1.25, stabilityCheck(wild, 1, 0.75, 1.25).value()), "above: noise");
    }

    void stabilityBandOfRowGC45A()
    {
        const auto band = stabilityBand(20, 0.90).value();
        explains(explainStabilityBand(20, 0.90, band), places(band.low, 4) + " to " + places(band.high, 4));
    }

    void driftOfRowDRA()
    {
        const std::vector<double> first{2851, 2847, 2860, 2843, 2855}, second{2838, 2849, 2836, 2845, 2841};
        const auto check = driftCheck(first, second, 0.5).value();
        const auto steps = explainDrift(first, second, 0.5, check);
        explains(steps, "accepted");
        explainsStep(steps, "Change", places(check.changePercent, 3) + " %");
    }

    void trenchOffsetOfRowGC83()
    {
        const double corrected = trenchCorrected(168, 703, 671).value();
        const auto steps = explainTrench(168, 703, 671, corrected);
        explains(steps, sixDigits(corrected) + " counts");
        explainsStep(steps, "Trench offset", "32 counts, 4.8 % of the standard");
    }

    void densityBiasOfRowGC82()
    {
        std::vector<WetDensity> reference, gauge;
        for (const double d : {118.9, 121.4, 119.6, 120.8, 122.1})
            reference.push_back(WetDensity::lbPerFt3(d));
        for (const double d : {120.6, 122.7, 121.5, 122.2, 123.6})
            gauge.push_back(WetDensity::lbPerFt3(d));
        const auto bias = densityBias(reference, gauge, 0.05).value();
        const auto steps = explainDensityBias(reference, gauge, 0.05, bias, DensityUnit::LbPerFt3);
        explains(steps, "beyond chance");
        explainsStep(steps, "Density bias", places(WetDensity::kgPerM3(bias.kgPerM3).lbPerFt3(), 2) + " lb/ft3");
        explainsStep(steps, "t", places(bias.t, 3));
    }

    void biasWithoutScatterIsNotANumberTooLarge()
    {
        const std::vector<WetDensity> reference{WetDensity::kgPerM3(2000), WetDensity::kgPerM3(2100)};
        const std::vector<WetDensity> gauge{WetDensity::kgPerM3(1990), WetDensity::kgPerM3(2090)};
        const auto steps = explainDensityBias(reference, gauge, 0.05, densityBias(reference, gauge, 0.05).value(), DensityUnit::KgPerM3);
        explainsStep(steps, "t", "unbounded");
    }

    void moistureCalibrationOfRowsGC80()
    {
        std::vector<MoistureSample> samples;
        const double oven[] = {12.6, 13.1, 11.9, 12.8, 13.4}, wet[] = {131.2, 132.0, 129.8, 131.6, 132.4}, water[] = {16.3, 16.9, 15.4, 16.6, 17.2};
        for (std::size_t i = 0; i < 5; ++i)
            samples.push_back({WaterContent::percent(oven[i]), WetDensity::lbPerFt3(wet[i]), WaterDensity::lbPerFt3(water[i])});
        const auto of = [&](MoistureVariant variant) { return moistureCalibration(variant, samples, 5).value(); };
        const auto text = [&](const MoistureCalibration& c) { return explainMoistureCalibration(samples, c, DensityUnit::LbPerFt3); };
        const auto dry = of(MoistureVariant::DryBasis);
        explains(text(dry), places(dry.correction.factor, 5));
        const auto offset = of(MoistureVariant::MassOffset);
        explains(text(offset), places(WaterDensity::kgPerM3(offset.correction.factor).lbPerFt3(), 2) + " lb/ft3");
        const auto points = of(MoistureVariant::PercentOffset);
        explains(text(points), places(points.correction.factor, 2) + " points");
        const auto ratio = of(MoistureVariant::Ratio);
        explains(text(ratio), places(ratio.correction.factor, 5));
        QCOMPARE(text(of(MoistureVariant::WetBasis)).back().source, std::string("COMPUTED"));
    }

    void moistureCheckSaysWhoseContentToUse()
    {
        const auto near = WaterContent::percent(12.4), far = WaterContent::percent(14.4), oven = WaterContent::percent(12.0);
        explains(explainMoistureCheck(near, oven, 1, moistureCheck(near, oven, 1).value()), "the gauge's");
        explains(explainMoistureCheck(far, oven, 1, moistureCheck(far, oven, 1).value()), "the oven's");
    }

    void clearanceSaysItsAnswer()
    {
        const auto judge = [](double d, double u) {
            const auto answer = judgeClearance(Length::inches(d), Length::inches(u), Length::inches(24), Inclusive::Yes).value();
            return explainClearance(Length::inches(d), Length::inches(u), Length::inches(24), Inclusive::Yes, answer, LengthUnit::Inches);
        };
        explains(judge(30, 2), "clear");
        explainsStep(judge(30, 2), "Nearest believable distance", "28.0 in.");
        explains(judge(20, 2), "too close");
        explains(judge(24, 2), "cannot tell");
    }

    void holeTooShallowIsToldInTheSentenceOfTheRefusal()
    {
        const auto in = [](double inches) { return Length::inches(inches); };
        explains(explainHole(in(8), in(10), in(2), in(12), checkHole(in(8), in(10), in(2), in(12)), LengthUnit::Inches), "deep enough");
        const auto shallow = checkHole(in(8), in(9), in(2), in(12));
        explains(explainHole(in(8), in(9), in(2), in(12), shallow, LengthUnit::Inches), QString::fromStdString(shallow.error().what));
    }

    void secondReadingOfRowGC71A()
    {
        const auto steps = explainSecondReading(121.6, 123.4, DifferenceKind::Absolute, 2.0, compareReadings(121.6, 123.4, DifferenceKind::Absolute, 2.0).value(), DensityUnit::LbPerFt3);
        explains(steps, "122.50 lb/ft3");
        explainsStep(steps, "Difference", "1.80 lb/ft3");
        explains(explainSecondReading(121.6, 123.4, DifferenceKind::PercentOfFirst, 1.0, compareReadings(121.6, 123.4, DifferenceKind::PercentOfFirst, 1.0).value(), DensityUnit::LbPerFt3),
                 "take the test at a new spot");
    }

    void placeOfRowRNDC01()
    {
        const Strip strip{10000, 500, 24, 2, 2};
        const auto place = placeFromNumbers(strip, 0.536, 0.225, EdgePolicy::Shrink).value();
        const auto steps = explainPlace(strip, 0.536, 0.225, EdgePolicy::Shrink, place);
        explains(steps, places(place.offsetRightFt, 1) + " ft");
        explainsStep(steps, "Station", "10268.0 ft");
        const auto edge = placeFromNumbers(strip, 0.5, 0.01, EdgePolicy::Redraw).value();
        explainsStep(explainPlace(strip, 0.5, 0.01, EdgePolicy::Redraw, edge), "From the left", "0.2 ft, inside an edge: draw again");
    }

    void densityAndWaterOfRowGC51()
    {
        const DensityCurve curve{Length::inches(8), 12.0, 0.019 / kKgPerM3PerLbPerFt3, 0.05, WetDensity::lbPerFt3(100), WetDensity::lbPerFt3(120)};
        const auto wet = wetDensity(curve, 1.06617387).value();
        const auto steps = explainWetDensity(curve, 1.06617387, wet, DensityUnit::LbPerFt3);
        explains(steps, "125.00 lb/ft3");
        explainsStep(steps, "Ratio of that density", "1.06617");
        explainsStep(steps, "Calibrated range", "outside: look again");
        // a thousandth of the ratio taken away and read again is the second way to the same step
        const double step = wet.lbPerFt3() - wetDensity(curve, 1.06617387 * 0.9995).value().lbPerFt3();
        explainsStep(steps, "One thousandth of the ratio", places(2 * step, 3) + " lb/ft3");
        const WaterCurve water{0.012, 0.0165 / kKgPerM3PerLbPerFt3, {}, {}};
        const auto m = waterDensity(water, 0.22).value();
        const auto waterSteps = explainWaterDensity(water, 0.22, m, DensityUnit::LbPerFt3);
        explains(waterSteps, places(m.lbPerFt3(), 2) + " lb/ft3");
        explainsStep(waterSteps, "Ratio of that water", "0.22000");
    }

    void tableOfRowGC57()
    {
        std::vector<CalibrationRow> rows;
        const std::vector<double> densities{110, 115, 120, 125, 130}, ratios{1.4342, 1.2997, 1.1774, 1.0662, 0.9650};
        for (std::size_t i = 0; i < ratios.size(); ++i)
            rows.push_back({WetDensity::lbPerFt3(densities[i]), ratios[i]});
        const auto steps = explainWetDensityFromTable(rows, 1.1, {}, wetDensityFromTable(rows, 1.1).value(), DensityUnit::LbPerFt3);
        explains(steps, "123.48 lb/ft3");
        explainsStep(steps, "Rows around it", "120.0, 125.0 lb/ft3");
        explains(explainWetDensityFromTable(rows, 1.1, 0.05, wetDensityFromTable(rows, 1.1, 0.05).value(), DensityUnit::LbPerFt3), "123.43 lb/ft3");
        explainsStep(explainWetDensityFromTable(rows, 1.4342, {}, rows[0].density, DensityUnit::LbPerFt3), "Rows around it", "110.0, 110.0 lb/ft3");
    }

    void decayOfRowGC21AndHalfLivesOfRowsGA10ToGA14()
    {
        explains(explainDecay(11023, 1826, decayFactor(11023, 1826).value()), "0.891525");
        const auto said = [](double value, TimeUnit unit) { return explainHalfLife(value, unit, halfLifeDays(value, unit).value()); };
        explains(said(948288000, TimeUnit::Seconds), "10975.6 d");
        explains(said(30.1, TimeUnit::Years365), "10986.5 d");
        explains(said(30.05, TimeUnit::Years365Quarter), "10975.8 d");
        explains(said(11018.3864, TimeUnit::Days), "11018.4 d");
    }
};

QTEST_GUILESS_MAIN(ExplainGaugeTest)
#include "explain_gauge_test.moc"
