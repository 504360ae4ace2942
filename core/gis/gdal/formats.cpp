#include "gis/gdal/formats.h"

namespace groundcount::gis {

const FileFormats& gdalFormats()
{
    static const FileFormats formats{gdal::readSite, gdal::makeBackground, gdal::openBackground, gdal::writePlain, gdal::checkLayers};
    return formats;
}

}  // namespace groundcount::gis
