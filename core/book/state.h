#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Rows that the fold derives from the sealed records (docs/record-format.md, "Derived state"). They can be dropped and
/// rebuilt at any time. Lengths, densities and masses are in the unit that the field name says; a coordinate (`north`,
/// `east`) is in the unit of the job's coordinate system (JobRow::gridUnit). Empty text or nullopt = not known.
namespace groundcount::book {

enum class TestState { Open, Waiting, Pass, Fail, InformationOnly, Void };
enum class TestPurpose { Random, Directed, Retest };

/// "open", "waiting", "pass", "fail", "information only", "void".
const char* word(TestState state);
/// "random", "directed", "retest".
const char* word(TestPurpose purpose);

/// Bits of TestRow::sealedSteps, in the order of the sheet.
enum Step : unsigned { PlaceStep = 1, ClearStep = 2, SeatStep = 4, CountStep = 8, DigStep = 16, VerdictStep = 32 };

struct JobRow {
    std::string id, name, place, densityUnit /* "lb/ft3" or "kg/m3" */, gridUnit /* "ftUS", "ft" or "m" */;
    int epsg = 0;
    std::string crsName, crsWkt, ruleSet /* id */;
    double metresPerGridUnit = 1;
};

struct PersonRow {
    std::string id, name, role, certificate, certificateExpires /* YYYY-MM-DD */, hash;
};

struct GaugeRow {
    std::string id, name, serial, hash;
    double prescale = 1;
    std::string calibrationHash, calibratedOn, calibrationExpires, leakTestedOn, leakTestExpires, leakTestResult;
    std::string custodyEvent, custodyBy, custodyAt, custodyPlace;
};

struct StandardCountRow {
    std::string hash, gauge, by, at;
    int offsetMinutes = 0;
    double density = 0, moisture = 0;
    std::optional<double> densityMean, moistureMean, densityDeviationPct, moistureDeviationPct;
    bool accepted = false;
    std::string overrideReason;
};

struct MaterialRow {
    std::string id, name, description, soilClass;
};

struct ProctorRow {
    std::string id, hash, name, material, standard, peakBy;
    std::string maximumText, optimumText;  ///< as sealed
    double maximum = 0 /* in the job's density unit */, optimumPct = 0;
};

struct LotRow {
    std::string id, hash, name, material, proctor, zone;
    std::optional<double> beginStationFt, endStationFt, leftFt /* positive left of the line */, rightFt;
    std::string minimumPctText, maximumPctText, windowKind /* none, points, percent of optimum */, windowLowText, windowHighText;
    int testsPerLift = 0, sublots = 0;
    std::string alignment;  ///< id of the line of its stations, "" when the job has one line only
    std::string area;       ///< its corners as sealed (JSON text, read by gis::lotGround), "" for a lot given by stations
};

struct LiftRow {
    std::string id, lot;
    int number = 0;
    std::string thicknessInText;
};

struct SiteRow {  ///< a drawn site
    std::string draw /* hash */, lot, lift;
    int number = 0;
    std::optional<double> stationFt, offsetFt /* right positive */;  ///< missing where no line passes a lot with corners
    double north = 0, east = 0;
    std::string testId;  ///< the test made at it, empty while owed
};

struct ObstacleRow {
    std::string id, name, obstacleKind /* wall, structure, pipe, vehicle, gauge */;
    double north = 0, east = 0, radiusFt = 0, uncertaintyFt = 0;
    std::string path;     ///< its line as sealed (JSON text, read by gis::pathFrom), "" for a place alone
    bool closed = false;  ///< the path is a ring around it
};

struct AlignmentRow {
    std::string id, name, hash, body;  ///< body: the JSON text, read by gis::alignmentFrom
};

/// One test with what its lists, map and layers need. Figures are those sealed in its last verdict.
struct TestRow {
    std::string id, number, lot, lotName, lift, gauge, gaugeName, person, personName, certificate;
    std::string material, materialName, proctor, proctorName, retestOf, retestOfNumber, rework;
    int liftNumber = 0;
    TestPurpose purpose = TestPurpose::Random;
    TestState state = TestState::Open;
    unsigned sealedSteps = 0;
    std::string waitingFor;  ///< "sample", "oven"
    std::vector<std::string> reasons;
    std::string startedAt, verdictAt;  ///< UTC
    int offsetMinutes = 0;
    double north = 0, east = 0, latitudeDeg = 0, longitudeDeg = 0;
    std::optional<double> ellipsoidHeightM, sigmaNorthM, sigmaEastM;
    int fixes = 0;
    std::string fixKind;
    std::optional<double> stationFt, offsetFt;
    std::string mode, depthInText;
    /// Reported figures as sealed (decimal text in the job's units); empty while there is no verdict.
    std::string wet, water, dry, contentPct, compactionPct, maximum, optimumPct, coarsePct;
    std::string uncertaintyPct;  ///< expanded (k = 2) uncertainty of percent compaction
    std::string minimumPct, maximumPct, windowLowPct, windowHighPct;
    std::string densityStandard, moistureStandard, densityCount, moistureCount;
    std::string overrides;  ///< reasons of overridden checks joined by "; "
    std::string ruleSetHash, coreVersion, recordHash /* of the last verdict, else of the test-site */, device;
    bool conflict = false;
};

}  // namespace groundcount::book
