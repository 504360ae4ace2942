#pragma once

#include "book/record.h"
#include "gis/crs.h"
#include "method/error.h"
#include "method/rules/rule_set.h"

#include <string>
#include <vector>

namespace groundcount::gis {

/// What a field book needs before its first lot.
struct NewJob {
    std::string name, place;                ///< place may be empty
    int epsg = 0;                           ///< a projected system; its unit is the unit of coordinates
    method::RuleSet rules;                  ///< its density unit is the job's
    std::string by;                         ///< subject of a person who is in the book; empty: the one below is made
    std::string person, role, certificate;  ///< role "technician" or "engineer"
};

/// The unit of coordinates as records write it: "m", "ft" or "ftUS".
/// @error Refused: a system that is not projected, or counts in something else.
Result<std::string> gridUnitOf(const Crs& crs);

/// The records of a new job: person where one is made, coordinate system, rule set, job. Times are left to the caller.
/// @error Refused: no name, no person, as `Crs::fromEpsg` and `gridUnitOf`.
Result<std::vector<book::Entry>> newJobEntries(const NewJob& job);

}  // namespace groundcount::gis
