#include "fuzz/hold.h"
#include "gis/gdal/dataset.h"
#include "gis/gdal/gdal_setup.h"
#include "gis/site_file.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <unistd.h>

using namespace groundcount::gis;

namespace {

const std::string& folder()
{
    // never freed: the cleaning at the exit still reads it
    static const std::string& made = *new std::string([] {
        std::string name = "/tmp/groundcount-fuzz-XXXXXX";
        HOLD(::mkdtemp(name.data()));
        std::atexit([] {
            for (const char* one : {"/site.gpkg", "/site.gpkg-journal", "/site.gpkg-wal", "/site.gpkg-shm", ""})
                ::remove((folder() + one).c_str());
        });
        return name;
    }());
    return made;
}

/// A sound GeoPackage of one point, one line and one area, made by GDAL.
std::string soundFile()
{
    HOLD(setUpGdal());
    const std::string path = folder() + "/site.gpkg";
    {
        const Dataset dataset{GetGDALDriverManager()->GetDriverByName("GPKG")->Create(path.c_str(), 0, 0, 0, GDT_Unknown, nullptr)};
        OGRSpatialReference system;
        HOLD(dataset && system.importFromEPSG(6411) == OGRERR_NONE);
        OGRLayer* layer = dataset->CreateLayer("works", &system, wkbUnknown, nullptr);
        OGRFieldDefn name("name", OFTString);
        HOLD(layer && layer->CreateField(&name) == OGRERR_NONE);
        for (const char* wkt : {"POINT(100 200)", "LINESTRING(0 0,10 10,20 5)", "POLYGON((0 0,90 0,90 90,0 0),(20 10,30 10,30 20,20 10))"}) {
            OGRGeometry* shape = nullptr;
            HOLD(OGRGeometryFactory::createFromWkt(wkt, nullptr, &shape) == OGRERR_NONE);
            OGRFeature feature(layer->GetLayerDefn());
            feature.SetField("name", wkt);
            feature.SetGeometryDirectly(shape);
            HOLD(layer->CreateFeature(&feature) == OGRERR_NONE);
        }
    }
    std::ifstream file(path, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(file), {});
}

/// Patches of a sound file, five bytes each: three of place, one of length, one of value.
std::string patched(std::string file, const std::uint8_t* data, std::size_t size)
{
    for (std::size_t i = 0; i + 5 <= size; i += 5) {
        const std::size_t place = (std::size_t{data[i]} << 16U | std::size_t{data[i + 1]} << 8U | data[i + 2]) % file.size();
        const std::size_t length = std::min<std::size_t>(data[i + 3] % 16 + 1, file.size() - place);
        std::fill_n(file.begin() + static_cast<std::ptrdiff_t>(place), length, static_cast<char>(data[i + 4]));
    }
    return file;
}

}  // namespace

/// A damaged GeoPackage: a sentence, or things within the limits. GDAL itself is not instrumented; a fall of GDAL is a finding all the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const std::string sound = soundFile();
    const std::string path = folder() + "/site.gpkg";
    std::ofstream(path, std::ios::binary | std::ios::trunc) << patched(sound, data, size);
    SiteLimits limits;
    limits.features = 50;
    limits.vertices = 500;
    const auto file = parseSiteFile(path, limits);
    HOLD(file || !file.error().what.empty());
    if (!file)
        return 0;
    HOLD(!file->features.empty() && file->features.size() <= limits.features);
    for (const SiteFeature& feature : file->features)
        for (const auto& ring : feature.rings)
            for (const auto& place : ring)
                HOLD(std::isfinite(place.northFt) && std::isfinite(place.eastFt));
    HOLD(siteFileFrom(siteFileText(*file)));
    return 0;
}
