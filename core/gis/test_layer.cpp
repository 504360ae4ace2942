#include "gis/test_layer.h"

#include "gis/dataset.h"
#include "gis/gdal_complaints.h"
#include "gis/gdal_setup.h"
#include "gis/job_crs.h"
#include "gis/layer_check.h"
#include "gis/number_order.h"
#include "gis/staged_file.h"
#include "gis/test_fields.h"
#include "gis/test_rows.h"

#include <algorithm>
#include <cpl_conv.h>

namespace groundcount::gis {
namespace {

using book::TestRow;

constexpr const char* kLayer = "density_test";

enum class Format { GeoPackage, GeoJson };

struct Work {
    Format format;
    const book::JobRow& job;
    const ExportOptions& options;
    std::vector<const TestRow*> tests;  // in the order of the layer
    std::vector<TestField> fields;
    OGRSpatialReference reference;
};

std::vector<const TestRow*> inOrder(std::span<const TestRow> tests)
{
    std::vector<const TestRow*> order;
    order.reserve(tests.size());
    for (const TestRow& test : tests)
        order.push_back(&test);
    // Two tests may share a number until a conflict is settled; their ids keep the order the same every time.
    std::sort(order.begin(), order.end(), [](const TestRow* a, const TestRow* b) {
        return a->number == b->number ? a->id < b->id : numberBefore(a->number, b->number);
    });
    return order;
}

CPLStringList createOptions(Format format)
{
    CPLStringList list;
    if (format == Format::GeoPackage) {
        list.SetNameValue("VERSION", "1.3");
        list.SetNameValue("DATETIME_FORMAT", "UTC");
        list.SetNameValue("ADD_GPKG_OGR_CONTENTS", "NO");  // not in the standard
    }
    return list;
}

CPLStringList layerOptions(const Work& work)
{
    CPLStringList list;
    if (work.format == Format::GeoPackage) {
        list.SetNameValue("FID", "fid");
        list.SetNameValue("GEOMETRY_NAME", "geom");
        list.SetNameValue("SPATIAL_INDEX", "YES");
        list.SetNameValue("IDENTIFIER", kLayer);
        list.SetNameValue("DESCRIPTION", ("Density tests of " + work.job.name).c_str());
    } else {
        list.SetNameValue("RFC7946", "YES");
        list.SetNameValue("COORDINATE_PRECISION", "9");
        list.SetNameValue("SIGNIFICANT_FIGURES", "15");
    }
    return list;
}

Result<void> fill(GDALDataset& dataset, Work& work, const GdalComplaints& complaints)
{
    const auto failed = [&] { return unavailable("The layer " + std::string(kLayer) + " was not written: " + complaints.firstFailure() + "."); };
    const bool store = work.format == Format::GeoPackage;
    if (store && dataset.StartTransaction() != OGRERR_NONE)
        return failed();
    OGRLayer* layer = dataset.CreateLayer(kLayer, &work.reference, wkbPoint, layerOptions(work).List());
    if (!layer)
        return failed();
    const auto words = store ? FieldLists::Written : FieldLists::Plain;
    if (!createFields(dataset, *layer, work.fields, words))
        return failed();
    std::size_t written = 0;
    for (const TestRow* test : work.tests) {
        if (work.options.keepOn && !work.options.keepOn(written))
            return refused("The export was stopped after " + std::to_string(written) + " of " + std::to_string(work.tests.size()) + " tests.");
        const auto feature = featureOf(*test, work.fields, work.options, *layer->GetLayerDefn());
        if (!feature)
            return tl::unexpected(feature.error());
        if (layer->CreateFeature(feature->get()) != OGRERR_NONE)
            return failed();
        ++written;
    }
    if (store && (!describeFields(dataset, kLayer, work.fields) || dataset.CommitTransaction() != OGRERR_NONE))
        return failed();
    if (complaints.failed())
        return failed();
    return {};
}

Result<void> write(const std::string& path, Work& work)
{
    // Dates of the file come from the records, so that the same tests give the same bytes.
    const CPLConfigOptionSetter today("OGR_CURRENT_DATE", latestTime(work.tests).c_str(), false);
    GdalComplaints complaints;
    const char* name = work.format == Format::GeoPackage ? "GPKG" : "GeoJSON";
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName(name);
    if (!driver)
        return unavailable("This GDAL has no driver " + std::string(name) + ".");
    Dataset dataset{driver->Create(path.c_str(), 0, 0, 0, GDT_Unknown, createOptions(work.format).List())};
    if (!dataset)
        return unavailable("The file was not created: " + complaints.firstFailure() + ".");
    if (const auto filled = fill(*dataset, work, complaints); !filled)
        return filled;
    dataset.reset();
    if (complaints.failed())
        return unavailable("The file was not closed: " + complaints.firstFailure() + ".");
    return {};
}

bool endsWith(const std::string& path, std::initializer_list<const char*> endings)
{
    return std::any_of(endings.begin(), endings.end(), [&](const char* ending) { return path.ends_with(ending); });
}

Result<void> exportAs(Format format, const std::string& path, const book::JobRow& job, std::span<const TestRow> tests, const ExportOptions& options)
{
    if (const auto ready = setUpGdal(); !ready)
        return ready;
    const auto crs = jobCrs(job);
    if (!crs)
        return tl::unexpected(crs.error());
    auto fields = testFields(job);
    if (!fields)
        return tl::unexpected(fields.error());
    auto staged = StagedFile::beside(path);
    if (!staged)
        return tl::unexpected(staged.error());
    Work work{format, job, options, inOrder(tests), std::move(*fields), crs->spatialReference()};
    if (const auto written = write(staged->path(), work); !written)
        return written;
    const LayerCount expected{kLayer, static_cast<std::int64_t>(tests.size()), std::count_if(tests.begin(), tests.end(), hasPosition)};
    const auto checked = format == Format::GeoPackage ? checkGeoPackage(staged->path(), expected) : checkLayer(staged->path(), expected);
    if (!checked)
        return checked;
    return staged->putInPlace();
}

}  // namespace

Result<void> exportTests(const std::string& path, const book::JobRow& job, std::span<const TestRow> tests, const ExportOptions& options)
{
    if (!endsWith(path, {".gpkg"}))
        return refused("The name of a GeoPackage must end in .gpkg; it is \"" + path + "\".");
    return exportAs(Format::GeoPackage, path, job, tests, options);
}

Result<void> exportTestsGeoJson(const std::string& path, const book::JobRow& job, std::span<const TestRow> tests, const ExportOptions& options)
{
    if (!endsWith(path, {".geojson", ".json"}))
        return refused("The name of a GeoJSON file must end in .geojson or .json; it is \"" + path + "\".");
    return exportAs(Format::GeoJson, path, job, tests, options);
}

}  // namespace groundcount::gis
