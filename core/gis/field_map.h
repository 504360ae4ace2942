#pragma once

#include "gis/layer.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace groundcount::gis {

/// An owner's own names for layers and columns.
struct FieldMap {
    struct OneLayer {
        std::string name;                           ///< "" = as it is
        std::map<std::string, std::string> columns; ///< ours to theirs
        bool onlyThese = false;                     ///< columns that are not named are left out
    };
    std::map<std::string, OneLayer> layers;  ///< by our name
};

/// Reads {"layers": {"density_test": {"name": "DT", "columns": {"test_number": "TEST_NO"}, "only_these": true}}}; every part may be missing.
/// @error Refused: no such JSON, another key, a name that is not text.
Result<FieldMap> readFieldMap(std::string_view json);

/// Gives layers and columns their names of the map. Column names are letters, digits and _, begin with a letter, at most 60 characters,
/// no two alike whatever their case, not fid or geom.
/// @error Refused: a layer or column that there is not, a name of another form or twice.
Result<void> applyFieldMap(const FieldMap& map, std::vector<Layer>& layers);

}  // namespace groundcount::gis
