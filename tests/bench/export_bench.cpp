// The GeoPackage against ogr2ogr copying the same layer, in one run.
//   export_bench [FOLDER [ROWS [TESTS]]]   FOLDER: where files are made (default .); ROWS of the layer alone (default 1000000);
//                                          TESTS of a whole book (default 20000)
#include "book/seal.h"
#include "book/store.h"
#include "gis/crs.h"
#include "gis/geopackage_writer.h"
#include "gis/hand_over.h"
#include "gis/layer_tests.h"
#include "gis/staged_file.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <sys/resource.h>

using namespace groundcount;

namespace {

double now()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

template <class Value>
auto must(Value&& result)
{
    if (!result) {
        std::fprintf(stderr, "%s\n", result.error().what.c_str());
        std::exit(1);
    }
    if constexpr (requires { *result; })
        return std::move(*result);
}

double mostMegabytes()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1e3;
}

double copied(const std::string& from, const std::string& to)
{
    const double begun = now();
    const std::string command = "ogr2ogr -f GPKG -dsco VERSION=1.3 '" + to + "' '" + from + "' density_test";
    if (std::system(command.c_str()) != 0)
        std::exit(1);
    return now() - begun;
}

std::string id(int group, int number)
{
    char text[40];
    std::snprintf(text, sizeof text, "%08x-%04x-4000-8000-000000000000", static_cast<unsigned>(number), static_cast<unsigned>(group));
    return text;
}

/// Every column filled but the few that exclude each other.
book::TestRow testRow(int n)
{
    book::TestRow t;
    t.id = id(1, n);
    t.number = std::to_string(n);
    t.lotName = "Lot " + std::to_string(n / 400);
    t.liftNumber = n / 8 % 50 + 1;
    t.gaugeName = "Gauge 1";
    t.personName = "A. Sample";
    t.certificate = "T-1";
    t.materialName = "Lean clay";
    t.proctorName = "P-1";
    t.state = n % 9 ? book::TestState::Pass : book::TestState::Fail;
    if (n % 9 == 0)
        t.reasons = {"93.4 % is below the minimum of 95 %"};
    t.startedAt = "2026-06-09T15:41:07.250Z";
    t.verdictAt = "2026-06-09T15:55:00.000Z";
    t.offsetMinutes = -300;
    t.north = 7012345.25 + n % 9973 * 1.7;
    t.east = 2512345.5 + n % 7919 * 2.3;
    t.latitudeDeg = 32.9 + n * 1e-7;
    t.longitudeDeg = -96.9 - n * 1e-7;
    t.ellipsoidHeightM = 150.2;
    t.sigmaNorthM = t.sigmaEastM = 0.011;
    t.fixes = 20;
    t.fixKind = "RTK fixed";
    t.stationFt = 1050.5 + n % 5000;
    t.offsetFt = -12;
    t.mode = "direct";
    t.depthInText = "8";
    t.wet = "124." + std::to_string(n % 10);
    t.water = "15.3";
    t.dry = "109." + std::to_string(n % 10);
    t.contentPct = "14.0";
    t.compactionPct = "97." + std::to_string(n % 10);
    t.maximum = "112.4";
    t.optimumPct = "14.2";
    t.minimumPct = "95";
    t.windowLowPct = "12.2";
    t.windowHighPct = "17.2";
    t.uncertaintyPct = "1.1";
    t.densityStandard = "2850";
    t.moistureStandard = "684";
    t.densityCount = std::to_string(1500 + n % 99);
    t.moistureCount = "188";
    t.ruleSetHash = std::string(64, 'a');
    t.coreVersion = "0.1.0";
    t.recordHash = std::string(56, 'b') + id(2, n).substr(0, 8);
    t.device = std::string(64, 'c');
    return t;
}

void layerAlone(const std::string& folder, int rows)
{
    book::JobRow job;
    job.densityUnit = "lb/ft3";
    job.gridUnit = "ftUS";
    const gis::EachTest tests = [rows](const gis::TestSink& sink) -> Result<void> {
        for (int n = 1; n <= rows; ++n)
            if (auto taken = sink(testRow(n)); !taken)
                return taken;
        return {};
    };
    const auto layer = must(gis::testLayer(job, tests, {}));
    const std::string ours = folder + "/layer.gpkg";
    const double before = now();
    auto file = must(gis::StagedFile::beside(ours));
    auto writer = must(gis::GeoPackageWriter::create(file.path(), must(gis::Crs::fromEpsg(2277)), "2026-06-09T15:55:00.000Z"));
    const auto count = must(writer.add(layer, {}));
    must(writer.finish());
    const double written = now() - before;
    must(gis::checkGeoPackage(file.path(), {count}));
    must(file.putInPlace());
    const double whole = now() - before;
    const double most = mostMegabytes();
    const double peer = copied(ours, folder + "/layer-copy.gpkg");
    std::printf("%d rows of density_test: written in %.1f s, read again and put in place %.1f s, %.0f MB at most; ogr2ogr copies the layer in %.1f s; ratio %.2f\n", rows,
                written, whole, most, peer, whole / peer);
    std::fflush(stdout);
}

book::Entry entry(const char* kind, const std::string& subject, book::Body body)
{
    book::Entry e;
    e.kind = kind;
    e.subject = subject;
    e.by = id(4, 1);
    e.at = "2026-06-09T15:41:07.250Z";
    e.offsetMinutes = -300;
    e.body = std::move(body);
    return e;
}

void wholeBook(const std::string& folder, int tests)
{
    using book::Body;
    std::array<unsigned char, 32> seed{};
    seed.fill(7);
    book::Store store = must(book::Store::open(folder + "/many.fieldbook", book::OpenMode::Create, book::DeviceKey::fromSeed(seed)));
    std::vector<book::Entry> entries{entry("job", id(9, 1), {{"name", "Long job"}, {"density_unit", "lb/ft3"}, {"crs", id(9, 2)}}),
                                     entry("crs", id(9, 2), {{"epsg", 2277}, {"name", "State plane"}, {"unit", "ftUS"}})};
    for (int n = 0; n < tests; ++n) {
        const std::string subject = id(1, n), lot = id(6, n / 400);
        if (n % 400 == 0)
            entries.push_back(entry("lot", lot, {{"name", "Lot " + std::to_string(n / 400)}, {"material", id(8, 1)}, {"proctor", id(8, 2)}, {"tests_per_lift", 8}}));
        entries.push_back(entry("test-site", subject, {{"number", std::to_string(n)}, {"gauge", id(5, 1)}, {"lot", lot}, {"lift", id(7, 1)},
            {"purpose", "random"}, {"latitude_deg", "32.9012345"}, {"longitude_deg", "-96.9012345"}, {"grid_north_usft", std::to_string(7012345 + n % 9973) + ".25"},
            {"grid_east_usft", std::to_string(2512345 + n % 7919) + ".50"}, {"station", "1050.5"}, {"offset_ft", "-12.0"}, {"fixes", 20}}));
        entries.push_back(entry("verdict", subject, {{"result", n % 9 ? "pass" : "fail"}, {"reasons", Body::array()},
            {"figures", {{"percent_compaction", "97.2"}, {"dry_density_lb_ft3", "109.3"}, {"wet_density_lb_ft3", "124.6"}, {"water_content_pct", "14.0"}}},
            {"rule_set", std::string(64, 'a')}, {"core", "0.1.0"}, {"from", Body::array({std::string(64, 'b')})}}));
        if (entries.size() > 1000 || n + 1 == tests) {
            must(store.sealAll(entries));
            entries.clear();
        }
    }
    gis::HandOverAsk ask;
    ask.path = folder + "/book.gpkg";
    const double before = now();
    must(gis::handOver(store, ask));
    const double whole = now() - before;
    const double peer = copied(ask.path, folder + "/book-copy.gpkg");
    std::printf("a book of %d tests in %d lots, every layer and provenance: %.2f s; ogr2ogr copies density_test in %.2f s; ratio %.2f\n", tests, (tests + 399) / 400,
                whole, peer, whole / peer);
}

}  // namespace

int main(int argc, char** argv)
{
    const std::string folder = std::string(argc > 1 ? argv[1] : ".") + "/export-bench";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    layerAlone(folder, argc > 2 ? std::atoi(argv[2]) : 1'000'000);
    wholeBook(folder, argc > 3 ? std::atoi(argv[3]) : 20'000);
    std::filesystem::remove_all(folder);
}
