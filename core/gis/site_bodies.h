#pragma once

#include "book/record.h"
#include "book/state.h"
#include "gis/site_file.h"

#include <optional>
#include <string>
#include <vector>

namespace groundcount::gis {

/// What a file does not say and a person answers.
struct SiteAnswers {
    std::optional<int> epsg;  ///< coordinate system of the file
    std::string unit;         ///< "ft", "ftUS" or "m": unit of the coordinates
    std::string layer;        ///< take this layer only; "" = every one
    std::string fileName;     ///< kept with each record
};

/// Features of a file in the job's grid, x = east, y = north: scaled to the unit of their own system, then projected by PROJ. Where
/// the two systems have different datums PROJ's own choice without grids is taken.
/// @error Refused: no feature of that layer; the file names no system and none is answered (the sentence asks for it), a drawing
///   without an answered unit, an answer that contradicts the file, the job without a system, a place that cannot be projected.
Result<std::vector<SiteFeature>> placedInJob(const SiteFile& file, const book::JobRow& job, const SiteAnswers& answers);

/// Bodies of `obstacle` records: the path in full; as place its middle, with the radius that holds all of it, so that a reader
/// that knows no paths errs to the near side.
/// @param kind "wall", "structure", "pipe", "vehicle", "gauge"
/// @error Refused: more than 2000 corners in one thing.
Result<std::vector<book::Body>> obstacleBodies(const std::vector<SiteFeature>& features, const book::JobRow& job, const std::string& kind,
                                               const std::string& fileName);

/// What a lot needs beside its ground.
struct LotAnswers {
    std::string material, proctor;  ///< subjects
    int testsPerLift = 0;
    std::string minimumPct;         ///< "" = none
};
/// Bodies of `lot` records out of areas. @error Refused: a thing that is no area or not a valid one, tests per lift below 1.
Result<std::vector<book::Body>> lotBodies(const std::vector<SiteFeature>& features, const book::JobRow& job, const LotAnswers& answers);

/// Body of an `alignment` record that is one straight line between two points.
/// @param job its grid's unit is that of stations and coordinates @param beginStation decimal text @param begin, end in the job's grid
/// @error Refused: the two points are less than a foot apart.
Result<book::Body> straightAlignment(const book::JobRow& job, const std::string& name, const std::string& beginStation, method::PlanPoint begin, method::PlanPoint end);

/// Bodies of `alignment` records: those of a LandXML file, or a straight line of two corners of another file with `beginStation`.
/// @error Refused: another unit or system than the job's, a line with corners (a record has none), no station answered.
Result<std::vector<book::Body>> alignmentBodies(const SiteFile& file, const book::JobRow& job, const SiteAnswers& answers,
                                                const std::string& beginStation);

}  // namespace groundcount::gis
