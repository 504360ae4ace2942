#include "gis/gdal/dataset.h"
#include "gis/gdal/formats.h"
#include "gis/gdal/gdal_complaints.h"
#include "gis/gdal/gdal_setup.h"
#include "gis/shape_bytes.h"

#include <algorithm>
#include <cpl_conv.h>

namespace groundcount::gis::gdal {
namespace {

constexpr std::size_t kDbfText = 254;  // bytes of a dBASE character field

const char* driverOf(PlainFormat format)
{
    switch (format) {
    case PlainFormat::GeoJson:
        return "GeoJSON";
    case PlainFormat::Csv:
        return "CSV";
    case PlainFormat::Shapefile:
        return "ESRI Shapefile";
    case PlainFormat::Kml:
        return "LIBKML";
    }
    return "";
}

CPLStringList optionsOf(PlainFormat format, ShapeKind kind)
{
    CPLStringList list;
    switch (format) {
    case PlainFormat::GeoJson:
        list.SetNameValue("RFC7946", "YES");
        list.SetNameValue("COORDINATE_PRECISION", "9");
        list.SetNameValue("SIGNIFICANT_FIGURES", "15");
        break;
    case PlainFormat::Csv:
        list.SetNameValue("GEOMETRY", kind == ShapeKind::Point ? "AS_XY" : "AS_WKT");
        list.SetNameValue("LINEFORMAT", "CRLF");
        list.SetNameValue("STRING_QUOTING", "IF_AMBIGUOUS");
        break;
    case PlainFormat::Shapefile:
        list.SetNameValue("ENCODING", "UTF-8");
        break;
    case PlainFormat::Kml:
        break;
    }
    return list;
}

OGRFieldType typeOf(FieldForm form)
{
    switch (form) {
    case FieldForm::Text:
        return OFTString;
    case FieldForm::Real:
        return OFTReal;
    case FieldForm::Whole:
        return OFTInteger;
    case FieldForm::Instant:
        return OFTString;  // dBASE knows days only, and GDAL's own text of a time is another in each format
    }
    return OFTString;
}

OGRwkbGeometryType geometryOf(const Layer& layer, PlainFormat format)
{
    if (format == PlainFormat::Csv)
        return layer.kind == ShapeKind::Point ? wkbPoint : wkbUnknown;
    return layer.kind == ShapeKind::Point ? wkbPoint : layer.kind == ShapeKind::Line ? wkbLineString : wkbMultiPolygon;
}

/// One layer on its way into a file.
class Rows {
public:
    Rows(OGRLayer& into, const Layer& layer, PlainFormat format) : m_into(into), m_layer(layer), m_format(format) {}

    bool makeColumns()
    {
        const auto shortNames = shapefileNames(m_layer.fields);
        for (std::size_t i = 0; i < m_layer.fields.size(); ++i) {
            const auto& field = m_layer.fields[i];
            const auto type = typeOf(field.form);
            OGRFieldDefn definition(m_format == PlainFormat::Shapefile ? shortNames[i].c_str() : field.name.c_str(), type);
            if (m_format == PlainFormat::Shapefile && type == OFTString)
                definition.SetWidth(kDbfText);
            if (m_into.CreateField(&definition) != OGRERR_NONE)
                return false;
        }
        return true;
    }

    Result<void> add(const LayerRow& row, const GdalComplaints& complaints)
    {
        if (const auto readable = checkReadable(row, m_layer.fields); !readable)
            return readable;
        const OGRFeatureUniquePtr feature{OGRFeature::CreateFeature(m_into.GetLayerDefn())};
        for (std::size_t i = 0; i < row.values.size(); ++i)
            set(*feature, static_cast<int>(i), row.values[i]);
        if (row.shape.known()) {
            const std::string bytes = wellKnownBinary(row.shape, m_layer.kind);
            OGRGeometry* geometry = nullptr;
            if (OGRGeometryFactory::createFromWkb(bytes.data(), nullptr, &geometry, bytes.size()) != OGRERR_NONE)
                return unavailable("GDAL does not take the shape of " + row.name + ".");
            feature->SetGeometryDirectly(geometry);
            ++written.count.shapes;
        }
        if (m_into.CreateFeature(feature.get()) != OGRERR_NONE)
            return unavailable("The layer " + m_layer.name + " was not written: " + complaints.firstFailure() + ".");
        ++written.count.rows;
        return {};
    }

    PlainWritten written;

private:
    void set(OGRFeature& feature, int column, const FieldValue& value)
    {
        if (const auto* text = std::get_if<std::string>(&value)) {
            written.cutTexts += m_format == PlainFormat::Shapefile && text->size() > kDbfText ? 1 : 0;
            feature.SetField(column, text->c_str());
        } else if (const auto* real = std::get_if<double>(&value)) {
            feature.SetField(column, *real);
        } else if (const auto* whole = std::get_if<int>(&value)) {
            feature.SetField(column, *whole);
        } else if (const auto* utc = std::get_if<Instant>(&value)) {
            feature.SetField(column, instantText(*utc).c_str());
        } else {
            feature.SetFieldNull(column);
        }
    }

    OGRLayer& m_into;
    const Layer& m_layer;
    PlainFormat m_format;
};

}  // namespace

Result<PlainWritten> writePlain(const std::string& path, PlainFormat format, const Layer& layer, const Crs& crs, const ExportOptions& options)
{
    if (const auto ready = setUpGdal(); !ready)
        return tl::unexpected(ready.error());
    GdalComplaints complaints;
    GDALDriver* driver = GetGDALDriverManager()->GetDriverByName(driverOf(format));
    if (!driver)
        return unavailable("This GDAL has no driver " + std::string(driverOf(format)) + ".");
    Dataset dataset{driver->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr)};
    if (!dataset)
        return unavailable("The file was not created: " + complaints.firstFailure() + ".");
    const auto failed = [&] { return unavailable("The layer " + layer.name + " was not written: " + complaints.firstFailure() + "."); };
    OGRSpatialReference reference;
    reference.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    if (reference.importFromWkt(crs.wkt2().c_str()) != OGRERR_NONE)
        return unavailable("GDAL cannot read the coordinate system " + crs.name() + ".");
    OGRLayer* into = dataset->CreateLayer(layer.name.c_str(), &reference, geometryOf(layer, format), optionsOf(format, layer.kind).List());
    if (!into)
        return failed();
    Rows rows(*into, layer, format);
    if (!rows.makeColumns())
        return failed();
    rows.written.count.layer = into->GetName();
    const auto given = layer.each([&](const LayerRow& row) -> Result<void> {
        const auto done = static_cast<std::size_t>(rows.written.count.rows);
        if (options.keepOn && !options.keepOn(done))
            return refused("The export was stopped after " + std::to_string(done) + " rows.");
        return rows.add(row, complaints);
    });
    if (!given)
        return tl::unexpected(given.error());
    dataset.reset();
    if (complaints.failed())
        return unavailable("The file was not closed: " + complaints.firstFailure() + ".");
    return rows.written;
}

}  // namespace groundcount::gis::gdal
