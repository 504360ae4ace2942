#!/usr/bin/env python3
"""A day's sheet of 100 tests: sheet_day.py BUILD_FOLDER [RUNS].

Plays the demo with test 24 of June 9 repeated until the day has 100 tests, then runs `groundbook sheet ... day` and prints the wall clock and the
processor time of each run, from the start of the program to its end. Wanted: under 2 s.
"""
import json
import os
import re
import resource
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

TESTS, DAY, WANTED = 100, "2026-06-09", 2.0
build = Path(sys.argv[1]).resolve()
runs = int(sys.argv[2]) if len(sys.argv) > 2 else 5
demo = Path(__file__).resolve().parents[2] / "demo"
groundbook = build / "app/command/groundbook"

with tempfile.TemporaryDirectory() as name:
    folder = Path(name)
    env = dict(os.environ, QT_QPA_PLATFORM="offscreen", XDG_RUNTIME_DIR=name, LC_ALL="C.UTF-8")
    for beside in ("rules.json", "photo-26.jpg"):
        shutil.copy(demo / beside, folder)
    scenario = json.loads((demo / "scenario.json").read_text(encoding="utf-8"))
    entries = scenario["entries"]
    there = sum(entry["kind"] == "test-site" and entry["at"].startswith(DAY) for entry in entries)
    pattern = [entry for entry in entries if entry["subject"] == "@test24"]
    for copy in range(TESTS - there):
        for entry in json.loads(json.dumps(pattern)):
            entry["subject"] = f"@copy{copy}"
            if entry["kind"] == "test-site":
                entry["body"]["number"] = str(100 + copy)
            entries.append(entry)
    (folder / "scenario.json").write_text(json.dumps(scenario), encoding="utf-8")
    subprocess.run([groundbook, "play", folder / "day.fieldbook", folder / "scenario.json", "--key", folder / "key"], env=env, check=True, stdout=subprocess.DEVNULL)
    worst = 0.0
    for run in range(runs):
        sheet = folder / f"day{run}.pdf"
        before, begun = resource.getrusage(resource.RUSAGE_CHILDREN), time.monotonic()
        subprocess.run([groundbook, "sheet", folder / "day.fieldbook", "day", DAY, "--to", sheet], env=env, check=True, stdout=subprocess.DEVNULL)
        wall, after = time.monotonic() - begun, resource.getrusage(resource.RUSAGE_CHILDREN)
        worst = max(worst, wall)
        print(f"{wall:.2f} s, processor {after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime:.2f} s, {sheet.stat().st_size} bytes")
    text = subprocess.run(["pdftotext", "-layout", sheet, "-"], check=True, capture_output=True, text=True).stdout
    missing = [n for n in range(100, 100 + TESTS - there) if not re.search(rf"^ *{n} ", text, re.M)]
    if missing:
        sys.exit(f"the sheet lacks the tests {missing}")
    print(f"{TESTS} tests, slowest of {runs}: {worst:.2f} s (wanted: under {WANTED} s), load {os.getloadavg()[0]:.1f}")
