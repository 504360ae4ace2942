#pragma once

#include <cmath>
#include <memory>
#include <optional>
#include <proj.h>

/// PROJ's objects with their owners. Private to core/gis.
namespace groundcount::gis {

using ProjContext = std::unique_ptr<PJ_CONTEXT, PJ_CONTEXT* (*)(PJ_CONTEXT*)>;
using ProjObject = std::unique_ptr<PJ, PJ* (*)(PJ*)>;

inline ProjContext newProjContext()
{
    ProjContext context(proj_context_create(), proj_context_destroy);
    // Grids are never fetched: a result must not depend on a network.
    proj_context_set_enable_network(context.get(), 0);
    proj_log_level(context.get(), PJ_LOG_NONE);
    return context;
}

inline ProjObject owned(PJ* object)
{
    return {object, proj_destroy};
}

/// From `source` to `target`, with east before north and degrees on both sides; nullptr when no way is known.
inline ProjObject wayBetween(PJ_CONTEXT* context, const PJ* source, const PJ* target)
{
    const ProjObject asListed = owned(proj_create_crs_to_crs_from_pj(context, source, target, nullptr, nullptr));
    return owned(asListed ? proj_normalize_for_visualization(context, asListed.get()) : nullptr);
}

/// What `way` makes of x and y; nullopt beyond its reach.
inline std::optional<PJ_XY> movedPlace(PJ* way, PJ_DIRECTION direction, double x, double y)
{
    proj_errno_reset(way);
    const PJ_COORD to = proj_trans(way, direction, proj_coord(x, y, 0, HUGE_VAL));
    if (!std::isfinite(to.xy.x) || !std::isfinite(to.xy.y))
        return std::nullopt;
    return to.xy;
}

}  // namespace groundcount::gis
