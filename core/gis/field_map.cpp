#include "gis/field_map.h"

#include "method/rules/json_object.h"

#include <algorithm>
#include <cctype>
#include <set>

namespace groundcount::gis {
namespace {

using Json = nlohmann::json;

constexpr std::size_t kLongest = 60;

tl::unexpected<Error> wrong(const std::string& what)
{
    return refused("The field map: " + what);
}

Result<FieldMap::OneLayer> readLayer(const std::string& ours, const Json& json)
{
    if (!json.is_object())
        return wrong("layer \"" + ours + "\" must be an object.");
    FieldMap::OneLayer layer;
    for (const auto& [key, value] : json.items()) {
        if (key == "name" && value.is_string()) {
            layer.name = *value.get_ptr<const std::string*>();
        } else if (key == "only_these" && value.is_boolean()) {
            layer.onlyThese = *value.get_ptr<const bool*>();
        } else if (key == "columns" && value.is_object()) {
            for (const auto& [column, theirs] : value.items()) {
                if (!theirs.is_string())
                    return wrong("the name of column \"" + column + "\" must be text.");
                layer.columns[column] = *theirs.get_ptr<const std::string*>();
            }
        } else {
            return wrong("layer \"" + ours + "\" may have \"name\" (text), \"columns\" (object) and \"only_these\" (true or false); it has \"" + key + "\".");
        }
    }
    return layer;
}

Result<void> checkName(const std::string& name)
{
    const auto isWordly = [](unsigned char c) { return std::isalnum(c) != 0 || c == '_'; };
    const bool good = !name.empty() && name.size() <= kLongest && std::isalpha(static_cast<unsigned char>(name.front())) != 0
                      && std::all_of(name.begin(), name.end(), isWordly);
    if (!good)
        return wrong("a name must be 1 to 60 letters, digits or _ and begin with a letter; it is \"" + name + "\".");
    return {};
}

std::string lower(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

/// Places of the columns that stay.
Result<std::vector<std::size_t>> renameColumns(const FieldMap::OneLayer& map, Layer& layer)
{
    std::vector<std::size_t> kept;
    std::set<std::string> seen{"fid", "geom"};
    std::size_t found = 0;
    for (std::size_t i = 0; i < layer.fields.size(); ++i) {
        auto& field = layer.fields[i];
        const auto named = map.columns.find(field.name);
        if (named == map.columns.end() && map.onlyThese)
            continue;
        if (named != map.columns.end()) {
            if (const auto good = checkName(named->second); !good)
                return tl::unexpected(good.error());
            field.name = named->second;
            ++found;
        }
        if (!seen.insert(lower(field.name)).second)
            return wrong("layer " + layer.name + " would have the column \"" + field.name + "\" twice.");
        kept.push_back(i);
    }
    if (found == map.columns.size())
        return kept;
    for (const auto& [ours, theirs] : map.columns)
        if (std::none_of(layer.fields.begin(), layer.fields.end(), [&wanted = theirs](const auto& f) { return f.name == wanted; }))
            return wrong("layer " + layer.name + " has no column \"" + ours + "\".");
    return wrong("layer " + layer.name + " names a column that there is not.");
}

Result<void> applyTo(const FieldMap::OneLayer& map, Layer& layer)
{
    const auto kept = renameColumns(map, layer);
    if (!kept)
        return tl::unexpected(kept.error());
    if (kept->size() != layer.fields.size()) {
        std::vector<LayerField> fields;
        for (const std::size_t i : *kept)
            fields.push_back(std::move(layer.fields[i]));
        layer.fields = std::move(fields);
        layer.each = [kept = *kept, each = std::move(layer.each)](const RowSink& sink) {
            return each([&](const LayerRow& row) -> Result<void> {
                LayerRow some{row.id, row.name, {}, row.shape};
                for (const std::size_t i : kept)
                    some.values.push_back(row.values[i]);
                return sink(some);
            });
        };
    }
    if (!map.name.empty()) {
        if (const auto good = checkName(map.name); !good)
            return good;
        layer.name = map.name;
    }
    return {};
}

}  // namespace

Result<FieldMap> readFieldMap(std::string_view json)
{
    const auto whole = Json::parse(json, nullptr, false);
    if (!whole.is_object() || whole.size() != 1 || !whole.contains("layers") || !whole.at("layers").is_object())
        return wrong("it must be JSON with the one key \"layers\", an object.");
    FieldMap map;
    for (const auto& [ours, value] : whole.at("layers").items()) {
        auto layer = readLayer(ours, value);
        if (!layer)
            return tl::unexpected(layer.error());
        map.layers[ours] = std::move(*layer);
    }
    return map;
}

Result<void> applyFieldMap(const FieldMap& map, std::vector<Layer>& layers)
{
    for (const auto& [ours, one] : map.layers) {
        const auto found = std::find_if(layers.begin(), layers.end(), [&ours = ours](const Layer& layer) { return layer.name == ours; });
        if (found == layers.end())
            return wrong("there is no layer \"" + ours + "\" among those that are handed over.");
        if (const auto applied = applyTo(one, *found); !applied)
            return applied;
    }
    std::set<std::string> names;
    for (const Layer& layer : layers)
        if (!names.insert(lower(layer.name)).second)
            return wrong("two layers would be called \"" + layer.name + "\".");
    return {};
}

}  // namespace groundcount::gis
