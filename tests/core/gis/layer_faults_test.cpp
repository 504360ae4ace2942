#include "gis/instant.h"
#include "gis/layer_check.h"
#include "gis/test_layer.h"
#include "sample_tests.h"

#include <QTemporaryDir>
#include <QtTest>
#include <csignal>
#include <sys/mount.h>
#include <sys/resource.h>
#include <unistd.h>

using namespace groundcount;

namespace {

/// Files of this process end at `bytes` while it lives; a longer write fails with EFBIG.
class SizeLimit {
public:
    explicit SizeLimit(rlim_t bytes)
    {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit now{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &now);
    }
    ~SizeLimit() { setrlimit(RLIMIT_FSIZE, &m_before); }

private:
    rlimit m_before{};
};

QString told(const Result<void>& result)
{
    return result ? QString("done") : QString::fromStdString(result.error().what);
}

}  // namespace

/// An older hand-over file must survive whatever goes wrong, and nothing may be left beside it.
class LayerFaultsTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QString m_file;
    QByteArray m_before;

    Result<void> write(const std::vector<book::TestRow>& tests, const gis::ExportOptions& options = {}) const
    {
        return gis::exportTests(m_file.toStdString(), sample::job(), tests, options);
    }
    bool untouched() const
    {
        return sample::bytes(m_file) == m_before && QDir(m_folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot) == QStringList{"hand-over.gpkg"};
    }
private slots:
    void init()
    {
        m_file = m_folder.filePath("hand-over.gpkg");
        QVERIFY(write(sample::tests(5)));
        m_before = sample::bytes(m_file);
        QVERIFY(untouched() && m_before.size() > 50000);
    }
    void replacesAnOlderFile()
    {
        QVERIFY(write(sample::tests(6)));
        QVERIFY(sample::bytes(m_file) != m_before);
        QVERIFY(gis::checkGeoPackage(m_file.toStdString(), {{"density_test", 6, 6}}));
    }
    void keepsTheOlderFileWhenTheDiskRefusesAtAnySize()
    {
        const auto tests = sample::tests(400);
        const QString whole = m_folder.filePath("whole.gpkg");
        QVERIFY(gis::exportTests(whole.toStdString(), sample::job(), tests, {}));
        const auto size = QFileInfo(whole).size();
        QVERIFY(QFile::remove(whole));
        int failed = 0;
        for (qint64 limit = 0; limit < size; limit += size / 60) {
            Result<void> result;
            {
                const SizeLimit full(static_cast<rlim_t>(limit));
                result = write(tests);
            }
            QVERIFY2(!result, qPrintable(QString("%1 of %2 bytes").arg(limit).arg(size)));
            QCOMPARE(result.error().fault, Fault::Unavailable);
            QVERIFY2(untouched(), qPrintable(QString::number(limit)));
            ++failed;
        }
        qInfo("%d limits below %lld bytes, all refused", failed, static_cast<long long>(size));
        QVERIFY(failed >= 60);
    }
    void keepsTheOlderGeoJsonWhenTheDiskRefuses()
    {
        const QTemporaryDir folder;
        const auto path = folder.filePath("tests.geojson");
        const auto written = [&](int count) { return gis::exportTestsGeoJson(path.toStdString(), sample::job(), sample::tests(count), {}); };
        QVERIFY(written(2));
        const QByteArray before = sample::bytes(path);
        for (const rlim_t limit : {0, 100, 4000, 20000, 100000}) {
            Result<void> result;
            {
                const SizeLimit full(limit);
                result = written(200);
            }
            QVERIFY2(!result, qPrintable(QString::number(limit)));
            QVERIFY(sample::bytes(path) == before && QDir(folder.path()).count() == 3);  // with . and ..
        }
    }
    void keepsTheOlderFileOnAFullDisk()
    {
        const QTemporaryDir folder;
        if (::mount("tmpfs", folder.path().toUtf8().constData(), "tmpfs", 0, "size=400k") != 0)
            QSKIP("mounting a small tmpfs needs more rights than this user has; the size limits of the slot above stand in");
        const auto path = folder.filePath("tests.gpkg").toStdString();
        const auto first = gis::exportTests(path, sample::job(), sample::tests(5), {});
        const QByteArray before = sample::bytes(QString::fromStdString(path));
        const auto second = gis::exportTests(path, sample::job(), sample::tests(2000), {});
        const QByteArray after = sample::bytes(QString::fromStdString(path));
        const auto left = QDir(folder.path()).count();
        ::umount(folder.path().toUtf8().constData());
        QVERIFY2(first, qPrintable(told(first)));
        QVERIFY(!second);
        qInfo("%s", second.error().what.c_str());
        QVERIFY(after == before && left == 3u);
    }
    void refusesFoldersThatCannotBeWritten()
    {
        for (const char* path : {"/proc/hand-over.gpkg", "/nowhere/at/all/hand-over.gpkg"}) {
            const auto result = gis::exportTests(path, sample::job(), sample::tests(1), {});
            QVERIFY2(!result && result.error().fault == Fault::Unavailable, path);
            QVERIFY2(told(result).startsWith("Cannot write beside " + QString(path)), qPrintable(told(result)));
        }
    }
    void refusesAFileThatIsOpenElsewhere()
    {
        for (const char* journal : {"-wal", "-journal"}) {
            QFile beside(m_file + journal);
            QVERIFY(beside.open(QIODevice::WriteOnly) && beside.write("x") == 1);
            beside.close();
            QVERIFY2(told(write(sample::tests(6))).contains("is open in another program"), journal);
            QVERIFY(beside.remove() && untouched());
        }
    }
    void stopsWhenAskedAndKeepsTheOlderFile()
    {
        const auto result = write(sample::tests(10), {.keepOn = [](std::size_t written) { return written < 4; }});
        QCOMPARE(told(result), QString("The export was stopped after 4 rows."));
        QVERIFY(untouched());
    }
    void namesTestAndColumnOfABrokenFigure()
    {
        auto tests = sample::tests(3);
        tests[1].dry = "107,3";
        QCOMPARE(told(write(tests)), QString("Test 2: dry_density_lb_ft3 must be a decimal number; it is \"107,3\"."));
        tests[1].dry = "NaN";
        QVERIFY(!write(tests));
        tests[1].dry = "107.3";
        tests[2].verdictAt = "2026-13-02T00:00:00.000Z";
        QCOMPARE(told(write(tests)), QString("Test 3: verdict_utc must be a UTC time; it is \"2026-13-02T00:00:00.000Z\"."));
        QVERIFY(untouched());
    }
    void refusesAJobThatCannotBePlaced()
    {
        const auto refusal = [&](auto change) {
            auto job = sample::job();
            change(job);
            const auto result = gis::exportTests(m_file.toStdString(), job, sample::tests(1), {});
            return !result && result.error().fault == Fault::Refused ? told(result) : QString();
        };
        QVERIFY(refusal([](auto& job) { job.epsg = 0; }).contains("it has none"));
        QVERIFY(refusal([](auto& job) { job.epsg = 999999; }).contains("999999"));
        QVERIFY(refusal([](auto& job) { job.epsg = 4269; }).contains("must be a projected one"));
        QVERIFY(refusal([](auto& job) { job.metresPerGridUnit = 0.3048; }).contains("grid unit"));
        QVERIFY(refusal([](auto& job) { job.metresPerGridUnit = std::nan(""); }).contains("grid unit"));
        QVERIFY(refusal([](auto& job) { job.densityUnit = "g/cm3"; }).contains("it is \"g/cm3\""));
        QVERIFY(!gis::exportTests(m_folder.filePath("x.shp").toStdString(), sample::job(), {}, {}));
        QVERIFY(!gis::exportTestsGeoJson(m_folder.filePath("x.gpkg").toStdString(), sample::job(), {}, {}));
        QVERIFY(untouched());
    }
    void findsAFileWithAnotherNumberOfRowsOrPoints()
    {
        QVERIFY(gis::checkGeoPackage(m_file.toStdString(), {{"density_test", 5, 5}}));
        QVERIFY(told(gis::checkGeoPackage(m_file.toStdString(), {{"density_test", 6, 5}})).contains("must hold 6 rows"));
        QVERIFY(!gis::checkGeoPackage(m_file.toStdString(), {{"density_test", 5, 4}}));
        QVERIFY(!gis::checkGeoPackage(m_file.toStdString(), {{"lot", 5, 5}}));
    }
    void readsTimesAndWritesThemOnTheClockOfTheJob()
    {
        const auto local = [](const char* utc, int offset) { return QString::fromStdString(gis::localTimeText(*gis::parseInstant(utc), offset)); };
        QCOMPARE(local("2026-03-01T02:30:00.000Z", -420), QString("2026-02-28T19:30:00-07:00"));
        QCOMPARE(local("2024-02-28T20:00:59Z", 345), QString("2024-02-29T01:45:59+05:45"));
        QCOMPARE(gis::instantText(*gis::parseInstant("2026-06-01T01:02:03.007Z")), std::string("2026-06-01T01:02:03.007Z"));
        for (const char* wrong : {"", "2026-06-01", "2026-06-01T01:02:03", "2026-06-01 01:02:03Z", "2026-02-29T01:02:03Z", "2026-06-01T24:00:00Z",
                                  "2026-06-01T01:60:00Z", "2026-06-01T01:02:60Z", "2026-06-01T01:02:03.0071Z", "2026-06-01T01:02:+3Z", "2026-06-01T01:02:03+00:00"})
            QVERIFY2(!gis::parseInstant(wrong), wrong);
    }
};

QTEST_GUILESS_MAIN(LayerFaultsTest)
#include "layer_faults_test.moc"
