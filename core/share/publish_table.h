#pragma once

#include "gis/layer.h"
#include "gis/layer_check.h"
#include "share/connection.h"

#include <string>

namespace groundcount::share {

/// Where the tables go.
struct Site {
    std::string schema;   ///< as an identifier
    std::string postgis;  ///< schema of PostGIS, as an identifier
    int epsg = 0;
};

/// Makes the table of a layer, or empties the one that is there when its columns are the same.
/// @error Refused when something hangs on a table that must change.
Result<void> prepareTable(Connection& server, const Site& site, const gis::Layer& layer);

/// Sends the rows of a layer. @error that of the layer; as Connection::copy
Result<gis::LayerCount> fillTable(Connection& server, const Site& site, const gis::Layer& layer, const gis::ExportOptions& options);

}  // namespace groundcount::share
