#include "share/publish.h"

#include "book/provenance.h"
#include "book/read_view.h"
#include "gis/job_crs.h"
#include "gis/layer_source.h"
#include "share/connection.h"
#include "share/publish_table.h"

#include <algorithm>

namespace groundcount::share {
namespace {

Result<void> checkSchemaName(const std::string& name)
{
    const auto isWordly = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; };
    const bool good = !name.empty() && name.size() <= 40 && name.front() >= 'a' && name.front() <= 'z' && std::all_of(name.begin(), name.end(), isWordly)
                      && !name.starts_with("pg_") && name != "groundcount" && name != "public";
    if (!good)
        return refused("A schema for layers must be 1 to 40 lower-case letters, digits or _, begin with a letter and be no other's; it is \"" + name + "\".");
    return {};
}

/// The schema of PostGIS, and that the server knows the system.
Result<std::string> postgisFor(Connection& server, int epsg)
{
    const auto found = server.run("SELECT n.nspname::text FROM pg_catalog.pg_extension e JOIN pg_catalog.pg_namespace n ON n.oid = e.extnamespace"
                                  " WHERE e.extname = 'postgis'");
    if (!found)
        return tl::unexpected(found.error());
    if (found->rows() == 0)
        return refused("The database has no PostGIS; its administrator runs CREATE EXTENSION postgis first.");
    const auto schema = server.quoted(found->bytes(0, 0));
    if (!schema)
        return schema;
    const auto system = server.run("SELECT 1 FROM " + *schema + ".spatial_ref_sys WHERE srid = $1", {wholeOf(epsg)});
    if (!system)
        return tl::unexpected(system.error());
    if (system->rows() == 0)
        return refused("The server's PostGIS must know the job's coordinate system; EPSG:" + std::to_string(epsg) + " is not in its spatial_ref_sys.");
    return *schema;
}

/// Makes the schema, or sees that it holds layers of this job.
Result<void> claimSchema(Connection& server, const std::string& name, const std::string& schema, const std::string& book)
{
    const std::string mark = "Layers of the field book " + book;
    const auto there = server.run("SELECT coalesce(pg_catalog.obj_description(oid, 'pg_namespace'), '') FROM pg_catalog.pg_namespace WHERE nspname = $1",
                                  {textOf(name)});
    if (!there)
        return tl::unexpected(there.error());
    if (there->rows() > 0)
        return there->bytes(0, 0) == mark ? Result<void>{}
                                          : refused("The schema \"" + name + "\" must be new or hold the layers of this book; it is \"" + there->bytes(0, 0) + "\".");
    const auto literal = server.literal(mark);
    if (!literal)
        return tl::unexpected(literal.error());
    for (const auto& sql : {"CREATE SCHEMA " + schema, "COMMENT ON SCHEMA " + schema + " IS " + *literal,
                            "CREATE TABLE " + schema + ".provenance(text jsonb NOT NULL, published_at timestamptz NOT NULL DEFAULT clock_timestamp())"})
        if (const auto done = server.run(sql); !done)
            return tl::unexpected(done.error());
    return {};
}

Result<void> tellProvenance(Connection& server, const std::string& schema, const std::string& text)
{
    if (const auto emptied = server.run("DELETE FROM " + schema + ".provenance"); !emptied)
        return tl::unexpected(emptied.error());
    const auto told = server.run("INSERT INTO " + schema + ".provenance(text) VALUES ($1::jsonb)", {textOf(text)});
    return told ? Result<void>{} : tl::unexpected(told.error());
}

Result<void> openTo(Connection& server, const std::string& schema, const std::string& readers)
{
    const auto role = server.quoted(readers);
    if (!role)
        return tl::unexpected(role.error());
    for (const auto& sql : {"GRANT USAGE ON SCHEMA " + schema + " TO " + *role, "GRANT SELECT ON ALL TABLES IN SCHEMA " + schema + " TO " + *role})
        if (const auto done = server.run(sql); !done)
            return tl::unexpected(done.error());
    return {};
}

struct Ready {
    std::string book, provenance;
    int epsg = 0;
    std::vector<gis::Layer> layers;
};

Result<Ready> prepare(const book::Store& store, const PublishAsk& ask)
{
    if (!store.damage().empty())
        return refused("A damaged book is not published: " + store.damage());
    const auto source = gis::layerSource(store);
    const auto id = store.bookId();
    const auto provenance = book::provenanceOf(store);
    if (!source || !id || !provenance)
        return tl::unexpected(!source ? source.error() : !id ? id.error() : provenance.error());
    const auto crs = gis::jobCrs((*source)->job);
    auto layers = gis::layersOf(*source, ask.options);
    if (!crs || !layers)
        return tl::unexpected(crs ? layers.error() : crs.error());
    if (!crs->epsg())
        return refused("The job's coordinate system must have an EPSG code to be published; \"" + crs->name() + "\" has none.");
    return Ready{*id, provenance->text, *crs->epsg(), std::move(*layers)};
}

}  // namespace

Result<std::vector<gis::LayerCount>> publish(const book::Store& store, const std::string& address, const PublishAsk& ask, const Patience& patience)
{
    if (const auto good = checkSchemaName(ask.schema); !good)
        return tl::unexpected(good.error());
    const auto moment = book::ReadView::begin(store);
    if (!moment)
        return tl::unexpected(moment.error());
    const auto ready = prepare(store, ask);
    if (!ready)
        return tl::unexpected(ready.error());
    auto server = Connection::open(address, patience);
    if (!server)
        return tl::unexpected(server.error());
    const auto postgis = postgisFor(*server, ready->epsg);
    const auto schema = server->quoted(ask.schema);
    if (!postgis || !schema)
        return tl::unexpected(postgis ? schema.error() : postgis.error());
    auto work = Work::begin(*server);
    if (!work)
        return tl::unexpected(work.error());
    if (const auto claimed = claimSchema(*server, ask.schema, *schema, ready->book); !claimed)
        return tl::unexpected(claimed.error());
    // Two publishers of one job: the second waits here for the first to commit.
    if (const auto locked = server->run("LOCK TABLE " + *schema + ".provenance IN SHARE ROW EXCLUSIVE MODE"); !locked)
        return tl::unexpected(locked.error());
    const Site site{*schema, *postgis, ready->epsg};
    std::vector<gis::LayerCount> counts;
    for (const auto& layer : ready->layers) {
        if (const auto prepared = prepareTable(*server, site, layer); !prepared)
            return tl::unexpected(prepared.error());
        const auto count = fillTable(*server, site, layer, ask.options);
        if (!count)
            return tl::unexpected(count.error());
        counts.push_back(*count);
    }
    if (const auto told = tellProvenance(*server, *schema, ready->provenance); !told)
        return tl::unexpected(told.error());
    if (!ask.readers.empty())
        if (const auto opened = openTo(*server, *schema, ask.readers); !opened)
            return tl::unexpected(opened.error());
    if (const auto done = work->commit(); !done)
        return tl::unexpected(done.error());
    return counts;
}

}  // namespace groundcount::share
