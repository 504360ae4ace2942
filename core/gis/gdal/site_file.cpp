#include "gis/gdal/dataset.h"
#include "gis/gdal/formats.h"
#include "gis/gdal/gdal_complaints.h"
#include "gis/gdal/gdal_setup.h"

#include <cmath>
#include <cpl_conv.h>

namespace groundcount::gis::gdal {
namespace {

using method::PlanPoint;

/// Takes the geometries of one file apart, counting.
class Taker {
public:
    Taker(SiteFile& file, const SiteLimits& limits) : m_file(file), m_limits(limits) {}

    bool take(const OGRGeometry& geometry, const std::string& layer, const std::string& name)
    {
        switch (wkbFlatten(geometry.getGeometryType())) {
        case wkbPoint: return add(layer, name, SiteForm::Point, {{place(*geometry.toPoint())}});
        case wkbLineString: return add(layer, name, SiteForm::Line, {run(*geometry.toLineString())});
        case wkbPolygon: {
            std::vector<std::vector<PlanPoint>> rings;
            for (const OGRLinearRing* ring : *geometry.toPolygon()) {
                rings.push_back(run(*ring));
                if (rings.back().size() > 1 && rings.back().front() == rings.back().back())
                    rings.back().pop_back();
            }
            return add(layer, name, SiteForm::Area, std::move(rings));
        }
        case wkbMultiPoint:
        case wkbMultiLineString:
        case wkbMultiPolygon:
        case wkbGeometryCollection: {
            for (const OGRGeometry* part : *geometry.toGeometryCollection())
                if (!take(*part, layer, name))
                    return false;
            return true;
        }
        default: ++m_others; return true;
        }
    }
    std::size_t broken() const { return m_broken; }
    std::size_t others() const { return m_others; }

private:
    static PlanPoint place(const OGRPoint& p) { return {p.getY(), p.getX()}; }
    static std::vector<PlanPoint> run(const OGRSimpleCurve& curve)
    {
        std::vector<PlanPoint> points;
        points.reserve(static_cast<std::size_t>(curve.getNumPoints()));
        for (int i = 0; i < curve.getNumPoints(); ++i)
            points.push_back({curve.getY(i), curve.getX(i)});
        return points;
    }
    bool add(const std::string& layer, const std::string& name, SiteForm form, std::vector<std::vector<PlanPoint>> rings)
    {
        const std::size_t least = form == SiteForm::Point ? 1 : form == SiteForm::Line ? 2 : 3;
        bool whole = !rings.empty();
        for (const auto& ring : rings) {
            m_vertices += ring.size();
            whole = whole && ring.size() >= least && std::all_of(ring.begin(), ring.end(), [](const PlanPoint& p) {
                return std::abs(p.northFt) < 1e9 && std::abs(p.eastFt) < 1e9;  // false for NaN; no grid on earth reaches 1e9
            });
        }
        if (!whole)
            ++m_broken;
        else
            m_file.features.push_back({layer, name, form, std::move(rings)});
        return m_file.features.size() <= m_limits.features && m_vertices <= m_limits.vertices;
    }

    SiteFile& m_file;
    const SiteLimits& m_limits;
    std::size_t m_vertices = 0, m_broken = 0, m_others = 0;
};

std::string nameOf(const OGRFeature& feature)
{
    for (const char* field : {"name", "Name", "NAME", "Text", "label", "id"}) {
        const int index = feature.GetFieldIndex(field);
        if (index >= 0 && feature.IsFieldSetAndNotNull(index) && *feature.GetFieldAsString(index))
            return std::string(feature.GetFieldAsString(index)).substr(0, 200);
    }
    return {};
}

}  // namespace

Result<SiteFile> readSite(const std::string& path, const std::string& driver, const std::string& format, const SiteLimits& limits)
{
    if (const auto ready = setUpGdal(); !ready)
        return tl::unexpected(ready.error());
    const GdalComplaints complaints;
    const char* const drivers[] = {driver.c_str(), nullptr};
    const char* const siblings[] = {nullptr};  // no looking around in the folder, except for a Shapefile's own parts
    const bool shape = driver == "ESRI Shapefile";
    const char* const gpkgOptions[] = {"LIST_ALL_TABLES=NO", nullptr};
    const Dataset dataset{GDALDataset::Open(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, drivers,
                                            driver == "GPKG" ? gpkgOptions : nullptr, shape ? nullptr : siblings)};
    if (!dataset)
        return refused("The file is not a " + format + " file that can be read"
                       + (complaints.failed() ? ": " + complaints.firstFailure() + "." : "."));
    SiteFile file;
    file.format = format;
    Taker taker(file, limits);
    std::size_t empty = 0;
    bool severalSystems = false;
    for (OGRLayer* layer : dataset->GetLayers()) {
        std::string wkt, systemName;
        if (const OGRSpatialReference* system = layer->GetSpatialRef(); system && !system->IsLocal()) {
            char* text = nullptr;
            const char* const options[] = {"FORMAT=WKT2_2019", nullptr};
            if (system->exportToWkt(&text, options) == OGRERR_NONE && text)
                wkt = text;
            CPLFree(text);
            systemName = system->GetName() ? system->GetName() : "";
        }
        for (const auto& feature : *layer) {
            const OGRGeometry* geometry = feature->GetGeometryRef();
            if (!geometry || geometry->IsEmpty()) {
                ++empty;
                continue;
            }
            const std::unique_ptr<OGRGeometry> straight(geometry->getLinearGeometry());
            const int drawn = feature->GetFieldIndex("Layer");
            const std::string layerName = driver == "DXF" && drawn >= 0 ? feature->GetFieldAsString(drawn) : layer->GetName();
            if (file.features.empty()) {
                file.crsWkt = wkt;
                file.crsName = systemName;
            }
            severalSystems = severalSystems || wkt != file.crsWkt;
            if (!taker.take(straight ? *straight : *geometry, layerName, nameOf(*feature)))
                return refused("The file holds more than " + std::to_string(limits.features) + " things or " + std::to_string(limits.vertices) + " corners; take a part of it.");
        }
    }
    if (complaints.failed())
        return refused("The file is broken: " + complaints.firstFailure() + ".");
    if (severalSystems)
        return refused("The layers of the file lie in several coordinate systems; take one layer at a time.");
    if (file.features.empty())
        return refused("The file has no point, line or area in it.");
    for (const auto& [count, what] : {std::pair{empty, " without a geometry"}, {taker.broken(), " with a broken geometry"}, {taker.others(), " of another form"}})
        if (count)
            file.notes.push_back(std::to_string(count) + " things" + what + " were passed over.");
    return file;
}

}  // namespace groundcount::gis::gdal
