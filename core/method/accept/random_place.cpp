#include "method/accept/random_place.h"

#include "method/sentence.h"

namespace groundcount::method {

Result<RandomPlace> placeFromNumbers(const Strip& strip, double along, double across, EdgePolicy policy)
{
    if (!std::isfinite(strip.beginFt))
        return refusedValue("The begin station", strip.beginFt, "", "a number");
    if (!isPositive(strip.lengthFt))
        return refusedValue("The length of the lot", strip.lengthFt, "", "above 0");
    if (!isPositive(strip.widthFt))
        return refusedValue("The width of the lot", strip.widthFt, "", "above 0");
    if (!isNotNegative(strip.leftEdgeFt) || !isNotNegative(strip.rightEdgeFt))
        return refusedValue("An edge strip", isNotNegative(strip.leftEdgeFt) ? strip.rightEdgeFt : strip.leftEdgeFt, "", "at least 0");
    const double open = strip.widthFt - strip.leftEdgeFt - strip.rightEdgeFt;
    if (!(open > 0))
        return refusedValue("The width between the edge strips", open, "", "above 0");
    for (const double random : {along, across})
        if (!(random >= 0) || !(random <= 1))
            return refusedValue("The random number", random, "", "0 to 1");
    RandomPlace place;
    place.stationFt = strip.beginFt + along * strip.lengthFt;
    if (policy == EdgePolicy::Shrink) {
        place.fromLeftFt = strip.leftEdgeFt + across * open;
    } else {
        place.fromLeftFt = across * strip.widthFt;
        place.insideEdge = place.fromLeftFt < strip.leftEdgeFt || place.fromLeftFt > strip.widthFt - strip.rightEdgeFt;
    }
    place.offsetRightFt = place.fromLeftFt - strip.widthFt / 2;
    return place;
}

}  // namespace groundcount::method
