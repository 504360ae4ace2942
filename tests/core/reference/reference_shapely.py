"""Coverage of awkward lifts again: reference_shapely.py PROGRAM. Cells by SciPy's Voronoi diagram (Qhull) cut by Shapely, the same
areas by random points and SciPy's nearest neighbours alone, circles by a search with SciPy. Fixed seeds. Exit 77 with the reason when
a library is missing."""
import json
import math
import subprocess
import sys

try:
    import numpy as np
    from scipy.optimize import minimize
    from scipy.spatial import Voronoi, cKDTree
    from shapely.geometry import Point, Polygon
    from shapely.ops import unary_union
except ImportError as missing:
    print(f"Skipped: {missing}; Debian packages python3-numpy, python3-scipy and python3-shapely.")
    sys.exit(77)

FT = 1200 / 3937


def star(rng, corners, low, high, centre, squash=1.0):
    angles = np.sort(rng.uniform(0, 2 * math.pi, corners))
    radii = rng.uniform(low, high, corners)
    return [(centre[0] + r * math.cos(a) * squash, centre[1] + r * math.sin(a)) for a, r in zip(angles, radii)]


def inside(rng, polygon, count):
    """Random points; also a few in the holes and off the ground, which must be listed as outside."""
    west, south, east, north = polygon.bounds
    out = []
    while len(out) < count:
        p = Point(rng.uniform(west, east), rng.uniform(south, north))
        if polygon.contains(p):
            out.append((p.x, p.y))
    return out


def cases():
    """(name, polygon of (east, north), sites, required, metres a unit)"""
    east, north = 6_512_345.25, 2_101_234.75  # state plane, US survey feet
    box = lambda e, n, w, h: [(e, n), (e + w, n), (e + w, n + h), (e, n + h)]
    for seed in range(6):
        rng = np.random.default_rng(20260600 + seed)
        outer = Polygon(star(rng, 9 + 6 * seed, 120, 400, (east, north), 0.2 if seed == 3 else 1.0))
        holes = [star(rng, 7, 12, 30, (east + d, north + d / 2)) for d in (-40, 0, 45)][: seed % 4]
        ground = outer.difference(unary_union([Polygon(h).buffer(0) for h in holes])) if holes else outer
        if ground.geom_type != "Polygon":
            ground = max(ground.geoms, key=lambda g: g.area)
        count = (3, 12, 40, 7, 150, 400)[seed]
        sites = inside(rng, ground, count) + [(east + 5000, north), (east, north - 5000)]
        yield f"star {seed}", ground, sites, max(1, count + (seed - 3) * 2), FT
    yield "L with collinear tests", Polygon([(0, 0), (100, 0), (100, 20), (20, 20), (20, 90), (0, 90)]), [(10, 10), (30, 10), (50, 10), (70, 10)], 6, 1.0
    yield "strip with two tests close together", Polygon(box(east, north, 3000, 24)), [(east + 30, north + 12), (east + 31, north + 12)], 4, 0.3048
    yield "one test", Polygon(box(0, 0, 60, 40), [box(20, 10, 10, 10)]), [(5, 5)], 3, 1.0
    yield "two tests at one place and a third", Polygon(box(0, 0, 60, 40)), [(15, 20), (15, 20), (45, 20)], 2, 1.0
    yield "a wall parts the ground", Polygon([(0, 0), (100, 0), (100, 50), (51, 50), (51, 5), (49, 5), (49, 50), (0, 50)]), [(48, 40), (90, 10)], 5, 1.0
    yield "no test", Polygon(box(0, 0, 60, 40), [box(28, 0.5, 4, 39)]), [], 4, 1.0


def answer(program, polygon, sites, required, unit):
    lines = [f"unit {unit!r}", f"required {required}"]
    for word, ring in [("ring", polygon.exterior)] + [("hole", r) for r in polygon.interiors]:
        points = list(ring.coords)[:-1]
        lines.append(f"{word} {len(points)} " + " ".join(f"{n!r} {e!r}" for e, n in points))
    lines += [f"site {n!r} {e!r}" for e, n in sites]
    return json.loads(subprocess.run([program], input="\n".join(lines), capture_output=True, text=True, check=True).stdout)


def cells(polygon, places):
    """Each place's cell: Qhull's diagram with far guards, so that every real cell is closed."""
    if len(places) == 1:
        return [polygon]
    west, south, east, north = polygon.bounds
    reach, middle = 50 * max(east - west, north - south), np.array([(west + east) / 2, (south + north) / 2])
    guards = middle + reach * np.array([[math.cos(a), math.sin(a)] for a in np.linspace(0, 2 * math.pi, 17)[:-1]])
    origin = np.array([west, south])
    diagram = Voronoi(np.vstack([places, guards]) - origin)
    areas = []
    for i in range(len(places)):
        region = diagram.regions[diagram.point_region[i]]
        assert -1 not in region and region
        areas.append(Polygon(diagram.vertices[region] + origin).convex_hull.intersection(polygon))
    return areas


def random_areas(polygon, places, rng):
    """The same by counting random points: no polygon is cut. Even-odd rule over all rings in NumPy."""
    west, south, east, north = polygon.bounds
    p = np.column_stack([rng.uniform(west, east, 400_000), rng.uniform(south, north, 400_000)])
    odd = np.zeros(len(p), bool)
    for ring in [polygon.exterior, *polygon.interiors]:
        c = np.array(ring.coords)
        for (x1, y1), (x2, y2) in zip(c[:-1], c[1:]):
            if y1 != y2:
                crosses = (y1 > p[:, 1]) != (y2 > p[:, 1])
                odd ^= crosses & (p[:, 0] < (x2 - x1) * (p[:, 1] - y1) / (y2 - y1) + x1)
    _, nearest = cKDTree(places).query(p[odd])
    box = (east - west) * (north - south)
    return np.bincount(nearest, minlength=len(places)) / len(p) * box, box / len(p)


def largest(polygon, places, with_edge):
    """The largest of min distance to the places (and the edge) over the ground: a grid, then its best points refined."""
    west, south, east, north = polygon.bounds
    edge = polygon.boundary
    tree = cKDTree(places) if len(places) else None

    def reach(x, y):
        p = Point(x, y)
        if not polygon.covers(p):
            return -polygon.distance(p)
        d = tree.query((x, y))[0] if tree else math.inf
        return min(d, edge.distance(p)) if with_edge else d

    xs, ys = np.meshgrid(np.linspace(west, east, 70), np.linspace(south, north, 70))
    start = sorted(((reach(x, y), x, y) for x, y in zip(xs.ravel(), ys.ravel())), reverse=True)[:60]
    start += [(0, *c) for c in polygon.exterior.coords] if not with_edge else []
    size = max(east - west, north - south) / 70
    best = 0
    for _, x, y in start:
        simplex = [[x, y], [x + size, y], [x, y + size]]
        found = minimize(lambda v: -reach(*v), (x, y), method="Nelder-Mead", options={"initial_simplex": simplex, "xatol": 1e-5, "fatol": 1e-6})
        best = max(best, -found.fun)
    return best


def main():
    program, checks = sys.argv[1], 0
    for name, polygon, sites, required, unit in cases():
        got = answer(program, polygon, sites, required, unit)
        on = [i for i, s in enumerate(sites) if polygon.intersects(Point(s))]
        assert got["outside"] == [i for i in range(len(sites)) if i not in on], (name, "outside")
        places = list(dict.fromkeys(sites[i] for i in on))
        square, step = unit * unit, 0.001 / unit
        snapped = [tuple(round(v / step) * step for v in place) for place in places]  # places are taken to the millimetre
        whole = polygon.area * square
        near = lambda a, b, tolerance, what: abs(a - b) <= tolerance or sys.exit(f"{name}: {what} is {a}, by the other way {b}")
        near(got["ground_m2"], whole, 1e-9 * whole, "ground")
        near(got["share_m2"], whole / required, 1e-9 * whole, "share")
        expected = cells(polygon, np.array(snapped)) if places else []
        assert len(got["cells"]) == len(expected), (name, "cells")
        passed = failed = 0
        for cell, shape, place in zip(got["cells"], expected, places):
            area, slack = shape.area * square, 1e-6 * whole / len(expected)
            assert cell["sites"] == [i for i in on if sites[i] == place], (name, cell)
            near(cell["m2"], area, slack, f"cell of {cell['sites']}")
            near(cell["beyond_m2"], max(0, area - whole / required), slack, f"beyond of {cell['sites']}")
            if cell["sites"][-1] % 3:
                passed += min(area, whole / required)
            else:
                failed += min(area, whole / required)
            checks += 3
        near(got["passed_m2"], passed, 1e-7 * whole, "passed")
        near(got["failed_m2"], failed, 1e-7 * whole, "failed")
        near(got["untested_m2"], whole - passed - failed, 1e-7 * whole, "untested")
        if places:
            counted, each = random_areas(polygon, np.array(places), np.random.default_rng(7))
            for cell, area in zip(got["cells"], counted * square):
                # 6 sigma of a count of random points
                near(cell["m2"], area, 6 * math.sqrt(max(area / square / each, 9)) * each * square, f"counted cell of {cell['sites']}")
                checks += 1
            near(got["farthest"][2], largest(polygon, places, False) * unit, 0.02, "farthest")
        near(got["patch"][2], largest(polygon, places, True) * unit, 0.02, "patch")
        n, e, r = got["patch"]
        centre = Point(e, n)
        assert polygon.covers(centre) and polygon.boundary.distance(centre) * unit >= r - 0.003, (name, "patch within the ground")
        assert all(centre.distance(Point(s)) * unit >= r - 0.003 for s in places), (name, "patch without a test")
        checks += 8
        print(f"{name}: {len(places)} places, patch {r:.2f} m, untested {got['untested_m2'] / whole:.1%}")
    print(f"{checks} values agree")
    if checks < 1500:
        sys.exit("too few values were compared")


main()
