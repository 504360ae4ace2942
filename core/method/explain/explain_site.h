#pragma once

#include "method/accept/random_place.h"
#include "method/accept/second_reading.h"
#include "method/explain/explain_steps.h"
#include "method/site/clearance.h"

/// The arithmetic of a test's place as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// In which unit distances are shown.
enum class LengthUnit { Inches, Feet, Millimetres, Metres };

/// judgeClearance(). @source [DESIGN]
std::vector<ExplainStep> explainClearance(Length measured, Length uncertainty, Length required, Inclusive inclusive,
                                          ClearanceAnswer answer, LengthUnit unit);
/// checkHole(). @param checked what checkHole() gave. @source [D6938-TXT], [COMMON]
std::vector<ExplainStep> explainHole(Length testDepth, Length hole, Length margin, Length lift, const Result<void>& checked, LengthUnit unit);
/// compareReadings().. @source [WAQTC-T310], [COMMON]
std::vector<ExplainStep> explainSecondReading(double first, double second, DifferenceKind kind, double limit,
                                              const SecondReading& reading, DensityUnit unit);
/// placeFromNumbers(), in feet. @source [LA-S605], [SK-STP107]
std::vector<ExplainStep> explainPlace(const Strip& strip, double along, double across, EdgePolicy policy, const RandomPlace& place);

}  // namespace groundcount::method
