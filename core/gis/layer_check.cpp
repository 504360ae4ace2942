#include "gis/layer_check.h"

#include "gis/dataset.h"
#include "gis/gdal_complaints.h"
#include "gis/geopackage_store.h"

#include <array>
#include <fstream>

namespace groundcount::gis {
namespace {

constexpr unsigned kApplicationId = 0x47504B47;  // "GPKG"
constexpr unsigned kVersion = 10300;
constexpr std::int64_t kRowsBetweenQuestions = 1000;  // far below a tenth of a second

// Offsets 60 and 68 of the header: user_version and application_id, big-endian (SQLite file format, section 1.3).
unsigned bigEndianAt(const std::array<unsigned char, 100>& header, std::size_t at)
{
    return unsigned{header[at]} << 24 | unsigned{header[at + 1]} << 16 | unsigned{header[at + 2]} << 8 | unsigned{header[at + 3]};
}

tl::unexpected<Error> broken(const std::string& what)
{
    return unavailable("The written file did not read back: " + what);
}

Result<void> checkMarks(const std::string& path)
{
    std::array<unsigned char, 100> header{};
    std::ifstream file(path, std::ios::binary);
    if (!file.read(reinterpret_cast<char*>(header.data()), header.size()))
        return broken("its header is cut off.");
    if (bigEndianAt(header, 68) != kApplicationId || bigEndianAt(header, 60) != kVersion)
        return broken("it is marked as version " + std::to_string(bigEndianAt(header, 60)) + " instead of GeoPackage " + std::to_string(kVersion) + ".");
    return {};
}

tl::unexpected<Error> stopped()
{
    return refused("The export was stopped while the written file was read again.");
}

Result<void> checkRows(GDALDataset& dataset, const LayerCount& expected, const KeepReading& keepOn)
{
    OGRLayer* layer = !expected.layer.empty() ? dataset.GetLayerByName(expected.layer.c_str()) : dataset.GetLayerCount() == 1 ? dataset.GetLayer(0) : nullptr;
    if (!layer)
        return broken("the layer " + expected.layer + " is missing.");
    // Only places are looked at; SQLite's quick check reads the rest.
    CPLStringList columns;
    for (int i = 0; i < layer->GetLayerDefn()->GetFieldCount(); ++i)
        columns.AddString(layer->GetLayerDefn()->GetFieldDefn(i)->GetNameRef());
    layer->SetIgnoredFields(const_cast<const char**>(columns.List()));
    std::int64_t rows = 0;
    std::int64_t shapes = 0;
    for (const auto& feature : *layer) {
        if (++rows % kRowsBetweenQuestions == 1 && keepOn && !keepOn())
            return stopped();
        const OGRGeometry* geometry = feature->GetGeometryRef();
        shapes += geometry && !geometry->IsEmpty() ? 1 : 0;
    }
    if (rows != expected.rows || shapes != expected.shapes)
        return broken("the layer " + expected.layer + " must hold " + std::to_string(expected.rows) + " rows with " + std::to_string(expected.shapes)
                      + " shapes; it holds " + std::to_string(rows) + " with " + std::to_string(shapes) + ".");
    return {};
}

Result<void> checkStore(const std::string& path, const KeepReading& keepOn)
{
    const auto word = GeoPackageStore::quickCheck(path, keepOn);
    if (!word)
        return tl::unexpected(word.error());
    if (word->empty())
        return stopped();
    return *word == "ok" ? Result<void>() : broken("the quick check says \"" + *word + "\".");
}

Result<void> checkIndexes(GDALDataset& dataset, const std::vector<LayerCount>& expected)
{
    for (const LayerCount& one : expected)
        if (!dataset.GetLayerByName(one.layer.c_str())->TestCapability(OLCFastSpatialFilter))
            return broken("the layer " + one.layer + " has no spatial index.");
    return {};
}

}  // namespace

Result<void> checkLayers(const std::string& path, const std::vector<LayerCount>& expected, const KeepReading& keepOn)
{
    const GdalComplaints complaints;
    const Dataset dataset{GDALDataset::Open(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY)};
    if (!dataset)
        return broken(complaints.firstFailure() + ".");
    for (const LayerCount& one : expected)
        if (const auto rows = checkRows(*dataset, one, keepOn); !rows)
            return rows;
    if (complaints.failed())
        return broken(complaints.firstFailure() + ".");
    return {};
}

Result<void> checkGeoPackage(const std::string& path, const std::vector<LayerCount>& expected, const KeepReading& keepOn)
{
    if (const auto marks = checkMarks(path); !marks)
        return marks;
    if (const auto rows = checkLayers(path, expected, keepOn); !rows)
        return rows;
    if (const auto sound = checkStore(path, keepOn); !sound)
        return sound;
    const GdalComplaints complaints;
    const Dataset dataset{GDALDataset::Open(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY)};
    if (!dataset)
        return broken(complaints.firstFailure() + ".");
    return checkIndexes(*dataset, expected);
}

}  // namespace groundcount::gis
