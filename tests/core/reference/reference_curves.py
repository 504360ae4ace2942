"""Every line of `groundcount_values alignments` again by GEOS (through Shapely): reference_curves.py PROGRAM. The centre of each curve is where
GEOS lets the tangents' parallels meet, its ends are GEOS' projections of the centre; length, station and offset are GEOS' length, projection and
distance on that line, arcs in chords of 0.01 ft. Exit 77 with the reason when a library is missing."""
import math
import subprocess
import sys

try:
    from shapely.geometry import LineString, Point
except ImportError as missing:
    print(f"Skipped: {missing}; Debian package python3-shapely.")
    sys.exit(77)

FEWEST_PLACES = 1000
# A chord lies at most CHORD^2/(8 R) beside its arc, 1.6e-7 ft at the least radius of 80 ft; a foot on it up to half a chord beside the arc's.
CHORD, FEET, STATION_FEET = 0.01, 1e-5, 0.005


def arc(before, corner, after, radius):
    """Points of the curve between the tangents before-corner and corner-after."""
    first, second = LineString([before, corner]), LineString([corner, after])
    turn = (corner[0] - before[0]) * (after[1] - corner[1]) - (corner[1] - before[1]) * (after[0] - corner[0])
    side = "left" if turn > 0 else "right"
    centre = first.parallel_offset(radius, side).intersection(second.parallel_offset(radius, side))
    assert centre.geom_type == "Point", centre
    begin, end = (line.interpolate(line.project(centre)) for line in (first, second))
    start = math.atan2(begin.y - centre.y, begin.x - centre.x)
    sweep = math.remainder(math.atan2(end.y - centre.y, end.x - centre.x) - start, 2 * math.pi)
    steps = math.ceil(abs(sweep) * radius / CHORD)
    return [(centre.x + radius * math.cos(start + sweep * i / steps), centre.y + radius * math.sin(start + sweep * i / steps)) for i in range(steps + 1)]


def check(corners, length, places):
    """The greatest difference in length and offsets, and that in stations. Corners are (east, north, radius)."""
    points = [corners[0][:2]]
    for before, corner, after in zip(corners, corners[1:], corners[2:]):
        points += arc(before[:2], corner[:2], after[:2], corner[2])
    line = LineString(points + [corners[-1][:2]])
    worst, station_worst = abs(line.length - length), 0.0
    for north, east, station, offset in places:
        p = Point(east, north)
        worst = max(worst, abs(line.distance(p) - abs(offset)))
        station_worst = max(station_worst, abs(line.project(p) - (station - 1000)))
        # on the right the triangle of a short piece of the line and the point turns clockwise
        a, b = line.interpolate(max(0, line.project(p) - 0.5)), line.interpolate(line.project(p) + 0.5)
        cross = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)
        assert abs(offset) < 0.01 or (cross < 0) == (offset > 0), (north, east, offset)
    return worst, station_worst


worst, count, lines, corners, places, length = (0.0, 0.0), 0, 0, [], [], 0.0
rows = subprocess.run([sys.argv[1], "alignments"], check=True, capture_output=True, text=True).stdout.splitlines()
for row in rows + ["begin\t0\t0"]:
    word, *numbers = row.split("\t")
    numbers = [float(n) for n in numbers]
    if word == "begin" and places:
        worst = tuple(map(max, worst, check(corners, length, places)))
        lines, count, corners, places = lines + 1, count + len(places), [], []
    if word == "place":
        places.append(numbers)
    else:
        corners.append((numbers[1], numbers[0], numbers[2] if word == "curve" else 0))
        length = numbers[2] if word == "end" else length
print(f"{lines} lines, {count} places: lengths and offsets within {worst[0]:.1e} ft (allowed {FEET:.0e}), stations within {worst[1]:.1e} ft (allowed {STATION_FEET})")
sys.exit(0 if count >= FEWEST_PLACES and worst[0] <= FEET and worst[1] <= STATION_FEET else 1)
