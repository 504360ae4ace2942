#include "gis/test_layer.h"
#include "sample_tests.h"

#include <QTemporaryDir>
#include <QtTest>
#include <random>

using namespace groundcount;

namespace {

enum class Places { All, Some };

/// Tests in a field of 3000 by 5000 ft; every seventh stands where the one before it does, with Places::Some every eleventh has none.
std::vector<book::TestRow> scattered(int count, Places places)
{
    std::mt19937 random(7);
    auto tests = sample::tests(count);
    for (int i = 0; i < count; ++i) {
        auto& test = tests[static_cast<std::size_t>(i)];
        const double north = static_cast<double>(random() % 3'000'000) / 1000, east = static_cast<double>(random() % 5'000'000) / 1000;
        test.north = 2'247'404 + north;
        test.east = 6'561'666 + east;
        if (i % 7 == 6) {
            test.north = tests[static_cast<std::size_t>(i - 1)].north;
            test.east = tests[static_cast<std::size_t>(i - 1)].east;
        }
        if (places == Places::Some && i % 11 == 10)
            test.north = test.east = 0;
    }
    return tests;
}

// SQLite's own check of the tree, then windows of all sizes against the places themselves.
const char* const kCheck = R"py(
import random, sqlite3, struct, sys
c = sqlite3.connect(f"file:{sys.argv[1]}?mode=ro", uri=True)
print(c.execute("SELECT rtreecheck('rtree_density_test_geom')").fetchone()[0])
places = {fid: struct.unpack("<dd", geom[-16:]) for fid, geom in c.execute("SELECT fid, geom FROM density_test WHERE geom IS NOT NULL")}
print(c.execute("SELECT count(*) FROM rtree_density_test_geom").fetchone()[0] == len(places))
random.seed(3)
wrong = 0
for _ in range(200):
    x, y, w, h = 6561666 + random.uniform(-100, 5100), 2247404 + random.uniform(-100, 3100), 10 ** random.uniform(-1, 3.7), 10 ** random.uniform(-1, 3.7)
    found = {row[0] for row in c.execute("SELECT id FROM rtree_density_test_geom WHERE minx <= ? AND maxx >= ? AND miny <= ? AND maxy >= ?", (x + w, x, y + h, y))}
    inside = {fid for fid, (px, py) in places.items() if x <= px <= x + w and y <= py <= y + h}
    near = {fid for fid, (px, py) in places.items() if x - 1 <= px <= x + w + 1 and y - 1 <= py <= y + h + 1}
    wrong += not (inside <= found <= near)  # a box of 32-bit floats is up to half a foot larger here
print(wrong)
print(c.execute("SELECT max(nodeno) FROM rtree_density_test_geom_node").fetchone()[0]))py";

}  // namespace

class PackedIndexTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
private slots:
    void isATreeThatSqliteFindsSound_data()
    {
        QTest::addColumn<int>("tests");
        QTest::addColumn<int>("nodes");
        // A node holds 51 cells; a tree of 51 full leaves holds 2,601.
        for (const auto& [tests, nodes] : {std::pair{0, 1}, {1, 1}, {51, 1}, {52, 3}, {2601, 52}, {2602, 55}, {30'000, 602}})
            QTest::addRow("%d", tests) << tests << nodes;
    }
    void isATreeThatSqliteFindsSound()
    {
        QFETCH(int, tests);
        QFETCH(int, nodes);
        const QString path = m_folder.filePath(QString("%1.gpkg").arg(tests));
        QVERIFY(gis::exportTests(path.toStdString(), sample::job(), scattered(tests, Places::All), {}));
        const auto ran = sample::python({"-c", kCheck, path});
        QCOMPARE(ran.out.split('\n', Qt::SkipEmptyParts), QStringList({"ok", "True", "0", QString::number(nodes)}));
    }
    void takesRowsOfOtherProgramsAfterwards()
    {
        const QString path = m_folder.filePath("grown.gpkg");
        QVERIFY(gis::exportTests(path.toStdString(), sample::job(), scattered(3000, Places::Some), {}));
        const auto grown = sample::python({"-c", R"py(
import sys
from osgeo import ogr
ogr.UseExceptions()
d = ogr.Open(sys.argv[1], 1)
layer = d.GetLayerByName("density_test")
for i in range(500):
    f = ogr.Feature(layer.GetLayerDefn()); f["test_number"] = f"new {i}"; f["state"] = "open"
    f.SetGeometry(ogr.CreateGeometryFromWkt(f"POINT({6561700 + i * 3} {2247500 + i})")); layer.CreateFeature(f)
for i in range(1, 3000, 5):
    layer.DeleteFeature(i)
)py", path});
        QVERIFY2(grown.exit == 0, qPrintable(grown.out));
        const auto ran = sample::python({"-c", kCheck, path});
        QCOMPARE(ran.out.split('\n', Qt::SkipEmptyParts).mid(0, 3), QStringList({"ok", "True", "0"}));
    }
};

QTEST_GUILESS_MAIN(PackedIndexTest)
#include "packed_index_test.moc"
