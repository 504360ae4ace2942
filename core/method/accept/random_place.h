#pragma once

#include "method/error.h"

namespace groundcount::method {

/// The strip of a lot. Lengths in the unit of the stations.
struct Strip {
    double beginFt = 0;      ///< station of the begin; a lot across a station equation counts true distance here
    double lengthFt = 0;     ///< above 0
    double widthFt = 0;      ///< above 0
    double leftEdgeFt = 0;   ///< strip along the left edge where nothing is tested, at least 0
    double rightEdgeFt = 0;  ///< the same on the right; together below the width
};

/// What happens to a draw inside an edge strip. Moving it to the nearest allowed place is biased and is not offered.
enum class EdgePolicy {
    Shrink,  ///< from left = left edge + r (width - both edges)
    Redraw   ///< from left = r width, and a new pair of numbers when it falls inside an edge strip
};

struct RandomPlace {
    double stationFt = 0;
    double fromLeftFt = 0;
    double offsetRightFt = 0;  ///< from the middle of the strip, right positive
    bool insideEdge = false;   ///< only with Redraw: draw again, keep this one as rejected
};

/// station = begin + r1 L; from left by the policy; offset right = from left - W/2.
/// @param along r1, 0 to 1 @param across r2, 0 to 1
/// @error Refused: length or width not above 0, an edge below 0, edges that leave nothing, a number outside 0 to 1, NaN.
/// @source [LA-S605], [SK-STP107]
Result<RandomPlace> placeFromNumbers(const Strip& strip, double along, double across, EdgePolicy policy);

}  // namespace groundcount::method
