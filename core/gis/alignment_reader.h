#pragma once

#include "method/error.h"
#include "method/site/alignment.h"

#include <string>

namespace groundcount::gis {

/// Reads the body of an `alignment` record (docs/record-format.md) into a line that stations can be found on.
///
/// Lengths, stations and coordinates stay in the body's own unit, whatever the names in method::Alignment end in.
/// @param bodyJson object with `unit` ("ft", "ftUS", "m"), `begin_station`, `begin_north`, `begin_east`,
///   `begin_azimuth_deg` (decimal texts), `elements` in order, at least one ({`kind`: "line", `length`} or {`kind`: "curve",
///   `radius`, `turn` ("left", "right"), `length`}), `equations` in order, may be missing ({`back`, `ahead`}); other keys
///   are left alone
/// @return the alignment; joints are smooth, a record has no corners
/// @error Refused: not JSON, a key missing or of another form, another word, a radius or length not above 0, a station
///   equation off the line; the sentence names the element by its place, from 1.
/// @source [DESIGN]
Result<method::Alignment> alignmentFrom(const std::string& bodyJson);

}  // namespace groundcount::gis
