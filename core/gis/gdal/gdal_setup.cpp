#include "gis/gdal/gdal_setup.h"

#include <cpl_conv.h>
#include <gdal_priv.h>
#include <mutex>
#include <ogr_spatialref.h>
#include <ogr_srs_api.h>

namespace groundcount::gis {
namespace {

Result<void> setUpOnce()
{
    // A file that GDAL opens must never run code, follow a link to another file or call the network.
    CPLSetConfigOption("GDAL_SKIP", "VRT,HTTP,WMS,WMTS,WCS,PDF,PLMOSAIC,DERIVED,STACTA,STACIT,EEDAI");
    CPLSetConfigOption("OGR_SKIP", "OGR_VRT,WFS,OAPIF,CSW,Carto,Elastic,AmigoCloud,PLSCENES,NGW,EEDA,PGDUMP,PostgreSQL,MySQL,MSSQLSpatial,ODBC,OCI");
    CPLSetConfigOption("GDAL_VRT_ENABLE_PYTHON", "NO");
    CPLSetConfigOption("OGR_SQLITE_LOAD_EXTENSIONS", nullptr);
    CPLSetConfigOption("GDAL_DRIVER_PATH", "disable");
    OSRSetPROJEnableNetwork(0);
    CPLPushErrorHandler(CPLQuietErrorHandler);
    GDALAllRegister();
    CPLPopErrorHandler();
    if (!GetGDALDriverManager()->GetDriverByName("GPKG"))
        return unavailable("This GDAL has no GeoPackage driver; install GDAL 3.6 or later with GPKG.");
    OGRSpatialReference probe;
    CPLPushErrorHandler(CPLQuietErrorHandler);
    const bool found = probe.importFromEPSG(6420) == OGRERR_NONE;
    CPLPopErrorHandler();
    if (!found)
        return unavailable("The coordinate system database proj.db does not answer for EPSG:6420; check the PROJ installation.");
    return {};
}

}  // namespace

Result<void> setUpGdal()
{
    static const Result<void> outcome = setUpOnce();
    return outcome;
}

}  // namespace groundcount::gis
