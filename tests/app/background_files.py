"""Backgrounds by groundbook: background_files.py GROUNDBOOK SCENARIO. A GeoTIFF, a COG, an MBTiles file, GeoPackage tiles and a palette, all in other
systems than the job's: a known spot must lie where PROJ says, by gdallocationinfo. Hostile files cost a sentence, open nothing
else and call nobody (strace). Exit 77 with the reason when a program is missing."""
import os
import re
import shutil
import struct
import subprocess
import sys
import tempfile

GROUNDBOOK, SCENARIO = sys.argv[1:3]
MISSING = [p for p in ("gdal_translate", "gdalwarp", "gdallocationinfo", "gdaltransform", "strace") if not shutil.which(p)]
if MISSING:
    print(f"Skipped: {', '.join(MISSING)} missing; Debian packages gdal-bin, strace.")
    sys.exit(77)
os.environ.update(LC_ALL="C.UTF-8")
TOP = tempfile.mkdtemp(prefix="groundcount-ground-test-")
os.environ["HOME"] = os.environ["XDG_DATA_HOME"] = TOP
checks = 0
SIDE = 240                       # metres, one a pixel
EAST, NORTH = 557700.0, 3946000.0  # UTM 15N, near the demo's line


def expect(truth, what):
    global checks
    checks += 1
    if not truth:
        sys.exit(f"FAILED: {what}")


def path(name):
    return os.path.join(TOP, name)


def tool(*words):
    return subprocess.run(words, check=True, capture_output=True, text=True).stdout


def groundbook(*words, before=()):
    return subprocess.run([*before, GROUNDBOOK, *words], capture_output=True, text=True, timeout=600, stdin=subprocess.DEVNULL)


# --- a picture with one red spot, 12 m wide, at (150.5, 90.5) m from its north-west corner ------------------------------
pixels = bytearray()
for row in range(SIDE):
    for column in range(SIDE):
        pixels += bytes((230, 10, 20) if abs(column - 150) <= 6 and abs(row - 90) <= 6 else (30, 160, 60))
with open(path("plain.ppm"), "wb") as f:
    f.write(b"P6 %d %d 255\n" % (SIDE, SIDE) + pixels)
PLACED = ["-q", "-a_srs", "EPSG:26915", "-a_ullr", str(EAST), str(NORTH), str(EAST + SIDE), str(NORTH - SIDE)]
tool("gdal_translate", *PLACED, path("plain.ppm"), path("utm.tif"))
tool("gdal_translate", "-q", "-of", "COG", path("utm.tif"), path("cog.tif"))
tool("gdal_translate", "-q", "-of", "MBTiles", "-co", "TILE_FORMAT=PNG", "-co", "ZOOM_LEVEL_STRATEGY=UPPER", path("utm.tif"), path("tiles.mbtiles"))
tool("gdal_translate", "-q", "-of", "GPKG", "-co", "TILE_FORMAT=PNG", path("utm.tif"), path("tiles.gpkg"))
tool("gdal_translate", "-q", "-b", "1", "-colorinterp_1", "palette", path("utm.tif"), path("one.tif"))
tool("gdalwarp", "-q", "-t_srs", "EPSG:4269", path("utm.tif"), path("degrees.tif"))
played = groundbook("play", path("day.fieldbook"), SCENARIO)
expect(played.returncode == 0, played.stderr)
GROUND = path("day.fieldbook-ground.tif")


def in_job(east, north):
    """UTM to the job's grid by PROJ, in US survey feet."""
    out = subprocess.run(["gdaltransform", "-s_srs", "EPSG:26915", "-t_srs", "EPSG:6411", "-output_xy"], input=f"{east} {north}\n", check=True, capture_output=True, text=True).stdout
    return out.split()


def colour(east, north):
    x, y = in_job(east, north)
    return [int(v) for v in tool("gdallocationinfo", "-valonly", "-geoloc", GROUND, x, y).split()]


def is_red(c):
    return c[0] > 200 and c[1] < 40 and c[2] < 50


def is_green(c):
    return c[0] < 60 and c[1] > 130


for name in ("utm.tif", "cog.tif", "tiles.mbtiles", "tiles.gpkg", "degrees.tif"):
    answer = groundbook("background", path(name), "--into", path("day.fieldbook"))
    expect(answer.returncode == 0 and answer.stdout.count("\n") == 1, f"{name}: {answer.stdout}{answer.stderr}")
    spot = (EAST + 150.5, NORTH - 90.5)
    expect(is_red(colour(*spot)), f"{name}: the spot is {colour(*spot)}")
    # 6.5 m to its edge: 4.5 m off the middle is still red, 9 m off is green, on all four sides
    for de, dn in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        expect(is_red(colour(spot[0] + 4.5 * de, spot[1] + 4.5 * dn)), f"{name}: 4.5 m off {de, dn}")
        expect(is_green(colour(spot[0] + 9 * de, spot[1] + 9 * dn)), f"{name}: 9 m off {de, dn}")
    expect(sorted(os.listdir(TOP)).count("day.fieldbook-ground.tif") == 1 and not [n for n in os.listdir(TOP) if ".part-" in n], "something is left beside it")
    print(answer.stdout.strip())
info = tool("gdalinfo", GROUND)
expect('ID["EPSG",6411]' in info or "Arkansas North (ftUS)" in info, "the background is in the job's system")
kept = open(GROUND, "rb").read()

# --- hostile and unfit files -------------------------------------------------------------------------------------------
secret = path("secret.tif")
shutil.copy(path("utm.tif"), secret)


def write(name, content):
    with open(path(name), "wb") as f:
        f.write(content if isinstance(content, bytes) else content.encode())
    return path(name)


def refused(name, sentence):
    trace = path("trace")
    answer = groundbook("background", name, "--into", path("day.fieldbook"),
                        before=["strace", "-f", "-qq", "-s", "9999", "-o", trace, "-e", "trace=network,openat,open,execve"])
    what = f"{os.path.basename(name)[:60]}: exit {answer.returncode}, {answer.stdout[:200]!r}, {answer.stderr[:400]!r}"
    expect(answer.returncode == 1 and not answer.stdout and answer.stderr.count("\n") == 1, what)
    expect(re.search(sentence, answer.stderr), f"{what} should say {sentence!r}")
    calls = open(trace, errors="replace").read()
    expect(not re.search(r"\bsocket\(AF_(INET|NETLINK)|\bconnect\(", calls), f"{what} called out")
    expect(f'"{secret}' not in calls, f"{what} opened the secret")
    expect(open(GROUND, "rb").read() == kept, f"{what} touched the background")
    print(f"refused {os.path.basename(name)[:40]!r}: {answer.stderr.strip()[:150]}")


vrt = f'<VRTDataset rasterXSize="240" rasterYSize="240"><VRTRasterBand dataType="Byte" band="1"><SimpleSource><SourceFilename>{secret}</SourceFilename></SimpleSource></VRTRasterBand></VRTDataset>'
refused(write("virtual.tif", vrt), "not a GeoTIFF picture")
refused(write("virtual.mbtiles", vrt), "not a MBTiles picture|not an MBTiles picture")
refused("/vsicurl/http://192.0.2.1/a.tif", "cannot be opened|plain file")
refused(path("utm.tif") + "/../day.fieldbook", "cannot be opened|must end in")
refused(write("half.tif", open(path("cog.tif"), "rb").read()[:3000]), "half.tif")
refused(write("half.mbtiles", open(path("tiles.mbtiles"), "rb").read()[:5000]), "half.mbtiles")
refused(write("noise.gpkg", os.urandom(20000)), "noise.gpkg")
refused(write("picture.png", b"\x89PNG\r\n\x1a\n"), "must end in")
tool("gdal_translate", *PLACED, "-ot", "Float32", path("plain.ppm"), path("heights.tif"))
refused(path("heights.tif"), "8 bits a band; this GeoTIFF has Float32")
tool("gdal_translate", "-q", path("plain.ppm"), path("nowhere.tif"))
refused(path("nowhere.tif"), "does not say where on the ground")
tool("gdal_translate", "-q", "-a_ullr", "0", "100", "100", "0", path("plain.ppm"), path("unnamed.tif"))
refused(path("unnamed.tif"), "does not say its coordinate system")
# A head that claims 4 million x 4 million pixels over nothing.
tags = [(256, 4, 4_000_000), (257, 4, 4_000_000), (258, 3, 8), (259, 3, 1), (262, 3, 1), (277, 3, 1), (322, 4, 65536), (323, 4, 65536), (324, 4, 0), (325, 4, 0)]
refused(write("huge.tif", b"II*\0\x08\0\0\0" + struct.pack("<H", len(tags)) + b"".join(struct.pack("<HHII", t, k, 1, v) for t, k, v in tags) + b"\0\0\0\0"), "huge.tif")
os.mkfifo(path("pipe.tif"))
refused(path("pipe.tif"), "plain file")
shutil.rmtree(TOP)
print(f"{checks} checks")
