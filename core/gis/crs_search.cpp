#include "gis/crs_search.h"

#include "gis/proj_object.h"

#include <algorithm>
#include <cctype>
#include <sstream>

namespace groundcount::gis {
namespace {

std::string lower(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

}  // namespace

Result<std::vector<FoundCrs>> findCrs(const std::string& words, std::size_t most)
{
    std::vector<std::string> wanted;
    std::istringstream stream(lower(words));
    for (std::string word; stream >> word;)
        wanted.push_back(word.starts_with("epsg:") ? word.substr(5) : word);
    if (wanted.empty())
        return refused("Words of a coordinate system are needed: its code, its name or the place it is meant for.");
    const ProjContext context = newProjContext();
    const auto silent = unavailable("The coordinate system database proj.db does not answer; check the PROJ installation.");
    PROJ_CRS_LIST_PARAMETERS* parameters = proj_get_crs_list_parameters_create();
    if (!parameters)
        return silent;
    const PJ_TYPE projected = PJ_TYPE_PROJECTED_CRS;
    parameters->types = &projected;
    parameters->typesCount = 1;
    parameters->allow_deprecated = 0;
    int count = 0;
    const std::unique_ptr<PROJ_CRS_INFO*, void (*)(PROJ_CRS_INFO**)> list(proj_get_crs_info_list_from_database(context.get(), "EPSG", parameters, &count),
                                                                         proj_crs_info_list_destroy);
    proj_get_crs_list_parameters_destroy(parameters);
    if (!list || count == 0)
        return silent;
    std::vector<FoundCrs> found;
    for (int i = 0; i < count; ++i) {
        const PROJ_CRS_INFO& one = *list.get()[i];
        const std::string text = lower(std::string(one.code) + "\n" + one.name + "\n" + (one.area_name ? one.area_name : ""));
        if (std::all_of(wanted.begin(), wanted.end(), [&](const auto& word) { return text.find(word) != std::string::npos; }))
            found.push_back({std::atoi(one.code), one.name, one.area_name ? one.area_name : ""});
    }
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.name == b.name ? a.epsg < b.epsg : a.name < b.name; });
    if (found.size() > most)
        found.resize(most);
    return found;
}

}  // namespace groundcount::gis
