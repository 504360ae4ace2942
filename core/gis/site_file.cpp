#include "gis/site_file.h"

#include "gis/file_formats.h"
#include "gis/landxml.h"
#include "method/rules/json_object.h"

#include <algorithm>
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

}  // namespace

Result<SiteFile> parseSiteFile(const std::string& path, const SiteLimits& limits)
{
    std::string ending = std::filesystem::path(path).extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    for (const Kind& kind : kKinds) {
        if (ending != kind.ending)
            continue;
        if (*kind.driver)
            return fileFormats().and_then([&](const FileFormats* formats) { return formats->readSite(path, kind.driver, kind.format, limits); });
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
