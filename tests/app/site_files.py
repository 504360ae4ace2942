"""Site files by groundbook: site_files.py GROUNDBOOK SCENARIO. Good files of every format against GDAL's own programs; hostile ones must
cost a sentence, open nothing beside the private copy and call nobody (seen by strace). Exit 77 with the reason when a program is missing."""
import json
import math
import os
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import time

GROUNDBOOK, SCENARIO = sys.argv[1:3]
MISSING = [p for p in ("ogr2ogr", "gdaltransform", "strace", "sqlite3") if not shutil.which(p)]
if MISSING:
    print(f"Skipped: {', '.join(MISSING)} missing; Debian packages gdal-bin, strace, sqlite3.")
    sys.exit(77)

os.environ.update(LC_ALL="C.UTF-8")
TOP = tempfile.mkdtemp(prefix="groundcount-site-test-")
os.environ["HOME"] = os.environ["XDG_DATA_HOME"] = TOP
PRIVATE = os.environ["TMPDIR"] = os.path.join(TOP, "private")  # where private folders are made; those of other programs are not looked at
os.mkdir(PRIVATE)
checks = 0


def expect(truth, what):
    global checks
    checks += 1
    if not truth:
        sys.exit(f"FAILED: {what}")


def path(name):
    return os.path.join(TOP, name)


def write(name, content):
    with open(path(name), "wb") as f:
        f.write(content.encode() if isinstance(content, str) else content)
    return path(name)


def run(*arguments, tool=(), **more):
    return subprocess.run([*tool, GROUNDBOOK, *arguments], capture_output=True, text=True, timeout=120, stdin=subprocess.DEVNULL, **more)


def ogr(*arguments):
    subprocess.run(["ogr2ogr", *arguments], check=True, capture_output=True)


def refused(name, sentence, *more, **kept):
    """Exit 1, one sentence, nothing on standard output; nobody called, the secret untouched."""
    trace = path("trace")
    before = time.monotonic()
    answer = run("site", name, *more, tool=["strace", "-f", "-qq", "-s", "9999", "-o", trace, "-e", "trace=network,openat,open,execve"], **kept)
    took = time.monotonic() - before
    what = f"{os.path.basename(name)[:60]}: exit {answer.returncode}, {answer.stdout[:200]!r}, {answer.stderr[:400]!r}"
    expect(answer.returncode == 1 and not answer.stdout and answer.stderr.count("\n") == 1, what)
    expect(re.search(sentence, answer.stderr), f"{what} should say {sentence!r}")
    calls = open(trace, errors="replace").read()
    expect(not re.search(r"\bsocket\(AF_(INET|NETLINK)|\bconnect\(", calls), f"{what} called out")
    expect(f'"{TOP}/secret' not in calls, f"{what} opened the secret")
    expect(took < 60, f"{what} took {took:.0f} s")
    print(f"refused {os.path.basename(name)[:50]!r} in {took:.1f} s: {answer.stderr.strip()[:150]}")


# --- good files -------------------------------------------------------------------------------------------------------
FEATURES = [("Wall W-1", "LineString", [[-92.18, 35.57], [-92.1795, 35.5701]]),
            ("Basin", "Polygon", [[[-92.18, 35.57], [-92.179, 35.57], [-92.179, 35.571], [-92.18, 35.571], [-92.18, 35.57]],
                                  [[-92.1797, 35.5703], [-92.1797, 35.5705], [-92.1795, 35.5705], [-92.1797, 35.5703]]]),
            ("Hydrant", "Point", [-92.1791, 35.5702])]


def geojson(features):
    return json.dumps({"type": "FeatureCollection", "features": [
        {"type": "Feature", "properties": {"name": n}, "geometry": {"type": t, "coordinates": c}} for n, t, c in features]})


source = write("site.geojson", geojson(FEATURES))
ogr("-f", "GPKG", path("site.gpkg"), source, "-nln", "works")
ogr("-f", "KML", path("site.kml"), source)
ogr("-f", "GPKG", "-t_srs", "EPSG:6411", path("grid.gpkg"), source, "-nln", "works")
for form in ("LineString", "Polygon", "Point"):
    ogr("-f", "ESRI Shapefile", "-t_srs", "EPSG:6411", "-where", f"OGR_GEOMETRY='{form}'", path(f"{form}.shp"), source)
subprocess.run(["ogr2ogr", "-f", "DXF", path("line.dxf"), path("LineString.shp")], capture_output=True, check=True)
book = path("day.fieldbook")
expect(run("play", book, SCENARIO, "--key", path("key")).returncode == 0, "the demo day plays")


def obstacles(*arguments):
    """The obstacles that a call sealed, out of the records themselves."""
    copy = path("copy.fieldbook")
    shutil.copy(book, copy)
    answer = run("site", *arguments, "--into", copy, "--as", "obstacle", "--key", path("key"), "--by", "M. Lindqvist")
    if answer.returncode:
        return answer
    with sqlite3.connect(copy) as db:
        rows = db.execute("select body from record where kind='obstacle' and body like '%from_file%' order by row").fetchall()
    os.remove(copy)
    return [json.loads(r[0]) for r in rows]


def by_gdal(points):
    text = "\n".join(f"{x} {y}" for x, y in points)
    out = subprocess.run(["gdaltransform", "-s_srs", "EPSG:4326", "-t_srs", "EPSG:6411", "-output_xy"], input=text, capture_output=True, text=True, check=True).stdout
    return [tuple(map(float, line.split()[:2])) for line in out.splitlines()]


for name in ("site.geojson", "site.gpkg", "site.kml", "grid.gpkg"):
    answer = run("site", path(name))
    expect(answer.returncode == 0 and all(w in answer.stdout for w in ("line", "area", "point")), f"{name}: {answer.stdout}{answer.stderr}")
    sealed = obstacles(path(name), "--obstacle", "wall")
    expect(isinstance(sealed, list) and len(sealed) == 3, f"{name}: {sealed}")
    for (title, form, shape), body in zip(FEATURES, sealed):
        run_ = [shape] if form == "Point" else shape if form == "LineString" else shape[0][:-1]
        expect(body["name"] == title and body.get("closed", False) == (form == "Polygon"), f"{name}: {body}")
        for (e, n), vertex in zip(by_gdal(run_), body.get("path", [body])):
            expect(abs(float(vertex["grid_east_usft"]) - e) < 0.002 and abs(float(vertex["grid_north_usft"]) - n) < 0.002, f"{name} {title}: {vertex} {e} {n}")
        if form != "Point":
            reach = max(math.hypot(float(v["grid_east_usft"]) - float(body["grid_east_usft"]), float(v["grid_north_usft"]) - float(body["grid_north_usft"])) for v in body["path"])
            expect(0 <= float(body["radius_ft"]) - reach * 1200 / 3937 / 0.3048 < 0.01, f"{name} {title}: radius {body['radius_ft']}, reach {reach}")
shapes = [obstacles(path(f"{form}.shp")) for form in ("LineString", "Polygon", "Point")]
expect([s[0]["name"] for s in shapes] == ["Wall W-1", "Basin", "Hydrant"], f"shapefiles: {shapes}")

# The two feet: a drawing in international feet is 2e-6 away from one in US survey feet, 1.0 ft in 481,702 ft north.
feet = {unit: obstacles(path("line.dxf"), "--crs", "EPSG:6411", "--units", unit)[0]["path"][0] for unit in ("ft", "ftUS")}
for axis in ("grid_north_usft", "grid_east_usft"):
    value = float(feet["ftUS"][axis])
    expect(abs(float(feet["ft"][axis]) - value * 499999 / 500000 * 1.0) < 0.001 and abs(float(feet["ft"][axis]) - value) > 0.5, f"feet {axis}: {feet}")
for more, sentence in ((("line.dxf",), "does not say its coordinate system"), (("line.dxf", "--crs", "EPSG:6411"), "does not say the unit"),
                       (("site.gpkg", "--units", "ft"), "are degrees"), (("grid.gpkg", "--units", "ft"), "counts in the US survey foot; the answer says ft"),
                       (("grid.gpkg", "--crs", "EPSG:6412"), "The file says that it lies in"), (("site.gpkg", "--layer", "none"), "nothing in the layer"),
                       (("site.gpkg", "--crs", "here"), "named by its EPSG code"), (("line.dxf", "--crs", "EPSG:999999", "--units", "m"), "EPSG code must be one")):
    answer = obstacles(path(more[0]), *more[1:])
    expect(not isinstance(answer, list) and answer.returncode == 1 and sentence in answer.stderr and answer.stderr.count("\n") == 1, f"{more}: {answer}")

# Lots: an area with a hole becomes ground whose size GDAL's own SQL also finds.
scenario = json.load(open(SCENARIO))
text = json.dumps(scenario)
material = re.search(r'"kind": "material".*?"name": "([^"]+)"', text).group(1)
proctor = re.search(r'"kind": "proctor".*?"name": "([^"]+)"', text).group(1)
lot = run("site", path("Polygon.shp"), "--into", book, "--as", "lot", "--material", material, "--reference", proctor, "--tests-per-lift", "4",
          "--key", path("key"), "--by", "M. Lindqvist")
expect(lot.returncode == 0 and "1 lot sealed" in lot.stdout, f"lot: {lot.stderr}")
answer = run("site", path("LineString.shp"), "--into", book, "--as", "lot", "--material", material, "--reference", proctor, "--tests-per-lift", "4",
             "--key", path("key"), "--by", "M. Lindqvist")
expect(answer.returncode == 1 and "must be an area" in answer.stderr, f"line as lot: {answer.stderr}")

# --- LandXML ----------------------------------------------------------------------------------------------------------
def landxml(unit="USSurveyFoot", geometry=None, extra="", head=""):
    # 100 north, a quarter to the right with radius 200 about (1100, 2200), 50 east.
    geometry = geometry or """<Line><Start>1000 2000</Start><End>1100 2000 12.5</End></Line>
      <Curve rot="cw"><Start>1100 2000</Start><Center>1100 2200</Center><End>1300 2200</End></Curve><Line><Start>1300 2200</Start><End>1300 2250</End></Line>"""
    return f"""<?xml version="1.0"?>{head}<LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2"><Units><Imperial linearUnit="{unit}"/></Units>
      <CoordinateSystem epsgCode="6411"/><Alignments><Alignment name="Ramp B" length="464.159" staStart="5000"><CoordGeom>{geometry}</CoordGeom>
      <StaEquation staBack="5050" staAhead="6000" staInternal="5050"/>{extra}</Alignment></Alignments></LandXML>"""


write("ramp.xml", landxml())
answer = run("site", path("ramp.xml"))
expect(answer.returncode == 0 and "Ramp B" in answer.stdout and "3 elements" in answer.stdout, f"LandXML: {answer}")
answer = run("site", path("ramp.xml"), "--into", book, "--as", "alignment", "--key", path("key"), "--by", "M. Lindqvist")
expect(answer.returncode == 0, f"alignment: {answer.stderr}")
with sqlite3.connect(book) as db:
    body = json.loads(db.execute("select body from record where kind='alignment' and body like '%Ramp B%'").fetchone()[0])
expect(body["unit"] == "ftUS" and body["begin_azimuth_deg"] in ("0.000000000",) and body["equations"] == [{"ahead": "6000", "back": "5050"}], f"{body}")
expect(abs(float(body["elements"][1]["length"]) - 100 * math.pi) < 1e-5 and body["elements"][1]["turn"] == "right", f"{body}")
for name, content, sentence in (
        ("spiral.xml", landxml(geometry="<Spiral/>"), "only Line and circular Curve"),
        ("gap.xml", landxml(geometry="<Line><Start>0 0</Start><End>10 0</End></Line><Line><Start>11 0</Start><End>20 0</End></Line>"), "gap of 1 "),
        ("corner.xml", landxml(geometry="<Line><Start>0 0</Start><End>10 0</End></Line><Line><Start>10 0</Start><End>20 10</End></Line>"), "corner of 45"),
        ("oval.xml", landxml(geometry='<Curve rot="ccw"><Start>0 0</Start><Center>0 10</Center><End>0 30</End></Curve>'), "not equally far"),
        ("yard.xml", landxml(unit="yard"), "must be meter, foot or USSurveyFoot"),
        ("bomb.xml", landxml(head='<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>'), "document type"),
        ("outside.xml", landxml(head=f'<!DOCTYPE x [<!ENTITY a SYSTEM "file://{TOP}/secret.geojson">]>'), "document type"),
        ("cut.xml", landxml()[:-20], "not well-formed"),
        ("page.xml", "<html/>", "begins with html"),
        ("deep.xml", "<LandXML>" + "<a>" * 100_000, "deeper than 64")):
    refused(write(name, content), sentence)
answer = run("site", write("foot.xml", landxml(unit="foot")), "--into", book, "--as", "alignment", "--key", path("key"), "--by", "M. Lindqvist")
expect(answer.returncode == 1 and "the file counts in ft" in answer.stderr, f"international feet into a survey job: {answer}")
write("haul.geojson", json.dumps({"type": "FeatureCollection", "crs": {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::6411"}}, "features": [
    {"type": "Feature", "properties": {"name": "Haul road"}, "geometry": {"type": "LineString", "coordinates": [[1204700, 481500], [1205200, 482000]]}}]}))
for station, sentence in (("10+0", "exactly 2 digits"), ("ten", "decimal number"), ("10+00.5", "")):
    answer = run("site", path("haul.geojson"), "--into", book, "--as", "alignment", "--begin-station", station, "--key", path("key"), "--by", "M. Lindqvist")
    expect(answer.returncode == (1 if sentence else 0) and sentence in answer.stderr, f"a line that begins at {station}: {answer}")
with sqlite3.connect(book) as db:
    body = json.loads(db.execute("select body from record where kind='alignment' and body like '%Haul road%'").fetchone()[0])
expect(body["begin_station"] == "1000.5", f"{body}")

# --- hostile files ----------------------------------------------------------------------------------------------------
write("secret.geojson", geojson(FEATURES[2:]))
VRT = f'<OGRVRTDataSource><OGRVRTLayer name="secret"><SrcDataSource>{TOP}/secret.geojson</SrcDataSource></OGRVRTLayer></OGRVRTDataSource>'
for ending in ("gpkg", "shp", "geojson", "kml", "dxf", "xml"):
    refused(write(f"virtual.{ending}", VRT), "not a|begins with|broken|no point")
    refused(write(f"net.{ending}", VRT.replace(TOP, "/vsicurl/http://127.0.0.1:9")), "not a|begins with|broken|no point")
    refused(write(f"empty.{ending}", b""), "not a|not well-formed|broken|no point")
    refused(write(f"noise.{ending}", os.urandom(50_000)), "not a|not well-formed|broken|no point")
for name in ("/vsicurl/http://127.0.0.1:9/a.gpkg", "http://127.0.0.1:9/a.geojson", "/vsimem/a.gpkg", "<OGRVRTDataSource/>", VRT, "GPKG:x.gpkg:y", path("nowhere.gpkg"), "x" * 5000 + ".gpkg"):
    refused(name, "cannot be opened")
os.mkfifo(path("pipe.gpkg"))
os.mkdir(path("folder.gpkg"))
os.symlink("/dev/zero", path("zero.geojson"))
for name in ("pipe.gpkg", "folder.gpkg", "zero.geojson"):
    refused(path(name), "plain file")
with open(path("huge.geojson"), "wb") as f:
    f.truncate(600 << 20)
refused(path("huge.geojson"), "at most 512 MiB")
refused(write("other.tif", b"II*\0"), "must end in")
refused(write("url.geojson", '"http://127.0.0.1:9/a.geojson"'), "not a")
refused(write("link.kml", """<kml xmlns="http://www.opengis.net/kml/2.2"><Document><NetworkLink><Link><href>http://127.0.0.1:9/a.kml</href></Link></NetworkLink></Document></kml>"""), "not a|no point")
refused(write("bomb.kml", "<!DOCTYPE k [<!ENTITY a 'aaaaaaaaaa'>" + "".join(f"<!ENTITY {chr(98 + i)} '{f'&{chr(97 + i)};' * 10}'>" for i in range(12))
              + "]><kml xmlns='http://www.opengis.net/kml/2.2'><Document><Placemark><name>&m;</name><Point><coordinates>1,2</coordinates></Point></Placemark></Document></kml>"), "broken|not a|no point|larger|failed")
refused(write("outside.kml", f"<!DOCTYPE k [<!ENTITY a SYSTEM 'file://{TOP}/secret.geojson'>]><kml xmlns='http://www.opengis.net/kml/2.2'><Document><Placemark><name>&a;</name></Placemark></Document></kml>"), "broken|not a|no point")
refused(write("broken.geojson", '{"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[[0,0],[1,1]]]}},'
              '{"type":"Feature","properties":{},"geometry":{"type":"Point","coordinates":[1e300,-1e300]}},{"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[0,0]]}}]}'), "no point|broken")
refused(write("deep.geojson", '{"type":"GeometryCollection","geometries":[' * 3000), "not a|broken")
refused(write("many.geojson", geojson([("p", "Point", [-92 + i * 1e-6, 35]) for i in range(100_050)])), "more than 100000")
with open(path("site.gpkg"), "rb") as f:
    good = f.read()
refused(write("cut.gpkg", good[: len(good) // 3]), "not a|broken")


def gpkg(name, *statements):
    shutil.copy(path("site.gpkg"), path(name))
    with sqlite3.connect(path(name)) as db:
        for statement in statements:
            db.execute(statement)
    return path(name)


register = ("insert into gpkg_contents(table_name,data_type,identifier,srs_id) values('v','features','v',4326)",
            "insert into gpkg_geometry_columns values('v','geom','GEOMETRY',4326,0,0)", "delete from gpkg_contents where table_name='works'",
            "delete from gpkg_geometry_columns where table_name='works'", "delete from gpkg_extensions")
refused(gpkg("turning.gpkg", "create view v as with recursive c(x) as (select 1 union all select x+1 from c) select x as fid, null as geom from c", *register), "longer than|failed|memory|no point|broken")
refused(gpkg("functions.gpkg", "create view v as select 1 as fid, gdal_get_pixel_value('/vsicurl/http://127.0.0.1:9/secret.tif',1,'pixel',0,0) as geom", *register), "not a|broken|no point")
refused(gpkg("tiles.gpkg", "update gpkg_contents set data_type='tiles'", "delete from gpkg_geometry_columns"), "not a|no point|broken")
environment = {**os.environ, "GDAL_DRIVER_PATH": TOP, "OGR_SQLITE_LOAD_EXTENSIONS": "ENABLE_SQL_LOAD_EXTENSION", "CPL_DEBUG": "ON", "GDAL_SKIP": "GPKG"}
expect(run("site", path("site.gpkg"), env=environment).returncode == 0, "variables of the environment change nothing")
left = os.listdir(PRIVATE)
expect(not left, f"private folders are left: {left}")

# --- coordinate systems -----------------------------------------------------------------------------------------------
found = run("crs", "missouri", "central", "2011").stdout
expect("EPSG:6511" in found and "NAD83(2011) / Missouri Central" in found, f"by name: {found}")
expect("EPSG:6411" in run("crs", "EPSG:6411").stdout and "EPSG:6411" in run("crs", "Baxter", "survey", "ftus").stdout + run("crs", "Baxter", "ftus").stdout, "by code and by place")
expect(run("crs", "no", "such", "place", "anywhere").returncode == 1, "nothing found is refused")
shutil.rmtree(TOP)
print(f"{checks} checks")
if checks < 250:
    sys.exit("too few checks were made")
