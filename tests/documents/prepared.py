"""What the lines of the documents take for granted, and which of them do not run as they stand: each with its reason."""
import json
import re
import subprocess
from pathlib import Path

WALL = [[-92.180, 35.570], [-92.1795, 35.5701]]
AREA = [[[-92.18, 35.57], [-92.179, 35.57], [-92.179, 35.571], [-92.18, 35.571], [-92.18, 35.57]]]
RAMP = """<?xml version="1.0"?><LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2">
<Units><Imperial linearUnit="USSurveyFoot"/></Units><CoordinateSystem epsgCode="6411"/><Alignments><Alignment name="Ramp B" length="100" staStart="5000">
<CoordGeom><Line><Start>1000 2000</Start><End>1100 2000</End></Line></CoordGeom></Alignment></Alignments></LandXML>"""


def layer(form, coordinates, name):
    return json.dumps({"type": "FeatureCollection", "features": [{"type": "Feature", "properties": {"name": name, "Layer": "WALLS"},
                                                                  "geometry": {"type": form, "coordinates": coordinates}}]})


def blocks_of_json(document):
    """The examples of a document that are JSON: blocks of four spaces that begin with a brace."""
    text = "\n" + document.read_text(encoding="utf-8")
    found = re.findall(r"\n\n((?:    .*\n)+)", text + "\n")
    return [json.loads(block) for block in found if block.startswith("    {")]


def files(folder, root):
    """The files that a reader has before the first line of a document. The examples in JSON are the documents' own."""
    def put(name, text):
        (folder / name).write_text(text, encoding="utf-8")

    def ogr(form, name, source, *more):
        subprocess.run(["ogr2ogr", "-f", form, *more, folder / name, folder / source], check=True, capture_output=True)

    listed = (root / "tests/core/book/data/field_day.csv").read_text(encoding="utf-8")
    put("tests.csv", listed)
    head, *rows = listed.splitlines()
    put("more.csv", "\n".join([head, *("9" + row for row in rows), rows[0].replace("2006-02-28", "someday", 1)]) + "\n")
    put("test.json", json.dumps(blocks_of_json(root / "docs/evaluate-json.md")[0]))
    put("owner.json", json.dumps(blocks_of_json(root / "docs/geopackage-layers.md")[0]))
    put("ramp.xml", RAMP)
    put("wall.geojson", layer("LineString", WALL, "W-1"))
    put("area.geojson", layer("Polygon", AREA, "N-9"))
    ogr("GPKG", "lots.gpkg", "area.geojson")
    ogr("ESRI Shapefile", "wall.shp", "wall.geojson", "-t_srs", "EPSG:6411")
    ogr("DXF", "grading.dxf", "wall.shp")
    subprocess.run(["gdal_create", "-q", "-of", "GTiff", "-ot", "Byte", "-bands", "3", "-outsize", "40", "30", "-burn", "90", "-a_srs", "EPSG:6411",
                    "-a_ullr", "1204000", "482000", "1204080", "481940", folder / "ground.tif"], check=True, capture_output=True)


# Documents that go on with a book made in docs/command-line.md: here it is the demo day.
BOOKS = {
    "docs/geopackage-layers.md": ["north"],
    "docs/shared-server.md": ["north"],
    "docs/site-files.md": ["job"],
}

# (document or None for all, beginning of a line, shell that makes what the line takes for granted)
BEFORE = [
    ("docs/command-line.md", "groundbook merge", "cp north.fieldbook other.fieldbook"),
]

# (document or None, pattern of what stands there, what is run instead, why)
REPLACED = [
    (None, r"ninja -C", "ninja -n -C", "a build takes minutes; a dry run still needs every target and source"),
    (None, r"^ctest --test-dir (\S+) -R (\S+).*", r"ctest -N --test-dir \1 -R \2 | grep 'Total Tests: [1-9]'", "nothing is built; there must be such tests"),
    (None, r"2e6e 859b 227b 558e", r"$(pdftotext test-26.pdf - | grep -oE '\\b([0-9a-f]{4} ){3}[0-9a-f]{4}\\b' | head -1)", "the code of this very sheet"),
    (None, r"retire north.fieldbook 3f0c91ab", r"retire north.fieldbook $(groundbook keys north.fieldbook | sed -n '2s/^\\(........\\).*/\\1/p')", "a key of this very book"),
    (None, r"--id [-0-9a-f]{36}", r"--id $(groundbook keys north.fieldbook | sed -n '1s/.* //p')", "the id of this very book"),
]

# (document or None, pattern of the line, reason, shell that must succeed instead)
NOT_RUN = [
    (None, r"demo/run", "installs packages and builds a release: minutes", "test -x demo/run && bash -n demo/run && bash -n demo/machine.sh"),
    (None, r"tests/run", "is what runs this test", "test -x tests/run && bash -n tests/run"),
    *[(f"docs/build-{one}.md", r".*", "needs a Qt 6 kit that Debian has not", f"for one in {pieces}; do test -s app/package/$one; done")
      for one, pieces in (("android", "platforms.cmake android/AndroidManifest.xml"), ("ios", "platforms.cmake apple/Info.plist.in"),
                          ("macos", "apple/Info.plist.in apple/groundcount.entitlements"), ("windows", "windows/groundcount.manifest"))],
    ("docs/newcomer.md", r"build-mine/app/groundcount .*", "needs the build; its options and the page's name must stand in the code",
     "for one in book at size open screenshot; do grep -qr \"\\\"$one\\\"\" app/view/ui_start.cpp app/main.cpp; done; grep -q '\"certificates\"' app/view/desk_open.cpp"),
    ("docs/packages.md", r"cd build-deb && cpack -G DEB", "needs the build; the name must be the package's",
     "for one in 'PACKAGE_NAME \"groundcount\"' 'PACKAGE_VERSION \"0.1.0\"' 'FILE_NAME \"DEB-DEFAULT\"'; do grep -qi \"$one\" build-deb/CPackConfig.cmake; done"),
    ("docs/packages.md", r"tests/package_arm64", "builds everything for arm64 in a root of its own: an hour",
     "test -x tests/package_arm64 && bash -n tests/package_arm64 && test -s app/package/debian-arm64.cmake"),
    ("docs/packages.md", r"apt install .*", "installs a package as root; tests/package does it in a fresh root", "test -x tests/package && bash -n tests/package"),
]
