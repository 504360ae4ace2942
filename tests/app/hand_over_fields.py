"""Every field of every layer of the demo's GeoPackage, read by SQLite alone and held against the sealed records: hand_over_fields.py GROUNDBOOK SOURCE."""
import hashlib
import json
import math
import sqlite3
import subprocess
import sys
from datetime import datetime, timedelta
from decimal import ROUND_HALF_EVEN, Decimal

sys.dont_write_bytecode = True
from hand_over_bench import LAYERS, METRE, SOURCE, STATES, area, book, close, done, expect, file, path, points, ring_area, rows, run, shape

# The container.
ran = subprocess.run(["/usr/bin/python3", "-m", "osgeo_utils.samples.validate_gpkg", "-k", "--extra", path("job.gpkg")], capture_output=True, text=True)
expect(ran.returncode == 0, f"GDAL's validator: {ran.stdout}{ran.stderr}")
contents = rows(file, "SELECT * FROM gpkg_contents ORDER BY rowid")
expect([row["table_name"] for row in contents if row["data_type"] == "features"] == LAYERS, "the seven layers in their order")
expect({row["last_change"] for row in contents} == {book.execute("SELECT max(at) FROM record").fetchone()[0]}, "dates of the latest record")
expect(file.execute("PRAGMA integrity_check").fetchone()[0] == "ok" and not file.execute("PRAGMA foreign_key_check").fetchall(), "SQLite's own checks")
system = rows(file, "SELECT * FROM gpkg_spatial_ref_sys WHERE srs_id = 6411")[0]
expect(system["organization"] == "EPSG" and system["definition"].startswith("PROJCS[") and system["definition_12_063"].startswith("PROJCRS["), "WKT 1 and WKT 2")
for layer in LAYERS:
    columns = [row["name"] for row in file.execute(f"PRAGMA table_info({layer})")]
    told = rows(file, "SELECT * FROM gpkg_data_columns WHERE table_name = ? ORDER BY rowid", layer)
    expect(columns[:2] == ["fid", "geom"] and [row["column_name"] for row in told] == columns[2:], f"{layer}: each column is described, in order")
    expect(all(row["title"] and row["description"].endswith(".") for row in told), f"{layer}: titles and descriptions")
    index = {row["id"]: row for row in rows(file, f"SELECT * FROM rtree_{layer}_geom")}
    bounds = []
    for row in rows(file, f"SELECT fid, geom FROM {layer} WHERE geom IS NOT NULL"):
        srs, envelope, kind, parts = shape(row["geom"])
        xs, ys = zip(*points(kind, parts))
        box = min(xs), max(xs), min(ys), max(ys)
        bounds.append(box)
        found = index.pop(row["fid"])
        expect(srs == 6411 and envelope in (None, box), f"{layer} {row['fid']}: CRS and envelope")
        expect(found["minx"] <= box[0] and found["maxx"] >= box[1] and found["miny"] <= box[2] and found["maxy"] >= box[3], f"{layer}: the index holds it")
        expect(found["maxx"] - found["minx"] <= box[1] - box[0] + 1 and found["maxy"] - found["miny"] <= box[3] - box[2] + 1, f"{layer}: and no more")
        if kind == 6:
            expect(all(ring[0] == ring[-1] for polygon in parts for ring in polygon), f"{layer}: rings are closed")
            expect(all(ring_area(polygon[0]) > 0 and all(ring_area(hole) < 0 for hole in polygon[1:]) for polygon in parts), f"{layer}: turn of the rings")
    expect(not index, f"{layer}: nothing else in the index")
    row = next(row for row in contents if row["table_name"] == layer)
    whole = (min(b[0] for b in bounds), max(b[1] for b in bounds), min(b[2] for b in bounds), max(b[3] for b in bounds)) if bounds else (None,) * 4
    expect((row["min_x"], row["max_x"], row["min_y"], row["max_y"]) == whole, f"{layer}: extent")
lists = rows(file, "SELECT constraint_name, group_concat(value, '|') AS words FROM gpkg_data_column_constraints WHERE constraint_type = 'enum' GROUP BY 1")
expect({row["constraint_name"] for row in lists} == {"test_state", "test_purpose", "site_state", "ground_state", "obstacle_kind", "water_window"}, "closed lists")
ranges = rows(file, "SELECT * FROM gpkg_data_column_constraints WHERE constraint_type = 'range'")
expect(len(ranges) == 7 and all(row["min"] < row["max"] and row["value"] is None for row in ranges), "ranges")
try:
    sqlite3.connect(path("job.gpkg")).execute("INSERT INTO obstacle(kind) VALUES ('tree')")
    expect(False, "a word outside its list is refused")
except sqlite3.Error as error:
    expect("CHECK" in str(error) or "ST_IsEmpty" in str(error), str(error))

# The demo's one photo, to the byte, joined to its test.
photos = rows(file, "SELECT p.*, t.test_number FROM photo p JOIN density_test_photo j ON j.related_id = p.id JOIN density_test t ON t.fid = j.base_id")
picture = open(f"{SOURCE}/demo/photo-26.jpg", "rb").read()
expect([(row["test_number"], row["name"], row["content_type"]) for row in photos] == [("26", "photo-26.jpg", "image/jpeg")], f"the photo of test 26: {photos!r:.200}")
expect(photos[0]["data"] == picture and photos[0]["content_hash"] == hashlib.blake2b(picture, digest_size=32).hexdigest(), "the picture itself and its hash")
expect(photos[0]["taken_utc"].startswith("2026-06-09T15:01:00"), "when it was sealed")
relation = rows(file, "SELECT * FROM gpkgext_relations")
expect([(row["base_table_name"], row["related_table_name"], row["relation_name"]) for row in relation] == [("density_test", "photo", "media")], "the relation")

# Each test against its records.
record = {row["hash"]: row for row in rows(book, "SELECT * FROM record")}
by_subject = {}
for one in record.values():
    by_subject.setdefault((one["subject"], one["kind"]), []).append(json.loads(one["body"]) | {"_hash": one["hash"], "_at": one["at"], "_device": one["device"]})
derived = {row["id"]: row for row in rows(book, "SELECT * FROM test_row")}
names = {table: {row["id"]: row["name"] for row in rows(book, f"SELECT id, name FROM {table}")} for table in
         ("lot_row", "gauge_row", "person_row", "material_row", "proctor_row", "alignment_row")}
certificates = {row["id"]: row["certificate"] for row in rows(book, "SELECT id, certificate FROM person_row")}
lots = {row["id"]: row for row in rows(book, "SELECT * FROM lot_row")}
lifts = {row["id"]: row for row in rows(book, "SELECT * FROM lift_row")}
PURPOSES = ["random", "directed", "retest"]


def number(text):
    return None if text in ("", None) else float(text)


def station(value, per=100):
    if value is None:
        return None
    whole, part = divmod(abs(Decimal(repr(value))).quantize(Decimal("0.1"), ROUND_HALF_EVEN), per)
    return f"{'-' if value < 0 else ''}{int(whole)}+{part:04.1f}"


tests = rows(file, "SELECT * FROM density_test ORDER BY fid")
expect(len(tests) == len(derived) == 14, "every test is there")
for test in tests:
    d = derived[test["test_id"]]
    site = by_subject[test["test_id"], "test-site"][-1]
    verdict = json.loads(record[test["record_hash"]]["body"])
    figures = verdict["figures"]
    count = record.get(d["standard_count"])
    standard = json.loads(count["body"]) if count else {}
    seat = datetime.fromisoformat(site["_at"].replace("Z", "+00:00"))
    local = (seat + timedelta(minutes=d["offset_minutes"])).strftime("%Y-%m-%dT%H:%M:%S")
    overrides = [text for text in [d["overrides"], standard.get("override_reason", "")] if text]
    wanted = {
        "test_number": site["number"], "purpose": site["purpose"], "retest_of": derived[site["retest_of"]]["number"] if "retest_of" in site else None,
        "rework": site.get("rework"), "state": "waiting" if verdict["result"] == "provisional" else verdict["result"],
        "waiting_for": d["waiting_for"] or None, "reasons": "; ".join(verdict["reasons"]) or None, "overrides": "; ".join(overrides) or None, "conflict": 0,
        "lot": names["lot_row"][site["lot"]], "lift": lifts[site["lift"]]["number"], "station": station(number(site.get("station"))),
        "station_ft": number(site.get("station")), "offset_ft": number(site.get("offset_ft")), "started_utc": site["_at"],
        "verdict_utc": record[test["record_hash"]]["at"], "technician": names["person_row"][d["person"]], "certificate": certificates[d["person"]] or None,
        "gauge": names["gauge_row"][site["gauge"]], "mode": d["mode"], "depth_in": number(d["depth_in"]),
        "wet_density_lb_ft3": number(figures.get("wet_density_lb_ft3")), "water_density_lb_ft3": number(figures.get("water_density_lb_ft3")),
        "dry_density_lb_ft3": number(figures.get("dry_density_lb_ft3")), "water_content_pct": number(figures.get("water_content_pct")),
        "percent_compaction": number(figures.get("percent_compaction")), "maximum_dry_density_lb_ft3": number(figures.get("maximum_lb_ft3")),
        "optimum_pct": number(figures.get("optimum_pct")), "coarse_pct": number(figures.get("coarse_pct")), "minimum_pct": number(figures.get("minimum_pct")),
        "maximum_pct": number(figures.get("maximum_pct")), "window_low_pct": number(figures.get("window_low_pct")),
        "window_high_pct": number(figures.get("window_high_pct")), "uncertainty_pct": number(figures.get("uncertainty_pct")),
        "density_standard_count": number(standard.get("density_count")), "moisture_standard_count": number(standard.get("moisture_count")),
        "density_count": number(d["density_count"]), "moisture_count": number(d["moisture_count"]),
        "material": names["material_row"].get(d["material"] or lots[site["lot"]]["material"]),
        "reference_test": names["proctor_row"].get(d["proctor"] or lots[site["lot"]]["proctor"]), "latitude_deg": number(site.get("latitude_deg")),
        "longitude_deg": number(site.get("longitude_deg")), "ellipsoid_height_m": number(site.get("ellipsoid_height_m")),
        "sigma_north_m": number(site.get("sigma_north_m")), "sigma_east_m": number(site.get("sigma_east_m")), "fixes": site.get("fixes"),
        "fix_kind": site.get("fix_kind"), "rule_set_hash": verdict["rule_set"], "core_version": verdict["core"],
        "record_hash": by_subject[test["test_id"], "verdict"][-1]["_hash"], "device": record[test["record_hash"]]["device"], "test_id": test["test_id"]}
    expect(test.pop("local_time").startswith(local), f"test {site['number']}: local time")
    place = shape(test.pop("geom"))[3]
    expect(place == (number(site["grid_east_usft"]), number(site["grid_north_usft"])), f"test {site['number']}: place")
    test.pop("fid")
    for column, value in test.items():
        expect(value == wanted[column], f"test {site['number']}: {column} is {value}, the records say {wanted[column]}")
    expect(set(test) == set(wanted), f"no other column: {set(test) ^ set(wanted)}")

# Drawn sites.
drawn = rows(file, "SELECT * FROM test_site_drawn ORDER BY fid")
sealed = {(one["hash"], site["number"]): (json.loads(one["body"]), site) for one in record.values() if one["kind"] == "draw" for site in json.loads(one["body"])["sites"]}
expect(len(drawn) == len(sealed) == 12, "every drawn site")
for row in drawn:
    body, site = sealed[row["record_hash"], row["site"]]
    made = [t for t in derived.values() if t["draw"] == row["record_hash"] and t["site"] == row["site"] and STATES[t["state"]] != "void"]
    expect(shape(row["geom"])[3] == (number(site["grid_east_usft"]), number(site["grid_north_usft"])), "place of a drawn site")
    wanted = {"site": site["number"], "state": "tested" if made else "owed", "lot": names["lot_row"][body["lot"]], "lift": lifts[body["lift"]]["number"],
              "station": station(number(site["station"])), "station_ft": number(site["station"]), "offset_ft": number(site["offset_ft"]),
              "test_number": made[0]["number"] if made else None, "test_state": STATES[made[0]["state"]] if made else None, "generator": body["generator"],
              "seed": body["seed"], "policy": body["policy"], "record_hash": row["record_hash"], "test_id": made[0]["id"] if made else None}
    expect({k: v for k, v in row.items() if k not in ("fid", "geom")} == wanted, f"drawn site {row} is {wanted}")

# Lots.
statistics = {one["lot"]: one for one in json.loads(run("lots", path("job.fieldbook"), "--json")[1])["lots"]}
ground = {}
for row in rows(file, "SELECT * FROM lot"):
    lot = lots[row["lot_id"]]
    figures = statistics[lot["name"]]
    polygons = shape(row["geom"])[3]
    ground[row["lot"]] = area(polygons)
    expect(close(row["area_ft2"], ground[row["lot"]] * (METRE / 0.3048) ** 2, 0.001), "area of a lot")
    mine = [lift for lift in lifts.values() if lift["lot"] == row["lot_id"]]
    wanted = {"lot": lot["name"], "zone": lot["zone"] or None, "material": names["material_row"].get(lot["material"]),
              "reference_test": names["proctor_row"].get(lot["proctor"]), "alignment": names["alignment_row"].get(lot["alignment"]),
              "begin_station": station(lot["begin_station"]), "end_station": station(lot["end_station"]), "begin_station_ft": lot["begin_station"],
              "end_station_ft": lot["end_station"], "left_ft": lot["left_ft"], "right_ft": lot["right_ft"], "minimum_pct": number(lot["minimum_pct"]),
              "maximum_pct": number(lot["maximum_pct"]), "window_kind": lot["window_kind"] or None, "window_low": number(lot["window_low"]),
              "window_high": number(lot["window_high"]), "tests_per_lift": lot["tests_per_lift"], "sublots": lot["sublots"] or None, "lifts": len(mine),
              "tests_required": lot["tests_per_lift"] * len(mine), "not_drawn": None, "record_hash": lot["hash"], "lot_id": lot["id"]}
    for column, value in wanted.items():
        expect(row[column] == value, f"lot {lot['name']}: {column} is {row[column]}, not {value}")
    for column, key in {"tests_made": "made", "tests_waiting": "waiting"}.items():
        expect(row[column] == figures[key], f"lot {lot['name']}: {column}")
    expect(row["open_failures"] == len(figures["open_failures"]) and row["values_used"] == len(figures["values"]), f"lot {lot['name']}: counts")
    used = [one["percent_compaction"] for one in figures["values"]]
    expect(close(row["mean_pct"], sum(used) / len(used), 1e-9), "mean")
    mean = row["mean_pct"]
    expect(len(used) < 2 or close(row["deviation_pct"], math.sqrt(sum((v - mean) ** 2 for v in used) / (len(used) - 1)), 1e-9), "deviation")

# Coverage against the verb's own shapes.
covered = {(one["lot"], one["lift"]): one for one in json.loads(run("coverage", path("job.fieldbook"), "--json")[1])}
seen = 0
for row in rows(file, "SELECT * FROM lift_coverage ORDER BY fid"):
    lift = covered[row["lot"], row["lift"]]
    feet = lambda m2: m2 / 0.3048 ** 2
    for column, key in {"lift_area_ft2": "ground_m2", "share_ft2": "share_m2", "lift_passed_ft2": "passed_m2", "lift_failed_ft2": "failed_m2",
                        "lift_untested_ft2": "untested_m2"}.items():
        expect(close(row[column], feet(lift[key]), 1e-3), f"{column} of lift {row['lift']}")
    expect(close(row["largest_patch_ft"], lift["patch"]["radius_m"] / 0.3048, 1e-6), "largest patch")
    cell = next(one for one in lift["cells"] if ", ".join(one["tests"]) == row["tests"])
    expect(row["state"] == cell["answer"] and close(row["area_ft2"], feet(cell["surface_m2"]), 1e-3), "cell")
    expect(close(row["beyond_share_ft2"], feet(cell["beyond_share_m2"]), 1e-3) and close(area(shape(row["geom"])[3]) * METRE ** 2, cell["surface_m2"], 0.01), "its shape")
    expect(row["thickness_in"] == number(lifts[row["lift_id"]]["thickness_in"]) and row["not_drawn"] is None, "its lift")
    seen += 1
expect(seen == sum(len(one["cells"]) for one in covered.values()) > 5, "every cell")

# Obstacles and the alignment.
for row in rows(file, "SELECT * FROM obstacle"):
    body = by_subject[row["obstacle_id"], "obstacle"][-1]
    expect(shape(row["geom"])[3] == (number(body["grid_east_usft"]), number(body["grid_north_usft"])), "place of an obstacle")
    expect((row["obstacle"], row["kind"], row["radius_ft"], row["uncertainty_ft"], row["has_line"]) ==
           (body["name"], body["obstacle_kind"], float(body.get("radius_ft", 0)), float(body.get("uncertainty_ft", 0)), 1 if "path" in body else 0), "obstacle")
for row in rows(file, "SELECT * FROM alignment"):
    body = by_subject[row["alignment_id"], "alignment"][-1]
    line = shape(row["geom"])[3]
    length = sum(float(element["length"]) for element in body["elements"])
    chords = sum(math.dist(a, b) for a, b in zip(line, line[1:]))
    expect(line[0] == (number(body["begin_east"]), number(body["begin_north"])) and close(chords, length, 0.05) and row["true_length"] == length, "alignment")
    expect((row["alignment"], row["unit"], row["begin_station_ft"]) == (body["name"], body["unit"], number(body["begin_station"])), "its name and begin")
    expect(row["begin_station"] == station(number(body["begin_station"])) and row["record_hash"] == body["_hash"] and row["not_drawn"] is None, "its record")

# Provenance.
told = json.loads(file.execute("SELECT metadata FROM gpkg_metadata JOIN gpkg_metadata_reference ON md_file_id = id WHERE reference_scope = 'geopackage'").fetchone()[0])
expect(told["records"] == len(record) and told["records_digest"] == hashlib.blake2b("".join(sorted(record)).encode(), digest_size=32).hexdigest(), "digest of the records")
for head in told["devices"]:
    last = max((one for one in record.values() if one["device"] == head["device"]), key=lambda one: one["seq"])
    expect((head["last_seq"], head["last_hash"]) == (last["seq"], last["hash"]), "head of a device's chain")
for rules in told["rule_sets"]:
    expect(rules["rules"] == json.loads(record[rules["record_hash"]]["body"])["rules"], "a rule set, whole")
expect({row["rule_set_hash"] for row in tests} <= {one["record_hash"] for one in told["rule_sets"]}, "the rule set of every test")
print(f"{done['checks']} checks")
