#include "gis/job_reference.h"

#include "gis/gdal_complaints.h"

#include <cmath>

namespace groundcount::gis {

Result<OGRSpatialReference> jobReference(const book::JobRow& job)
{
    if (job.epsg == 0 && job.crsWkt.empty())
        return refused("The job \"" + job.name + "\" needs a coordinate system; it has none.");
    const std::string name = job.epsg != 0 ? "EPSG:" + std::to_string(job.epsg) : "\"" + job.crsName + "\"";
    const GdalComplaints complaints;
    OGRSpatialReference reference;
    reference.SetAxisMappingStrategy(OAMS_TRADITIONAL_GIS_ORDER);
    const OGRErr read = job.epsg != 0 ? reference.importFromEPSG(job.epsg) : reference.importFromWkt(job.crsWkt.c_str());
    if (read != OGRERR_NONE)
        return refused("The job's coordinate system " + name + " is not known: " + complaints.firstFailure() + ".");
    if (!reference.IsProjected())
        return refused("The job's coordinate system must be a projected one; " + name + " is not.");
    const double metres = reference.GetLinearUnits();
    if (!(std::abs(job.metresPerGridUnit / metres - 1) < 1e-7))
        return refused("The job's grid unit must be that of " + name + ", which is " + std::to_string(metres) + " m; it is "
                       + std::to_string(job.metresPerGridUnit) + " m (" + job.gridUnit + ").");
    return reference;
}

}  // namespace groundcount::gis
