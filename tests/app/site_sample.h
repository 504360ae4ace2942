#pragma once

#include "app/command_bench.h"

/// Invented plans near the demo's line. The places were laid out by station and offset and taken from EPSG:6411 to geographic
/// NAD83(2011) by GDAL's gdaltransform; GeoJSON says WGS 84, which PROJ takes for the same without grids.
namespace site_sample {

/// Two lot areas, a storm drain and a headwall.
inline QString plans(const Bench& bench)
{
    const auto feature = [](const char* name, const char* type, const char* places) {
        return QStringLiteral(R"({"type":"Feature","properties":{"name":"%1"},"geometry":{"type":"%2","coordinates":%3}})").arg(name, type, places);
    };
    const QStringList all{
        feature("B-1", "Polygon", "[[[-92.36299121,35.65564757],[-92.36283075,35.65618119],[-92.36256921,35.65612881],[-92.36272968,35.65559518],[-92.36299121,35.65564757]]]"),
        feature("B-2", "Polygon", "[[[-92.36282272,35.65620787],[-92.36266226,35.65674150],[-92.36240072,35.65668911],[-92.36256119,35.65615549],[-92.36282272,35.65620787]]]"),
        feature("18 in. storm drain", "LineString", "[[-92.36256179,35.65626876],[-92.36225571,35.65705610],[-92.36173413,35.65723451]]"),
        feature("Manhole 3", "Point", "[-92.36225571,35.65705610]")};
    return bench.write(QStringLiteral("plans.geojson"), QStringLiteral(R"({"type":"FeatureCollection","features":[%1]})").arg(all.join(',')).toUtf8());
}

/// A retaining wall in a drawing, from station 46+00, 55 right to 49+00, 58 right, in US survey feet of EPSG:6411; a drawing says neither.
inline QString walls(const Bench& bench)
{
    return bench.write(QStringLiteral("walls.dxf"), "0\nSECTION\n2\nENTITIES\n0\nLINE\n8\nWALLS\n10\n1204733.5696\n20\n481592.0734\n11\n1204809.0571\n21\n481882.4364\n0\nENDSEC\n0\nEOF\n");
}

}  // namespace site_sample
