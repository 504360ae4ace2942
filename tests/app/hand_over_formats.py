"""Styles, repeatability, other formats and an owner's names of the demo's hand-over: hand_over_formats.py GROUNDBOOK SOURCE."""
import csv
import json
import os
import sqlite3
import sys
import xml.etree.ElementTree as ET

sys.dont_write_bytecode = True
from hand_over_bench import LAYERS, STATES, TOP, close, done, expect, export, file, ogr, path, refused, rows, shape

# Styles.
for row in rows(file, "SELECT * FROM layer_styles ORDER BY id"):
    desktop, open_form = ET.fromstring(row["styleQML"]), ET.fromstring(row["styleSLD"])
    expect(row["useAsDefault"] == 1 and row["f_geometry_column"] == "geom", "a default style")
    expect(desktop.find("renderer-v2/symbols/symbol") is not None and len(open_form.findall(".//{http://www.opengis.net/se}Rule")) > 0, "symbols")
    aliases = [one.get("field") for one in desktop.findall("aliases/alias")]
    expect(aliases == [one["name"] for one in file.execute(f"PRAGMA table_info({row['f_table_name']})")][2:], "titles for the form")
expect([row["f_table_name"] for row in rows(file, "SELECT * FROM layer_styles ORDER BY id")] == LAYERS, "a style for each layer")
values = [one.get("value") for one in ET.fromstring(file.execute("SELECT styleQML FROM layer_styles WHERE f_table_name = 'density_test'").fetchone()[0]).iter("category")]
expect(sorted(values) == sorted(STATES), "a symbol for each state")

# Again: the same bytes; no clock, no order of the disk.
export("again.gpkg")
expect(open(path("job.gpkg"), "rb").read() == open(path("again.gpkg"), "rb").read(), "the same book gives the same bytes")

# The other formats, by GDAL.
NAMES = {"geojson": "geojson", "csv": "csv", "shp": "shp", "kml": "kml"}
for word, ending in NAMES.items():
    said = export(f"folder-{word}", "--format", word)
    folder = path(f"folder-{word}")
    expect(sorted(one for one in os.listdir(folder) if one.endswith(ending)) == sorted(f"{layer}.{ending}" for layer in LAYERS), f"{word}: one file a layer")
    for layer in LAYERS:
        here = rows(file, f"SELECT * FROM {layer} ORDER BY fid")
        if not here:
            continue
        opened = ogr.Open(f"{folder}/{layer}.{ending}")  # a layer dies with its file
        there = opened.GetLayer(0)
        expect(there.GetFeatureCount() == len(here), f"{word} {layer}: rows")
        shapes = sum(1 for feature in there if feature.GetGeometryRef() is not None)
        expect(word == "csv" or shapes == len(here), f"{word} {layer}: shapes")
test_rows = rows(file, "SELECT * FROM density_test ORDER BY fid")
opened = ogr.Open(path("folder-shp") + "/density_test.shp")
shp = opened.GetLayer(0)
short = [shp.GetLayerDefn().GetFieldDefn(i).GetName() for i in range(shp.GetLayerDefn().GetFieldCount())]
expect(all(len(name) <= 10 for name in short) and len(set(short)) == len(short) == 53, "Shapefile names")
for feature, row in zip(shp, test_rows):
    for i, column in enumerate(list(row)[2:]):
        value, there = row[column], None if feature.IsFieldNull(i) else feature.GetField(i)
        if isinstance(value, str):
            expect(there == value.encode()[:254].decode("utf-8", "ignore"), f"shp {column}: {there} for {value}")
        else:
            expect(there == value or (value is not None and close(there, value, 1e-9 * max(1, abs(value)))), f"shp {column}: {there} for {value}")
with open(path("folder-csv") + "/density_test.csv", newline="", encoding="utf-8") as table:
    for got, row in zip(csv.DictReader(table), test_rows):
        for column in list(row)[2:]:
            value = row[column]
            same = got[column] == "" if value is None else float(got[column]) == value if isinstance(value, (int, float)) else got[column] == value
            expect(same, f"csv {column}: {got[column]} for {value}")
        x, y = shape(row["geom"])[3]
        expect(float(got["X"]) == x and float(got["Y"]) == y, "csv X and Y")
geo = json.load(open(path("folder-geojson") + "/density_test.geojson"))
for feature, row in zip(geo["features"], test_rows):
    expect(close(feature["geometry"]["coordinates"][0], row["longitude_deg"], 3e-5) and close(feature["geometry"]["coordinates"][1], row["latitude_deg"], 3e-5), "GeoJSON place")
    for column in list(row)[2:]:
        expect(feature["properties"][column] == row[column], f"GeoJSON {column}")

# One file, named by the person; written twice it is the same.
for ending, layer, count in ("csv", "density_test", 14), ("geojson", "lift_coverage", 10), ("kml", "lot", 2), ("csv", "lot", 2), ("json", "alignment", 1):
    for name in f"one.{ending}", f"two.{ending}":
        export(name, "--layer", layer)
        opened = ogr.Open(path(name))
        expect(opened.GetLayerCount() == 1 and opened.GetLayer(0).GetFeatureCount() == count, f"{name} holds {layer}")
    if ending != "kml":
        expect(open(path(f"one.{ending}"), "rb").read() == open(path(f"two.{ending}"), "rb").read(), f"{ending} again")

# An owner's names.
with open(path("names.json"), "w") as names_file:
    json.dump({"layers": {"density_test": {"name": "DT_2026", "columns": {"test_number": "TESTNO", "state": "RESULT", "percent_compaction": "PCT"}, "only_these": True}}}, names_file)
export("named.gpkg", "--layer", "density_test", "--columns", path("names.json"))
named = sqlite3.connect(path("named.gpkg"))
expect([one[1] for one in named.execute("PRAGMA table_info(DT_2026)")] == ["fid", "geom", "TESTNO", "RESULT", "PCT"], "an owner's names")
expect(named.execute("SELECT TESTNO, RESULT, PCT FROM DT_2026 ORDER BY fid").fetchall() ==
       [(row["test_number"], row["state"], row["percent_compaction"]) for row in test_rows], "and our values")
expect('attr="RESULT"' in named.execute("SELECT styleQML FROM layer_styles").fetchone()[0], "the style follows the names")
for wrong, words in ({"layers": {"density_tests": {}}}, "no layer"), ({"layers": {"lot": {"columns": {"nothing": "X"}}}}, "no column"), \
        ({"layers": {"lot": {"columns": {"zone": "lot"}}}}, "twice"), ({"layers": {"lot": {"columns": {"zone": "1 a"}}}}, "letters"), \
        ({"layers": {"lot": {"colums": {}}}}, "it has"), ({"lot": {}}, "layers"):
    with open(path("wrong.json"), "w") as names_file:
        json.dump(wrong, names_file)
    expect(words in refused("wrong.gpkg", "--columns", path("wrong.json")), f"{wrong} names {words}")

# Refusals leave what is there.
for out, more in ("job.tiff", ()), ("x.gpkg", ("--format", "csv", "--layer", "roads")), ("folder-csv", ("--format", "csv")), ("a.shp", ("--format", "shp")), \
        ("b.geojson", ("--layer", "lot", "--layer", "alignment")), ("c", ("--format", "dwx")), ("d", ("--format", "gpkg")):
    refused(out, *more)
expect(not [one for one in os.listdir(TOP) if ".part-" in one or one in ("job.tiff", "a.shp", "b.geojson", "c", "d", "wrong.gpkg")], "nothing is left over")
print(f"{done['checks']} checks")
