#pragma once

#include "book/state.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>
#include <QStringList>
#include <vector>

/// A made-up job and the readers that the layer tests hold the export against.
namespace sample {

inline groundcount::book::JobRow job()
{
    groundcount::book::JobRow row;
    row.id = "0b1c2d3e-0000-4000-8000-000000000001";
    row.name = "Mill Creek levee";
    row.densityUnit = "lb/ft3";
    row.gridUnit = "ftUS";
    row.epsg = 2226;  // NAD83, California 2, US survey feet
    row.metresPerGridUnit = 1200.0 / 3937.0;
    return row;
}

inline groundcount::book::TestRow test(const std::string& number)
{
    groundcount::book::TestRow row;
    row.id = "5f6a7b8c-0000-4000-8000-0000000" + std::to_string(10000 + std::stoi(number));
    row.number = number;
    row.lotName = "Lot A, core's edge";
    row.liftNumber = 3;
    row.gaugeName = "G-7";
    row.personName = "Ida Quill";
    row.certificate = "C-1182";
    row.materialName = "Sandy clay";
    row.proctorName = "P-4";
    row.state = groundcount::book::TestState::Fail;
    row.reasons = {"93.4 % is below the minimum of 95 %", "water content is above the window"};
    row.startedAt = "2026-06-02T01:15:07.250Z";
    row.verdictAt = "2026-06-02T01:31:59.000Z";
    row.offsetMinutes = -420;
    row.north = 2247404.25 + std::stoi(number);
    row.east = 6561666.667;
    row.latitudeDeg = 39.33333333;
    row.longitudeDeg = -122.00000001;
    row.ellipsoidHeightM = 12.5;
    row.sigmaNorthM = 0.011;
    row.sigmaEastM = 0.009;
    row.fixes = 12;
    row.fixKind = "RTK fixed";
    row.stationFt = 5338.3;
    row.offsetFt = -12.5;
    row.mode = "direct";
    row.depthInText = "8";
    row.wet = "121.4";
    row.water = "14.10";
    row.dry = "107.3";
    row.contentPct = "13.1";
    row.compactionPct = "93.4";
    row.maximum = "114.9";
    row.optimumPct = "12.0";
    row.minimumPct = "95";
    row.windowLowPct = "10.0";
    row.windowHighPct = "14.0";
    row.densityStandard = "2841";
    row.moistureStandard = "715";
    row.densityCount = "1532";
    row.moistureCount = "188";
    row.overrides = "wall at 20 in., trench correction made";
    row.ruleSetHash = std::string(64, 'a');
    row.coreVersion = "0.1.0";
    row.recordHash = std::string(64, 'b');
    row.device = std::string(64, 'c');
    return row;
}

inline std::vector<groundcount::book::TestRow> tests(int count)
{
    std::vector<groundcount::book::TestRow> rows;
    for (int number = 1; number <= count; ++number)
        rows.push_back(test(std::to_string(number)));
    return rows;
}

inline QByteArray bytes(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

struct Ran {
    int exit = -1;
    QString out;
};

/// Output and exit status of a program; -1 when it did not run.
inline Ran run(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    if (!process.waitForFinished(120000) || process.exitStatus() != QProcess::NormalExit)
        return {};
    return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

/// Debian's python, which has GDAL's own validator and bindings.
inline Ran python(const QStringList& arguments)
{
    return run("/usr/bin/python3", arguments);
}

/// Rows of `density_test` by layer_as_json.py, which reads the file with SQLite alone.
inline QJsonArray rows(const QStringList& files)
{
    const Ran ran = python(QStringList{GROUNDCOUNT_SOURCE_DIR "/tests/core/gis/layer_as_json.py"} + files);
    const QJsonDocument read = QJsonDocument::fromJson(ran.out.toUtf8());
    if (ran.exit != 0 || !read.isArray())
        qWarning("layer_as_json.py: %s", qPrintable(ran.out));
    return read.array();
}

}  // namespace sample
