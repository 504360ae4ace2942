#pragma once

#include "gis/crs.h"
#include "gis/site_file.h"

#include <cstdint>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace groundcount::gis {

/// What was made of a foreign picture of the ground.
struct BackgroundFacts {
    std::string format;   ///< "GeoTIFF", "MBTiles", "GeoPackage"
    std::string crsName;  ///< of the file
    int width = 0, height = 0;        ///< pixels of the background
    double metresPerPixel = 0;        ///< on the ground, near enough
    bool isCoarser = false;           ///< the file holds more than was taken over
};

/// Bounds for a background: larger files than plans are, and one is written.
SiteLimits backgroundLimits();

/// Takes a picture of the ground over as a background: read with the one driver of its ending (.tif, .tiff, .mbtiles, .gpkg), laid
/// into `targetWkt`, north up, written as a GeoTIFF in tiles with overviews. Only for the child of `takeBackground`, on its private copy.
/// Pixels outside the file are transparent. Bilinear; the nearest for a palette. At most 16384 x 16384 pixels, else coarser.
/// @error Refused: another ending, a file that its driver does not open, no place or system in it, other than 8 bits a band, more
///   than 4 bands, a system that cannot be laid into the target.
/// @source OGC 12-128r17 (GeoPackage tiles); places by PROJ without grids
Result<BackgroundFacts> makeBackground(const std::string& path, const std::string& targetWkt, const std::string& outPath);

/// As text between the child and its parent; one JSON object.
std::string backgroundText(const BackgroundFacts& facts);

/// Takes a foreign picture over without trusting it: copied into a private folder, read and written there by `reader` as a child
/// with bounds of memory, time and size, and only a whole result takes the place of an older background.
/// @param reader command and arguments that call `boundReader` and `makeBackground` and print `backgroundText`; copy, the file
///   with the target's WKT and the result's path are added
/// @param target path of the background to be, beside the book
/// @error Refused: no plain file, larger than the limit, and what the child says. Unavailable: disk, or the child does not start.
Result<BackgroundFacts> takeBackground(const std::vector<std::string>& reader, const std::string& path, const Crs& job, const std::string& target,
                                       const SiteLimits& limits);

/// Where the background of a book lies: beside it, "day.fieldbook" -> "day.fieldbook-ground.tif".
std::string backgroundPath(const std::string& bookPath);

/// A part of a background: 4 bytes a pixel (red, green, blue, alpha, not premultiplied), rows from the north, and its place in the grid.
struct BackgroundPart {
    int width = 0, height = 0;  ///< 0: nothing lies there
    std::vector<std::uint8_t> rgba;
    double west = 0, south = 0, east = 0, north = 0;
};

/// The pixels of one background, by the library that reads them; see Background.
class BackgroundPixels {
public:
    BackgroundPixels() = default;
    BackgroundPixels(const BackgroundPixels&) = delete;
    BackgroundPixels& operator=(const BackgroundPixels&) = delete;
    virtual ~BackgroundPixels() = default;
    virtual Result<BackgroundPart> part(double west, double south, double east, double north, double unitsPerPixel) const = 0;

    struct {
        double west = 0, south = 0, east = 0, north = 0;
    } whole;
};

/// An open background; one object serves one thread at a time.
class Background {
public:
    /// @error Refused: no such file, or not one that `makeBackground` writes.
    static Result<Background> open(const std::string& path);
    /// The pixels that meet a box, from the overview whose pixels are not coarser than `unitsPerPixel` where there is one.
    /// @param west, south, east, north box in the job's grid @param unitsPerPixel of the screen, above 0
    /// @error Refused: the file is broken there.
    Result<BackgroundPart> part(double west, double south, double east, double north, double unitsPerPixel) const
    {
        return m_pixels->part(west, south, east, north, unitsPerPixel);
    }

    double west() const { return m_pixels->whole.west; }
    double south() const { return m_pixels->whole.south; }
    double east() const { return m_pixels->whole.east; }
    double north() const { return m_pixels->whole.north; }

private:
    explicit Background(std::unique_ptr<BackgroundPixels> pixels) : m_pixels(std::move(pixels)) {}
    std::unique_ptr<BackgroundPixels> m_pixels;
};

}  // namespace groundcount::gis
