#include "gis/plane_shapes.h"

namespace groundcount::gis {

using method::PlanArea;
using method::PlanPoint;

PlaneShapes::PlaneShapes(PlanPoint origin) : m_context(GEOS_init_r()), m_origin(origin)
{
    if (!m_context)
        m_complaint = "GEOS cannot be loaded; check its installation";
    GEOSContext_setErrorMessageHandler_r(
        m_context, [](const char* message, void* kept) { *static_cast<std::string*>(kept) = message; }, &m_complaint);
}

PlaneShapes::~PlaneShapes()
{
    GEOS_finish_r(m_context);
}

GEOSCoordSequence* PlaneShapes::sequence(const std::vector<PlanPoint>& points, bool closed) const
{
    const auto size = static_cast<unsigned>(points.size()) + (closed ? 1U : 0U);
    GEOSCoordSequence* coordinates = GEOSCoordSeq_create_r(m_context, size, 2);
    for (unsigned i = 0; i < size; ++i) {
        const PlanPoint& p = points[i % points.size()];
        GEOSCoordSeq_setXY_r(m_context, coordinates, i, p.eastFt - m_origin.eastFt, p.northFt - m_origin.northFt);
    }
    return coordinates;
}

PlaneShapes::Shape PlaneShapes::polygon(const PlanArea& area) const
{
    const auto ring = [&](const std::vector<PlanPoint>& points) { return GEOSGeom_createLinearRing_r(m_context, sequence(points, true)); };
    GEOSGeometry* outer = ring(area.ring);
    if (!outer)
        return own(nullptr);
    std::vector<GEOSGeometry*> holes;
    for (const auto& hole : area.holes)
        if (GEOSGeometry* one = ring(hole))
            holes.push_back(one);
    return own(GEOSGeom_createPolygon_r(m_context, outer, holes.data(), static_cast<unsigned>(holes.size())));
}

PlaneShapes::Shape PlaneShapes::points(const std::vector<PlanPoint>& points) const
{
    std::vector<GEOSGeometry*> all;
    all.reserve(points.size());
    for (const PlanPoint& p : points)
        all.push_back(GEOSGeom_createPointFromXY_r(m_context, p.eastFt - m_origin.eastFt, p.northFt - m_origin.northFt));
    return own(GEOSGeom_createCollection_r(m_context, GEOS_MULTIPOINT, all.data(), static_cast<unsigned>(all.size())));
}

std::vector<PlanPoint> PlaneShapes::path(const GEOSGeometry* shape) const
{
    std::vector<PlanPoint> points;
    const GEOSCoordSequence* coordinates = GEOSGeom_getCoordSeq_r(m_context, shape);
    unsigned size = 0;
    if (!coordinates || !GEOSCoordSeq_getSize_r(m_context, coordinates, &size))
        return points;
    points.resize(size);
    for (unsigned i = 0; i < size; ++i) {
        GEOSCoordSeq_getXY_r(m_context, coordinates, i, &points[i].eastFt, &points[i].northFt);
        points[i].eastFt += m_origin.eastFt;
        points[i].northFt += m_origin.northFt;
    }
    return points;
}

std::vector<PlanArea> PlaneShapes::areas(const GEOSGeometry* shape) const
{
    std::vector<PlanArea> all;
    const int parts = shape ? GEOSGetNumGeometries_r(m_context, shape) : 0;
    const auto openRing = [&](const GEOSGeometry* ring) {
        auto points = path(ring);
        if (points.size() > 1)
            points.pop_back();
        return points;
    };
    for (int i = 0; i < parts; ++i) {
        const GEOSGeometry* part = GEOSGetGeometryN_r(m_context, shape, i);
        if (GEOSGeomTypeId_r(m_context, part) != GEOS_POLYGON || GEOSisEmpty_r(m_context, part))
            continue;
        PlanArea area;
        area.ring = openRing(GEOSGetExteriorRing_r(m_context, part));
        for (int h = 0; h < GEOSGetNumInteriorRings_r(m_context, part); ++h)
            area.holes.push_back(openRing(GEOSGetInteriorRingN_r(m_context, part, h)));
        all.push_back(std::move(area));
    }
    return all;
}

double PlaneShapes::area(const GEOSGeometry* shape) const
{
    double area = 0;
    GEOSArea_r(m_context, shape, &area);
    return area;
}

std::string PlaneShapes::fault(const GEOSGeometry* shape) const
{
    if (GEOSisValid_r(m_context, shape) == 1)
        return {};
    const std::unique_ptr<char, void (*)(void*)> reason(GEOSisValidReason_r(m_context, shape), [](void* text) { GEOSFree(text); });
    return reason ? reason.get() : m_complaint;
}

}  // namespace groundcount::gis
