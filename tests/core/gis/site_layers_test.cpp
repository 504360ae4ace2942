#include "gis/site_layers.h"

#include <QtTest>

using namespace groundcount;
using gis::SiteForm;

class SiteLayersTest : public QObject {
    Q_OBJECT

    static gis::SiteFile file()
    {
        gis::SiteFile file;
        file.features = {{"works", "W-1", SiteForm::Line, {{{10, 20}, {30, 40}}}},
                         {"works", "W-2", SiteForm::Line, {{{-5, 20}, {30, 90}, {31, 91}}}},
                         {"works", "", SiteForm::Area, {{{0, 0}, {0, 1}, {1, 1}}, {{0.2, 0.2}, {0.2, 0.3}, {0.3, 0.3}}}}};
        file.alignments = {R"({"name": "Ramp A", "elements": [{}, {}, {}]})", "no JSON at all"};
        return file;
    }

private slots:
    void keepsFormsOfOneLayerApart()
    {
        const auto layers = gis::siteLayers(file());
        QCOMPARE(layers.size(), std::size_t(4));
        QVERIFY(layers[0].form == SiteForm::Line && layers[0].things == 2 && layers[0].corners == 5);
        QVERIFY(layers[1].form == SiteForm::Area && layers[1].things == 1 && layers[1].corners == 6 && layers[1].names.empty());
        QCOMPARE(layers[0].names, (std::vector<std::string>{"W-1", "W-2"}));
        QVERIFY(layers[2].isAlignment && layers[2].name == "Ramp A" && layers[2].things == 3);
        QVERIFY(layers[3].isAlignment && layers[3].name.empty() && layers[3].things == 0);
        const auto lines = gis::onlyLayer(file(), layers[0]);
        QVERIFY(lines.features.size() == 2 && lines.alignments.empty());
        const auto ramp = gis::onlyLayer(file(), layers[2]);
        QVERIFY(ramp.features.empty() && ramp.alignments.size() == 1 && ramp.alignments[0].find("Ramp A") != std::string::npos);
    }
    void boxesEverything()
    {
        const auto box = gis::siteExtent(file().features);
        QVERIFY(box.any && box.south == -5 && box.north == 31 && box.west == 0 && box.east == 91);
        QVERIFY(!gis::siteExtent({}).any);
    }
    /// 85 FR 62698: the survey foot is 1200/3937 m, the international foot 0.3048 m, "two parts per million" apart; at 480 000 ft they part by a foot.
    void theTwoFeetPart()
    {
        const double d = gis::feetApart({480000, 0, 480000, 0, true});
        QVERIFY2(qAbs(d - 480000 * 2e-6) < 480000 * 1e-9, qPrintable(QString::number(d, 'f', 6)));
        QCOMPARE(gis::feetApart({0, 0, 0, 0, true}), 0.0);
    }
    void measuresFromTheMiddleAndNotWithin()
    {
        const gis::SiteExtent box{0, 0, 10, 10, true};
        QCOMPARE(gis::awayFrom(box, {5, 9}, 1.0).metres(), 0.0);
        QVERIFY(qAbs(gis::awayFrom(box, {5, 25}, 0.3048).metres() - 20 * 0.3048) < 1e-12);
    }
};

QTEST_APPLESS_MAIN(SiteLayersTest)
#include "site_layers_test.moc"
