#include "gis/crs.h"
#include "gis/datum_shift.h"
#include "gis/geodesy.h"
#include "method/quantity.h"

#include <QtTest>
#include <cmath>

using namespace groundcount;
using namespace groundcount::gis;

class CrsTest : public QObject {
    Q_OBJECT
private slots:
    void knowsBothFeetExactly()
    {
        QCOMPARE(Crs::fromEpsg(2264)->metresPerUnit(), kMetrePerSurveyFoot);  // NAD83 / North Carolina (ftUS)
        QCOMPARE(Crs::fromEpsg(2264)->unitName(), std::string("US survey foot"));
        QCOMPARE(Crs::fromEpsg(2223)->metresPerUnit(), kMetrePerFoot);  // NAD83 / Arizona East (ft)
        QCOMPARE(Crs::fromEpsg(2223)->unitName(), std::string("foot"));
        QCOMPARE(Crs::fromEpsg(26915)->unitName(), std::string("metre"));
        QCOMPARE(Crs::fromEpsg(4269)->unitName(), std::string("degree"));
        QVERIFY(!Crs::fromEpsg(4269)->isProjected());
    }
    void keepsEastThenNorthWhateverTheAuthoritySays()
    {
        // EPSG:4269 lists latitude first; a grid point is still north and east by name.
        const auto geographic = Crs::fromEpsg(4269);
        const auto same = geographic->toGeographic({38.5, -92.25});
        QCOMPARE(same->latitudeDeg, 38.5);
        QCOMPARE(same->longitudeDeg, -92.25);
    }
    void comesBackFromItsOwnText()
    {
        const auto crs = Crs::fromEpsg(6420);
        QVERIFY2(crs, crs ? "" : crs.error().what.c_str());
        const auto again = Crs::fromWkt(crs->wkt2());
        QVERIFY(again);
        QCOMPARE(again->name(), crs->name());
        QCOMPARE(again->epsg(), std::optional<int>(6420));
        QCOMPARE(again->metresPerUnit(), crs->metresPerUnit());
        QVERIFY(crs->wkt2().find('\n') == std::string::npos);
    }
    void closesThereAndBackToAMillionthOfAFoot_data()
    {
        QTest::addColumn<int>("code");
        QTest::addColumn<double>("lat");
        QTest::addColumn<double>("lon");
        QTest::newRow("Missouri Central metre") << 26997 << 38.4 << -92.3;
        QTest::newRow("North Carolina ftUS") << 2264 << 35.5 << -79.1;
        QTest::newRow("Arizona East ft") << 2223 << 33.2 << -110.4;
        QTest::newRow("Alaska 1 oblique") << 26931 << 58.1 << -135.0;
        QTest::newRow("UTM 15") << 26915 << 41.7 << -93.6;
    }
    void closesThereAndBackToAMillionthOfAFoot()
    {
        QFETCH(int, code);
        QFETCH(double, lat);
        QFETCH(double, lon);
        const auto crs = Crs::fromEpsg(code);
        QVERIFY(crs);
        const auto grid = crs->fromGeographic({lat, lon});
        QVERIFY(grid);
        const auto back = crs->toGeographic(*grid);
        QVERIFY(back);
        const auto again = crs->fromGeographic(*back);
        QVERIFY(std::hypot(again->north - grid->north, again->east - grid->east) < 1e-6);
        QVERIFY(std::abs(back->latitudeDeg - lat) < 1e-11);
    }
    void factorsAgreeWithAShortGeodesic()
    {
        // Second way: the point scale is grid over ellipsoid length of a short line, the convergence its turn.
        const auto crs = Crs::fromEpsg(26997);
        const auto grs80 = ellipsoidNamed("GRS 1980");
        const LatLon from{37.3933, -92.459};
        const auto factors = crs->factorsAt(from);
        QVERIFY(factors);
        const auto north = geodesicFrom(*grs80, from, 0, 100);
        const auto a = crs->fromGeographic(from);
        const auto b = crs->fromGeographic(*north);
        QVERIFY(std::abs(std::hypot(b->north - a->north, b->east - a->east) / 100 - factors->pointScale) < 1e-7);
        // Grid north lies east of true north where the true meridian leans west on the grid.
        QVERIFY(std::abs(-std::atan2(b->east - a->east, b->north - a->north) * 180 / M_PI - factors->convergenceDeg) < 1e-4);
    }
    void refusesWhatIsNoMapSystem()
    {
        QVERIFY(!Crs::fromEpsg(0));
        QVERIFY(!Crs::fromEpsg(-1));
        QVERIFY(!Crs::fromEpsg(999999));
        QVERIFY(!Crs::fromEpsg(5703));  // a height system
        QVERIFY(!Crs::fromWkt(""));
        QVERIFY(!Crs::fromWkt("PROJCS[\"half"));
        QVERIFY(!Crs::fromEpsg(4269)->factorsAt({38, -92}));
        const auto crs = Crs::fromEpsg(26997);
        QVERIFY(!crs->fromGeographic({91, -92}));
        QVERIFY(!crs->fromGeographic({std::nan(""), -92}));
        QVERIFY(!crs->toGeographic({std::nan(""), 0}));
    }
    void copiesAreIndependent()
    {
        auto first = Crs::fromEpsg(26997);
        const Crs copy = *first;
        first = Crs::fromEpsg(2264);
        QCOMPARE(copy.epsg(), std::optional<int>(26997));
        QVERIFY(copy.fromGeographic({38, -92}));
    }
    void surveyAndInternationalFeetDifferByTwoPartsPerMillion()
    {
        QVERIFY(std::abs(*footMixUpFt(6'560'000) - 13.12) < 0.001);  // [FR-85-62698]
        QVERIFY(!footMixUpFt(std::nan("")));
    }
    void refusesHeightsNobodyBuildsAt()
    {
        const auto grs80 = ellipsoidNamed("GRS 1980");
        QVERIFY(elevationFactor(*grs80, 37, 300));
        QVERIFY(*elevationFactor(*grs80, 37, 300) < 1);
        QVERIFY(*elevationFactor(*grs80, 37, -30) > 1);
        QVERIFY(!elevationFactor(*grs80, 37, -7e6));
        QVERIFY(!elevationFactor(*grs80, 91, 0));
        QVERIFY(!groundDistance(Length::metres(10), 0));
        QVERIFY(!ellipsoidNamed("Not an ellipsoid"));
        QVERIFY(!ellipsoidNamed(""));
    }
    void rotationsTurnOppositeWaysInTheTwoConventions()
    {
        const Geocentric source{3657660.66, 255768.55, 5201382.11};
        const DatumShift there{0, 0, 4.5, 0, 0, 0.554, 0.219};
        // The worked example of EPSG method 9606 from memory [EPSG-GN72]: WGS 72 to WGS 84.
        const auto target = applyDatumShift(there, RotationConvention::PositionVector, source);
        QVERIFY(target);
        QVERIFY(std::abs(target->xM - 3657660.78) < 0.01);
        QVERIFY(std::abs(target->yM - 255778.43) < 0.01);
        QVERIFY(std::abs(target->zM - 5201387.75) < 0.01);
        DatumShift turned = there;
        turned.rotationZArcSec = -there.rotationZArcSec;
        const auto frame = applyDatumShift(turned, RotationConvention::CoordinateFrame, source);
        QVERIFY(std::abs(frame->yM - target->yM) < 1e-6);
        QVERIFY(std::abs(applyDatumShift(there, RotationConvention::CoordinateFrame, source)->yM - target->yM) > 10);
    }
    void geocentricAxesLeadBack()
    {
        const auto wgs84 = ellipsoidNamed("WGS 84");
        const auto axes = toGeocentric(*wgs84, {53.809394444, 2.129550000}, 73.0);
        QVERIFY(axes);
        QVERIFY(std::abs(axes->xM - 3771793.97) < 0.02);  // EPSG method 9602, worked example from memory [EPSG-GN72]
        const auto back = fromGeocentric(*wgs84, *axes);
        QVERIFY(std::abs(back->position.latitudeDeg - 53.809394444) < 1e-10);
        QVERIFY(std::abs(back->heightM - 73) < 1e-6);
    }
};

QTEST_GUILESS_MAIN(CrsTest)
#include "crs_test.moc"
