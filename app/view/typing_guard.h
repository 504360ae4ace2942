#pragma once

#include <QString>

namespace groundcount::view {

/// A slip of the finger that a typed number shows beside the number of last time. Both as decimal text.
/// @return "Two digits may be swapped: last time it was 2154." when two neighbouring digits have changed places,
///         "The decimal point may be off: last time it was 129.9." when the digits are the same and the point is elsewhere; else empty
QString likelySlip(const QString& typed, const QString& last);

}  // namespace groundcount::view
