#pragma once

#include "method/accept/evaluate.h"

namespace groundcount::method {

/// The first part of evaluate(): each reading through counts, calibration and offsets, then both joined to one wet and one
/// water density by the rule of the second reading.
/// @param e gets readings, readingCount, wet, water (the mean of two) and the remarks on the calibrated range
/// @error Refused by any guard on the way; for other than 1 or 2 readings; for two readings too far apart
/// @source [D6938-TXT], [WAQTC-T310]
Result<void> joinReadings(const TestInput& input, const EvaluationRules& rules, Evaluation& e);

}  // namespace groundcount::method
