#include "gis/gdal/formats.h"

namespace groundcount::gis {

/// Of GDAL's functions the fuzz targets need the reader of site files alone.
Result<const FileFormats*> fileFormats()
{
    static const FileFormats formats{gdal::readSite, nullptr, nullptr, nullptr, nullptr};
    return &formats;
}

}  // namespace groundcount::gis
