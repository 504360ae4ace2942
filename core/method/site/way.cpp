#include "method/site/way.h"

#include "method/sentence.h"

#include <cmath>
#include <numbers>

namespace groundcount::method {

Result<Way> wayTo(Length north, Length east)
{
    for (const auto& [thing, part] : {std::pair{"The difference in northing", north}, {"The difference in easting", east}})
        if (!std::isfinite(part.metres()))
            return refusedValue(thing, part.metres(), " m", "a finite number");
    const double angle = std::atan2(east.metres(), north.metres()) * 180.0 / std::numbers::pi;
    const double bearing = angle < 0 ? angle + 360.0 : angle;
    // a tiny negative angle plus 360 is 360 in doubles
    return Way{Length::metres(std::hypot(north.metres(), east.metres())), bearing < 360.0 ? bearing : 0.0};
}

}  // namespace groundcount::method
