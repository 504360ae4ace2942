#pragma once

#include "method/accept/second_reading.h"
#include "method/decimal.h"
#include "method/error.h"
#include "method/quantity.h"
#include "method/rules/rule_set.h"
#include "method/soil/oversize.h"

#include <optional>

namespace groundcount::method {

/// Governing unit of densities in a rule set.
enum class DensityUnit { LbPerFt3, KgPerM3 };

using groundcount::Rounding;

/// Percent compaction is taken from the unrounded or from the rounded dry density; in one published day of tests only
/// the rounded way gives all printed percents. @source [COPPELL], [C114-15]
enum class PercentFrom { UnroundedDry, RoundedDry };
/// The value compared with a limit: as reported, or unrounded. @source [E29-SCOPE]
enum class Compared { Rounded, Unrounded };

/// The part of a rule set that the evaluation of one test reads, with every key looked up once.
struct EvaluationRules {
    DensityUnit unit = DensityUnit::LbPerFt3;
    std::optional<Rounding> dry, maximum, optimum, content, compaction;
    PercentFrom percentFrom = PercentFrom::UnroundedDry;
    Compared compared = Compared::Rounded;
    CoarsePart coarseLower;
    AtLowerLimit atLowerLimit = AtLowerLimit::NotCorrected;
    CoarsePart coarseUpperNo4;
    CoarsePart coarseUpperThreeQuarter;
    WaterContent coarseWater;
    DensityOfWater waterDensity;
    DifferenceKind secondKind = DifferenceKind::PercentOfFirst;
    double secondDensityLimit = 0;   ///< percent, or density unit of the rule set
    double secondMoistureLimit = 0;  ///< percent, or density unit of the rule set
    double trenchWarningPct = 0;
    WetDensity wetLeast, wetMost;  ///< range of a wet density or maximum that is believed, inclusive
    double countMost = 0;          ///< highest count that is believed
    double contentMostPct = 0;     ///< highest water content that is believed, percent
    WetDensity wetUncertainty;
    double contentUncertaintyPct = 0;
};

/// Reads the evaluation's settings out of a rule set.
/// @error Refused when a limit's unit contradicts a choice (a percent limit with an absolute rule)
Result<EvaluationRules> evaluationRules(const RuleSet& rules);

/// `value` in the rule set's unit.
template <class Density>
double inUnit(const Density& value, DensityUnit unit)
{
    return unit == DensityUnit::LbPerFt3 ? value.lbPerFt3() : value.kgPerM3();
}

template <class Density>
Density fromUnit(double value, DensityUnit unit)
{
    return unit == DensityUnit::LbPerFt3 ? Density::lbPerFt3(value) : Density::kgPerM3(value);
}

inline const char* unitWord(DensityUnit unit)
{
    return unit == DensityUnit::LbPerFt3 ? "lb/ft3" : "kg/m3";
}

}  // namespace groundcount::method
