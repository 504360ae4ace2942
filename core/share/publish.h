#pragma once

#include "book/store.h"
#include "gis/layer.h"
#include "gis/layer_check.h"
#include "method/error.h"
#include "share/patience.h"

#include <string>
#include <vector>

namespace groundcount::share {

struct PublishAsk {
    std::string schema;   ///< 1 to 40 lower-case letters, digits and _, beginning with a letter
    std::string readers;  ///< existing role that may read the tables, "" = nobody but the owner
    gis::ExportOptions options;
};

/// Publishes a book's layers (gis::layersOf) as tables of a PostGIS database, for programs that read one: a derived schema that is made
/// again from the records at every call, in one transaction, so that a reader sees the whole old state or the whole new one.
///
/// Tables, columns and words are those of docs/geopackage-layers.md; geometry `geom` in the job's EPSG code with a GiST index, times as
/// timestamptz, closed lists as CHECK, titles as comments. `provenance` holds the text of book::provenanceOf. A table keeps its identity
/// and its grants while its columns stay, so views on it live on.
/// @param patience asked while the server is silent; when it ends, nothing is changed
/// @return rows and shapes of each layer
/// @error Refused: a schema name of another form, a schema that another job's layers or something else live in, a job whose
///   coordinate system has no EPSG code or one that the server does not know, no PostGIS, a role that there is not, a view that hangs on
///   a table whose columns changed, a damaged book, stopped by `options.keepOn`. Unavailable: server or book. Nothing is changed then.
Result<std::vector<gis::LayerCount>> publish(const book::Store& store, const std::string& address, const PublishAsk& ask, const Patience& patience = {});

}  // namespace groundcount::share
