#include "gis/gdal/dataset.h"
#include "gis/gdal/gdal_complaints.h"
#include "gis/gdal/formats.h"
#include "gis/gdal/gdal_setup.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gdal_priv.h>

namespace groundcount::gis::gdal {
namespace {

constexpr int kMostPart = 8192;  // pixels a side read at once: twice what the largest screen shows

class Pixels : public BackgroundPixels {
public:
    /// @error Refused: not a file that makeBackground writes
    static Result<std::unique_ptr<BackgroundPixels>> open(const std::string& path);
    Result<BackgroundPart> part(double west, double south, double east, double north, double unitsPerPixel) const override;

private:
    Dataset m_dataset;
    std::array<double, 6> m_place{};
    int m_width = 0, m_height = 0;
};

Result<std::unique_ptr<BackgroundPixels>> Pixels::open(const std::string& path)
{
    const GdalComplaints complaints;
    const char* const drivers[] = {"GTiff", nullptr};
    const char* const siblings[] = {nullptr};
    auto pixels = std::make_unique<Pixels>();
    auto& place = pixels->m_place;
    pixels->m_dataset.reset(GDALDataset::Open(path.c_str(), GDAL_OF_RASTER | GDAL_OF_READONLY, drivers, nullptr, siblings));
    auto* dataset = pixels->m_dataset.get();
    bool fits = dataset && dataset->GetRasterCount() >= 1 && dataset->GetRasterCount() <= 4 && dataset->GetGeoTransform(place.data()) == CE_None;
    for (int i = 1; fits && i <= dataset->GetRasterCount(); ++i)
        fits = dataset->GetRasterBand(i)->GetRasterDataType() == GDT_Byte;
    // North up, square to the grid, as makeBackground writes it.
    fits = fits && place[2] == 0 && place[4] == 0 && place[1] > 0 && place[5] < 0;
    if (!fits)
        return refused("The background \"" + path + "\" cannot be read; choose its file again.");
    pixels->m_width = dataset->GetRasterXSize();
    pixels->m_height = dataset->GetRasterYSize();
    pixels->whole = {place[0], place[3] + place[5] * pixels->m_height, place[0] + place[1] * pixels->m_width, place[3]};
    return pixels;
}

/// Spreads what was read over red, green, blue and alpha.
void spread(BackgroundPart& part, const std::vector<std::uint8_t>& planes, int bands, const GDALColorTable* palette)
{
    const std::size_t pixels = static_cast<std::size_t>(part.width) * static_cast<std::size_t>(part.height);
    part.rgba.resize(pixels * 4);
    const bool coloured = bands >= 3;
    const int alpha = coloured ? (bands == 4 ? 3 : -1) : (bands == 2 ? 1 : -1);
    for (std::size_t i = 0; i < pixels; ++i) {
        std::uint8_t* to = &part.rgba[i * 4];
        const GDALColorEntry* entry = palette ? palette->GetColorEntry(planes[i]) : nullptr;
        if (entry) {
            to[0] = static_cast<std::uint8_t>(entry->c1);
            to[1] = static_cast<std::uint8_t>(entry->c2);
            to[2] = static_cast<std::uint8_t>(entry->c3);
        } else {
            for (std::size_t c = 0; c < 3; ++c)
                to[c] = palette ? 0 : planes[(coloured ? c * pixels : 0) + i];
        }
        to[3] = alpha < 0 ? 255 : planes[static_cast<std::size_t>(alpha) * pixels + i];
        if (entry && entry->c4 < 255)
            to[3] = static_cast<std::uint8_t>(std::min<int>(to[3], entry->c4));
    }
}

Result<BackgroundPart> Pixels::part(double west, double south, double east, double north, double unitsPerPixel) const
{
    const auto& [x0, dx, rx, y0, ry, dy] = m_place;
    BackgroundPart part;
    if (!(unitsPerPixel > 0) || !(east > west) || !(north > south))
        return part;
    // Whole pixels of a grid `step` source pixels wide, so that neighbouring parts meet and a pan does not shimmer.
    int step = 1;
    while (dx * step * 2 <= unitsPerPixel || std::max(east - west, north - south) / (dx * step) > kMostPart)
        step *= 2;
    const auto cell = [&](double v) { return static_cast<int>(std::clamp(v, -1e9, 1e9)); };
    const int left = std::max(0, cell(std::floor((west - x0) / dx / step)) * step);
    const int right = std::min(m_width, cell(std::ceil((east - x0) / dx / step)) * step);
    const int top = std::max(0, cell(std::floor((north - y0) / dy / step)) * step);
    const int bottom = std::min(m_height, cell(std::ceil((south - y0) / dy / step)) * step);
    if (left >= right || top >= bottom)
        return part;
    part.width = (right - left + step - 1) / step;
    part.height = (bottom - top + step - 1) / step;
    part.west = x0 + left * dx;
    part.east = x0 + right * dx;
    part.north = y0 + top * dy;
    part.south = y0 + bottom * dy;
    const GdalComplaints complaints;
    const int bands = m_dataset->GetRasterCount();
    std::vector<std::uint8_t> planes(static_cast<std::size_t>(part.width) * static_cast<std::size_t>(part.height) * static_cast<std::size_t>(bands));
    if (m_dataset->RasterIO(GF_Read, left, top, right - left, bottom - top, planes.data(), part.width, part.height, GDT_Byte, bands, nullptr, 0, 0, 0, nullptr) != CE_None)
        return refused("The background is broken: " + complaints.firstFailure() + ".");
    spread(part, planes, bands, m_dataset->GetRasterBand(1)->GetColorTable());
    return part;
}

}  // namespace

Result<std::unique_ptr<BackgroundPixels>> openBackground(const std::string& path)
{
    if (const auto ready = setUpGdal(); !ready)
        return tl::unexpected(ready.error());
    return Pixels::open(path);
}

}  // namespace groundcount::gis::gdal
