#include "gis/shape_bytes.h"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstring>

namespace groundcount::gis {
namespace {

using method::PlanPoint;

static_assert(std::endian::native == std::endian::little, "coordinates are written as they lie in memory");

enum : std::uint32_t { kPoint = 1, kLineString = 2, kPolygon = 3, kMultiPolygon = 6 };

template <class Number>
void put(std::string& bytes, Number number)
{
    char raw[sizeof number];
    std::memcpy(raw, &number, sizeof number);
    bytes.append(raw, sizeof raw);
}

void begin(std::string& bytes, std::uint32_t kind)
{
    bytes += '\1';  // little-endian
    put(bytes, kind);
}

void put(std::string& bytes, const PlanPoint& point)
{
    put(bytes, point.eastFt);
    put(bytes, point.northFt);
}

void putCount(std::string& bytes, std::size_t count)
{
    put(bytes, static_cast<std::uint32_t>(count));
}

/// Twice the area, positive counter-clockwise; relative to the first corner, or large coordinates would eat the digits.
double turnOf(const std::vector<PlanPoint>& ring)
{
    double sum = 0;
    const PlanPoint& o = ring.front();
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const PlanPoint& a = ring[i];
        const PlanPoint& b = ring[(i + 1) % ring.size()];
        sum += (a.eastFt - o.eastFt) * (b.northFt - o.northFt) - (b.eastFt - o.eastFt) * (a.northFt - o.northFt);
    }
    return sum;
}

enum class Winding { CounterClockwise, Clockwise };

void putRing(std::string& bytes, std::vector<PlanPoint> ring, Winding winding)
{
    if ((turnOf(ring) > 0) != (winding == Winding::CounterClockwise))
        std::reverse(ring.begin() + 1, ring.end());  // the first corner stays the first
    putCount(bytes, ring.size() + 1);
    for (const PlanPoint& point : ring)
        put(bytes, point);
    put(bytes, ring.front());
}

void grow(ShapeBounds& bounds, const PlanPoint& point)
{
    bounds.add({point.eastFt, point.eastFt, point.northFt, point.northFt});
}

}  // namespace

void ShapeBounds::add(const ShapeBounds& other)
{
    if (other.empty())
        return;
    if (empty()) {
        *this = other;
        return;
    }
    lowEast = std::min(lowEast, other.lowEast);
    highEast = std::max(highEast, other.highEast);
    lowNorth = std::min(lowNorth, other.lowNorth);
    highNorth = std::max(highNorth, other.highNorth);
}

ShapeBounds boundsOf(const LayerShape& shape)
{
    ShapeBounds bounds;
    for (const PlanPoint& point : shape.path)
        grow(bounds, point);
    for (const auto& area : shape.areas)
        for (const PlanPoint& point : area.ring)
            grow(bounds, point);
    return bounds;
}

std::string wellKnownBinary(const LayerShape& shape, ShapeKind kind)
{
    std::string bytes;
    switch (kind) {
    case ShapeKind::Point:
        begin(bytes, kPoint);
        put(bytes, shape.path.front());
        break;
    case ShapeKind::Line:
        begin(bytes, kLineString);
        putCount(bytes, shape.path.size());
        for (const PlanPoint& point : shape.path)
            put(bytes, point);
        break;
    case ShapeKind::Area:
        begin(bytes, kMultiPolygon);
        putCount(bytes, shape.areas.size());
        for (const auto& area : shape.areas) {
            begin(bytes, kPolygon);
            putCount(bytes, 1 + area.holes.size());
            putRing(bytes, area.ring, Winding::CounterClockwise);
            for (const auto& hole : area.holes)
                putRing(bytes, hole, Winding::Clockwise);
        }
        break;
    }
    return bytes;
}

std::string geoPackageBinary(const LayerShape& shape, ShapeKind kind, int srsId, const ShapeBounds& bounds)
{
    const bool envelope = kind != ShapeKind::Point;
    std::string bytes("GP");
    bytes += '\0';                        // version 1
    bytes += envelope ? '\3' : '\1';  // little-endian; bit 1: envelope of x and y
    put(bytes, static_cast<std::int32_t>(srsId));
    if (envelope)
        for (const double side : {bounds.lowEast, bounds.highEast, bounds.lowNorth, bounds.highNorth})
            put(bytes, side);
    return bytes + wellKnownBinary(shape, kind);
}

}  // namespace groundcount::gis
