#pragma once

#include "method/error.h"

namespace groundcount::method {

/// Stations of a lot, inside numbers in feet (one unit throughout).
struct StationRange {
    double begin = 0;
    double end = 0;  ///< above begin
};

/// Station at which a sublot of equal length begins: begin + (end - begin) i/n; i = n is the end of the lot.
/// @param sublots n, at least 1 @param index i, 0 to n
/// @error Refused: end not above begin, n or i outside its range, NaN. @source [D3665-SCOPE], [LA-S605]
Result<double> sublotBegin(const StationRange& lot, int sublots, int index);

/// The sublot, from 0, that holds a station. A station on a bound between two belongs to the later one, the end of the
/// lot to the last, so that no station of the lot is left out and none is counted twice.
/// @error Refused as `sublotBegin`, and for a station outside the lot. @source [DESIGN]
Result<int> sublotAt(const StationRange& lot, int sublots, double station);

}  // namespace groundcount::method
