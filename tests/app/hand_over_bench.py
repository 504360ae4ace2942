"""What the tests of the hand-over share: SCRIPT GROUNDBOOK SOURCE. The demo job is played and exported; geometries are read by hand (header and WKB,
OGC 12-128r17 section 2.1.3). Exit 77 with the reason when a program is missing."""
import atexit
import os
import shutil
import sqlite3
import struct
import subprocess
import sys
import tempfile

GROUNDBOOK, SOURCE = sys.argv[1:3]
try:
    from osgeo import ogr
    ogr.UseExceptions()
except ImportError:
    print("Skipped: the Python module osgeo is missing; Debian package python3-gdal.")
    sys.exit(77)

os.environ["LC_ALL"] = "C.UTF-8"
TOP = tempfile.mkdtemp(prefix="groundcount-hand-over-")
atexit.register(shutil.rmtree, TOP)
os.environ["HOME"] = os.environ["XDG_DATA_HOME"] = TOP
done = {"checks": 0}


def path(name):
    return os.path.join(TOP, name)


def expect(truth, what):
    done["checks"] += 1
    if not truth:
        sys.exit(f"FAILED: {what}")


def run(*arguments):
    ran = subprocess.run([GROUNDBOOK, *arguments], capture_output=True, text=True, timeout=300)
    return ran.returncode, ran.stdout, ran.stderr


def export(out, *more):
    code, said, err = run("export", path("job.fieldbook"), path(out), *more)
    expect(code == 0, f"export {out}: {err}")
    return said


def refused(out, *more):
    code, said, err = run("export", path("job.fieldbook"), path(out), *more)
    expect(code == 1 and not said and err.count("\n") == 1, f"export {out} {more} is refused in one sentence, not {code} {err}")
    return err


def shape(blob):
    """(srs, envelope or None, kind, parts): parts is a point, a line or polygons of rings."""
    magic, _version, flags, srs = struct.unpack_from("<2sBBi", blob)
    expect(magic == b"GP" and flags & 1 == 1 and flags & 0x30 == 0, "a little-endian geometry that is not empty")
    envelope = struct.unpack_from("<4d", blob, 8) if flags >> 1 & 7 else None
    at = 8 + (32 if envelope else 0)

    def take(form):
        nonlocal at
        values = struct.unpack_from("<" + form, blob, at)
        at += struct.calcsize("<" + form)
        return values

    def line():
        return [take("dd") for _ in range(take("I")[0])]

    def one():
        order, kind = take("BI")
        expect(order == 1, "little-endian")
        if kind == 1:
            return kind, take("dd")
        if kind == 2:
            return kind, line()
        if kind == 3:
            return kind, [line() for _ in range(take("I")[0])]
        return kind, [one()[1] for _ in range(take("I")[0])]

    kind, parts = one()
    expect(at == len(blob), "nothing behind the geometry")
    return srs, envelope, kind, parts


def points(kind, parts):
    if kind == 1:
        return [parts]
    return parts if kind == 2 else [p for polygon in parts for ring in polygon for p in ring]


def ring_area(ring):
    """Signed, counter-clockwise positive."""
    x0, y0 = ring[0]
    return sum((a[0] - x0) * (b[1] - y0) - (b[0] - x0) * (a[1] - y0) for a, b in zip(ring, ring[1:])) / 2


def area(polygons):
    return sum(ring_area(ring) for polygon in polygons for ring in polygon)


def close(a, b, within):
    return a is not None and b is not None and abs(a - b) <= within


run("play", path("job.fieldbook"), f"{SOURCE}/demo/scenario.json", "--key", path("key"))
export("job.gpkg")
book = sqlite3.connect(f"file:{path('job.fieldbook')}?mode=ro", uri=True)
file = sqlite3.connect(f"file:{path('job.gpkg')}?mode=ro", uri=True)
book.row_factory = file.row_factory = sqlite3.Row
LAYERS = ["density_test", "test_site_drawn", "lift_coverage", "lot", "obstacle", "obstacle_line", "alignment"]
STATES = ["open", "waiting", "pass", "fail", "information only", "void"]
METRE = 1200 / 3937  # the demo's grid is in US survey feet


def rows(database, sql, *values):
    return [dict(row) for row in database.execute(sql, values)]
