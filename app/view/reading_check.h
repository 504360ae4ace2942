#pragma once

#include "book/record.h"
#include "method/accept/evaluation_rules.h"
#include "method/accept/second_reading.h"
#include "method/error.h"
#include "method/gauge/calibration.h"

#include <QString>

#include <optional>

namespace groundcount::view {

/// The form in which a reading is typed.
enum class TypedForm { Counts, WaterDensity, WaterContent };

/// One reading as typed, both numbers there.
struct TypedReading {
    TypedForm form = TypedForm::Counts;
    double first = 0;   ///< density count, or wet density
    double second = 0;  ///< moisture count, water density or water content in percent
};

/// What a typed reading means before it is sealed; the verdict later works it anew from sealed records.
struct ReadingMeaning {
    double wet = 0;    ///< in the rule set's density unit, without offsets
    double water = 0;
    QString firstDoubt, secondDoubt;
};

/// Papers that turn counts into densities.
struct ReadingPapers {
    std::optional<method::DensityCurve> densityCurve;
    std::optional<method::WaterCurve> waterCurve;
    double densityStandard = 0;
    double moistureStandard = 0;
};

/// Reads the curve of this very depth and the water curve out of a calibration's body.
ReadingPapers papersOf(const book::Body& calibration, const QString& depthIn);

/// Works a typed reading; questions what lies outside the calibrated range.
/// @error Refused by the method's guards: no curve, a count out of the calibration's reach, water not below wet density
Result<ReadingMeaning> meaningOf(const TypedReading& reading, const ReadingPapers& papers, const method::EvaluationRules& rules, const QString& densityUnit);

/// The second reading beside the first, in words.
struct ReadingComparison {
    QString sentence;  ///< "0.6 lb/ft³ apart, 3.0 allowed"
    bool isTogether = false;
};
Result<ReadingComparison> compared(const ReadingMeaning& first, const ReadingMeaning& second, const method::EvaluationRules& rules, const QString& densityUnit);

}  // namespace groundcount::view
