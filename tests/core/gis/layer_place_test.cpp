#include "gis/test_layer.h"
#include "sample_tests.h"

#include <QJsonObject>
#include <QTemporaryDir>
#include <QtTest>
#include <cmath>

using namespace groundcount;

namespace {

struct Published {
    QString id;
    int epsg;
    double latDeg, lonDeg, northM, eastM;
};

/// Rows of a table with EPSG code, latitude, longitude and metres.
QList<Published> published(const QString& table)
{
    QList<Published> rows;
    QStringList head;
    for (const QByteArray& line : sample::bytes(GROUNDCOUNT_SOURCE_DIR "/tests/tables/" + table).split('\n')) {
        const QStringList cells = QString::fromUtf8(line).split('\t');
        if (line.startsWith('#') || cells.size() < 10)
            continue;
        if (head.isEmpty()) {
            head = cells;
            continue;
        }
        const auto cell = [&](const char* name) { return cells.at(head.indexOf(name)); };
        if (cell("result") == "ok" && cell("epsg").toInt() > 0)
            rows.append({cell("id"), cell("epsg").toInt(), cell("lat_deg").toDouble(), cell("lon_deg").toDouble(), cell("want_north_m").toDouble(), cell("want_east_m").toDouble()});
    }
    return rows;
}

}  // namespace

/// The exported points against coordinates published by the National Geodetic Survey [NGS-NCATLIB].
class LayerPlaceTest : public QObject {
    Q_OBJECT
    /// Exports each row as one test and returns the worst distance in metres between the exported point and the row's
    /// latitude and longitude.
    static double worstMetres(const QList<Published>& rows, int epsgShift, double metresPerUnit, const std::string& unit)
    {
        const QTemporaryDir folder;
        QStringList files;
        for (const Published& row : rows) {
            auto job = sample::job();
            job.epsg = row.epsg + epsgShift;
            job.metresPerGridUnit = metresPerUnit;
            job.gridUnit = unit;
            auto test = sample::test("1");
            test.north = row.northM / metresPerUnit;
            test.east = row.eastM / metresPerUnit;
            files << folder.filePath(row.id + ".gpkg");
            const auto written = gis::exportTests(files.back().toStdString(), job, std::vector{test}, {});
            if (!written)
                qWarning("%s: %s", qPrintable(row.id), written.error().what.c_str());
        }
        const QJsonArray read = sample::rows(files);
        double worst = read.size() == rows.size() && !rows.isEmpty() ? 0 : 1e9;
        for (int i = 0; i < read.size() && i < rows.size(); ++i) {
            const QJsonObject row = read.at(i).toObject();
            const double lat = rows.at(i).latDeg;
            // 111 320 m to a degree is good to 1 % and the distances are fractions of a millimetre.
            const double north = (row.value("lat").toDouble(999) - lat) * 111320;
            const double east = (row.value("lon").toDouble(999) - rows.at(i).lonDeg) * 111320 * std::cos(lat * M_PI / 180);
            worst = std::max(worst, std::hypot(north, east));
        }
        return worst;
    }
private slots:
    void putsPointsOfEveryStatePlaneZoneWithinAMillimetre()
    {
        const auto rows = published("state_plane_83.tsv");
        QVERIFY(rows.size() > 50);
        const double worst = worstMetres(rows, 0, 1, "m");
        qInfo("state plane: %d points, worst %.6f m", int(rows.size()), worst);
        QVERIFY(worst < 0.001);
    }
    void putsPointsOfUtmWithinAMillimetre()
    {
        const auto rows = published("utm_83.tsv");
        QVERIFY(rows.size() > 10);
        const double worst = worstMetres(rows, 0, 1, "m");
        qInfo("UTM: %d points, worst %.6f m", int(rows.size()), worst);
        QVERIFY(worst < 0.001);
    }
    void putsPointsInSurveyFeetWithinAMillimetre()
    {
        QList<Published> california;
        for (const auto& row : published("state_plane_83.tsv"))
            if (row.epsg >= 26941 && row.epsg <= 26946)
                california << row;
        QCOMPARE(california.size(), 4);  // zones 1, 2, 3 and 6 are in the table
        // California 1 to 6 in US survey feet are EPSG 2225 to 2230 (EPSG registry).
        const double worst = worstMetres(california, 2225 - 26941, 1200.0 / 3937.0, "ftUS");
        qInfo("survey feet: %d points, worst %.6f m", int(california.size()), worst);
        QVERIFY(worst < 0.001);
    }
};

QTEST_GUILESS_MAIN(LayerPlaceTest)
#include "layer_place_test.moc"
