#include "gis/geopackage_extras.h"

#include "gis/geopackage_schema.h"
#include "gis/style_text.h"

#include <map>

namespace groundcount::gis {
namespace {

constexpr const char* kRelations = R"(
CREATE TABLE gpkgext_relations(id INTEGER PRIMARY KEY AUTOINCREMENT, base_table_name TEXT NOT NULL, base_primary_column TEXT NOT NULL DEFAULT 'id',
 related_table_name TEXT NOT NULL, related_primary_column TEXT NOT NULL DEFAULT 'id', relation_name TEXT NOT NULL, mapping_table_name TEXT NOT NULL UNIQUE);
INSERT INTO gpkg_extensions VALUES
 ('gpkgext_relations', NULL, 'related_tables', 'http://www.geopackage.org/18-000.html', 'read-write');
)";

Result<void> makeRelation(GeoPackageStore& store, const std::string& layer)
{
    const std::string mapping = layer + "_photo";
    return store.exec("CREATE TABLE " + sqlName(mapping) + " (base_id INTEGER NOT NULL, related_id INTEGER NOT NULL);"
                      + "INSERT INTO gpkgext_relations(base_table_name, base_primary_column, related_table_name, related_primary_column, relation_name,"
                        " mapping_table_name) VALUES (" + sqlText(layer) + ", 'fid', 'photo', 'id', 'media', " + sqlText(mapping) + ");"
                      + "INSERT INTO gpkg_extensions VALUES (" + sqlText(mapping)
                      + ", NULL, 'related_tables', 'http://www.geopackage.org/18-000.html', 'read-write')");
}

}  // namespace

Result<std::size_t> addPhotos(GeoPackageWriter& writer, const book::Store& store, const std::vector<book::PhotoRow>& photos)
{
    auto& file = writer.store();
    std::map<std::string, std::string> mappings;  // layer -> SQL
    std::int64_t id = 0;
    for (const auto& photo : photos) {
        const auto place = writer.remembered().find(photo.subject);
        if (place == writer.remembered().end())
            continue;
        if (id == 0)
            for (const auto& made : {file.exec(kRelations), makeAttributeTable(file, "photo", "Photos of tests and other things, as sealed.",
                                     "id INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, data BLOB NOT NULL, content_type TEXT NOT NULL, name TEXT,"
                                     " taken_utc DATETIME, content_hash TEXT NOT NULL, record_hash TEXT NOT NULL", writer.lastChange())})
                if (!made)
                    return tl::unexpected(made.error());
        const auto& layer = place->second.layer;
        if (mappings.emplace(layer, "INSERT INTO " + sqlName(layer + "_photo") + " VALUES (?, ?)").second)
            if (const auto related = makeRelation(file, layer); !related)
                return tl::unexpected(related.error());
        const auto content = store.blob(photo.blob);
        if (!content)
            return tl::unexpected(content.error());
        auto insert = file.prepare("INSERT INTO photo(content_type, name, taken_utc, content_hash, record_hash, id, data) VALUES (?, ?, ?, ?, ?, ?, ?)");
        auto map = file.prepare(mappings.at(layer));
        if (!insert || !map)
            return tl::unexpected(insert ? map.error() : insert.error());
        insert->with(photo.mediaType, photo.name, photo.at, photo.blob, photo.hash, ++id).bindBlob(7, *content);
        if (const auto put = insert->run(); !put)
            return tl::unexpected(put.error());
        if (const auto put = map->with(place->second.row, id).run(); !put)
            return tl::unexpected(put.error());
    }
    return static_cast<std::size_t>(id);
}

Result<void> addStyles(GeoPackageWriter& writer, const std::vector<Layer>& layers, const std::vector<std::optional<LayerStyle>>& styles)
{
    auto& file = writer.store();
    // Column names and their capitals are those that programs look for.
    if (const auto made = makeAttributeTable(file, "layer_styles", "How the layers are drawn.",
                                             "id INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, f_table_catalog TEXT(256), f_table_schema TEXT(256),"
                                             " f_table_name TEXT(256), f_geometry_column TEXT(256), styleName TEXT(30), styleQML TEXT, styleSLD TEXT,"
                                             " useAsDefault BOOLEAN, description TEXT, owner TEXT(30), ui TEXT(30), update_time DATETIME",
                                             writer.lastChange());
        !made)
        return made;
    auto insert = file.prepare("INSERT INTO layer_styles(f_table_catalog, f_table_schema, f_table_name, f_geometry_column, styleName, styleQML, styleSLD,"
                               " useAsDefault, description, update_time) VALUES ('', '', ?, 'geom', ?, ?, ?, 1, ?, ?)");
    if (!insert)
        return tl::unexpected(insert.error());
    for (std::size_t i = 0; i < layers.size(); ++i) {
        if (!styles[i])
            continue;
        const std::string desktop = desktopStyle(*styles[i], layers[i]);
        const std::string open = styledLayerDescriptor(*styles[i], layers[i]);
        if (const auto put = insert->with(layers[i].name, layers[i].name, desktop, open, layers[i].title, writer.lastChange()).run(); !put)
            return put;
    }
    return {};
}

Result<void> addProvenance(GeoPackageWriter& writer, const std::string& json)
{
    auto metadata = writer.store().prepare("INSERT INTO gpkg_metadata VALUES (1, 'dataset', 'urn:groundcount:provenance:1', 'application/json', ?)");
    auto reference = writer.store().prepare("INSERT INTO gpkg_metadata_reference VALUES ('geopackage', NULL, NULL, NULL, ?, 1, NULL)");
    if (!metadata || !reference)
        return tl::unexpected(metadata ? reference.error() : metadata.error());
    if (const auto put = metadata->with(json).run(); !put)
        return put;
    return reference->with(writer.lastChange()).run();
}

}  // namespace groundcount::gis
