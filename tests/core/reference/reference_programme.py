"""A generated programme with known truth through groundbook, against an independent calculation: everything unusual that was
planted is listed and nothing else is; owed, mean, s and percent within limits by SciPy; coverage by SciPy's Qhull. 77 = a library is missing.

Percent within limits: the beta form of the quality index [AQLSCHEMES]; coverage: cells of a Voronoi diagram of the tests and their mirror
images in the four edges, which ends each cell at the edge, each at most its share.
usage: reference_programme.py PROGRAMME GROUNDBOOK [TESTS_PER_LIFT]"""
import json
import math
import subprocess
import sys
import tempfile
from collections import defaultdict

try:
    import numpy
    from scipy.spatial import Voronoi
    from scipy.stats import beta
except ImportError as missing:
    print(f"not run: {missing.name} is missing; apt-get install python3-scipy")
    sys.exit(77)

FOOT = 1200 / 3937  # US survey foot, m
RETEST_FT = 10 * 0.3048 / FOOT  # of the neutral rule set, international feet


def ask(groundbook, *arguments):
    return json.loads(subprocess.run([groundbook, *arguments, "--json"], check=True, capture_output=True, text=True).stdout)


def near(what, told, wanted, tolerance):
    if not abs(told - wanted) <= tolerance:
        sys.exit(f"{what}: groundbook says {told}, the second way {wanted}")


def closing_retest(test, retests):
    """The passing retest at the same lift and place, or nothing."""
    for one in retests.get(test["number"], []):
        if one["lot"] == test["lot"] and one["lift"] == test["lift"] and math.hypot(one["north"] - test["north"], one["east"] - test["east"]) <= RETEST_FT:
            return one
    return None


def percent_within(values, lower):
    """Standard deviation method, one lower limit: 100 (1 - I_z(a, a)), a = n/2 - 1, z = 1/2 - Q root(n)/(2 (n - 1))."""
    n = len(values)
    mean = sum(values) / n
    sd = math.sqrt(sum((v - mean) ** 2 for v in values) / (n - 1))
    z = 0.5 - (mean - lower) / sd * math.sqrt(n) / (2 * (n - 1))
    return mean, sd, 100 * (1 - beta.cdf(min(1, max(0, z)), n / 2 - 1, n / 2 - 1))


def check_lots(contract, told):
    retests = defaultdict(list)
    for test in contract["tests"]:
        if test["retest_of"]:
            retests[test["retest_of"]].append(test)
    for name in contract["lots"]:
        mine = [t for t in contract["tests"] if t["lot"] == name]
        lot = next(l for l in told["lots"] if l["lot"] == name)
        values, opened = [], []
        for test in mine:
            closing = closing_retest(test, retests) if test["result"] == "fail" else None
            if test["result"] == "fail" and closing is None:
                opened.append(test["number"])
            if test["random"]:
                values.append((closing or test)["percent"])
        near(f"{name} required", lot["required"], contract["tests_per_lift"] * contract["lifts"], 0)
        near(f"{name} made", lot["made"], sum(t["random"] for t in mine), 0)
        if sorted(lot["open_failures"]) != sorted(opened):
            sys.exit(f"{name}: open failures {lot['open_failures']}, not {opened}")
        mean, sd, pwl = percent_within(values, contract["minimum"])
        near(f"{name} mean", lot["mean"], mean, 1e-9)
        near(f"{name} s", lot["sd"], sd, 1e-9)
        near(f"{name} percent within limits", lot["pwl"]["pwl"], pwl, 1e-7)
        near(f"{name} last moving mean", lot["moving_means"][-1], sum(values[-4:]) / 4, 1e-9)


def cell_areas(points, west, east, south, north):
    """Area of each point's cell within a rectangle."""
    points = numpy.array(points)
    mirrored = [points]
    for axis, edge in ((0, west), (0, east), (1, south), (1, north)):
        image = points.copy()
        image[:, axis] = 2 * edge - image[:, axis]
        mirrored.append(image)
    diagram = Voronoi(numpy.concatenate(mirrored))
    areas = []
    for i in range(len(points)):
        corners = diagram.vertices[diagram.regions[diagram.point_region[i]]] - points[i]
        corners = corners[numpy.argsort(numpy.arctan2(corners[:, 1], corners[:, 0]))]  # a cell is convex and holds its point
        x, y = corners[:, 0], corners[:, 1]
        areas.append(0.5 * abs(numpy.dot(x, numpy.roll(y, -1)) - numpy.dot(y, numpy.roll(x, -1))))
    return areas


def check_coverage(contract, told, lots):
    retested = {t["retest_of"] for t in contract["tests"] if t["retest_of"]}
    half = contract["half_width"] * 0.3048 / FOOT
    checked = 0
    for entry in told:
        if entry["lot"] not in lots:
            continue
        south = contract["north0"] + contract["lots"].index(entry["lot"]) * contract["lot_length"]
        whole = 2 * half * contract["lot_length"]
        share = whole / contract["tests_per_lift"]
        speaking = [t for t in contract["tests"] if t["lot"] == entry["lot"] and t["lift"] == entry["lift"] and t["number"] not in retested]
        areas = {"pass": 0.0, "fail": 0.0}
        cells = cell_areas([(t["east"], t["north"]) for t in speaking], contract["east0"] - half, contract["east0"] + half, south, south + contract["lot_length"])
        near("sum of the cells", sum(cells), whole, 1e-6 * whole)
        for test, area in zip(speaking, cells):
            areas[test["result"]] += min(share, area)
        square = FOOT * FOOT
        for key, area in (("ground_m2", whole), ("passed_m2", areas["pass"]), ("failed_m2", areas["fail"]), ("untested_m2", whole - areas["pass"] - areas["fail"])):
            # places are taken to the millimetre, so that a cell's edges move by as much
            near(f"{entry['lot']} lift {entry['lift']} {key}", entry[key], area * square, (1e-6 if key == "ground_m2" else 5e-5) * whole * square)
        checked += 1
    return checked


def check_review(groundbook, book, name, lots, coverage):
    """The review's open failures are those of the statistics, and their grounds add up to the failed ground of the coverage."""
    review = ask(groundbook, "review", book, "--lot", name)[0]
    lot = next(l for l in lots["lots"] if l["lot"] == name)
    if sorted(review["open_failures"]) != sorted(lot["open_failures"]) or (review["standing"] == "failure open") != bool(lot["open_failures"]):
        sys.exit(f"{name}: the review says {review['standing']}, open {review['open_failures']}")
    for lift in review["lifts"]:
        failed = next(c["failed_m2"] for c in coverage if c["lot"] == name and c["lift"] == lift["lift"])
        near(f"{name} lift {lift['lift']} failed ground", sum(lift["failed_m2"].values()), failed, 1e-6)


def main():
    programme, groundbook = sys.argv[1:3]
    with tempfile.TemporaryDirectory() as folder:
        print(subprocess.run([programme, folder, *sys.argv[3:]], check=True, capture_output=True, text=True).stdout.strip())
        with open(f"{folder}/truth.json", encoding="utf-8") as file:
            contracts = json.load(file)
        kinds, lifts = set(), 0
        for contract in contracts:
            book = f"{folder}/{contract['book']}"
            told = {(line["test"], line["kind"]) for line in ask(groundbook, "unusual", book)["unusual"]}
            planted = {tuple(p) for p in contract["planted"]}
            if told != planted:
                sys.exit(f"{contract['book']}: listed and not planted {sorted(told - planted)[:5]}, planted and not listed {sorted(planted - told)[:5]}")
            kinds |= {kind for _, kind in planted}
            lots, coverage = ask(groundbook, "lots", book), ask(groundbook, "coverage", book)
            check_lots(contract, lots)
            lifts += check_coverage(contract, coverage, contract["lots"][:2])
            check_review(groundbook, book, contract["lots"][0], lots, coverage)
            print(f"{contract['book']}: {len(contract['tests'])} tests, {len(planted)} planted, {len(contract['lots'])} lots")
        if len(kinds) != 10:
            sys.exit(f"Only {sorted(kinds)} were planted.")
        if lifts != 36:
            sys.exit(f"Coverage of {lifts} lifts was compared, not of 36.")


main()
