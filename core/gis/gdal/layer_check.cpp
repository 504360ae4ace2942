#include "gis/gdal/dataset.h"
#include "gis/gdal/formats.h"
#include "gis/gdal/gdal_complaints.h"
#include "gis/gdal/gdal_setup.h"

namespace groundcount::gis::gdal {
namespace {

constexpr std::int64_t kRowsBetweenQuestions = 1000;  // far below a tenth of a second

Result<void> checkRows(GDALDataset& dataset, const LayerCount& expected, const KeepReading& keepOn)
{
    OGRLayer* layer = !expected.layer.empty() ? dataset.GetLayerByName(expected.layer.c_str()) : dataset.GetLayerCount() == 1 ? dataset.GetLayer(0) : nullptr;
    if (!layer)
        return notReadBack("the layer " + expected.layer + " is missing.");
    // Only places are looked at; SQLite's quick check reads the rest.
    CPLStringList columns;
    for (int i = 0; i < layer->GetLayerDefn()->GetFieldCount(); ++i)
        columns.AddString(layer->GetLayerDefn()->GetFieldDefn(i)->GetNameRef());
    layer->SetIgnoredFields(const_cast<const char**>(columns.List()));
    std::int64_t rows = 0;
    std::int64_t shapes = 0;
    for (const auto& feature : *layer) {
        if (++rows % kRowsBetweenQuestions == 1 && keepOn && !keepOn())
            return stoppedWhileReading();
        const OGRGeometry* geometry = feature->GetGeometryRef();
        shapes += geometry && !geometry->IsEmpty() ? 1 : 0;
    }
    if (rows != expected.rows || shapes != expected.shapes)
        return notReadBack("the layer " + expected.layer + " must hold " + std::to_string(expected.rows) + " rows with " + std::to_string(expected.shapes)
                      + " shapes; it holds " + std::to_string(rows) + " with " + std::to_string(shapes) + ".");
    return {};
}

Result<void> checkIndexes(GDALDataset& dataset, const std::vector<LayerCount>& expected)
{
    for (const LayerCount& one : expected)
        if (!dataset.GetLayerByName(one.layer.c_str())->TestCapability(OLCFastSpatialFilter))
            return notReadBack("the layer " + one.layer + " has no spatial index.");
    return {};
}

}  // namespace

Result<void> checkLayers(const std::string& path, const std::vector<LayerCount>& expected, bool indexed, const KeepReading& keepOn)
{
    if (const auto ready = setUpGdal(); !ready)
        return ready;
    const GdalComplaints complaints;
    const Dataset dataset{GDALDataset::Open(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY)};
    if (!dataset)
        return notReadBack(complaints.firstFailure() + ".");
    for (const LayerCount& one : expected)
        if (const auto rows = checkRows(*dataset, one, keepOn); !rows)
            return rows;
    if (complaints.failed())
        return notReadBack(complaints.firstFailure() + ".");
    return indexed ? checkIndexes(*dataset, expected) : Result<void>();
}

}  // namespace groundcount::gis::gdal
