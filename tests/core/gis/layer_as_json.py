"""Prints the rows of density_test as JSON: columns, x, y, and lat, lon on the layer's own datum. The file is read by
SQLite alone (GeoPackageBinary header and WKB by hand, OGC 12-128r17 section 2.1.3), not by the library that wrote it."""
import json
import sqlite3
import struct
import sys

from osgeo import osr

osr.UseExceptions()


def point(blob):
    if blob is None:
        return None
    magic, _version, flags, srs = struct.unpack_from("<2sBBi", blob)
    assert magic == b"GP" and flags & 1 == 1, "not a little-endian GeoPackage geometry"
    at = 8 + {0: 0, 1: 32, 2: 48, 3: 48, 4: 64}[flags >> 1 & 7]
    order, kind, x, y = struct.unpack_from("<BIdd", blob, at)
    assert order == 1 and kind == 1, "not a point"
    return srs, x, y


def rows(path):
    book = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    book.row_factory = sqlite3.Row
    organization, code = book.execute(
        "SELECT organization, organization_coordsys_id FROM gpkg_spatial_ref_sys JOIN gpkg_contents USING (srs_id)"
        " WHERE table_name = 'density_test'").fetchone()
    assert organization == "EPSG"
    plane = osr.SpatialReference()
    plane.ImportFromEPSG(code)
    plane.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    back = osr.CoordinateTransformation(plane, plane.CloneGeogCS())
    for row in book.execute("SELECT * FROM density_test ORDER BY fid"):
        out = {key: row[key] for key in row.keys() if key != "geom"}
        found = point(row["geom"])
        if found:
            out["x"], out["y"] = found[1:]
            out["lon"], out["lat"] = back.TransformPoint(*found[1:])[:2]
        yield out


print(json.dumps([row for path in sys.argv[1:] for row in rows(path)]))
