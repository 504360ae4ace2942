#pragma once

#include "book/flat_body.h"

#include <string>

namespace groundcount::book {

/// One sentence for a hazard of a clearance that is too close or unknown without a remedy, or whose distance contradicts its answer; else "".
std::string clearanceFault(const FlatBody& hazard);

}  // namespace groundcount::book
