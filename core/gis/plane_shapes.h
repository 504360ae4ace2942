#pragma once

#include "method/accept/draw.h"
#include "method/error.h"

#include <geos_c.h>
#include <memory>
#include <string>
#include <vector>

namespace groundcount::gis {

/// GEOS for one thread and one calculation: every shape made here must end before it does. Coordinates are held relative
/// to an origin near the work, because state plane coordinates of several millions leave GEOS too few digits.
class PlaneShapes {
public:
    struct Destroy {
        GEOSContextHandle_t context = nullptr;
        void operator()(GEOSGeometry* shape) const { GEOSGeom_destroy_r(context, shape); }
    };
    using Shape = std::unique_ptr<GEOSGeometry, Destroy>;

    explicit PlaneShapes(method::PlanPoint origin);
    ~PlaneShapes();
    PlaneShapes(const PlaneShapes&) = delete;
    PlaneShapes& operator=(const PlaneShapes&) = delete;

    GEOSContextHandle_t context() const { return m_context; }
    /// Takes ownership of what a GEOS call gave; may be null.
    Shape own(GEOSGeometry* shape) const { return Shape(shape, Destroy{m_context}); }

    Shape polygon(const method::PlanArea& area) const;
    /// @param points in plan @return one multipoint
    Shape points(const std::vector<method::PlanPoint>& points) const;
    /// Every polygon of a shape, rings without the repeated last point; lines and points are left out.
    std::vector<method::PlanArea> areas(const GEOSGeometry* shape) const;
    /// The points of a line, or the one of a point.
    std::vector<method::PlanPoint> path(const GEOSGeometry* shape) const;

    double area(const GEOSGeometry* shape) const;
    /// Why the shape is not a valid area in the sense of OGC 06-103r4 (a ring that crosses itself, a hole outside), "" when it is.
    std::string fault(const GEOSGeometry* shape) const;
    /// GEOS's last complaint, for a sentence.
    const std::string& complaint() const { return m_complaint; }

private:
    GEOSCoordSequence* sequence(const std::vector<method::PlanPoint>& points, bool closed) const;
    GEOSContextHandle_t m_context;
    method::PlanPoint m_origin;
    std::string m_complaint;
};

}  // namespace groundcount::gis
