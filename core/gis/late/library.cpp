#include "gis/file_formats.h"

#include <string_view>

/// What the late library shows of itself. @param version of the program that asks; @return nullptr when it is not that of this library
extern "C" __attribute__((visibility("default"))) const groundcount::gis::FileFormats* groundcount_file_formats(const char* version)
{
    return std::string_view(version) == GROUNDCOUNT_VERSION ? &groundcount::gis::gdalFormats() : nullptr;
}
