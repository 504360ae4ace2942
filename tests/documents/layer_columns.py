"""Holds docs/geopackage-layers.md against a GeoPackage: each layer has a heading, each of its columns stands below it. `*` is the job's unit."""
import fnmatch
import re
import sqlite3

TOLD_ONCE = {"fid", "geom"}  # for every layer, in the head of the page
NOT_OURS = {"layer_styles"}  # GDAL's own table


def check(document, geopackage):
    """(columns held, problems)"""
    sections = {part.split("\n", 1)[0].strip(): part for part in re.split(r"^## ", document.read_text(encoding="utf-8"), flags=re.M)}
    held, problems = 0, []
    with sqlite3.connect(geopackage) as database:
        layers = [row[0] for row in database.execute("SELECT table_name FROM gpkg_contents") if row[0] not in NOT_OURS]
        for layer in layers:
            if layer not in sections:
                problems.append(f"{document.name}: no heading for the layer {layer}")
                continue
            first_cells = re.findall(r"^\| ([^|]*) \|", sections[layer], flags=re.M)
            told = {name for cell in first_cells for name in re.findall(r"`([\w*]+)`", cell)}
            for row in database.execute(f'PRAGMA table_info("{layer}")'):
                held += 1
                if row[1] not in TOLD_ONCE and not any(fnmatch.fnmatch(row[1], one) for one in told):
                    problems.append(f"{document.name}: the column {row[1]} of the layer {layer} is not told of")
    if held < 80:
        problems.append(f"{document.name}: only {held} columns were found in the file")
    return held, problems
