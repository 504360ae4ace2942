#include "gis/test_layer.h"
#include "book/number_order.h"
#include "gis/layer_tests.h"
#include "sample_tests.h"

#include <QJsonObject>
#include <QTemporaryDir>
#include <QtTest>
#include <algorithm>
#include <cmath>

using namespace groundcount;

namespace {

QString told(const Result<void>& result)
{
    return result ? QString() : QString::fromStdString(result.error().what);
}

QString validator(const QString& path)
{
    const auto ran = sample::python({"-m", "osgeo_utils.samples.validate_gpkg", "-k", "--extra", path});
    return ran.exit == 0 ? "valid" : QString("exit %1: %2").arg(ran.exit).arg(ran.out);
}

}  // namespace

class TestLayerTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QString at(const QString& name) const { return m_folder.filePath(name); }
    Result<void> write(const QString& name, const std::vector<book::TestRow>& tests) const
    {
        return gis::exportTests(at(name).toStdString(), sample::job(), tests, {});
    }
private slots:
    void passesTheValidatorOfGdal()
    {
        auto tests = sample::tests(40);
        tests[3].north = tests[3].east = 0;
        tests[5].purpose = book::TestPurpose::Retest;
        tests[6].state = book::TestState::InformationOnly;
        QCOMPARE(told(write("valid.gpkg", tests)), QString());
        QCOMPARE(validator(at("valid.gpkg")), QString("valid"));
        QCOMPARE(told(write("empty.gpkg", {})), QString());
        QCOMPARE(validator(at("empty.gpkg")), QString("valid"));
    }
    void isRefusedByTheValidatorOnceItIsDamaged()
    {
        QCOMPARE(told(write("damaged.gpkg", sample::tests(3))), QString());
        const auto cut = sample::python({"-c", "import sqlite3,sys; c=sqlite3.connect(sys.argv[1]); c.execute(\"update gpkg_geometry_columns set geometry_type_name='LINESTRING'\"); c.commit()", at("damaged.gpkg")});
        QCOMPARE(cut.exit, 0);
        QVERIFY(validator(at("damaged.gpkg")) != "valid");
    }
    void isMarkedAsGeoPackage13()
    {
        QCOMPARE(told(write("marks.gpkg", sample::tests(3))), QString());
        const QByteArray file = sample::bytes(at("marks.gpkg"));
        QCOMPARE(file.mid(68, 4), QByteArray("GPKG"));
        QCOMPARE(file.mid(60, 4), QByteArray::fromHex("0000283c"));  // 10300
    }
    void showsItsColumnsToOgrinfo()
    {
        QCOMPARE(told(write("info.gpkg", sample::tests(3))), QString());
        const auto info = sample::run("ogrinfo", {"-so", "-al", at("info.gpkg")});
        QCOMPARE(info.exit, 0);
        for (const char* line : {"Layer name: density_test", "Geometry: Point", "Feature Count: 3", "PROJCRS[\"NAD83 / California zone 2 (ftUS)\"",
                                 "FID Column = fid", "Geometry Column = geom", "test_number: String (0.0)", "lift: Integer (0.0)",
                                 "state: String (0.0), domain name=test_state", "purpose: String (0.0), domain name=test_purpose", "started_utc: DateTime (0.0)",
                                 "wet_density_lb_ft3: Real (0.0)", "maximum_dry_density_lb_ft3: Real (0.0)", "uncertainty_pct: Real (0.0)"})
            QVERIFY2(info.out.contains(line), qPrintable(line + QString(" is not in\n") + info.out));
    }
    void holdsEveryValueOfATest()
    {
        auto test = sample::test("7");
        test.purpose = book::TestPurpose::Retest;
        test.retestOfNumber = "4";
        test.rework = "disked";
        QCOMPARE(told(write("values.gpkg", {test})), QString());
        const QJsonObject row = sample::rows({at("values.gpkg")}).at(0).toObject();
        const QJsonObject want{
            {"fid", 1}, {"test_number", "7"}, {"purpose", "retest"}, {"retest_of", "4"}, {"rework", "disked"}, {"state", "fail"}, {"waiting_for", QJsonValue()},
            {"reasons", "93.4 % is below the minimum of 95 %; water content is above the window"}, {"overrides", "wall at 20 in., trench correction made"},
            {"conflict", 0}, {"lot", "Lot A, core's edge"}, {"lift", 3}, {"station", "53+38.3"}, {"station_ft", 5338.3}, {"offset_ft", -12.5},
            {"started_utc", "2026-06-02T01:15:07.250Z"}, {"verdict_utc", "2026-06-02T01:31:59.000Z"}, {"local_time", "2026-06-01T18:15:07-07:00"},
            {"technician", "Ida Quill"}, {"certificate", "C-1182"}, {"gauge", "G-7"}, {"mode", "direct"}, {"depth_in", 8}, {"wet_density_lb_ft3", 121.4},
            {"water_density_lb_ft3", 14.1}, {"dry_density_lb_ft3", 107.3}, {"water_content_pct", 13.1}, {"percent_compaction", 93.4},
            {"maximum_dry_density_lb_ft3", 114.9}, {"optimum_pct", 12}, {"coarse_pct", QJsonValue()}, {"minimum_pct", 95}, {"maximum_pct", QJsonValue()},
            {"window_low_pct", 10}, {"window_high_pct", 14}, {"uncertainty_pct", QJsonValue()}, {"density_standard_count", 2841}, {"moisture_standard_count", 715},
            {"density_count", 1532}, {"moisture_count", 188}, {"material", "Sandy clay"}, {"reference_test", "P-4"}, {"latitude_deg", 39.33333333},
            {"longitude_deg", -122.00000001}, {"ellipsoid_height_m", 12.5}, {"sigma_north_m", 0.011}, {"sigma_east_m", 0.009}, {"fixes", 12},
            {"fix_kind", "RTK fixed"}, {"rule_set_hash", QString(64, 'a')}, {"core_version", "0.1.0"}, {"record_hash", QString(64, 'b')},
            {"device", QString(64, 'c')}, {"test_id", "5f6a7b8c-0000-4000-8000-000000010007"}, {"x", 6561666.667}, {"y", 2247411.25}};
        for (auto one = want.begin(); one != want.end(); ++one)
            QVERIFY2(row.value(one.key()) == one.value(), qPrintable(one.key() + " is " + QJsonDocument({row.value(one.key())}).toJson()));
        QCOMPARE(row.size(), want.size() + 2);  // lat, lon
    }
    void leavesWhatIsNotKnownNull()
    {
        book::TestRow bare;
        bare.number = "1";
        bare.id = "5f6a7b8c-0000-4000-8000-000000000001";
        QCOMPARE(told(write("bare.gpkg", {bare})), QString());
        const QJsonObject row = sample::rows({at("bare.gpkg")}).at(0).toObject();
        QStringList known;
        for (auto one = row.begin(); one != row.end(); ++one)
            if (!one.value().isNull())
                known << one.key();
        QCOMPARE(known, QStringList({"conflict", "fid", "purpose", "state", "test_id", "test_number"}));
    }
    void namesDensityColumnsByTheUnitOfTheJob()
    {
        auto job = sample::job();
        job.densityUnit = "kg/m3";
        QCOMPARE(told(gis::exportTests(at("metric.gpkg").toStdString(), job, sample::tests(1), {})), QString());
        const QJsonObject row = sample::rows({at("metric.gpkg")}).at(0).toObject();
        QVERIFY(row.contains("dry_density_kg_m3") && row.contains("maximum_dry_density_kg_m3") && !row.contains("dry_density_lb_ft3"));
    }
    void ordersRowsByNumberWhateverTheInput()
    {
        auto tests = sample::tests(12);
        tests[0].number = "2R1";
        std::reverse(tests.begin(), tests.end());
        QCOMPARE(told(write("order.gpkg", tests)), QString());
        QStringList numbers;
        for (const auto& row : sample::rows({at("order.gpkg")}))
            numbers << row.toObject().value("test_number").toString();
        QCOMPARE(numbers.join(' '), QString("2 2R1 3 4 5 6 7 8 9 10 11 12"));
        QVERIFY(book::numberBefore("T-2", "T-10") && !book::numberBefore("T-10", "T-2") && book::numberBefore("007", "7") && !book::numberBefore("7", "7"));
    }
    void givesTheSameBytesForTheSameTests()
    {
        auto tests = sample::tests(200);
        QCOMPARE(told(write("one.gpkg", tests)), QString());
        QCOMPARE(told(gis::exportTestsGeoJson(at("one.geojson").toStdString(), sample::job(), tests, {})), QString());
        QTest::qWait(1100);  // a second on the clock, where a date of today would show
        std::reverse(tests.begin(), tests.end());
        QCOMPARE(told(write("two.gpkg", tests)), QString());
        QCOMPARE(told(gis::exportTestsGeoJson(at("two.geojson").toStdString(), sample::job(), tests, {})), QString());
        QVERIFY(sample::bytes(at("one.gpkg")).size() > 100000);
        QVERIFY(sample::bytes(at("one.gpkg")) == sample::bytes(at("two.gpkg")));
        QVERIFY(sample::bytes(at("one.geojson")) == sample::bytes(at("two.geojson")));
        tests[0].wet = "121.5";
        QCOMPARE(told(write("two.gpkg", tests)), QString());
        QVERIFY(sample::bytes(at("one.gpkg")) != sample::bytes(at("two.gpkg")));
    }
    void listsTheWordsAndTellsTheTitlesOfTheColumns()
    {
        QCOMPARE(told(write("schema.gpkg", sample::tests(1))), QString());
        const auto read = sample::python({"-c",
            "import sqlite3,sys; c=sqlite3.connect(sys.argv[1])\n"
            "print([*c.execute(\"select constraint_name, constraint_type, group_concat(value, '|') from (select * from gpkg_data_column_constraints order by value) group by 1 order by 1\")])\n"
            "print([*c.execute(\"select column_name, constraint_name from gpkg_data_columns where constraint_name is not null order by 1\")])\n"
            "print([*c.execute(\"select count(*), sum(length(title)>0 and length(description)>0) from gpkg_data_columns\")])\n"
            "print([*c.execute(\"select title, description from gpkg_data_columns where column_name='offset_ft'\")])\n"
            "print(c.execute('select count(*) from rtree_density_test_geom').fetchone()[0])", at("schema.gpkg")});
        QCOMPARE(read.out.split('\n').mid(0, 5),
                 QStringList({"[('density_test_coarse_pct', 'range', None), ('density_test_conflict', 'range', None), ('density_test_latitude_deg', 'range', None), "
                              "('density_test_longitude_deg', 'range', None), ('test_purpose', 'enum', 'directed|random|retest'), "
                              "('test_state', 'enum', 'fail|information only|open|pass|void|waiting')]",
                              "[('coarse_pct', 'density_test_coarse_pct'), ('conflict', 'density_test_conflict'), ('latitude_deg', 'density_test_latitude_deg'), "
                              "('longitude_deg', 'density_test_longitude_deg'), ('purpose', 'test_purpose'), ('state', 'test_state')]", "[(53, 53)]",
                              "[('Offset (ft)', 'Distance from the alignment, right of rising stations positive, feet.')]", "1"}));
    }
    void keepsATestWithoutPositionAsARowWithoutPoint()
    {
        auto tests = sample::tests(3);
        tests[1].north = tests[1].east = 0;
        tests[2].north = std::nan("");
        QCOMPARE(told(write("nowhere.gpkg", tests)), QString());
        const QJsonArray rows = sample::rows({at("nowhere.gpkg")});
        QCOMPARE(rows.size(), 3);
        QVERIFY(rows.at(0).toObject().contains("x") && !rows.at(1).toObject().contains("x") && !rows.at(2).toObject().contains("x"));
    }
    void writesGeoJsonInLongitudeAndLatitude()
    {
        auto tests = sample::tests(2);
        tests[1].north = tests[1].east = 0;
        QCOMPARE(told(gis::exportTestsGeoJson(at("tests.geojson").toStdString(), sample::job(), tests, {})), QString());
        const QJsonObject file = QJsonDocument::fromJson(sample::bytes(at("tests.geojson"))).object();
        QCOMPARE(file.value("type").toString(), QString("FeatureCollection"));
        QVERIFY(!file.contains("crs"));
        const QJsonArray features = file.value("features").toArray();
        QCOMPARE(features.size(), 2);
        QVERIFY(features.at(1).toObject().value("geometry").isNull());
        const QJsonObject first = features.at(0).toObject();
        QCOMPARE(first.value("geometry").toObject().value("type").toString(), QString("Point"));
        // 39d20' N 122d00' W is N 2247404.250 E 6561666.667 ftUS (tests/tables/state_plane_83_feet.tsv [PROJ-NAD83T]); test 1 lies 1 ft north.
        const QJsonArray place = first.value("geometry").toObject().value("coordinates").toArray();
        QVERIFY(std::abs(place.at(0).toDouble() + 122) < 1e-8);
        QVERIFY(std::abs(place.at(1).toDouble() - (39 + 1 / 3.0 + 0.3048006 / 111023.0)) < 2e-8);
        QCOMPARE(first.value("properties").toObject().size(), 53);
        QCOMPARE(first.value("properties").toObject().value("dry_density_lb_ft3").toDouble(), 107.3);
        QVERIFY(first.value("properties").toObject().value("coarse_pct").isNull());
        QCOMPARE(first.value("properties").toObject().value("started_utc").toString(), QString("2026-06-02T01:15:07.250Z"));
    }
    void describesEveryColumnInTheDocs()
    {
        const QString page = sample::bytes(GROUNDCOUNT_SOURCE_DIR "/docs/geopackage-layers.md");
        const auto layer = gis::testLayer(sample::job(), gis::inNumberOrder({}), {});
        QVERIFY(layer && layer->fields.size() == 53);
        for (const auto& field : layer->fields) {
            const QString name = QString::fromStdString(field.name).replace("_lb_ft3", "_*");
            QVERIFY2(page.contains("| `" + name + "` |"), qPrintable(name));
            QVERIFY2(page.contains(QString::fromStdString(field.what)), field.what.c_str());
        }
    }
};

QTEST_GUILESS_MAIN(TestLayerTest)
#include "test_layer_test.moc"
