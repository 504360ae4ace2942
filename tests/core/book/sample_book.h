#pragma once

#include "book/kinds.h"
#include "book/seal.h"
#include "book/store.h"

#include <QTemporaryDir>
#include <cstdio>
#include <string>
#include <vector>

/// A made-up job in a temporary book, shared by the tests of the book.
namespace sample {

using namespace groundcount::book;

inline std::string id(int number)
{
    char text[40];
    std::snprintf(text, sizeof text, "%08x-0000-4000-8000-000000000000", static_cast<unsigned>(number));
    return text;
}

inline DeviceKey key(unsigned char fill = 7)
{
    std::array<unsigned char, 32> seed{};
    seed.fill(fill);
    return DeviceKey::fromSeed(seed);
}

inline std::string at(int second)
{
    char text[40];
    const int hours = 12 + second / 3600;
    std::snprintf(text, sizeof text, "2026-06-%02dT%02d:%02d:%02d.000Z", 9 + hours / 24, hours % 24, second / 60 % 60, second % 60);
    return text;
}

constexpr int kJob = 1, kCrs = 2, kRules = 3, kPerson = 4, kGauge = 5, kCalibration = 6, kStandard = 7, kMaterial = 8,
              kProctor = 9, kLot = 10, kLift = 11;

inline Entry entry(const char* kind, int subject, Body body, int second = 0)
{
    Entry e;
    e.kind = kind;
    e.subject = id(subject);
    e.by = id(kPerson);
    e.at = at(second);
    e.offsetMinutes = -300;
    e.body = std::move(body);
    return e;
}

inline Entry amend(const Record& record, Body body, int second, const char* reason = "typing error")
{
    Entry e = record;
    e.amends = record.hash;
    e.reason = reason;
    e.at = at(second);
    e.body = std::move(body);
    return e;
}

/// Job, coordinate system, person, gauge with calibration and an accepted standard count, material, proctor, lot, lift.
inline std::vector<Entry> setup()
{
    return {
        entry("job", kJob, {{"name", "Sample Job"}, {"density_unit", "lb/ft3"}, {"crs", id(kCrs)}}),
        entry("crs", kCrs, {{"epsg", 2277}, {"name", "State plane"}, {"unit", "ftUS"}}),
        entry("person", kPerson, {{"name", "A. Sample"}, {"role", "technician"}, {"certificate", "T-1"}}),
        entry("gauge", kGauge, {{"name", "Gauge 1"}, {"serial", "0001"}, {"prescale", "16"}}),
        entry("calibration", kCalibration,
              {{"gauge", id(kGauge)}, {"on", "2026-01-05"}, {"expires", "2027-01-05"},
               {"curves", Body::array({{{"depth_in", "8"}, {"mode", "direct"}, {"a", "9.7"}, {"b_per_lb_ft3", "0.0185"}, {"c", "-0.06"}}})},
               {"water", {{"e", "0.02"}, {"slope_per_lb_ft3", "0.011"}}}}),
        entry("standard-count", kStandard,
              {{"gauge", id(kGauge)}, {"density_count", "2850"}, {"moisture_count", "684"}, {"density_before", Body::array({"2848"})},
               {"moisture_before", Body::array({"685"})}, {"accepted", true}, {"density_mean", "2848"}}, 1),
        entry("material", kMaterial, {{"name", "Lean clay"}}),
        entry("proctor", kProctor, {{"name", "P-1"}, {"material", id(kMaterial)}, {"standard", "T 99"}, {"method", "C"},
                                    {"max_dry_density_lb_ft3", "112.4"}, {"optimum_pct", "14.2"}, {"peak_by", "least squares"},
                                    {"standard_uncertainty_lb_ft3", "0.8"}, {"coarse_gravity", "2.65"}}),
        entry("lot", kLot, {{"name", "Lot 7"}, {"material", id(kMaterial)}, {"proctor", id(kProctor)}, {"minimum_pct", "95"},
                            {"tests_per_lift", 4}, {"window", {{"kind", "points"}, {"low", "-2"}, {"high", "3"}}}}),
        entry("lift", kLift, {{"lot", id(kLot)}, {"number", 2}, {"thickness_in", "8"}}),
    };
}

inline Body siteBody(const std::string& number)
{
    return {{"number", number}, {"gauge", id(kGauge)}, {"lot", id(kLot)}, {"lift", id(kLift)}, {"purpose", "random"},
            {"latitude_deg", "32.9"}, {"longitude_deg", "-96.9"}, {"grid_north_usft", "7012345.25"},
            {"grid_east_usft", "2512345.50"}, {"station", "1050.5"}, {"offset_ft", "-12.0"}, {"fixes", 20}};
}

inline Body readoutBody(const char* wet = "124.6", const char* content = "14.0")
{
    return {{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60},
            {"wet_density_lb_ft3", wet}, {"water_content_pct", content}};
}

inline Body verdictBody(const char* result, const std::string& from)
{
    return {{"result", result}, {"reasons", Body::array()}, {"figures", {{"percent_compaction", "97.2"}, {"dry_density_lb_ft3", "109.3"}}},
            {"rule_set", std::string(64, 'a')}, {"core", "0.1.0"}, {"from", Body::array({from})}};
}

/// A temporary folder with one book in it.
struct Bench {
    QTemporaryDir folder;
    std::string path = folder.filePath("sample.fieldbook").toStdString();
    std::string at(const char* name) const { return folder.filePath(name).toStdString(); }
    Store make(unsigned char fill = 7) const { return Store::open(path, OpenMode::Create, key(fill)).value(); }
    Store make(const char* name, unsigned char fill) const { return Store::open(at(name), OpenMode::Create, key(fill)).value(); }
};

}  // namespace sample
