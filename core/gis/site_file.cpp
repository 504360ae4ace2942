#include "gis/site_file.h"

#include "gis/dataset.h"
#include "gis/gdal_complaints.h"
#include "gis/gdal_setup.h"
#include "gis/landxml.h"
#include "method/rules/json_object.h"

#include <algorithm>
#include <cmath>
#include <cpl_conv.h>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace groundcount::gis {
namespace {

using method::PlanPoint;

struct Kind {
    const char* ending;
    const char* driver;  // GDAL's name; "" = our own reader
    const char* format;
};
constexpr Kind kKinds[] = {{".gpkg", "GPKG", "GeoPackage"}, {".shp", "ESRI Shapefile", "Shapefile"}, {".geojson", "GeoJSON", "GeoJSON"},
                           {".json", "GeoJSON", "GeoJSON"}, {".kml", "KML", "KML"}, {".dxf", "DXF", "DXF"}, {".xml", "", "LandXML"},
                           {".landxml", "", "LandXML"}};

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

Result<SiteFile> parseWithGdal(const std::string& path, const Kind& kind, const SiteLimits& limits)
{
    if (const auto ready = setUpGdal(); !ready)
        return tl::unexpected(ready.error());
    const GdalComplaints complaints;
    const char* const drivers[] = {kind.driver, nullptr};
    const char* const siblings[] = {nullptr};  // no looking around in the folder, except for a Shapefile's own parts
    const bool shape = std::string_view(kind.driver) == "ESRI Shapefile";
    const char* const gpkgOptions[] = {"LIST_ALL_TABLES=NO", nullptr};
    const Dataset dataset{GDALDataset::Open(path.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, drivers,
                                            std::string_view(kind.driver) == "GPKG" ? gpkgOptions : nullptr, shape ? nullptr : siblings)};
    if (!dataset)
        return refused("The file is not a " + std::string(kind.format) + " file that can be read"
                       + (complaints.failed() ? ": " + complaints.firstFailure() + "." : "."));
    SiteFile file;
    file.format = kind.format;
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
            const std::string layerName = std::string_view(kind.driver) == "DXF" && drawn >= 0 ? feature->GetFieldAsString(drawn) : layer->GetName();
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

}  // namespace

Result<SiteFile> parseSiteFile(const std::string& path, const SiteLimits& limits)
{
    std::string ending = std::filesystem::path(path).extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    for (const Kind& kind : kKinds) {
        if (ending != kind.ending)
            continue;
        if (*kind.driver)
            return parseWithGdal(path, kind, limits);
        std::ifstream file(path, std::ios::binary);
        const std::string text(std::istreambuf_iterator<char>(file), {});
        if (!file || text.size() > 256u << 20)
            return refused("The LandXML file must be readable and at most 256 MiB.");
        return parseLandXml(text);
    }
    return refused("A site file must end in .gpkg, .shp, .geojson, .json, .kml, .dxf, .xml or .landxml; it ends in \"" + ending.substr(0, 20) + "\".");
}

std::string siteFileText(const SiteFile& file)
{
    nlohmann::json out{{"format", file.format}, {"crs_wkt", file.crsWkt}, {"crs_name", file.crsName}, {"unit", file.unit}, {"alignments", file.alignments},
                       {"notes", file.notes}, {"features", nlohmann::json::array()}};
    for (const auto& feature : file.features) {
        auto rings = nlohmann::json::array();
        for (const auto& ring : feature.rings) {
            auto flat = nlohmann::json::array();
            for (const auto& p : ring) {
                flat.push_back(p.northFt);
                flat.push_back(p.eastFt);
            }
            rings.push_back(std::move(flat));
        }
        out["features"].push_back({{"layer", feature.layer}, {"name", feature.name}, {"form", static_cast<int>(feature.form)}, {"rings", std::move(rings)}});
    }
    // A foreign file's names may be in any encoding.
    return out.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

Result<SiteFile> siteFileFrom(const std::string& text)
{
    const auto json = nlohmann::json::parse(text, nullptr, false);
    std::optional<Error> error;
    method::JsonObject body(json, "The reader's answer", error);
    SiteFile file;
    file.format = body.text("format");
    file.crsWkt = body.textOr("crs_wkt", "");
    file.crsName = body.textOr("crs_name", "");
    file.unit = body.textOr("unit", "");
    if (error)
        return tl::unexpected(*error);
    // The child may be in the hands of the file: whatever it says is looked at before it is used.
    static const nlohmann::json kNone = nlohmann::json::array();
    const auto listOf = [](const nlohmann::json& object, const char* key) -> const nlohmann::json& {
        const auto found = object.find(key);
        return found != object.end() && found->is_array() ? *found : kNone;
    };
    for (const auto& [key, into] : {std::pair{"alignments", &file.alignments}, {"notes", &file.notes}})
        for (const auto& one : listOf(json, key))
            if (one.is_string())
                into->push_back(one.get<std::string>());
    for (method::JsonObject& one : body.list("features")) {
        SiteFeature feature;
        feature.layer = one.textOr("layer", "");
        feature.name = one.textOr("name", "");
        feature.form = static_cast<SiteForm>(static_cast<int>(std::clamp(one.numberOr("form", 0), 0.0, 2.0)));
        file.features.push_back(std::move(feature));
    }
    if (error)
        return tl::unexpected(*error);
    const auto& features = listOf(json, "features");
    for (std::size_t i = 0; i < file.features.size(); ++i)
        for (const auto& flat : listOf(features[i], "rings")) {
            std::vector<PlanPoint> ring;
            for (std::size_t k = 0; flat.is_array() && k + 1 < flat.size(); k += 2)
                if (flat[k].is_number() && flat[k + 1].is_number())
                    ring.push_back({flat[k].get<double>(), flat[k + 1].get<double>()});
            file.features[i].rings.push_back(std::move(ring));
        }
    return file;
}

}  // namespace groundcount::gis
