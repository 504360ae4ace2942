#pragma once

#include "method/error.h"
#include "method/site/alignment.h"

#include <atomic>
#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace groundcount::gis {

enum class SiteForm { Point, Line, Area };

/// One thing of a site file, places in the file's own system and unit: y as north, x as east.
struct SiteFeature {
    std::string layer;  ///< for DXF the drawing's layer
    std::string name;   ///< "" where the file gives none
    SiteForm form = SiteForm::Point;
    std::vector<std::vector<method::PlanPoint>> rings;  ///< one run for a point or line; an area's outer ring, then its holes
};

/// What a site file holds. What it does not say stays empty and must be asked.
struct SiteFile {
    std::string format;  ///< "GeoPackage", "Shapefile", "GeoJSON", "KML", "DXF", "LandXML"
    std::string crsWkt;  ///< "" when the file names no coordinate system
    std::string crsName;
    std::string unit;    ///< "ft", "ftUS", "m" where the file says so by itself (LandXML), else ""
    std::vector<SiteFeature> features;
    std::vector<std::string> alignments;  ///< bodies of `alignment` records, from LandXML
    std::vector<std::string> notes;       ///< what was passed over, and why
};

/// How much a foreign file may cost.
struct SiteLimits {
    std::size_t fileBytes = 512u << 20;
    std::size_t memoryBytes = 2048u << 20;
    std::size_t features = 100'000;
    std::size_t vertices = 5'000'000;
    std::chrono::seconds time{30};
    std::size_t writeBytes = 16u << 20;       ///< largest file that the child may write
    const std::atomic<bool>* stop = nullptr;  ///< set by another thread: the reading ends at once
};

/// Reads a foreign file in this process with the one driver of its ending: .gpkg, .shp, .geojson, .json, .kml, .dxf, .xml,
/// .landxml. Only for the child of `readSiteFile`, on its private copy.
/// @error Refused: another ending, a file that its driver does not open, more features or vertices than the limits, no feature.
/// @source OGC 12-128r17, RFC 7946
Result<SiteFile> parseSiteFile(const std::string& path, const SiteLimits& limits);

/// As text between the child and its parent; one JSON object.
std::string siteFileText(const SiteFile& file);
/// @error Refused: not such a text.
Result<SiteFile> siteFileFrom(const std::string& text);

/// Bounds this process for good: memory, processor time, no new files, no network where the system lets a process give it up.
void boundReader(const SiteLimits& limits);

/// Reads a foreign file without trusting it: a plain file is copied into a private folder (a Shapefile with its .shx, .dbf, .prj
/// and .cpg) and `reader` is started on the copy as a child with bounds of memory and time. No driver sees the file's own
/// name or folder, so nothing beside it is opened. Whatever the file does, this process lives and gives a sentence.
/// @param reader command and arguments that call `boundReader` and `parseSiteFile` and print `siteFileText`; the copy's path is added
/// @param path of a plain file; not a folder, device, pipe, URL or virtual path
/// @error Refused: no plain file, larger than the limit, and what the child says. Unavailable: the child does not start.
Result<SiteFile> readSiteFile(const std::vector<std::string>& reader, const std::string& path, const SiteLimits& limits);

}  // namespace groundcount::gis
