"""Every line of `groundcount_values geodesics` again by GeographicLib: reference_geodsolve.py PROGRAM. Exit 77 with the reason
when GeodSolve is missing."""
import shutil
import subprocess
import sys

if not shutil.which("GeodSolve"):
    print("Skipped: GeodSolve is not installed; Debian package geographiclib-tools.")
    sys.exit(77)

FEWEST_LINES = 50
METRES, DEGREES = 1e-7, 1e-11
rows = [list(map(float, line.split("\t"))) for line in subprocess.run([sys.argv[1], "geodesics"], check=True, capture_output=True, text=True).stdout.splitlines()]


def solve(options, lines):
    """GeodSolve with 9 digits beyond its metre or degree of 1e-5."""
    out = subprocess.run(["GeodSolve", "-p", "9", *options], input="\n".join(lines) + "\n", check=True, capture_output=True, text=True).stdout
    return [list(map(float, line.split())) for line in out.splitlines()]


def turn(a, b):
    return abs((a - b + 180) % 360 - 180)


worst_m = worst_deg = 0.0
for axis, inverse in sorted({(row[0], row[1]) for row in rows}):
    mine = [row for row in rows if row[:2] == [axis, inverse]]
    ellipsoid = ["-e", repr(axis), f"1/{inverse!r}"]
    lines = solve(["-i", *ellipsoid], [" ".join(map(repr, row[2:6])) for row in mine])
    ends = solve(ellipsoid, [" ".join(map(repr, (row[2], row[3], row[6], row[8] * 0.75))) for row in mine])
    if len(lines) != len(mine) or len(ends) != len(mine):
        print(f"GeodSolve answered {len(lines)} and {len(ends)} of {len(mine)} lines.")
        sys.exit(1)
    for row, (azimuth1, azimuth2, length), (latitude, longitude, _) in zip(mine, lines, ends):
        worst_m = max(worst_m, abs(row[8] - length))
        # An azimuth is known as well as the ends are: over a short line a nanometre of place turns it.
        loose = max(1.0, 1000.0 / length * 1000)
        worst_deg = max(worst_deg, turn(row[6], azimuth1) / loose, turn(row[7], azimuth2) / loose, abs(row[9] - latitude), turn(row[10], longitude))
print(f"{len(rows)} lines both ways: lengths within {worst_m:.1e} m (allowed {METRES:.0e}), places and azimuths within {worst_deg:.1e} degrees (allowed {DEGREES:.0e})")
sys.exit(0 if len(rows) >= FEWEST_LINES and worst_m <= METRES and worst_deg <= DEGREES else 1)
