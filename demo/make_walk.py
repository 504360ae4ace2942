#!/usr/bin/python3
"""Makes demo/walk.nmea, an invented walk on the invented job of demo/scenario.json.

Someone stands at 51+88, 44 Lt for 8 s, walks to drawn site 3 of lot N-4, lift 7 and stands there for 30 s. One epoch a
second: GGA, RMC and GST with their checksums, a differential fix, one-sigma errors of 0.15 m. The receiver's errors are
drawn from a seed, so the file can be made again to the byte: `demo/make_walk.py` writes it, `demo/make_walk.py --check`
compares. Needs python3-gdal.
"""
import json
import math
import random
import sys
from pathlib import Path

from osgeo import osr

osr.UseExceptions()
FOLDER = Path(__file__).resolve().parent
SEED = 20260609
START_SECOND = 19 * 3600 + 12 * 60 + 20  # 14:12:20 local, UTC - 5 h
STAND_BEFORE, WALK, STAND_AFTER = 8, 82, 30
BEGIN = (5188.0, -44.0)
BIAS_M = (0.10, -0.07)  # what averaging on the spot does not remove
SIGMA_M = 0.15
METRE_PER_SURVEY_FOOT = 1200.0 / 3937.0
KNOT = 1852.0 / 3600.0


def records(scenario, kind):
    return [e for e in scenario["entries"] if e["kind"] == kind]


def plan_point(line, station, offset):
    """North and east at a station and an offset to the right: tangents and arcs in order."""
    north, east = float(line["begin_north"]), float(line["begin_east"])
    azimuth = math.radians(float(line["begin_azimuth_deg"]))
    left = station - float(line["begin_station"])
    for piece in line["elements"]:
        length = min(left, float(piece["length"]))
        if piece["kind"] == "line":
            north, east = north + length * math.cos(azimuth), east + length * math.sin(azimuth)
        else:
            radius = float(piece["radius"]) * (1 if piece["turn"] == "right" else -1)
            ahead = azimuth + length / radius
            north += radius * (math.sin(ahead) - math.sin(azimuth))
            east += radius * (math.cos(azimuth) - math.cos(ahead))
            azimuth = ahead
        left -= length
        if left <= 0:
            break
    return north - offset * math.sin(azimuth), east + offset * math.cos(azimuth)


def sentence(body):
    checksum = 0
    for byte in body.encode("ascii"):
        checksum ^= byte
    return f"${body}*{checksum:02X}\r\n"


def angle(value, digits, positive, negative):
    whole, minutes = divmod(abs(value) * 60, 60)
    if f"{minutes:.5f}" == "60.00000":
        whole, minutes = whole + 1, 0.0
    return f"{int(whole):0{digits}d}{minutes:08.5f},{positive if value >= 0 else negative}"


def walk():
    scenario = json.loads((FOLDER / "scenario.json").read_text(encoding="utf-8"))
    line = records(scenario, "alignment")[0]["body"]
    grid = osr.SpatialReference()
    grid.ImportFromEPSG(records(scenario, "crs")[0]["body"]["epsg"])
    geographic = grid.CloneGeogCS()
    for system in (grid, geographic):
        system.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    to_geographic = osr.CoordinateTransformation(grid, geographic)

    draw = next(e for e in records(scenario, "draw") if e["subject"] == "@draw-N-4-7")
    site = next(s for s in draw["body"]["sites"] if s["number"] == 3)["at"]
    begin = plan_point(line, *BEGIN)
    end = plan_point(line, float(site["station"]), float(site["offset_ft"]))
    noise = random.Random(SEED)
    out = []
    before = None
    for second in range(STAND_BEFORE + WALK + STAND_AFTER):
        share = min(max((second - STAND_BEFORE) / WALK, 0.0), 1.0)
        share = share * share * (3 - 2 * share)  # sets off and stops gently
        north, east = (b + share * (e - b) for b, e in zip(begin, end))
        speed, course = 0.0, 0.0
        if before is not None:
            dn, de = (north - before[0]) * METRE_PER_SURVEY_FOOT, (east - before[1]) * METRE_PER_SURVEY_FOOT
            speed, course = math.hypot(dn, de) / KNOT, math.degrees(math.atan2(de, dn)) % 360
        before = (north, east)
        north += (BIAS_M[0] + noise.gauss(0, SIGMA_M)) / METRE_PER_SURVEY_FOOT
        east += (BIAS_M[1] + noise.gauss(0, SIGMA_M)) / METRE_PER_SURVEY_FOOT
        longitude, latitude, _ = to_geographic.TransformPoint(east, north)
        height = 128.6 + noise.gauss(0, 0.25)
        clock = START_SECOND + second
        time = f"{clock // 3600:02d}{clock // 60 % 60:02d}{clock % 60:02d}.00"
        place = f"{angle(latitude, 2, 'N', 'S')},{angle(longitude, 3, 'E', 'W')}"
        out.append(sentence(f"GPGGA,{time},{place},2,{11 + second % 3},0.8,{height:.2f},M,-28.20,M,4.0,0136"))
        out.append(sentence(f"GPRMC,{time},A,{place},{speed:.2f},{course:.1f},090626,,,D"))
        out.append(sentence(f"GPGST,{time},0.21,0.16,0.14,38.0,{SIGMA_M:.3f},{SIGMA_M:.3f},0.290"))
    return "".join(out).encode("ascii")


def main():
    target = FOLDER / "walk.nmea"
    made = walk()
    if sys.argv[1:] == ["--check"]:
        same = target.read_bytes() == made
        print(f"{target.name}: {made.count(b'GPGGA')} epochs, {'the same' if same else 'DIFFERENT'}")
        return 0 if same else 1
    if sys.argv[1:]:
        print(__doc__)
        return 2
    target.write_bytes(made)
    print(f"{target.name}: {made.count(b'GPGGA')} epochs written")
    return 0


if __name__ == "__main__":
    sys.exit(main())
