#pragma once

namespace groundcount {

/// Version of the computing core; sealed with every verdict so that a later difference can be explained.
inline constexpr const char* kCoreVersion = "0.1.0";

}  // namespace groundcount
