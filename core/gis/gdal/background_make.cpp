#include "gis/gdal/dataset.h"
#include "gis/gdal/gdal_complaints.h"
#include "gis/gdal/formats.h"
#include "gis/gdal/gdal_setup.h"
#include "method/sentence.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cpl_string.h>
#include <filesystem>
#include <gdal_priv.h>
#include <gdal_utils.h>
#include <gdalwarper.h>

namespace groundcount::gis::gdal {
namespace {

constexpr double kMostSide = 16384;      // with overviews 1.4 GB of plain pixels, some hundred MB as written
constexpr double kMostPixels = 1e11;     // a picture of the ground is smaller; such a size in a head is a trap
constexpr int kLeastOverview = 512;

struct Kind {
    const char* ending;
    const char* driver;
    const char* format;
};
constexpr Kind kKinds[] = {{".tif", "GTiff", "GeoTIFF"}, {".tiff", "GTiff", "GeoTIFF"}, {".mbtiles", "MBTiles", "MBTiles"}, {".gpkg", "GPKG", "GeoPackage"}};

const Kind* kindOf(const std::string& path)
{
    std::string ending = std::filesystem::path(path).extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    const auto at = std::find_if(std::begin(kKinds), std::end(kKinds), [&](const Kind& k) { return ending == k.ending; });
    return at == std::end(kKinds) ? nullptr : at;
}

Result<void> checkPicture(GDALDataset& source, const Kind& kind)
{
    std::array<double, 6> place{};
    if (source.GetRasterCount() < 1 || source.GetRasterCount() > 4)
        return refused("A background has 1 to 4 bands; this " + std::string(kind.format) + " has " + std::to_string(source.GetRasterCount()) + ".");
    for (int i = 1; i <= source.GetRasterCount(); ++i)
        if (const GDALDataType type = source.GetRasterBand(i)->GetRasterDataType(); type != GDT_Byte)
            return refused("A background has 8 bits a band; this " + std::string(kind.format) + " has " + GDALGetDataTypeName(type) + ". Draw it as a picture first.");
    if (static_cast<double>(source.GetRasterXSize()) * source.GetRasterYSize() > kMostPixels)
        return refused("The picture claims " + std::to_string(source.GetRasterXSize()) + " x " + std::to_string(source.GetRasterYSize()) + " pixels; at most 100 thousand million are read.");
    if (source.GetGeoTransform(place.data()) != CE_None)
        return refused("The " + std::string(kind.format) + " does not say where on the ground it lies.");
    if (!source.GetSpatialRef() || source.GetSpatialRef()->IsLocal())
        return refused("The " + std::string(kind.format) + " does not say its coordinate system.");
    return {};
}

struct Size {
    int width = 0, height = 0;
    bool isCoarser = false;
};

Result<Size> sizeIn(GDALDataset& source, const std::string& targetWkt)
{
    CPLStringList options;
    options.SetNameValue("DST_SRS", targetWkt.c_str());
    void* transformer = GDALCreateGenImgProjTransformer2(&source, nullptr, options.List());
    std::array<double, 6> place{};
    std::array<double, 4> extent{};
    int width = 0, height = 0;
    const bool known = transformer
                       && GDALSuggestedWarpOutput2(&source, GDALGenImgProjTransform, transformer, place.data(), &width, &height, extent.data(), 0) == CE_None;
    if (transformer)
        GDALDestroyGenImgProjTransformer(transformer);
    if (!known || width < 1 || height < 1)
        return refused("The picture cannot be laid into the job's coordinate system.");
    const double shrink = std::max({1.0, width / kMostSide, height / kMostSide});
    return Size{std::max(1, static_cast<int>(width / shrink)), std::max(1, static_cast<int>(height / shrink)), shrink > 1};
}

Dataset warped(GDALDataset& source, const std::string& targetWkt, const std::string& outPath, const Size& size)
{
    const bool palette = source.GetRasterBand(1)->GetColorTable() != nullptr;
    const int bands = source.GetRasterCount();
    const bool hasAlpha = source.GetRasterBand(bands)->GetColorInterpretation() == GCI_AlphaBand;
    CPLStringList words;
    for (const char* word : {"-of", "GTiff", "-co", "TILED=YES", "-co", "COMPRESS=DEFLATE", "-co", "ZLEVEL=1", "-co", "BIGTIFF=IF_SAFER", "-wm", "128"})
        words.AddString(word);
    words.AddString("-t_srs");
    words.AddString(targetWkt.c_str());
    words.AddString("-r");
    words.AddString(palette ? "near" : "bilinear");
    words.AddString("-ts");
    words.AddString(std::to_string(size.width).c_str());
    words.AddString(std::to_string(size.height).c_str());
    if (!hasAlpha && bands != 2 && bands != 4)
        words.AddString("-dstalpha");
    GDALWarpAppOptions* options = GDALWarpAppOptionsNew(words.List(), nullptr);
    GDALDatasetH from = &source;
    int wrong = 0;
    Dataset out(GDALDataset::FromHandle(GDALWarp(outPath.c_str(), nullptr, 1, &from, options, &wrong)));
    GDALWarpAppOptionsFree(options);
    return out;
}

}  // namespace

Result<BackgroundFacts> makeBackground(const std::string& path, const std::string& targetWkt, const std::string& outPath)
{
    const Kind* kind = kindOf(path);
    if (!kind)
        return refused("A background must end in .tif, .tiff, .mbtiles or .gpkg; it ends in \"" + std::filesystem::path(path).extension().string().substr(0, 20) + "\".");
    if (const auto ready = setUpGdal(); !ready)
        return tl::unexpected(ready.error());
    const GdalComplaints complaints;
    const auto broken = [&](const std::string& what) { return refused(what + (complaints.failed() ? ": " + complaints.firstFailure() + "." : ".")); };
    const char* const drivers[] = {kind->driver, nullptr};
    const char* const siblings[] = {nullptr};  // no .aux.xml, .ovr or world file beside it
    Dataset source{GDALDataset::Open(path.c_str(), GDAL_OF_RASTER | GDAL_OF_READONLY, drivers, nullptr, siblings)};
    if (!source)
        return broken("The file is not a " + std::string(kind->format) + " picture that can be read");
    if (const auto fits = checkPicture(*source, *kind); !fits)
        return tl::unexpected(fits.error());
    const auto size = sizeIn(*source, targetWkt);
    if (!size)
        return tl::unexpected(size.error());
    Dataset out = warped(*source, targetWkt, outPath, *size);
    if (!out || complaints.failed())
        return broken("The picture was not laid into the job's coordinate system");
    std::vector<int> levels;
    for (int level = 2; std::max(size->width, size->height) / level * 2 > kLeastOverview; level *= 2)
        levels.push_back(level);
    const bool palette = out->GetRasterBand(1)->GetColorTable() != nullptr;
    if (!levels.empty() && out->BuildOverviews(palette ? "NEAREST" : "AVERAGE", static_cast<int>(levels.size()), levels.data(), 0, nullptr, nullptr, nullptr) != CE_None)
        return broken("The overviews of the background were not made");
    std::array<double, 6> place{};
    out->GetGeoTransform(place.data());
    BackgroundFacts facts{kind->format, source->GetSpatialRef()->GetName() ? source->GetSpatialRef()->GetName() : "", size->width, size->height, 0, size->isCoarser};
    facts.metresPerPixel = std::abs(place[1]) * out->GetSpatialRef()->GetLinearUnits();
    out.reset();
    return complaints.failed() ? broken("The background was not written") : Result<BackgroundFacts>(facts);
}

}  // namespace groundcount::gis::gdal
