#pragma once

#include "method/quantity.h"

namespace groundcount::gis {

/// The size of a piece of ground in plan, SI unit square metre.
class Surface : public Quantity<Surface> {
public:
    constexpr Surface() = default;
    static constexpr Surface squareMetres(double v) { return Surface(v); }
    /// International feet. @source [FR-85-62698]
    static constexpr Surface squareFeet(double v) { return Surface(v * kMetrePerFoot * kMetrePerFoot); }
    constexpr double squareMetres() const { return m_si; }
    constexpr double squareFeet() const { return m_si / (kMetrePerFoot * kMetrePerFoot); }

private:
    explicit constexpr Surface(double si) : Quantity(si) {}
};

}  // namespace groundcount::gis
