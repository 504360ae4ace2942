#include "method/unit.h"

#include "method/quantity.h"
#include "method/sentence.h"

#include <array>

namespace groundcount::method {
namespace {

enum class Kind { Density, Length, Volume, Mass, Force, Activity };

struct Unit {
    std::string_view name;
    Kind kind;
    double si;
};

constexpr double kFoot3 = kMetrePerFoot * kMetrePerFoot * kMetrePerFoot;
constexpr double kInch = kMetrePerFoot / 12.0;
constexpr double kPound = 0.45359237;

constexpr std::array kUnits{
    Unit{"kg/m3", Kind::Density, 1.0},
    Unit{"lb/ft3", Kind::Density, kKgPerM3PerLbPerFt3},
    Unit{"kN/m3", Kind::Density, 1000.0 / kStandardGravity},
    Unit{"Mg/m3", Kind::Density, 1000.0},
    Unit{"g/cm3", Kind::Density, 1000.0},
    Unit{"t/m3", Kind::Density, 1000.0},
    Unit{"m", Kind::Length, 1.0},
    Unit{"cm", Kind::Length, 0.01},
    Unit{"mm", Kind::Length, 0.001},
    Unit{"ft", Kind::Length, kMetrePerFoot},
    Unit{"in.", Kind::Length, kInch},
    Unit{"in", Kind::Length, kInch},
    Unit{"yd", Kind::Length, 3.0 * kMetrePerFoot},
    Unit{"usft", Kind::Length, kMetrePerSurveyFoot},
    Unit{"m3", Kind::Volume, 1.0},
    Unit{"ft3", Kind::Volume, kFoot3},
    Unit{"yd3", Kind::Volume, 27.0 * kFoot3},
    Unit{"in3", Kind::Volume, kInch* kInch* kInch},
    Unit{"cm3", Kind::Volume, 1e-6},
    Unit{"mL", Kind::Volume, 1e-6},
    Unit{"L", Kind::Volume, 1e-3},
    Unit{"kg", Kind::Mass, 1.0},
    Unit{"g", Kind::Mass, 1e-3},
    Unit{"Mg", Kind::Mass, 1000.0},
    Unit{"lb", Kind::Mass, kPound},
    Unit{"N", Kind::Force, 1.0},
    Unit{"kN", Kind::Force, 1000.0},
    Unit{"lbf", Kind::Force, kPound* kStandardGravity},
    Unit{"Bq", Kind::Activity, 1.0},
    Unit{"MBq", Kind::Activity, 1e6},
    Unit{"GBq", Kind::Activity, 1e9},
    Unit{"uCi", Kind::Activity, 3.7e4},
    Unit{"mCi", Kind::Activity, 3.7e7},
    Unit{"Ci", Kind::Activity, 3.7e10},
};

const Unit* named(std::string_view name)
{
    for (const auto& unit : kUnits)
        if (unit.name == name)
            return &unit;
    return nullptr;
}

}  // namespace

Result<double> converted(double value, std::string_view from, std::string_view to)
{
    if (!std::isfinite(value))
        return refusedValue("Value to convert", value, "", "a finite number");
    const Unit* source = named(from);
    const Unit* target = named(to);
    if (!source || !target)
        return refused("\"" + std::string(source ? to : from) + "\" is not a known unit; names are like lb/ft3, kg/m3, ft, m.");
    if (source->kind != target->kind)
        return refused("A value in " + std::string(from) + " cannot be given in " + std::string(to) +
                       "; both units must be of one kind.");
    return value * source->si / target->si;
}

}  // namespace groundcount::method
