#pragma once

#include "method/accept/evaluation_rules.h"
#include "method/error.h"
#include "method/quantity.h"

#include <span>
#include <string>
#include <vector>

namespace groundcount::method {

/// One line of the arithmetic: what, by which formula, with which numbers, giving what, after which source.
struct ExplainStep {
    std::string name;     ///< "Dry density"
    std::string formula;  ///< "wet density − water density"
    std::string numbers;  ///< "129.9 − 14.4"
    std::string value;    ///< "115.5 lb/ft3"
    std::string source;   ///< KEY of docs/sources.md, several joined by ", "
};

inline constexpr const char* kMinus = " \xE2\x88\x92 ";
inline constexpr const char* kTimes = " \xC3\x97 ";

/// A computed value to a fixed number of places (half-even), U+2212 as minus; "unbounded" for an infinite one.
std::string shown(double value, int places);
/// A computed value of any size in 6 significant digits, U+2212 as minus; "unbounded" for an infinite one.
std::string figure(double value);
/// The figures of a list, separated by commas; of more than 12 the first 12 and how many there are.
std::string figures(std::span<const double> values);

/// Gathers steps: the one place where the arithmetic of the method becomes text.
class ExplainSteps {
public:
    /// @param unit in which densities are shown
    explicit ExplainSteps(DensityUnit unit) : m_unit(unit) {}

    void add(std::string name, std::string formula, std::string numbers, std::string value, std::string source)
    {
        m_steps.push_back({std::move(name), std::move(formula), std::move(numbers), std::move(value), std::move(source)});
    }

    template <class Density>
    std::string density(const Density& d, int places = 2) const
    {
        return shown(inUnit(d, m_unit), places);
    }

    template <class Density>
    std::string withUnit(const Density& d, int places = 2) const
    {
        return density(d, places) + " " + unitWord(m_unit);
    }

    DensityUnit unit() const { return m_unit; }
    std::vector<ExplainStep> take() { return std::move(m_steps); }

private:
    DensityUnit m_unit;
    std::vector<ExplainStep> m_steps;
};

}  // namespace groundcount::method
