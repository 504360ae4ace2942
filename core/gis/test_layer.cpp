#include "gis/test_layer.h"

#include "gis/geopackage_writer.h"
#include "gis/job_crs.h"
#include "gis/layer_check.h"
#include "gis/layer_tests.h"
#include "gis/plain_layer.h"
#include "gis/staged_file.h"

#include <algorithm>

namespace groundcount::gis {
namespace {

using book::TestRow;

struct Ready {
    Crs crs;
    Layer layer;
    StagedFile file;
};

Result<Ready> prepare(const std::string& path, const book::JobRow& job, std::span<const TestRow> tests, const ExportOptions& options)
{
    auto crs = jobCrs(job);
    if (!crs)
        return tl::unexpected(crs.error());
    auto layer = testLayer(job, inNumberOrder(tests), options);
    if (!layer)
        return tl::unexpected(layer.error());
    auto file = StagedFile::beside(path);
    if (!file)
        return tl::unexpected(file.error());
    return Ready{std::move(*crs), std::move(*layer), std::move(*file)};
}

/// The latest start or verdict of the tests: dates of the file come from the records, so that the same tests give the same bytes.
std::string latestTime(std::span<const TestRow> tests)
{
    std::string latest = "1970-01-01T00:00:00.000Z";
    for (const TestRow& test : tests)
        for (const auto* text : {&test.startedAt, &test.verdictAt})
            if (const auto utc = parseInstant(*text))
                latest = std::max(latest, instantText(*utc));
    return latest;
}

bool endsWith(const std::string& path, std::initializer_list<const char*> endings)
{
    return std::any_of(endings.begin(), endings.end(), [&](const char* ending) { return path.ends_with(ending); });
}

}  // namespace

Result<void> exportTests(const std::string& path, const book::JobRow& job, std::span<const TestRow> tests, const ExportOptions& options)
{
    if (!endsWith(path, {".gpkg"}))
        return refused("The name of a GeoPackage must end in .gpkg; it is \"" + path + "\".");
    auto ready = prepare(path, job, tests, options);
    if (!ready)
        return tl::unexpected(ready.error());
    auto writer = GeoPackageWriter::create(ready->file.path(), ready->crs, latestTime(tests));
    if (!writer)
        return tl::unexpected(writer.error());
    const auto count = writer->add(ready->layer, options);
    if (!count)
        return tl::unexpected(count.error());
    for (const auto& step : {writer->finish(), checkGeoPackage(ready->file.path(), {*count})})
        if (!step)
            return step;
    return ready->file.putInPlace();
}

Result<void> exportTestsGeoJson(const std::string& path, const book::JobRow& job, std::span<const TestRow> tests, const ExportOptions& options)
{
    if (!endsWith(path, {".geojson", ".json"}))
        return refused("The name of a GeoJSON file must end in .geojson or .json; it is \"" + path + "\".");
    auto ready = prepare(path, job, tests, options);
    if (!ready)
        return tl::unexpected(ready.error());
    const auto written = writePlainLayer(ready->file.path(), PlainFormat::GeoJson, ready->layer, ready->crs, options);
    if (!written)
        return tl::unexpected(written.error());
    if (const auto checked = checkLayers(ready->file.path(), {written->count}); !checked)
        return checked;
    return ready->file.putInPlace();
}

}  // namespace groundcount::gis
