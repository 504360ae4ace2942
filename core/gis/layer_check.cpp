#include "gis/layer_check.h"

#include "gis/file_formats.h"
#include "gis/geopackage_store.h"

#include <array>
#include <fstream>

namespace groundcount::gis {
namespace {

constexpr unsigned kApplicationId = 0x47504B47;  // "GPKG"
constexpr unsigned kVersion = 10300;

// Offsets 60 and 68 of the header: user_version and application_id, big-endian (SQLite file format, section 1.3).
unsigned bigEndianAt(const std::array<unsigned char, 100>& header, std::size_t at)
{
    return unsigned{header[at]} << 24 | unsigned{header[at + 1]} << 16 | unsigned{header[at + 2]} << 8 | unsigned{header[at + 3]};
}

Result<void> checkMarks(const std::string& path)
{
    std::array<unsigned char, 100> header{};
    std::ifstream file(path, std::ios::binary);
    if (!file.read(reinterpret_cast<char*>(header.data()), header.size()))
        return notReadBack("its header is cut off.");
    if (bigEndianAt(header, 68) != kApplicationId || bigEndianAt(header, 60) != kVersion)
        return notReadBack("it is marked as version " + std::to_string(bigEndianAt(header, 60)) + " instead of GeoPackage " + std::to_string(kVersion) + ".");
    return {};
}

Result<void> checkStore(const std::string& path, const KeepReading& keepOn)
{
    const auto word = GeoPackageStore::quickCheck(path, keepOn);
    if (!word)
        return tl::unexpected(word.error());
    if (word->empty())
        return stoppedWhileReading();
    return *word == "ok" ? Result<void>() : notReadBack("the quick check says \"" + *word + "\".");
}

}  // namespace

Result<void> checkLayers(const std::string& path, const std::vector<LayerCount>& expected, const KeepReading& keepOn)
{
    return fileFormats().and_then([&](const FileFormats* formats) { return formats->checkLayers(path, expected, false, keepOn); });
}

Result<void> checkGeoPackage(const std::string& path, const std::vector<LayerCount>& expected, const KeepReading& keepOn)
{
    if (const auto marks = checkMarks(path); !marks)
        return marks;
    const auto formats = fileFormats();
    if (!formats)
        return tl::unexpected(formats.error());
    if (const auto layers = (*formats)->checkLayers(path, expected, true, keepOn); !layers)
        return layers;
    return checkStore(path, keepOn);
}

}  // namespace groundcount::gis
