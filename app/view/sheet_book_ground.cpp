#include "view/sheet_book.h"

#include "gis/crs.h"

namespace groundcount::view {

Result<SheetBook::Spot> SheetBook::spotAt(const JobLine& line, double stationFt, double offsetRightFt) const
{
    const auto point = line.line.at(stationFt, offsetRightFt);
    if (!point)
        return tl::unexpected(point.error());
    return spotAtGrid(point->northFt, point->eastFt);
}

Result<SheetBook::Spot> SheetBook::spotAtGrid(double north, double east) const
{
    if (!m_session.crs())
        return refused("No coordinate system is in the book.");
    return m_session.crs()->toGeographic({north, east}).map([&](const auto& geographic) {
        return Spot{north, east, geographic.latitudeDeg, geographic.longitudeDeg};
    });
}

Result<SheetBook::Spot> SheetBook::spotAtPosition(double latitudeDeg, double longitudeDeg) const
{
    if (!m_session.crs())
        return refused("No coordinate system is in the book.");
    const auto grid = m_session.crs()->fromGeographic({latitudeDeg, longitudeDeg});
    if (!grid)
        return tl::unexpected(grid.error());
    return Spot{grid->north, grid->east, latitudeDeg, longitudeDeg};
}

std::string SheetBook::gridKey() const
{
    const auto& unit = m_session.job().gridUnit;
    return unit == "ftUS" ? "usft" : unit;
}

std::string SheetBook::densityKey() const
{
    return m_session.job().densityUnit == "kg/m3" ? "kg_m3" : "lb_ft3";
}

QString SheetBook::densityUnit() const
{
    return m_session.job().densityUnit == "kg/m3" ? QStringLiteral("kg/m³") : QStringLiteral("lb/ft³");
}

Length SheetBook::gridLength(double gridUnits) const
{
    return Length::metres(gridUnits * m_session.metresPerGridUnit());
}

}  // namespace groundcount::view
