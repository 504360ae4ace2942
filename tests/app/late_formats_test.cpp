#include "gis/crs.h"

#include <QCoreApplication>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

using namespace groundcount;

/// The program that people start does not carry GDAL; it loads it when a file of its formats comes (docs/decisions/0011).
class LateFormatsTest : public QObject {
    Q_OBJECT

    struct Ran {
        int status = -1;
        QByteArray out, err;
    };
    static Ran run(const QString& program, const QStringList& arguments, const QStringList& extra = {})
    {
        QProcess process;
        QStringList environment = QProcess::systemEnvironment() + extra;
        process.setEnvironment(environment);
        process.start(program, arguments);
        if (!process.waitForFinished(120'000))
            return {};
        return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
    }
    static QString app() { return QCoreApplication::applicationDirPath() + "/../app/groundcount"; }
    static QString beside(const char* name) { return QCoreApplication::applicationDirPath() + "/" + name; }

private slots:
    void theAppStartsWithoutTheLateLibraries()
    {
        // The loader lists what a program is linked with instead of starting it.
        const auto linked = run(app(), {}, {"LD_TRACE_LOADED_OBJECTS=1"});
        QVERIFY2(linked.out.contains("libQt6Quick"), linked.out);
        const QList<QByteArray> late{"libgdal", "libproj", "libgeos", "libpq"};
        for (const auto& library : late)
            QVERIFY2(!linked.out.contains(library), linked.out);
        const auto command = run(app().replace("app/groundcount", "app/command/groundbook"), {}, {"LD_TRACE_LOADED_OBJECTS=1"});
        for (const auto& library : late)
            QVERIFY2(command.out.contains(library), "The control is not linked with " + library + ", so the look above proves nothing.");
    }
    void readsASiteFile()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("wall.geojson");
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(R"({"type":"FeatureCollection","features":[{"type":"Feature","properties":{"name":"North wall"},
                   "geometry":{"type":"LineString","coordinates":[[-92.3,38.4],[-92.31,38.41]]}}]})");
        file.close();
        const auto read = run(app(), {"read-site", path});
        QVERIFY2(read.status == 0, read.err);
        const auto features = QJsonDocument::fromJson(read.out).object()["features"].toArray();
        QCOMPARE(features.size(), 1);
        QCOMPARE(features[0].toObject()["name"].toString(), QString("North wall"));
    }
    void aBrokenFileStillCostsASentence()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("wall.gpkg");
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("no GeoPackage");
        file.close();
        const auto read = run(app(), {"read-site", path});
        QCOMPARE(read.status, 1);
        QVERIFY2(read.err.contains("The file is not a GeoPackage file that can be read"), read.err);
    }
    void makesABackground()
    {
        QTemporaryDir folder;
        // 26997: NAD83 / Missouri Central, metres
        QFile system(folder.filePath("system.wkt"));
        QVERIFY(system.open(QIODevice::WriteOnly));
        system.write(QByteArray::fromStdString(gis::Crs::fromEpsg(26997)->wkt2()));
        system.close();
        const auto made = run("gdal_translate", {"-q", "-of", "GTiff", "-ot", "Byte", "-a_srs", "EPSG:26997", "-a_ullr", "500000", "300100", "500100", "300000", "-outsize", "64", "64",
                                                 "-b", "1", pictureIn(folder), folder.filePath("ground.tif")});
        QVERIFY2(made.status == 0, made.err);
        const auto read = run(app(), {"read-background", folder.filePath("ground.tif"), folder.filePath("system.wkt"), folder.filePath("out.tif")});
        QVERIFY2(read.status == 0, read.err);
        QVERIFY(QFileInfo(folder.filePath("out.tif")).size() > 0);
    }
    void saysWhenTheLibraryIsMissing()
    {
        const auto ran = run(beside("late_missing"), {});
        QCOMPARE(ran.status, 1);
        QVERIFY2(ran.out.startsWith("The library of file formats that belongs to this program cannot be loaded: "), ran.out);
        QVERIFY2(ran.out.contains("libgroundcount-not-there.so"), ran.out);
    }
    void refusesALibraryOfAnotherVersion()
    {
        const auto ran = run(beside("late_other"), {});
        QCOMPARE(ran.status, 1);
        QCOMPARE(ran.out, QByteArray("The library of file formats must be of version 0.0.0-other, as this program; install both together.\n"));
    }
    void withoutProjEveryCoordinateSystemIsRefused()
    {
        const auto ran = run(beside("late_proj_missing"), {});
        QCOMPARE(ran.status, 0);
        QCOMPARE(ran.out, QByteArray("The coordinate system database proj.db does not answer for EPSG:6420; check the PROJ installation.\n"
                                     "The EPSG code must be one of the EPSG data set; it is 26997.\n"
                                     "The coordinate system database proj.db does not answer; check the PROJ installation.\n"));
    }
    void withoutGeosThereIsNoCoverage()
    {
        const auto ran = run(beside("late_geos_missing"), {});
        QCOMPARE(ran.status, 0);
        QCOMPARE(ran.out, QByteArray("The ground of a lift must be an area; GEOS cannot be loaded; check its installation.\n"));
    }
    void withoutLibpqAServerIsOutOfReach()
    {
        const auto ran = run(beside("late_libpq_missing"), {});
        QCOMPARE(ran.status, 0);
        QCOMPARE(ran.out, QByteArray("The server's address cannot be read: the library libgroundcount-not-there.so cannot be loaded.\n"));
    }

private:
    static QString pictureIn(const QTemporaryDir& folder)
    {
        QImage picture(64, 64, QImage::Format_Grayscale8);
        picture.fill(120);
        const QString path = folder.filePath("picture.png");
        picture.save(path);
        return path;
    }
};

QTEST_GUILESS_MAIN(LateFormatsTest)
#include "late_formats_test.moc"
