#include "gis/geopackage_schema.h"

#include "method/sentence.h"

namespace groundcount::gis {
namespace {

constexpr int kOwnSystem = 100000;

constexpr const char* kContainer = R"(
CREATE TABLE gpkg_spatial_ref_sys(srs_name TEXT NOT NULL, srs_id INTEGER PRIMARY KEY, organization TEXT NOT NULL,
 organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL, description TEXT, definition_12_063 TEXT NOT NULL);
CREATE TABLE gpkg_contents(table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL, identifier TEXT UNIQUE, description TEXT DEFAULT '',
 last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')), min_x DOUBLE, min_y DOUBLE, max_x DOUBLE, max_y DOUBLE,
 srs_id INTEGER, CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id));
CREATE TABLE gpkg_geometry_columns(table_name TEXT NOT NULL, column_name TEXT NOT NULL, geometry_type_name TEXT NOT NULL,
 srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m TINYINT NOT NULL, CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name),
 CONSTRAINT uk_gc_table_name UNIQUE (table_name), CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
 CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id));
CREATE TABLE gpkg_extensions(table_name TEXT, column_name TEXT, extension_name TEXT NOT NULL, definition TEXT NOT NULL, scope TEXT NOT NULL,
 CONSTRAINT ge_tce UNIQUE (table_name, column_name, extension_name));
CREATE TABLE gpkg_data_columns(table_name TEXT NOT NULL, column_name TEXT NOT NULL, name TEXT, title TEXT, description TEXT, mime_type TEXT,
 constraint_name TEXT, CONSTRAINT pk_gdc PRIMARY KEY (table_name, column_name), CONSTRAINT gdc_tn UNIQUE (table_name, name));
CREATE TABLE gpkg_data_column_constraints(constraint_name TEXT NOT NULL, constraint_type TEXT NOT NULL, value TEXT, min NUMERIC,
 min_is_inclusive BOOLEAN, max NUMERIC, max_is_inclusive BOOLEAN, description TEXT,
 CONSTRAINT gdcc_ntv UNIQUE (constraint_name, constraint_type, value));
CREATE TABLE gpkg_metadata(id INTEGER CONSTRAINT m_pk PRIMARY KEY ASC NOT NULL, md_scope TEXT NOT NULL DEFAULT 'dataset',
 md_standard_uri TEXT NOT NULL, mime_type TEXT NOT NULL DEFAULT 'text/xml', metadata TEXT NOT NULL DEFAULT '');
CREATE TABLE gpkg_metadata_reference(reference_scope TEXT NOT NULL, table_name TEXT, column_name TEXT, row_id_value INTEGER,
 timestamp DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')), md_file_id INTEGER NOT NULL, md_parent_id INTEGER,
 CONSTRAINT crmr_mfi_fk FOREIGN KEY (md_file_id) REFERENCES gpkg_metadata(id),
 CONSTRAINT crmr_mpi_fk FOREIGN KEY (md_parent_id) REFERENCES gpkg_metadata(id));
INSERT INTO gpkg_extensions VALUES
 ('gpkg_data_columns', NULL, 'gpkg_schema', 'http://www.geopackage.org/spec130/#extension_schema', 'read-write'),
 ('gpkg_data_column_constraints', NULL, 'gpkg_schema', 'http://www.geopackage.org/spec130/#extension_schema', 'read-write'),
 ('gpkg_spatial_ref_sys', 'definition_12_063', 'gpkg_crs_wkt', 'http://www.geopackage.org/spec130/#extension_crs_wkt', 'read-write'),
 ('gpkg_metadata', NULL, 'gpkg_metadata', 'http://www.geopackage.org/spec130/#extension_metadata', 'read-write'),
 ('gpkg_metadata_reference', NULL, 'gpkg_metadata', 'http://www.geopackage.org/spec130/#extension_metadata', 'read-write');
INSERT INTO gpkg_spatial_ref_sys VALUES
 ('Undefined Cartesian SRS', -1, 'NONE', -1, 'undefined', 'undefined Cartesian coordinate reference system', 'undefined'),
 ('Undefined geographic SRS', 0, 'NONE', 0, 'undefined', 'undefined geographic coordinate reference system', 'undefined');
)";

// t = table name without quotes: layer names are our own, lower case without quotes in them.
constexpr const char* kTriggers = R"(
CREATE TRIGGER "rtree_@t_geom_insert" AFTER INSERT ON "@t" WHEN (new."geom" NOT NULL AND NOT ST_IsEmpty(NEW."geom"))
BEGIN INSERT OR REPLACE INTO "rtree_@t_geom" VALUES (NEW."fid", ST_MinX(NEW."geom"), ST_MaxX(NEW."geom"), ST_MinY(NEW."geom"), ST_MaxY(NEW."geom")); END;
CREATE TRIGGER "rtree_@t_geom_update1" AFTER UPDATE OF "geom" ON "@t"
WHEN OLD."fid" = NEW."fid" AND (NEW."geom" NOTNULL AND NOT ST_IsEmpty(NEW."geom"))
BEGIN INSERT OR REPLACE INTO "rtree_@t_geom" VALUES (NEW."fid", ST_MinX(NEW."geom"), ST_MaxX(NEW."geom"), ST_MinY(NEW."geom"), ST_MaxY(NEW."geom")); END;
CREATE TRIGGER "rtree_@t_geom_update2" AFTER UPDATE OF "geom" ON "@t" WHEN OLD."fid" = NEW."fid" AND (NEW."geom" ISNULL OR ST_IsEmpty(NEW."geom"))
BEGIN DELETE FROM "rtree_@t_geom" WHERE id = OLD."fid"; END;
CREATE TRIGGER "rtree_@t_geom_update3" AFTER UPDATE ON "@t" WHEN OLD."fid" != NEW."fid" AND (NEW."geom" NOTNULL AND NOT ST_IsEmpty(NEW."geom"))
BEGIN DELETE FROM "rtree_@t_geom" WHERE id = OLD."fid";
INSERT OR REPLACE INTO "rtree_@t_geom" VALUES (NEW."fid", ST_MinX(NEW."geom"), ST_MaxX(NEW."geom"), ST_MinY(NEW."geom"), ST_MaxY(NEW."geom")); END;
CREATE TRIGGER "rtree_@t_geom_update4" AFTER UPDATE ON "@t" WHEN OLD."fid" != NEW."fid" AND (NEW."geom" ISNULL OR ST_IsEmpty(NEW."geom"))
BEGIN DELETE FROM "rtree_@t_geom" WHERE id IN (OLD."fid", NEW."fid"); END;
CREATE TRIGGER "rtree_@t_geom_delete" AFTER DELETE ON "@t" WHEN old."geom" NOT NULL BEGIN DELETE FROM "rtree_@t_geom" WHERE id = OLD."fid"; END;
INSERT INTO gpkg_extensions VALUES ('@t', 'geom', 'gpkg_rtree_index', 'http://www.geopackage.org/spec130/#extension_rtree', 'write-only');
)";

std::string filledIn(std::string sql, const std::string& table)
{
    for (auto at = sql.find("@t"); at != std::string::npos; at = sql.find("@t", at + table.size()))
        sql.replace(at, 2, table);
    return sql;
}

Result<void> addSystem(GeoPackageStore& store, const Crs& crs)
{
    const int id = srsIdOf(crs);
    const std::string wkt1 = crs.wkt1();
    return store.exec("INSERT OR IGNORE INTO gpkg_spatial_ref_sys VALUES (" + sqlText(crs.name()) + ", " + std::to_string(id) + ", "
                      + (crs.epsg() ? "'EPSG', " : "'NONE', ") + std::to_string(id) + ", " + sqlText(wkt1.empty() ? "undefined" : wkt1) + ", NULL, " + sqlText(crs.wkt2()) + ")");
}

const char* geometryType(ShapeKind kind)
{
    return kind == ShapeKind::Point ? "POINT" : kind == ShapeKind::Line ? "LINESTRING" : "MULTIPOLYGON";
}

std::string constraintOf(const Layer& layer, const LayerField& field)
{
    return !field.list.words.empty() ? field.list.name : field.range ? layer.name + "_" + field.name : "";
}

/// What SQLite itself refuses: programs need not read the constraints of the schema extension. A range stays advice, or one odd figure of
/// a record would stop the whole export.
std::string checkOf(const LayerField& field)
{
    std::string words;
    for (const auto& word : field.list.words)
        words += (words.empty() ? "" : ", ") + sqlText(word);
    return words.empty() ? "" : " CHECK (" + sqlName(field.name) + " IN (" + words + "))";
}

Result<void> describe(GeoPackageStore& store, const Layer& layer, const LayerField& field)
{
    const std::string constraint = constraintOf(layer, field);
    std::string sql = "INSERT INTO gpkg_data_columns VALUES (" + sqlText(layer.name) + ", " + sqlText(field.name) + ", " + sqlText(titleWithUnit(field)) + ", "
                      + sqlText(titleWithUnit(field)) + ", " + sqlText(field.what) + ", NULL, " + (constraint.empty() ? "NULL" : sqlText(constraint)) + ");";
    for (const auto& word : field.list.words)
        sql += "INSERT OR IGNORE INTO gpkg_data_column_constraints VALUES (" + sqlText(constraint) + ", 'enum', " + sqlText(word) + ", NULL, NULL, NULL, NULL, "
               + sqlText(word) + ");";
    if (field.range)
        sql += "INSERT INTO gpkg_data_column_constraints VALUES (" + sqlText(constraint) + ", 'range', NULL, " + shownNumber(field.range->low) + ", 1, "
               + shownNumber(field.range->high) + ", 1, NULL);";
    return store.exec(sql);
}

}  // namespace

int srsIdOf(const Crs& crs)
{
    return crs.epsg().value_or(kOwnSystem);
}

Result<void> makeContainer(GeoPackageStore& store, const Crs& crs)
{
    if (const auto made = store.exec(kContainer); !made)
        return made;
    const auto world = Crs::fromEpsg(4326);
    if (!world)
        return tl::unexpected(world.error());
    if (const auto added = addSystem(store, *world); !added)
        return added;
    return addSystem(store, crs);
}

Result<void> makeLayerTable(GeoPackageStore& store, const Layer& layer, int srsId, const std::string& lastChange)
{
    std::string sql = "CREATE TABLE " + sqlName(layer.name) + " (\"fid\" INTEGER PRIMARY KEY NOT NULL, \"geom\" " + geometryType(layer.kind);
    for (const auto& field : layer.fields)
        sql += ", " + sqlName(field.name) + " " + typeName(field.form) + checkOf(field);
    const std::string srs = std::to_string(srsId);
    sql += ");INSERT INTO gpkg_contents VALUES (" + sqlText(layer.name) + ", 'features', " + sqlText(layer.title) + ", " + sqlText(layer.what) + ", "
           + sqlText(lastChange) + ", NULL, NULL, NULL, NULL, " + srs + ");INSERT INTO gpkg_geometry_columns VALUES (" + sqlText(layer.name) + ", 'geom', '"
           + geometryType(layer.kind) + "', " + srs + ", 0, 0);CREATE VIRTUAL TABLE " + sqlName("rtree_" + layer.name + "_geom")
           + " USING rtree(id, minx, maxx, miny, maxy)";
    if (const auto made = store.exec(sql); !made)
        return made;
    for (const auto& field : layer.fields)
        if (const auto described = describe(store, layer, field); !described)
            return described;
    return {};
}

Result<void> makeIndexTriggers(GeoPackageStore& store, const std::string& layer)
{
    return store.exec(filledIn(kTriggers, layer));
}

Result<void> makeAttributeTable(GeoPackageStore& store, const std::string& name, const std::string& what, const std::string& columns,
                                const std::string& lastChange)
{
    return store.exec("CREATE TABLE " + sqlName(name) + " (" + columns + ");INSERT INTO gpkg_contents VALUES (" + sqlText(name) + ", 'attributes', "
                      + sqlText(name) + ", " + sqlText(what) + ", " + sqlText(lastChange) + ", NULL, NULL, NULL, NULL, NULL)");
}

}  // namespace groundcount::gis
