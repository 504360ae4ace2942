#pragma once

#include "method/error.h"
#include "method/quantity.h"
#include "method/unit.h"
#include "table.h"

#include <stdexcept>
#include <string>
#include <vector>

namespace groundcount::tables {

/// Factor of a unit to kg/m3 (weight per volume through standard gravity).
inline double kgPerM3Of(const std::string& unit)
{
    const auto factor = method::converted(1.0, unit, "kg/m3");
    if (!factor)
        throw std::runtime_error(factor.error().what);
    return *factor;
}

inline double siOf(double value, const std::string& unit, const char* si)
{
    if (value != value)
        return value;
    const auto converted = method::converted(value, unit, si);
    if (!converted)
        throw std::runtime_error(converted.error().what);
    return *converted;
}

/// A cell in lb/ft3 as a density.
template <class Density>
Density lbCell(const Row& row, const std::string& column)
{
    return Density::lbPerFt3(row.number(column));
}

/// A column of densities, `factor` kg/m3 each.
template <class Density>
std::vector<Density> densities(const Row& row, const std::string& column, double factor)
{
    std::vector<Density> all;
    for (const double value : row.numbers(column))
        all.push_back(Density::kgPerM3(value * factor));
    return all;
}

/// The Error of a result, to be handed on.
template <class T>
tl::unexpected<Error> errorOf(const Result<T>& result)
{
    return tl::unexpected<Error>(result.error());
}

/// Throws for a word a topic does not know, so that it is a fault of the row and not a refusal by core.
[[noreturn]] inline void unknownWord(const std::string& column, const std::string& word)
{
    throw std::runtime_error("\"" + word + "\" in column " + column + " is not known");
}

}  // namespace groundcount::tables
