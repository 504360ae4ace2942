#pragma once

#include "method/error.h"

#include <string>
#include <vector>

namespace groundcount::gis {

struct FoundCrs {
    int epsg = 0;
    std::string name;
    std::string area;  ///< where it is meant for
};

/// Projected systems of the EPSG data set by code, name or place: every word must occur in the code, the name or the area, in any
/// case. Superseded ones are left out. Ordered by name, at most `most`.
/// @error Refused: no word. Unavailable: proj.db does not answer.
/// @source [EPSG-GN72] for the data set
Result<std::vector<FoundCrs>> findCrs(const std::string& words, std::size_t most);

}  // namespace groundcount::gis
