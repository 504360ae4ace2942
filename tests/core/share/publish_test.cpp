#include "core/book/sample_book.h"
#include "core/share/postgres.h"

#include "gis/hand_over.h"
#include "share/publish.h"

#include <QtTest>
#include <atomic>
#include <set>
#include <thread>

using namespace sample;
using groundcount::Fault;
using groundcount::Result;
using groundcount::share::publish;
using groundcount::share::PublishAsk;

namespace {

QString told(const Result<std::vector<groundcount::gis::LayerCount>>& result)
{
    return result ? QString("done") : QString::fromStdString(result.error().what);
}

Body place(double north, double east)
{
    return {{"grid_north_usft", std::to_string(north)}, {"grid_east_usft", std::to_string(east)}};
}

Entry lotWithGround()
{
    auto corners = Body::array();
    for (const auto& [north, east] : {std::pair{0, 0}, {0, 100}, {80, 100}, {80, 0}}) {
        Body corner = place(7012300 + north, 2512300 + east);
        corner["ring"] = 1;
        corners.push_back(corner);
    }
    return entry("lot", 50, {{"name", "Pad\twith \\ signs"}, {"material", id(kMaterial)}, {"proctor", id(kProctor)}, {"tests_per_lift", 2}, {"area", corners}});
}

}  // namespace

class PublishTest : public QObject {
    Q_OBJECT
    std::unique_ptr<Postgres> m_server;
    Bench m_bench;
    std::optional<Store> m_store;

    std::string ask(const std::string& sql) const { return m_server->ask("boss", sql); }
    Result<std::vector<groundcount::gis::LayerCount>> write(const char* schema = "north", const char* readers = "") const
    {
        PublishAsk ask;
        ask.schema = schema;
        ask.readers = readers;
        return publish(*m_store, m_server->address("boss"), ask);
    }

private slots:
    void initTestCase()
    {
        m_server = std::make_unique<Postgres>();
        m_store = m_bench.make();
        QVERIFY(m_store->sealAll(setup()));
        QVERIFY(m_store->sealAll(std::vector<Entry>{lotWithGround(), entry("lift", 51, {{"lot", id(50)}, {"number", 1}}),
                                                    entry("test-site", 20, siteBody("1"), 10), entry("test-site", 21, siteBody("2"), 20)}));
        QCOMPARE(told(write()), QString("The database has no PostGIS; its administrator runs CREATE EXTENSION postgis first."));
        if (!ask("CREATE SCHEMA gis; CREATE EXTENSION postgis SCHEMA gis").empty())
            QSKIP("PostGIS is missing: Debian package postgresql-15-postgis-3");
    }
    void publishesEveryLayer()
    {
        const auto done = write();
        QCOMPARE(told(done), QString("done"));
        QCOMPARE(done->size(), std::size_t(7));
        QCOMPARE(ask("SELECT count(*) FROM north.density_test"), std::string("2"));
        QCOMPARE(ask("SELECT gis.ST_AsText(geom) || ' ' || gis.ST_SRID(geom) FROM north.density_test WHERE test_number = '1'"), std::string("POINT(2512345.5 7012345.25) 2277"));
        QCOMPARE(ask("SELECT gis.ST_Area(geom) || ' ' || gis.ST_IsValid(geom) || ' ' || gis.GeometryType(geom) FROM north.lot WHERE lot LIKE 'Pad%'"),
                 std::string("8000 true MULTIPOLYGON"));
        QCOMPARE(ask("SELECT lot FROM north.lot WHERE lot LIKE 'Pad%'"), std::string("Pad\twith \\ signs"));
        QCOMPARE(ask("SELECT state FROM north.lift_coverage WHERE lot LIKE 'Pad%'"), std::string("untested"));
        QCOMPARE(ask("SELECT started_utc AT TIME ZONE 'UTC' FROM north.density_test WHERE test_number = '2'"), std::string("2026-06-09 12:00:20"));
        QCOMPARE(ask("SELECT text->>'book' FROM north.provenance"), m_store->bookId().value());
        QCOMPARE(ask("SELECT count(*) FROM gis.geometry_columns WHERE f_table_schema = 'north' AND srid = 2277"), std::string("7"));
        QVERIFY(ask("SELECT col_description('north.density_test'::regclass, 16)").find("Offset (ft): ") == 0);
        QCOMPARE(ask("INSERT INTO north.density_test(fid, state) VALUES (99, 'fine')"), std::string("error 23514"));
    }
    void equalsTheGeoPackageInEveryField()
    {
        groundcount::gis::HandOverAsk file;
        file.path = m_bench.at("same.gpkg");
        QVERIFY(groundcount::gis::handOver(*m_store, file));
        QProcess read;
        read.start("/usr/bin/python3", {"-c", R"py(
import sqlite3, sys
c = sqlite3.connect(sys.argv[1])
for (t,) in c.execute("SELECT table_name FROM gpkg_contents WHERE data_type = 'features' ORDER BY rowid").fetchall():
    names = [r[1] for r in c.execute(f"PRAGMA table_info({t})")][2:]
    for row in c.execute(f"SELECT fid, geom, {', '.join(names)} FROM {t} ORDER BY fid"):
        wkb = b"" if row[1] is None else row[1][8 + (32 if row[1][3] >> 1 & 7 else 0):]
        values = [t, row[0], wkb.hex()] + ["" if v is None else f"{v:.10g}" if isinstance(v, float) else v for v in row[2:]]
        print("|".join(str(v).replace("\t", " ") for v in values)))py", QString::fromStdString(file.path)});
        QVERIFY(read.waitForFinished() && read.exitCode() == 0);
        const QStringList ours = QString::fromUtf8(read.readAll()).split('\n', Qt::SkipEmptyParts);
        QVERIFY(ours.size() > 5);
        for (const QString& line : ours) {
            const QStringList values = line.split('|');
            const std::string table = values[0].toStdString(), fid = values[1].toStdString();
            const std::string all = ask("SELECT string_agg(a.attname, ',' ORDER BY attnum) FROM pg_attribute a WHERE attrelid = 'north." + table
                                        + "'::regclass AND attnum > 2 AND NOT attisdropped");
            int at = 3;
            QCOMPARE(QString::fromStdString(ask("SELECT encode(gis.ST_AsBinary(geom, 'NDR'), 'hex') FROM north." + table + " WHERE fid = " + fid)), values[2]);
            for (const QString& column : QString::fromStdString(all).split(',')) {
                const std::string name = column.toStdString();
                const bool time = column.endsWith("_utc");
                const std::string value = time ? "to_char(" + name + " AT TIME ZONE 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS.MS\"Z\"')"
                                               : "replace(CASE WHEN pg_typeof(" + name + ") = 'double precision'::regtype THEN trim_scale(" + name + "::text::numeric)::text ELSE "
                                                     + name + "::text END, E'\\t', ' ')";
                const QString theirs = QString::fromStdString(ask("SELECT coalesce(" + value + ", '') FROM north." + table + " WHERE fid = " + fid));
                bool isNumber = false, wasNumber = false;
                const double a = theirs.toDouble(&isNumber), b = values[at].toDouble(&wasNumber);
                const bool same = theirs == values[at] || (isNumber && wasNumber && std::abs(a - b) <= 1e-8 * std::max(1.0, std::abs(a)));
                QVERIFY2(same, qPrintable(values[0] + " " + column + ": " + theirs + " for " + values[at]));
                ++at;
            }
            QCOMPARE(at, static_cast<int>(values.size()));
        }
    }
    void makesTheRowsAgainAndKeepsViewsAlive()
    {
        QCOMPARE(ask("CREATE VIEW passing AS SELECT test_number FROM north.density_test"), std::string());
        QVERIFY(m_store->seal(entry("test-site", 22, siteBody("3"), 40)));
        QCOMPARE(ask("UPDATE north.density_test SET technician = 'somebody'; DELETE FROM north.lot"), std::string());
        QCOMPARE(told(write()), QString("done"));
        QCOMPARE(ask("SELECT count(*) FROM passing"), std::string("3"));
        QCOMPARE(ask("SELECT count(*) FROM north.density_test WHERE technician = 'somebody'"), std::string("0"));
        QCOMPARE(ask("SELECT count(*) FROM north.lot"), std::string("2"));
        QCOMPARE(ask("ALTER TABLE north.density_test RENAME COLUMN gauge TO device_name; COMMENT ON TABLE north.density_test IS 'other'"), std::string());
        QVERIFY(told(write()).contains("other objects depend on it"));
        QCOMPARE(ask("DROP VIEW passing"), std::string());
        QCOMPARE(told(write()), QString("done"));
        QCOMPARE(ask("SELECT count(gauge) FROM north.density_test"), std::string("3"));
    }
    void showsReadersTheOldStateOrTheNewOne()
    {
        std::atomic<bool> over = false;
        std::set<std::string> seen;
        std::thread reader([&] {
            while (!over)
                seen.insert(m_server->ask("boss", "SELECT (SELECT count(*) FROM north.density_test) || ' ' || (SELECT count(*) FROM north.lot)"));
        });
        for (int i = 0; i < 10; ++i)
            QCOMPARE(told(write()), QString("done"));
        over = true;
        reader.join();
        QCOMPARE(seen, std::set<std::string>{"3 2"});
    }
    void leavesTheTablesWhenItIsStopped()
    {
        PublishAsk stopped;
        stopped.schema = "north";
        stopped.options.keepOn = [](std::size_t rows) { return rows < 2; };
        const auto before = ask("SELECT published_at FROM north.provenance");
        QCOMPARE(told(publish(*m_store, m_server->address("boss"), stopped)), QString("Publishing was stopped after 2 rows of density_test; the tables are as they were."));
        QCOMPARE(ask("SELECT count(*) FROM north.density_test"), std::string("3"));
        QCOMPARE(ask("SELECT published_at FROM north.provenance"), before);
    }
    void opensTheTablesToReadersOnly()
    {
        QCOMPARE(ask("CREATE ROLE owner_gis LOGIN"), std::string());
        QCOMPARE(m_server->ask("owner_gis", "SELECT count(*) FROM north.lot"), std::string("error 42501"));
        QCOMPARE(told(write("north", "owner_gis")), QString("done"));
        QCOMPARE(m_server->ask("owner_gis", "SELECT count(*) FROM north.lot"), std::string("2"));
        QCOMPARE(m_server->ask("owner_gis", "DELETE FROM north.lot"), std::string("error 42501"));
        QVERIFY(told(write("north", "nobody_here")).contains("does not exist"));
    }
    void refusesSchemasOfOthersAndBadNames()
    {
        QCOMPARE(ask("CREATE SCHEMA mine"), std::string());
        QVERIFY(told(write("mine")).startsWith("The schema \"mine\" must be new or hold the layers of this book"));
        for (const char* name : {"", "North", "1a", "a b", "pg_x", "groundcount", "public", "a;drop"})
            QVERIFY2(told(write(name)).startsWith("A schema for layers must be"), name);
        Store other = m_bench.make("other", 9);
        QVERIFY(other.sealAll(setup()));
        PublishAsk ask;
        ask.schema = "north";
        QVERIFY(told(publish(other, m_server->address("boss"), ask)).startsWith("The schema \"north\" must be new"));
        QCOMPARE(this->ask("SELECT count(*) FROM north.density_test"), std::string("3"));
    }
};

QTEST_GUILESS_MAIN(PublishTest)
#include "publish_test.moc"
