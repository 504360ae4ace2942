#pragma once

#include "gis/site_file.h"
#include "method/quantity.h"

#include <cstddef>
#include <string>
#include <vector>

namespace groundcount::gis {

/// The things of one form in one layer of a site file; for LandXML one row per alignment.
struct SiteLayer {
    std::string name;
    SiteForm form = SiteForm::Point;
    bool isAlignment = false;         ///< stands in `SiteFile::alignments`, at `alignmentIndex`
    std::size_t alignmentIndex = 0;
    std::size_t things = 0;           ///< of an alignment: its elements
    std::size_t corners = 0;
    std::vector<std::string> names;   ///< the first three that differ, as the file has them
};

/// What a person can map to kinds of records, in the order of the file.
std::vector<SiteLayer> siteLayers(const SiteFile& file);

/// The features of one layer and form, alone; the rest of the file as it was.
SiteFile onlyLayer(const SiteFile& file, const SiteLayer& layer);

/// Smallest box round everything, in the unit of the places; `any` is false when there is nothing.
struct SiteExtent {
    double south = 0, west = 0, north = 0, east = 0;
    bool any = false;
};
SiteExtent siteExtent(const std::vector<SiteFeature>& features);

/// How far a wrong choice between the international and the US survey foot would move the far corner of this box:
/// d = |r| * (1 - 0.3048 m / (1200/3937 m)), |r| the distance of that corner from the grid's origin.
/// @param extent in either foot @return in that foot
/// @source [FR-85-62698]
double feetApart(const SiteExtent& extent);

/// Distance between the middle of a box and a place of the same plane, 0 inside the box. @param metresPerUnit above 0
Length awayFrom(const SiteExtent& extent, const method::PlanPoint& place, double metresPerUnit);

}  // namespace groundcount::gis
