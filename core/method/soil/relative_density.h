#pragma once

#include "method/error.h"
#include "method/quantity.h"

namespace groundcount::method {

/// D_r = 100 (e_max - e)/(e_max - e_min). Above 100 or below 0 is reported as it is.
/// @error Refused for a void ratio not above 0 or e_max not above e_min. @source [UFC-322020]
Result<double> relativeDensityFromVoids(double e, double eMax, double eMin);

/// D_r = 100 (g_max/g_d)(g_d - g_min)/(g_max - g_min). @error Refused for densities not above 0 or out of order.
/// @source [UFC-322020]
Result<double> relativeDensity(DryDensity dry, DryDensity maximum, DryDensity minimum);

/// g_d = g_max g_min/(g_max - D_r (g_max - g_min)). @param percent D_r @error as above, or no finite density.
/// @source [UFC-322020]
Result<DryDensity> dryAtRelativeDensity(double percent, DryDensity maximum, DryDensity minimum);

}  // namespace groundcount::method
