#pragma once

#include "gis/site_file.h"

namespace groundcount::gis {

/// Reads the alignments of a LandXML 1.x text: Units linearUnit (foot, USSurveyFoot, meter), of each Alignment staStart, the
/// CoordGeom of Line and circular Curve with their Start, Center and End ("north east [elevation]"), and StaEquation (staBack,
/// staAhead). An alignment with anything else, such as a Spiral, with a gap, or with a corner above 0.05 degrees is passed over
/// with a note. Each one taken is set out again from its begin and must end where the file says, to 0.01 m.
///
/// No entity is expanded: a text with a document type declaration is refused.
/// @param text the whole file
/// @return bodies of `alignment` records in the file's unit
/// @error Refused: not well-formed, a document type, another unit, no alignment that can be taken (the first reason is given).
/// @source LandXML-1.2 schema
Result<SiteFile> parseLandXml(const std::string& text);

}  // namespace groundcount::gis
