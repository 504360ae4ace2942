#pragma once

#include <compare>

namespace groundcount {

/// 1 lb/ft3 in kg/m3: 0.45359237 kg / (0.3048 m)^3, exact. @source [UNIT-PAGE], [SP811]
inline constexpr double kKgPerM3PerLbPerFt3 = 0.45359237 / (0.3048 * 0.3048 * 0.3048);
/// Standard gravity, m/s2. @source [SP811]
inline constexpr double kStandardGravity = 9.80665;
/// International foot in metres, exact. @source [FR-85-62698]
inline constexpr double kMetrePerFoot = 0.3048;
/// US survey foot in metres, exact. @source [FR-85-62698]
inline constexpr double kMetrePerSurveyFoot = 1200.0 / 3937.0;

/// Base of every quantity: one double in the SI unit, no arithmetic across types.
/// Only ordering within one type is defined; lawful combinations are named functions with a source.
template <class Tag>
class Quantity {
public:
    constexpr Quantity() = default;
    constexpr auto operator<=>(const Quantity&) const = default;

protected:
    explicit constexpr Quantity(double si) : m_si(si) {}
    double m_si = 0;
};

/// Mass per volume, SI unit kg/m3; the tag keeps wet, dry and water density apart.
template <class Tag>
class MassPerVolume : public Quantity<Tag> {
public:
    constexpr MassPerVolume() = default;
    static constexpr MassPerVolume kgPerM3(double v) { return MassPerVolume(v); }
    static constexpr MassPerVolume lbPerFt3(double v) { return MassPerVolume(v * kKgPerM3PerLbPerFt3); }
    constexpr double kgPerM3() const { return this->m_si; }
    constexpr double lbPerFt3() const { return this->m_si / kKgPerM3PerLbPerFt3; }

private:
    explicit constexpr MassPerVolume(double si) : Quantity<Tag>(si) {}
};

/// Total mass (solids and water) per volume in place.
using WetDensity = MassPerVolume<struct WetDensityTag>;
/// Mass of solids per volume in place.
using DryDensity = MassPerVolume<struct DryDensityTag>;
/// Mass of water per volume in place. Not the water content.
using WaterDensity = MassPerVolume<struct WaterDensityTag>;
/// Density of water itself (a setting of the method, stored with each result).
using DensityOfWater = MassPerVolume<struct DensityOfWaterTag>;

/// A ratio shown in percent; the tag keeps water content, compaction and so on apart.
template <class Tag>
class Percent : public Quantity<Tag> {
public:
    constexpr Percent() = default;
    static constexpr Percent percent(double v) { return Percent(v / 100.0, v); }
    static constexpr Percent fraction(double v) { return Percent(v, v * 100.0); }
    constexpr double percent() const { return m_percent; }
    constexpr double fraction() const { return this->m_si; }

private:
    constexpr Percent(double fraction, double percent) : Quantity<Tag>(fraction), m_percent(percent) {}
    double m_percent = 0;  // kept beside the fraction so that 12.3 % comes back as 12.3, not 12.299999
};

/// Mass of water over mass of dry solids, percent. Crews call it moisture; types never do.
using WaterContent = Percent<struct WaterContentTag>;
/// 100 dry density / maximum dry density, percent.
using PercentCompaction = Percent<struct PercentCompactionTag>;
/// Coarse (retained) part of the dry mass, percent.
using CoarsePart = Percent<struct CoarsePartTag>;

/// A distance, SI unit metre.
class Length : public Quantity<Length> {
public:
    constexpr Length() = default;
    static constexpr Length metres(double v) { return Length(v); }
    static constexpr Length feet(double v) { return Length(v * kMetrePerFoot); }
    static constexpr Length surveyFeet(double v) { return Length(v * kMetrePerSurveyFoot); }
    static constexpr Length inches(double v) { return Length(v * kMetrePerFoot / 12.0); }
    constexpr double metres() const { return m_si; }
    constexpr double feet() const { return m_si / kMetrePerFoot; }
    constexpr double surveyFeet() const { return m_si / kMetrePerSurveyFoot; }
    constexpr double inches() const { return m_si / kMetrePerFoot * 12.0; }

private:
    explicit constexpr Length(double si) : Quantity(si) {}
};

}  // namespace groundcount
