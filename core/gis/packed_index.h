#pragma once

#include "gis/geopackage_store.h"
#include "gis/shape_bytes.h"

#include <cstdint>
#include <string>
#include <vector>

namespace groundcount::gis {

/// Fills an empty R-tree of SQLite at once: cells are sorted into vertical slices and then by height, so that nodes are full and hardly
/// overlap, and the nodes are written as the tree keeps them. Inserting one by one took more time than the rows themselves. Holds 40 bytes a row.
///
/// slices = ceil(sqrt(nodes)), nodes = ceil(cells / capacity); again for the nodes of each level until one is left, the root. Cells are
/// 32-bit floats, rounded so that the box only grows. SQLite's rtreecheck() finds nothing wrong with it (tested).
/// @source [STR-PACK] for the order; the nodes as SQLite 3.40.1 writes them, ext/rtree/rtree.c [SQLITE-RTREE]
class PackedIndex {
public:
    /// @param row at most 4 294 967 295 and not given before
    void add(std::int64_t row, const ShapeBounds& bounds);

    /// @param index name of an empty virtual table `rtree(id, minx, maxx, miny, maxy)`
    /// @error Unavailable: disk, or a table of another make.
    Result<void> write(GeoPackageStore& store, const std::string& index);

    struct Cell {
        std::int64_t id = 0;  ///< row, or number of a node
        float lowEast = 0, highEast = 0, lowNorth = 0, highNorth = 0;
    };

private:
    std::vector<Cell> m_cells;
};

}  // namespace groundcount::gis
