#include "gis/file_formats.h"

namespace groundcount::gis {

Result<const FileFormats*> fileFormats()
{
    return &gdalFormats();
}

}  // namespace groundcount::gis
