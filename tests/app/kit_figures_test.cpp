// What Kit's sheets derive, without a window: the reading of calibration files, the plots, two-step counts, the stability test.
#include "app/sample_book.h"

#include "book/kinds.h"
#include "view/calibration_csv.h"
#include "view/count_plot.h"
#include "view/proctor_plot.h"
#include "view/rules_view.h"
#include "view/stability_sheet.h"
#include "view/standard_counts.h"

using namespace groundcount;
using namespace groundcount::tests;

namespace {

bool typeAll(view::KitForm& form, const QStringList& texts)
{
    auto* entry = form.entry();
    if (!entry || entry->fields().size() != texts.size())
        return false;
    for (int i = 0; i < texts.size(); ++i)
        entry->field(i)->type(texts[i]);
    entry->done();
    return form.entry() == nullptr;
}

void seeAll(view::StandardCounts& counts)
{
    for (const char* check : {"warm", "block", "gauges", "around"})
        counts.see(QString::fromLatin1(check));
}

}  // namespace

class KitFiguresTest : public QObject {
    Q_OBJECT
private slots:
    void aCalibrationFileIsReadFigureByFigure()
    {
        const auto read = view::calibrationFromCsv("c,depth_in,a,b_per_kg_m3,e,slope_per_kg_m3\n-0.055,6,6.30,0.00103,0.012,0.00164\n", "kg_m3");
        QVERIFY2(read, read ? "" : read.error().what.c_str());
        QCOMPARE(read->value("n").toString(), QString("1"));
        QCOMPARE(read->value("c1.a").toString(), QString("6.30"));  // as it stands, trailing zero and all
        QCOMPARE(read->value("c1.c").toString(), QString("0.055"));
        QCOMPARE(read->value("c1.c.sign").toString(), QString("1"));
        QCOMPARE(read->value("w.slope").toString(), QString("0.00164"));
    }

    void aCalibrationFileThatDoesNotFitIsRefusedByNameAndLine_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("part");
        const QByteArray head = "depth_in,a,b_per_lb_ft3,c,e,slope_per_lb_ft3\n";
        QTest::newRow("empty") << QByteArray() << "no line";
        QTest::newRow("other unit") << QByteArray("depth_in,a,b_per_kg_m3,c,e,slope_per_lb_ft3\n") << "b_per_kg_m3";
        QTest::newRow("missing column") << QByteArray("depth_in,a,c,e,slope_per_lb_ft3\n") << "b_per_lb_ft3";
        QTest::newRow("twice") << QByteArray("depth_in,a,a,b_per_lb_ft3,c,e,slope_per_lb_ft3\n") << "twice";
        QTest::newRow("no number") << QByteArray(head + "8,7.9,0.0182,nan,0.012,0.0262\n") << "Line 2, column \"c\"";
        QTest::newRow("half a curve") << QByteArray(head + "8,7.9,,0.05,0.012,0.0262\n") << "has a depth but no b";
        QTest::newRow("no water") << QByteArray(head + "8,7.9,0.0182,0.05,,\n") << "no water curve";
        QTest::newRow("no curve") << QByteArray(head + ",,,,0.012,0.0262\n") << "no curve";
        QTest::newRow("open quote") << QByteArray(head + "\"8,7.9\n") << "ine 2";
    }
    void aCalibrationFileThatDoesNotFitIsRefusedByNameAndLine()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, part);
        const auto read = view::calibrationFromCsv(text.toStdString(), "lb_ft3");
        QVERIFY(!read);
        QVERIFY2(QString::fromStdString(read.error().what).contains(part), read.error().what.c_str());
    }

    void thePlotHoldsEverySetAndItsLimitsInside()
    {
        std::vector<view::PlottedCount> sets{{"May 26", 2898, 2853, 2824, 2882, false, false}, {"May 26", 2864, 2853, 2824, 2882, true, false}, {"Jun 9", 2846, 2853, 2824, 2882, true, true}};
        const auto plot = view::plotOf(sets);
        QCOMPARE(plot.sets(), 3);
        for (const auto* fractions : {&plot.value, &plot.lower, &plot.upper, &plot.base})
            for (const double f : *fractions)
                QVERIFY(f > 0 && f < 1);
        QVERIFY(plot.value[0] > plot.upper[0]);  // refused: drawn above its limit
        QCOMPARE(plot.replacedBy, QList<int>({1, -1, -1}));
        QCOMPARE(plot.large, 2);
        QVERIFY(plot.yLabels.size() >= 3 && plot.yLabels.size() <= 8);
        QCOMPARE(plot.xLabels, QStringList({"May 26", "Jun 9"}));
    }

    void theSaturationLineLiesWhereTheFormulaPutsIt()
    {
        view::ProctorDrawing drawing;
        drawing.unit = method::DensityUnit::LbPerFt3;
        drawing.water = DensityOfWater::lbPerFt3(62.4);
        drawing.solidsGravity = 2.68;
        for (const auto& [w, d] : {std::pair(9.2, 112.3), std::pair(11.1, 116.7), std::pair(12.7, 118.6), std::pair(14.5, 116.8), std::pair(16.3, 112.9)})
            drawing.points.push_back({WaterContent::percent(w), DryDensity::lbPerFt3(d)});
        const auto plot = view::plotOf(drawing);
        QCOMPARE(plot.points.size(), 5);
        QVERIFY(plot.curve.size() > 20);
        // Gs rho_w/(1 + w Gs), w a fraction [UFC-322020], on the axes that the labels give.
        const double wLow = plot.xLabels.first().toDouble(), wHigh = plot.xLabels.last().toDouble();
        const double rLow = plot.yLabels.first().toDouble(), rHigh = plot.yLabels.last().toDouble();
        for (const auto& at : plot.zeroAirVoids) {
            const double w = (wLow + at.x() * (wHigh - wLow)) / 100;
            const double expected = 2.68 * 62.4 / (1 + w * 2.68);
            QVERIFY(std::fabs(rLow + at.y() * (rHigh - rLow) - expected) < 1e-6);
        }
    }

    void theTwoStepRuleAsksForASecondSetAndTakesIt()
    {
        SampleBook book;
        // A rule set of its own that judges in two steps, put in force through its sheet.
        view::RulesSheet rules;
        rules.setSession(&book.session());
        for (const auto& [key, value] : {std::pair("standard.pair_density", "1"), std::pair("standard.pair_moisture", "1"), std::pair("standard.established_density", "2"),
                                         std::pair("standard.established_moisture", "2")}) {
            rules.typeLimit(QLatin1String(key));
            QVERIFY(typeAll(rules, {QLatin1String(value)}));
        }
        rules.openChoice(QStringLiteral("standard.rule"));
        QCOMPARE(rules.words()->count(), 4);
        rules.pickWord(QStringLiteral("two-step"));
        QCOMPARE(rules.differences()->count(), 5);
        rules.setName(QStringLiteral("two steps"));
        rules.setRevision(QStringLiteral("1"));
        rules.setSource(QStringLiteral("invented"));
        rules.pickMark(3);
        QVERIFY2(rules.seal(), qPrintable(rules.sealNotYet() + rules.trouble()));
        QCOMPARE(book.session().ruleSet().choices.find("standard.rule")->second.word, std::string("two-step"));

        view::StandardCounts counts;
        counts.setSession(&book.session());
        counts.takeAnother();
        counts.pickHow(1);
        seeAll(counts);
        counts.typeCounts();
        QVERIFY(typeAll(counts, {"2840", "700"}));  // 1.43 % from the established 2800
        QCOMPARE(counts.property("word").toString(), QString("Take a second set"));
        QVERIFY2(counts.seal(), qPrintable(counts.sealNotYet() + counts.trouble()));
        book.wait(600);
        seeAll(counts);
        counts.pickHow(1);
        counts.typeCounts();
        QVERIFY(typeAll(counts, {"2835", "700"}));  // 0.18 % from the first, 1.25 % from the established
        QCOMPARE(counts.property("word").toString(), QString("Accepted"));
        QVERIFY(counts.seal());
        const auto record = book.session().store().record(book.session().standardToday()->hash);
        QCOMPARE(book::textAt(record->body, "rule"), std::string("two-step"));
    }

    void fourCountsAreAskedForAndAFarOneIsQuestioned()
    {
        SampleBook book({.trenchOffset = false, .wall = false, .standardCount = false});
        view::StandardCounts counts;
        counts.setSession(&book.session());
        seeAll(counts);
        QCOMPARE(counts.sealNotYet(), QString("Seal: type 4 counts of each"));
        counts.typeLog();
        QVERIFY(typeAll(counts, {"2800", "700", "2805", "698", "", "", "", ""}));
        counts.typeCounts();
        auto* entry = counts.entry();
        const QStringList texts{"2810", "701", "2795", "699", "2799", "2801", "2804", "700"};
        for (int i = 0; i < texts.size(); ++i) {
            entry->goTo(i);
            entry->field(i)->type(texts[i]);
        }
        // The third moisture count is a density count: asked about, not forbidden.
        QVERIFY2(entry->field(5)->doubt().contains("far from"), qPrintable(entry->field(5)->doubt()));
        QVERIFY(entry->field(4)->doubt().isEmpty());
        entry->field(5)->type("701");
        entry->goTo(7);
        QVERIFY(entry->field(5)->doubt().isEmpty());
        entry->done();
        QCOMPARE(counts.property("word").toString(), QString("Accepted"));
        QVERIFY(counts.seal());
        const auto record = book.session().store().record(book.session().standardToday()->hash);
        QCOMPARE(record->body.at("density_before"), book::Body::array({"2800", "2805"}));
        QCOMPARE(book::textAt(record->body, "density_mean"), std::string("2802.50"));
    }

    void aStabilityTestPassesNoiseOfTheRightSizeAndFailsNone_data()
    {
        QTest::addColumn<int>("half");
        QTest::addColumn<bool>("passes");
        // Counts 2800 -/+ h in turn: s = h sqrt(20/19), ratio s/sqrt(2800): 1.03 for 53, 0 for 0, 1.74 for 90.
        QTest::newRow("healthy") << 53 << true;
        QTest::newRow("stuck") << 0 << false;
        QTest::newRow("noisy") << 90 << false;
    }
    void aStabilityTestPassesNoiseOfTheRightSizeAndFailsNone()
    {
        QFETCH(int, half);
        QFETCH(bool, passes);
        SampleBook book;
        view::StabilityTest test;
        test.setSession(&book.session());
        test.typeCounts();
        QStringList texts;
        for (int i = 0; i < 20; ++i)
            texts << QString::number(2800 + (i % 2 ? half : -half)) << QString::number(700 + (i % 2 ? 26 : -26));
        QVERIFY(typeAll(test, texts));
        QCOMPARE(test.mark(), static_cast<int>(passes ? view::Mark::Pass : view::Mark::Fail));
        QVERIFY2(test.seal(), qPrintable(test.sealNotYet() + test.trouble()));
        const auto records = book.session().store().records({.subject = {}, .kind = "stability-test"});
        QVERIFY(records && records->size() == 1);
        QCOMPARE(records->back().body.at("passed").get<bool>(), passes);
        QCOMPARE(records->back().body.at("density_counts").size(), std::size_t{20});
        if (passes)
            QCOMPARE(book::textAt(records->back().body, "density_ratio"), std::string("1.028"));  // 53 sqrt(20/19)/sqrt(2800)
        QCOMPARE(test.history()->count(), 1);
    }
};

QTEST_GUILESS_MAIN(KitFiguresTest)
#include "kit_figures_test.moc"
