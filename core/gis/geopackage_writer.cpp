#include "gis/geopackage_writer.h"

#include "gis/geopackage_schema.h"
#include "gis/packed_index.h"
#include "gis/shape_bytes.h"

#include <optional>

namespace groundcount::gis {
namespace {

/// One layer's rows on their way into the file.
class Rows {
public:
    Rows(GeoPackageStatement row, const Layer& layer, int srsId)
        : m_row(std::move(row)), m_layer(layer), m_srsId(srsId), m_times(layer.fields.size())
    {
    }

    Result<void> add(const LayerRow& row)
    {
        if (const auto readable = checkReadable(row, m_layer.fields); !readable)
            return readable;
        ++m_count.rows;
        m_row.bind(1, m_count.rows);
        const ShapeBounds bounds = boundsOf(row.shape);
        const std::string blob = row.shape.known() ? geoPackageBinary(row.shape, m_layer.kind, m_srsId, bounds) : std::string();
        if (row.shape.known())
            m_row.bindBlob(2, blob);
        else
            m_row.bindNull(2);
        for (std::size_t i = 0; i < row.values.size(); ++i)
            set(i, row.values[i]);
        if (const auto done = m_row.run(); !done || bounds.empty())
            return done;
        ++m_count.shapes;
        m_bounds.add(bounds);
        m_index.add(m_count.rows, bounds);
        return {};
    }

    PackedIndex& index() { return m_index; }
    const LayerCount& count() const { return m_count; }
    const ShapeBounds& bounds() const { return m_bounds; }

private:
    void set(std::size_t field, const FieldValue& value)
    {
        const int at = static_cast<int>(field) + 3;
        if (const auto* text = std::get_if<std::string>(&value)) {
            m_row.bind(at, std::string_view(*text));
        } else if (const auto* real = std::get_if<double>(&value)) {
            m_row.bind(at, *real);
        } else if (const auto* whole = std::get_if<int>(&value)) {
            m_row.bind(at, static_cast<std::int64_t>(*whole));
        } else if (const auto* utc = std::get_if<Instant>(&value)) {
            m_times[field] = instantText(*utc);
            m_row.bind(at, std::string_view(m_times[field]));
        } else {
            m_row.bindNull(at);
        }
    }

    GeoPackageStatement m_row;
    const Layer& m_layer;
    int m_srsId;
    std::vector<std::string> m_times;  // texts must live until the row is written
    LayerCount m_count{m_layer.name, 0, 0};
    ShapeBounds m_bounds;
    PackedIndex m_index;
};

std::string insertInto(const Layer& layer)
{
    std::string sql = "INSERT INTO " + sqlName(layer.name) + " VALUES (?, ?";
    for (std::size_t i = 0; i < layer.fields.size(); ++i)
        sql += ", ?";
    return sql + ")";
}

Result<void> writeBounds(GeoPackageStore& store, const std::string& layer, const ShapeBounds& bounds)
{
    if (bounds.empty())
        return {};
    auto update = store.prepare("UPDATE gpkg_contents SET min_x = ?, min_y = ?, max_x = ?, max_y = ? WHERE table_name = ?");
    if (!update)
        return tl::unexpected(update.error());
    return update->with(bounds.lowEast, bounds.lowNorth, bounds.highEast, bounds.highNorth, layer).run();
}

}  // namespace

Result<GeoPackageWriter> GeoPackageWriter::create(const std::string& path, const Crs& crs, std::string lastChange)
{
    auto store = GeoPackageStore::create(path);
    if (!store)
        return tl::unexpected(store.error());
    if (const auto made = makeContainer(*store, crs); !made)
        return tl::unexpected(made.error());
    return GeoPackageWriter(std::move(*store), srsIdOf(crs), std::move(lastChange));
}

Result<LayerCount> GeoPackageWriter::add(const Layer& layer, const ExportOptions& options)
{
    if (const auto made = makeLayerTable(m_store, layer, m_srsId, m_lastChange); !made)
        return tl::unexpected(made.error());
    auto row = m_store.prepare(insertInto(layer));
    if (!row)
        return tl::unexpected(row.error());
    std::optional<Rows> rows(std::in_place, std::move(*row), layer, m_srsId);
    const auto given = layer.each([&](const LayerRow& one) -> Result<void> {
        if (options.keepOn && !options.keepOn(m_written))
            return refused("The export was stopped after " + std::to_string(m_written) + " rows.");
        if (const auto added = rows->add(one); !added)
            return added;
        ++m_written;
        if (m_wanted.contains(one.id))
            m_remembered.try_emplace(one.id, Place{layer.name, rows->count().rows});
        return {};
    });
    const auto indexed = given ? rows->index().write(m_store, "rtree_" + layer.name + "_geom") : given;
    if (!indexed)
        return tl::unexpected(indexed.error());
    const LayerCount count = rows->count();
    const ShapeBounds bounds = rows->bounds();
    rows.reset();
    for (const auto& done : {writeBounds(m_store, layer.name, bounds), makeIndexTriggers(m_store, layer.name)})
        if (!done)
            return tl::unexpected(done.error());
    return count;
}

}  // namespace groundcount::gis
