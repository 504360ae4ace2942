#include "core/book/sample_book.h"
#include "gis/hand_over.h"
#include "gis/layer_source.h"
#include "gis/plain_layer.h"
#include "sample_tests.h"

#include <QJsonObject>
#include <QtTest>

using namespace groundcount;
using sample::Body;
using sample::entry;
using sample::id;

namespace {

constexpr int kTest = 20, kOther = 21, kWall = 30, kTank = 31, kLine = 40, kCorners = 50, kNoGround = 51;

QString told(const Result<gis::HandedOver>& result)
{
    return result ? QString("done") : QString::fromStdString(result.error().what);
}

Body place(double north, double east)
{
    return {{"grid_north_usft", std::to_string(north)}, {"grid_east_usft", std::to_string(east)}};
}

/// A lot by corners with a hole, one without ground, a line of another unit, obstacles with lines, two tests.
std::vector<sample::Entry> field()
{
    auto corners = Body::array();
    for (const auto& [ring, north, east] : {std::tuple{1, 0, 0}, {1, 0, 100}, {1, 80, 100}, {1, 80, 0}, {2, 20, 20}, {2, 40, 20}, {2, 40, 40}, {2, 20, 40}}) {
        Body corner = place(7012300 + north, 2512300 + east);
        corner["ring"] = ring;
        corners.push_back(corner);
    }
    auto wall = Body::array({place(7012300, 2512300), place(7012310, 2512330), place(7012310, 2512360)});
    auto ring = Body::array({place(7012320, 2512320), place(7012340, 2512320), place(7012340, 2512340)});
    Body lot{{"name", "Pad"}, {"material", id(sample::kMaterial)}, {"proctor", id(sample::kProctor)}, {"tests_per_lift", 2}, {"area", corners}};
    Body bare{{"name", "Unset"}, {"material", id(sample::kMaterial)}, {"proctor", id(sample::kProctor)}, {"tests_per_lift", 1}};
    Body wallBody = place(7012310, 2512330), tankBody = place(7012330, 2512330);
    wallBody.update({{"name", "Wall's end"}, {"obstacle_kind", "wall"}, {"radius_ft", "1.5"}, {"path", wall}});
    tankBody.update({{"name", "Tank"}, {"obstacle_kind", "structure"}, {"uncertainty_ft", "0.5"}, {"path", ring}, {"closed", true}});
    Body alignment{{"name", "Metric line"}, {"unit", "m"}, {"begin_station", "0"}, {"begin_north", "0"}, {"begin_east", "0"}, {"begin_azimuth_deg", "90"},
                   {"elements", Body::array({{{"kind", "line"}, {"length", "100"}}})}};
    Body other = sample::siteBody("2");
    other["lot"] = id(kCorners);
    other["lift"] = id(52);
    return {entry("lot", kCorners, lot), entry("lot", kNoGround, bare), entry("lift", 52, {{"lot", id(kCorners)}, {"number", 1}}),
            entry("lift", 53, {{"lot", id(kNoGround)}, {"number", 1}}), entry("obstacle", kWall, wallBody), entry("obstacle", kTank, tankBody),
            entry("alignment", kLine, alignment), entry("test-site", kTest, sample::siteBody("1"), 10), entry("test-site", kOther, other, 20)};
}

sample::Entry photo(sample::Store& store, int subject, const char* content, const char* name)
{
    const auto blob = store.putBlob(content).value();
    return entry("photo", subject, {{"blob", blob}, {"media_type", "image/png"}, {"name", name}}, 30);
}

const char* const kReader = R"(
import json, sqlite3, sys
c = sqlite3.connect(sys.argv[1]); c.row_factory = sqlite3.Row
out = {}
for (table,) in c.execute("SELECT table_name FROM gpkg_contents ORDER BY rowid").fetchall():
    out[table] = [{k: (row[k].hex() if isinstance(row[k], bytes) else row[k]) for k in row.keys()} for row in c.execute(f"SELECT * FROM {table}")]
for table in ("gpkgext_relations", "density_test_photo", "lot_photo"):
    if c.execute("SELECT 1 FROM sqlite_master WHERE name = ?", (table,)).fetchone():
        out[table] = [dict(row) for row in c.execute(f"SELECT * FROM {table}")]
print(json.dumps(out)))";

}  // namespace

class HandOverTest : public QObject {
    Q_OBJECT
    sample::Bench m_bench;
    std::optional<sample::Store> m_store;

    Result<gis::HandedOver> write(const char* name, gis::ExportOptions options = {})
    {
        gis::HandOverAsk ask;
        ask.path = m_bench.at(name);
        ask.options = std::move(options);
        return gis::handOver(*m_store, ask);
    }
    QJsonObject read(const char* name) const
    {
        const auto ran = sample::python({"-c", kReader, QString::fromStdString(m_bench.at(name))});
        if (ran.exit != 0)
            qWarning("%s", qPrintable(ran.out));
        return QJsonDocument::fromJson(ran.out.toUtf8()).object();
    }
    QJsonObject row(const char* file, const char* layer, int index) const { return read(file).value(layer).toArray().at(index).toObject(); }

private slots:
    void initTestCase()
    {
        m_store = m_bench.make();
        QVERIFY(m_store->sealAll(sample::setup()));
        const auto sealed = m_store->sealAll(field());
        QVERIFY2(sealed, sealed ? "" : sealed.error().what.c_str());
    }
    void drawsWhatItCanAndSaysWhyNotOtherwise()
    {
        QCOMPARE(told(write("one.gpkg")), QString("done"));
        const auto valid = sample::python({"-m", "osgeo_utils.samples.validate_gpkg", "-k", "--extra", QString::fromStdString(m_bench.at("one.gpkg"))});
        QVERIFY2(valid.exit == 0, qPrintable(valid.out));
        const QJsonObject pad = row("one.gpkg", "lot", 1);
        QCOMPARE(pad.value("lot").toString(), QString("Pad"));
        // 100 x 80 less 20 x 20 survey feet, in international feet.
        QVERIFY(std::abs(pad.value("area_ft2").toDouble() - 7600 * std::pow(1200 / 3937.0 / 0.3048, 2)) < 1e-6);
        QVERIFY(pad.value("not_drawn").isNull());
        const QJsonObject bare = row("one.gpkg", "lot", 2);
        QVERIFY(bare.value("geom").isNull() && bare.value("area_ft2").isNull());
        QCOMPARE(bare.value("not_drawn").toString(), QString("The ground of lot Unset is not sealed: it needs corners, or two stations and the offsets to its edges."));
        const QJsonObject line = row("one.gpkg", "alignment", 0);
        QVERIFY(line.value("geom").isNull() && line.value("true_length").toDouble() == 100);
        QCOMPARE(line.value("not_drawn").toString(), QString("The unit of the line must be that of the job's grid, ftUS; it is m."));
    }
    void showsALiftWithoutTestsAsUntested()
    {
        const auto lifts = read("one.gpkg").value("lift_coverage").toArray();
        QCOMPARE(lifts.size(), 3);
        const QJsonObject pad = lifts.at(1).toObject();
        QCOMPARE(pad.value("lot").toString(), QString("Pad"));
        QCOMPARE(pad.value("state").toString(), QString("untested"));
        QVERIFY(pad.value("area_ft2").toDouble() > 7599 && pad.value("area_ft2").toDouble() == pad.value("lift_untested_ft2").toDouble());
        QVERIFY(pad.value("beyond_share_ft2").toDouble() == pad.value("area_ft2").toDouble() && !pad.value("geom").isNull());
        QVERIFY(lifts.at(2).toObject().value("not_drawn").toString().contains("is not sealed"));
    }
    void writesLinesOfObstaclesOpenAndClosed()
    {
        const auto lines = read("one.gpkg").value("obstacle_line").toArray();
        QCOMPARE(lines.size(), 2);
        const QJsonObject tank = lines.at(0).toObject();
        QCOMPARE(tank.value("closed").toInt(), 1);
        QCOMPARE(tank.value("uncertainty_ft").toDouble(), 0.5);
        // Header of 8 bytes, envelope of 32, then order, type 2 and four places: the first one closes the ring.
        QVERIFY(tank.value("geom").toString().mid(80).startsWith("010200000004000000"));
        QCOMPARE(tank.value("geom").toString().mid(98, 32), tank.value("geom").toString().right(32));
        QVERIFY(lines.at(1).toObject().value("geom").toString().mid(80).startsWith("010200000003000000"));
        QCOMPARE(row("one.gpkg", "obstacle", 1).value("obstacle").toString(), QString("Wall's end"));
        QCOMPARE(row("one.gpkg", "obstacle", 1).value("has_line").toInt(), 1);
    }
    void joinsPhotosToWhatTheyShow()
    {
        QVERIFY(!read("one.gpkg").contains("photo"));
        const auto first = photo(*m_store, kTest, "first picture", "before.png");
        const auto lot = photo(*m_store, kCorners, "a lot", "lot.png");
        const auto person = photo(*m_store, sample::kPerson, "nobody's layer", "face.png");
        const auto sealed = m_store->sealAll(std::vector<sample::Entry>{first, lot, person});
        QVERIFY2(sealed, sealed ? "" : sealed.error().what.c_str());
        const auto done = write("photos.gpkg");
        QCOMPARE(told(done), QString("done"));
        QCOMPARE(done->photos, 2u);
        const auto valid = sample::python({"-m", "osgeo_utils.samples.validate_gpkg", "-k", "--extra", QString::fromStdString(m_bench.at("photos.gpkg"))});
        QVERIFY2(valid.exit == 0, qPrintable(valid.out));
        const QJsonObject all = read("photos.gpkg");
        const auto photos = all.value("photo").toArray();
        QCOMPARE(photos.size(), 2);
        QCOMPARE(all.value("gpkgext_relations").toArray().size(), 2);
        const auto joined = all.value("density_test_photo").toArray().at(0).toObject();
        const auto shown = photos.at(joined.value("related_id").toInt() - 1).toObject();
        QCOMPARE(QByteArray::fromHex(shown.value("data").toString().toLatin1()), QByteArray("first picture"));
        QCOMPARE(shown.value("name").toString(), QString("before.png"));
        QCOMPARE(all.value("density_test").toArray().at(joined.value("base_id").toInt() - 1).toObject().value("test_number").toString(), QString("1"));
        QCOMPARE(all.value("lot_photo").toArray().size(), 1);
    }
    void givesTheSameBytesFromACopyOfTheBook()
    {
        const auto copy = m_bench.at("copy.fieldbook");
        QVERIFY(m_store->handOver(copy));
        QCOMPARE(told(write("a.gpkg")), QString("done"));
        const auto other = sample::Store::open(copy, book::OpenMode::ReadOnly);
        QVERIFY(other);
        gis::HandOverAsk ask;
        ask.path = m_bench.at("b.gpkg");
        QVERIFY(gis::handOver(*other, ask));
        const auto a = sample::bytes(QString::fromStdString(m_bench.at("a.gpkg")));
        QVERIFY(a.size() > 100000 && a == sample::bytes(QString::fromStdString(m_bench.at("b.gpkg"))));
    }
    void keepsTheOlderFileWhenItIsStopped()
    {
        const auto before = sample::bytes(QString::fromStdString(m_bench.at("a.gpkg")));
        for (const std::size_t most : {0u, 1u, 3u, 8u}) {
            const auto result = write("a.gpkg", {.keepOn = [most](std::size_t written) { return written < most; }});
            QCOMPARE(told(result), QString("The export was stopped after %1 rows.").arg(most));
            QVERIFY(sample::bytes(QString::fromStdString(m_bench.at("a.gpkg"))) == before);
        }
    }
    void stopsWhileItIsReadAgainToo()
    {
        const auto before = sample::bytes(QString::fromStdString(m_bench.at("a.gpkg")));
        std::size_t most = 0;
        QCOMPARE(told(write("all.gpkg", {.keepOn = [&](std::size_t written) { return most = std::max(most, written), true; }})), QString("done"));
        QVERIFY(most > 8);
        const auto result = write("a.gpkg", {.keepOn = [most](std::size_t written) { return written < most; }});
        QCOMPARE(told(result), QString("The export was stopped while the written file was read again."));
        QVERIFY(sample::bytes(QString::fromStdString(m_bench.at("a.gpkg"))) == before);
    }
    void describesEveryColumnInTheDocs()
    {
        const QString page = sample::bytes(GROUNDCOUNT_SOURCE_DIR "/docs/geopackage-layers.md");
        const auto source = gis::layerSource(*m_store);
        QVERIFY(source);
        const auto layers = gis::layersOf(*source, {});
        QVERIFY(layers && layers->size() == 7);
        int columns = 0;
        for (const auto& layer : *layers) {
            const QString head = QString("## %1\n\n%2. %3 Geometry: ").arg(layer.name.c_str(), layer.title.c_str(), layer.what.c_str());
            QVERIFY2(page.contains(head), qPrintable(head));
            const auto shortNames = gis::shapefileNames(layer.fields);
            const QString table = page.mid(page.indexOf(head)).section("\n## ", 0, 0);
            for (std::size_t i = 0; i < layer.fields.size(); ++i, ++columns) {
                const auto& field = layer.fields[i];
                const QString name = QString::fromStdString(field.name).replace("_lb_ft3", "_*").replace("_ft2", "_*").replace("largest_patch_ft", "largest_patch_*");
                const QString line = QString("\n| `%1` | %2 | %3 | `%4` | %5 |\n")
                                         .arg(name, field.title.c_str(), gis::typeName(field.form), shortNames[i].c_str(), field.what.c_str());
                QVERIFY2(table.contains(line), qPrintable(line));
            }
            QCOMPARE(table.count("\n| `"), static_cast<int>(layer.fields.size()));
        }
        QCOMPARE(columns, 139);
    }
    void isOfOneMomentWhateverIsSealedMeanwhile()
    {
        const auto pad = [&](const char* file) { return row(file, "lift_coverage", 1).value("state").toString(); };
        const auto test = [&](const char* file) { return row(file, "density_test", 1).value("state").toString(); };
        auto other = sample::Store::open(m_bench.path, book::OpenMode::ReadWrite, sample::key());
        QVERIFY(other);
        const auto site = other->records({.subject = id(kOther), .kind = "test-site"})->back();
        bool sealed = false;
        const auto during = write("moment.gpkg", {.keepOn = [&](std::size_t written) {
            if (written == 2)  // both tests are written, the coverage is not
                sealed = other->seal(entry("verdict", kOther, sample::verdictBody("pass", site.hash), 50)).has_value();
            return true;
        }});
        QCOMPARE(told(during), QString("done"));
        QVERIFY(sealed);
        QCOMPARE(test("moment.gpkg") + ", " + pad("moment.gpkg"), QString("open, untested"));
        QCOMPARE(told(write("after.gpkg")), QString("done"));
        QCOMPARE(test("after.gpkg") + ", " + pad("after.gpkg"), QString("pass, pass"));
    }
    void refusesAWordOutsideItsListAndTellsTheLayer()
    {
        gis::HandOverAsk ask;
        ask.path = m_bench.at("x.gpkg");
        ask.layers = {"road"};
        QCOMPARE(told(gis::handOver(*m_store, ask)), QString("There is no layer \"road\" to hand over."));
        QCOMPARE(QString::fromStdString(gis::handOverFormat("dwx").error().what), QString("A format must be gpkg, geojson, csv, shp or kml; it is \"dwx\"."));
    }
};

QTEST_GUILESS_MAIN(HandOverTest)
#include "hand_over_test.moc"
