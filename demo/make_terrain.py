#!/usr/bin/python3
"""Makes the ground under the demo's map: demo/make_terrain.py OUT.tif, a COG in the job's own system (EPSG:6411, US survey feet).

Everything is invented: heights are seeded noise with an embankment along the job's line, a haul road and a pond, all by the
formulas below. GDAL's gdaldem shades them. Same seed, same picture. Needs gdal-bin; no other package.
"""
import json
import math
import random
import subprocess
import sys
import tempfile
from array import array
from pathlib import Path

SEED = 20260518
PIXEL = 2.0                     # ft
WEST, SOUTH = 1204000.0, 480900.0
COLUMNS, ROWS = 1000, 1200
OCTAVES = [(420.0, 15.0), (150.0, 6.0), (55.0, 2.0), (17.0, 0.7)]  # ft between knots, ft of height
TOP, TOE = 46.0, 98.0           # offsets where the embankment's top ends and where its slopes meet the ground
FILL = 24.0                     # ft above the ground
ROAD = (118.0, 140.0)           # offsets right of the line of the haul road
POND = [(-330.0, 560.0, 150.0, 95.0), (-390.0, 690.0, 130.0, 90.0)]  # offset, along, half axes


def line():
    scenario = json.loads((Path(__file__).resolve().parent / "scenario.json").read_text())
    body = next(e for e in scenario["entries"] if e["kind"] == "alignment")["body"]
    straight, curve = body["elements"]
    return (float(body["begin_north"]), float(body["begin_east"]), math.radians(float(body["begin_azimuth_deg"])), float(straight["length"]),
            float(curve["radius"]))


def lattice(seed, knot):
    draw = random.Random(seed)
    columns, rows = int(COLUMNS * PIXEL / knot) + 3, int(ROWS * PIXEL / knot) + 3
    return [[draw.uniform(-1, 1) for _ in range(columns)] for _ in range(rows)]


def noise_row(grid, knot, row):
    """Value noise along one row of pixels: knots joined by 3t^2 - 2t^3."""
    at = row * PIXEL / knot
    low = int(at)
    t = at - low
    t = t * t * (3 - 2 * t)
    knots = [a + (b - a) * t for a, b in zip(grid[low], grid[low + 1])]
    out = []
    for column in range(COLUMNS):
        x = column * PIXEL / knot
        i = int(x)
        u = x - i
        u = u * u * (3 - 2 * u)
        out.append(knots[i] + (knots[i + 1] - knots[i]) * u)
    return out


def place(dn, de, azimuth, straight, radius):
    """Distance along the line and offset right of it; the curve turns right."""
    c, s = math.cos(azimuth), math.sin(azimuth)
    along, right = dn * c + de * s, de * c - dn * s
    if along <= straight:
        return along, right
    angle = math.atan2(along - straight, radius - right)
    return straight + radius * angle, radius - math.hypot(along - straight, radius - right)


def ground():
    """Rows from the north: heights in feet and colours before shading."""
    north, east, azimuth, straight, radius = line()
    grids = [(lattice(SEED + i, knot), knot, high) for i, (knot, high) in enumerate(OCTAVES)]
    grass, dirt = lattice(SEED + 10, 90.0), lattice(SEED + 11, 24.0)
    heights, colours = array("f"), []
    for row in range(ROWS):
        dn = SOUTH + (ROWS - row - 0.5) * PIXEL - north
        rolls = [noise_row(grid, knot, row) for grid, knot, _ in grids]
        green, brown = noise_row(grass, 90.0, row), noise_row(dirt, 24.0, row)
        for column in range(COLUMNS):
            de = WEST + (column + 0.5) * PIXEL - east
            along, right = place(dn, de, azimuth, straight, radius)
            z = sum(roll[column] * high for roll, (_, _, high) in zip(rolls, grids))
            g, b = green[column], brown[column]
            colour = (128 + 18 * g + 8 * b, 132 + 12 * g + 8 * b, 88 + 10 * g + 6 * b)
            off = abs(right)
            if any(((right - x) / a) ** 2 + ((along - y) / h) ** 2 < 1 + 0.12 * g for x, y, a, h in POND):
                z, colour = -14.0, (104, 124, 134)
            elif ROAD[0] < right + 4 * g < ROAD[1]:
                z, colour = 0.4 * z + 2, (206 + 5 * b, 192 + 5 * b, 162 + 5 * b)
            elif off < TOE + 5 * g:
                share = min(1.0, max(0.0, (TOE - off) / (TOE - TOP)))
                z = 0.25 * z + FILL * share + (1.0 * b if off > TOP else 0.25 * b)
                colour = (204 + 6 * b, 182 + 6 * b, 148 + 6 * b) if off < TOP else (172 + 10 * b, 146 + 9 * b, 112 + 8 * b)
            heights.append(z)
            colours.append(colour)
    return heights, colours


def run(*words):
    subprocess.run(words, check=True, stdout=subprocess.DEVNULL)


def main(out):
    heights, colours = ground()
    with tempfile.TemporaryDirectory() as folder:
        folder = Path(folder)
        with open(folder / "height.asc", "w") as file:
            file.write(f"ncols {COLUMNS}\nnrows {ROWS}\nxllcorner {WEST}\nyllcorner {SOUTH}\ncellsize {PIXEL}\n")
            for row in range(ROWS):
                file.write(" ".join(f"{z:.2f}" for z in heights[row * COLUMNS:(row + 1) * COLUMNS]) + "\n")
        run("gdaldem", "hillshade", "-q", "-compute_edges", "-z", "1.4", "-alt", "48", "-of", "ENVI", str(folder / "height.asc"), str(folder / "shade"))
        shade = (folder / "shade").read_bytes()
        flat = 255 * math.sin(math.radians(48))
        pixels = bytearray()
        for colour, light in zip(colours, shade):
            # Half of the light is the sky's, so that shadows keep their colour.
            pixels.extend(min(255, max(0, int(c * (0.5 + 0.5 * light / flat)))) for c in colour)
        (folder / "ground.ppm").write_bytes(b"P6 %d %d 255\n" % (COLUMNS, ROWS) + pixels)
        run("gdal_translate", "-q", "-of", "COG", "-co", "COMPRESS=DEFLATE", "-a_srs", "EPSG:6411", "-a_ullr", str(WEST), str(SOUTH + ROWS * PIXEL),
            str(WEST + COLUMNS * PIXEL), str(SOUTH), str(folder / "ground.ppm"), out)


if __name__ == "__main__":
    if len(sys.argv) != 2 or sys.argv[1].startswith("-"):
        sys.exit("use: demo/make_terrain.py OUT.tif")
    main(sys.argv[1])
