#include "gis/packed_index.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <limits>

namespace groundcount::gis {
namespace {

using Cell = PackedIndex::Cell;

constexpr std::size_t kHead = 4;   // depth and number of cells, two bytes each
constexpr std::size_t kCell = 24;  // id and four coordinates

float down(double value)
{
    const auto near = static_cast<float>(value);
    return static_cast<double>(near) > value ? std::nextafter(near, -std::numeric_limits<float>::infinity()) : near;
}

float up(double value)
{
    const auto near = static_cast<float>(value);
    return static_cast<double>(near) < value ? std::nextafter(near, std::numeric_limits<float>::infinity()) : near;
}

template <class Number>
void putBigEndian(std::string& bytes, Number number)
{
    for (int shift = static_cast<int>(sizeof number) * 8 - 8; shift >= 0; shift -= 8)
        bytes += static_cast<char>(number >> shift & 0xFF);
}

void putFloat(std::string& bytes, float value)
{
    std::uint32_t bits = 0;
    std::memcpy(&bits, &value, sizeof bits);
    putBigEndian(bytes, bits);
}

Cell around(std::int64_t node, const Cell* begin, const Cell* end)
{
    Cell box = *begin;
    box.id = node;
    for (const Cell* cell = begin; cell != end; ++cell) {
        box.lowEast = std::min(box.lowEast, cell->lowEast);
        box.highEast = std::max(box.highEast, cell->highEast);
        box.lowNorth = std::min(box.lowNorth, cell->lowNorth);
        box.highNorth = std::max(box.highNorth, cell->highNorth);
    }
    return box;
}

/// Where part `i` of `parts` even ones begins.
std::size_t cut(std::size_t count, std::size_t parts, std::size_t i)
{
    return count * i / parts;
}

void sortIntoSlices(std::vector<Cell>& cells, std::size_t nodes)
{
    const auto eastward = [](const Cell& a, const Cell& b) {
        const float x = a.lowEast + a.highEast, y = b.lowEast + b.highEast;
        return x == y ? a.id < b.id : x < y;
    };
    const auto northward = [](const Cell& a, const Cell& b) {
        const float x = a.lowNorth + a.highNorth, y = b.lowNorth + b.highNorth;
        return x == y ? a.id < b.id : x < y;
    };
    std::sort(cells.begin(), cells.end(), eastward);
    const auto slices = static_cast<std::size_t>(std::ceil(std::sqrt(static_cast<double>(nodes))));
    for (std::size_t i = 0; i < slices; ++i)  // slices end where nodes do
        std::sort(cells.begin() + static_cast<std::ptrdiff_t>(cut(cells.size(), nodes, cut(nodes, slices, i))),
                  cells.begin() + static_cast<std::ptrdiff_t>(cut(cells.size(), nodes, cut(nodes, slices, i + 1))), northward);
}

/// The three tables behind an R-tree.
class Tables {
public:
    static Result<Tables> of(GeoPackageStore& store, const std::string& index)
    {
        auto node = store.prepare("INSERT OR REPLACE INTO " + sqlName(index + "_node") + " VALUES (?, ?)");
        auto row = store.prepare("INSERT INTO " + sqlName(index + "_rowid") + " VALUES (?, ?)");
        auto parent = store.prepare("INSERT INTO " + sqlName(index + "_parent") + " VALUES (?, ?)");
        const auto size = store.ask("SELECT length(data) FROM " + sqlName(index + "_node") + " WHERE nodeno = 1");
        if (!node || !row || !parent || !size)
            return tl::unexpected(!node ? node.error() : !row ? row.error() : !parent ? parent.error() : size.error());
        const std::size_t bytes = std::strtoul(size->c_str(), nullptr, 10);
        if (bytes < kHead + 4 * kCell)
            return unavailable("The index " + index + " was not filled: SQLite keeps its nodes in another form.");
        return Tables(std::move(*node), std::move(*row), std::move(*parent), bytes);
    }

    std::size_t capacity() const { return (m_bytes - kHead) / kCell; }

    Result<void> putNode(std::int64_t number, std::uint16_t depth, const Cell* begin, const Cell* end)
    {
        std::string data;
        putBigEndian(data, depth);
        putBigEndian(data, static_cast<std::uint16_t>(end - begin));
        for (const Cell* cell = begin; cell != end; ++cell) {
            putBigEndian(data, static_cast<std::uint64_t>(cell->id));
            for (const float side : {cell->lowEast, cell->highEast, cell->lowNorth, cell->highNorth})
                putFloat(data, side);
        }
        data.resize(m_bytes, '\0');
        m_node.bind(1, number);
        m_node.bindBlob(2, data);
        return m_node.run();
    }
    Result<void> putRow(std::int64_t row, std::int64_t node) { return m_row.with(row, node).run(); }
    Result<void> putParent(std::int64_t node, std::int64_t parent) { return m_parent.with(node, parent).run(); }

private:
    Tables(GeoPackageStatement node, GeoPackageStatement row, GeoPackageStatement parent, std::size_t bytes)
        : m_node(std::move(node)), m_row(std::move(row)), m_parent(std::move(parent)), m_bytes(bytes)
    {
    }
    GeoPackageStatement m_node, m_row, m_parent;
    std::size_t m_bytes;
};

/// Writes the nodes of one level; the cells become those of the level above. @param next number of the next node that is not the root
Result<void> pack(Tables& tables, std::vector<Cell>& cells, std::uint16_t depth, std::int64_t& next)
{
    const std::size_t nodes = (cells.size() + tables.capacity() - 1) / tables.capacity();
    const bool isRoot = nodes <= 1;
    if (!isRoot)
        sortIntoSlices(cells, nodes);
    std::vector<Cell> above;
    std::vector<std::pair<std::int64_t, std::int64_t>> homes;  // of a cell, sorted so that the table grows at its end
    homes.reserve(cells.size());
    for (std::size_t i = 0; i < std::max<std::size_t>(nodes, 1); ++i) {
        const Cell* begin = cells.data() + cut(cells.size(), std::max<std::size_t>(nodes, 1), i);
        const Cell* end = cells.data() + cut(cells.size(), std::max<std::size_t>(nodes, 1), i + 1);
        const std::int64_t number = isRoot ? 1 : next++;
        if (const auto put = tables.putNode(number, isRoot ? depth : std::uint16_t{0}, begin, end); !put)
            return put;
        for (const Cell* cell = begin; cell != end; ++cell)
            homes.emplace_back(cell->id, number);
        if (!isRoot)
            above.push_back(around(number, begin, end));
    }
    std::sort(homes.begin(), homes.end());
    for (const auto& [cell, node] : homes)
        if (const auto put = depth == 0 ? tables.putRow(cell, node) : tables.putParent(cell, node); !put)
            return put;
    cells = std::move(above);
    return {};
}

}  // namespace

void PackedIndex::add(std::int64_t row, const ShapeBounds& bounds)
{
    m_cells.push_back({row, down(bounds.lowEast), up(bounds.highEast), down(bounds.lowNorth), up(bounds.highNorth)});
}

Result<void> PackedIndex::write(GeoPackageStore& store, const std::string& index)
{
    if (m_cells.empty())
        return {};
    auto tables = Tables::of(store, index);
    if (!tables)
        return tl::unexpected(tables.error());
    std::int64_t next = 2;
    for (std::uint16_t depth = 0; !m_cells.empty(); ++depth)
        if (const auto packed = pack(*tables, m_cells, depth, next); !packed)
            return packed;
    return {};
}

}  // namespace groundcount::gis
