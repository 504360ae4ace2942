#include "gis/site_layers.h"

#include "book/record.h"

#include <algorithm>
#include <cmath>

namespace groundcount::gis {
namespace {

constexpr std::size_t kNamesShown = 3;

void note(SiteLayer& layer, const std::string& name)
{
    if (!name.empty() && layer.names.size() < kNamesShown && std::find(layer.names.begin(), layer.names.end(), name) == layer.names.end())
        layer.names.push_back(name);
}

}  // namespace

std::vector<SiteLayer> siteLayers(const SiteFile& file)
{
    std::vector<SiteLayer> layers;
    for (const SiteFeature& feature : file.features) {
        auto at = std::find_if(layers.begin(), layers.end(), [&](const auto& l) { return l.form == feature.form && l.name == feature.layer; });
        if (at == layers.end()) {
            layers.push_back({feature.layer, feature.form, false, 0, 0, 0, {}});
            at = layers.end() - 1;
        }
        ++at->things;
        for (const auto& ring : feature.rings)
            at->corners += ring.size();
        note(*at, feature.name);
    }
    for (std::size_t i = 0; i < file.alignments.size(); ++i) {
        const auto body = nlohmann::json::parse(file.alignments[i], nullptr, false);
        SiteLayer layer{"", SiteForm::Line, true, i, 0, 0, {}};
        if (body.is_object()) {
            if (const auto name = body.find("name"); name != body.end() && name->is_string())
                layer.name = name->get<std::string>();
            if (const auto elements = body.find("elements"); elements != body.end() && elements->is_array())
                layer.things = elements->size();
        }
        layers.push_back(std::move(layer));
    }
    return layers;
}

SiteFile onlyLayer(const SiteFile& file, const SiteLayer& layer)
{
    SiteFile only = file;
    std::erase_if(only.features, [&](const auto& f) { return layer.isAlignment || f.form != layer.form || f.layer != layer.name; });
    only.alignments = layer.isAlignment && layer.alignmentIndex < file.alignments.size() ? std::vector{file.alignments[layer.alignmentIndex]}
                                                                                         : std::vector<std::string>();
    return only;
}

SiteExtent siteExtent(const std::vector<SiteFeature>& features)
{
    SiteExtent box;
    for (const auto& feature : features)
        for (const auto& ring : feature.rings)
            for (const auto& p : ring) {
                box.south = box.any ? std::min(box.south, p.northFt) : p.northFt;
                box.north = box.any ? std::max(box.north, p.northFt) : p.northFt;
                box.west = box.any ? std::min(box.west, p.eastFt) : p.eastFt;
                box.east = box.any ? std::max(box.east, p.eastFt) : p.eastFt;
                box.any = true;
            }
    return box;
}

double feetApart(const SiteExtent& extent)
{
    const double north = std::max(std::abs(extent.north), std::abs(extent.south));
    const double east = std::max(std::abs(extent.east), std::abs(extent.west));
    return std::hypot(north, east) * (1 - kMetrePerFoot / kMetrePerSurveyFoot);
}

Length awayFrom(const SiteExtent& extent, const method::PlanPoint& place, double metresPerUnit)
{
    const bool inside = place.northFt >= extent.south && place.northFt <= extent.north && place.eastFt >= extent.west && place.eastFt <= extent.east;
    if (inside || !extent.any)
        return Length::metres(0);
    return Length::metres(metresPerUnit * std::hypot(place.northFt - (extent.south + extent.north) / 2, place.eastFt - (extent.west + extent.east) / 2));
}

}  // namespace groundcount::gis
