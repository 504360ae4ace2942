#pragma once

#include "method/error.h"
#include "view/row_list.h"

#include <vector>

namespace groundcount::view {

/// Projected coordinate systems that hold every word in code, name or place, at most 12, their EPSG code as id and figure. A code
/// alone also finds a superseded one.
/// @error Refused, with the words, when there is none; as gis::findCrs.
Result<std::vector<Row>> systemRows(const QString& words);

/// "NAD83(2011) / Arkansas North (ftUS), EPSG:6411", or why the code is none.
QString systemName(int epsg);

}  // namespace groundcount::view
