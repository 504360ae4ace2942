#pragma once

#include "method/error.h"

#include <string_view>

namespace groundcount::method {

/// Units by the names that files and forms use: lb/ft3, kg/m3, kN/m3, Mg/m3, g/cm3, t/m3; m, mm, cm, ft, in., usft
/// (US survey foot), yd; ft3, in3, yd3, m3, cm3, mL, L; kg, g, lb, Mg; lbf, N, kN; mCi, GBq, uCi, Bq.
/// value x converted through SI with exact factors. Weight per volume and mass per volume convert through standard
/// gravity. @param value any finite number @param from, to names of one kind of unit
/// @error Refused for a name that is not known, for two kinds, for a value not finite. @source [SP811], [UNIT-PAGE], [FR-85-62698]
Result<double> converted(double value, std::string_view from, std::string_view to);

}  // namespace groundcount::method
