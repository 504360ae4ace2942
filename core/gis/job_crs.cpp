#include "gis/job_crs.h"

#include <cmath>

namespace groundcount::gis {

Result<Crs> jobCrs(const book::JobRow& job)
{
    if (job.epsg == 0 && job.crsWkt.empty())
        return refused("The job \"" + job.name + "\" needs a coordinate system; it has none.");
    auto crs = job.epsg != 0 ? Crs::fromEpsg(job.epsg) : Crs::fromWkt(job.crsWkt);
    if (!crs)
        return crs;
    if (!crs->isProjected())
        return refused("The job's coordinate system must be a projected one; \"" + crs->name() + "\" is not.");
    if (!(std::abs(job.metresPerGridUnit / crs->metresPerUnit() - 1) < 1e-7))
        return refused("The job's grid unit must be that of \"" + crs->name() + "\", the " + crs->unitName() + "; it is \"" + job.gridUnit + "\" with "
                       + std::to_string(job.metresPerGridUnit) + " m.");
    return crs;
}

}  // namespace groundcount::gis
