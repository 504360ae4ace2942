"""first_frame.py BUILD_FOLDER: from the start of the process to the first frame, the app on the demo book, an empty window, and one of Qt's
controls, in turn, each 21 times; prints the medians and both ratios (wanted: at most 1.5). Offscreen, software renderer or what QT_QPA_PLATFORM says."""
import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

build = Path(sys.argv[1]).resolve()
top = Path(__file__).resolve().parents[2]
with tempfile.TemporaryDirectory() as work:
    run = Path(work) / "run"
    run.mkdir(mode=0o700)
    env = {**os.environ, "XDG_DATA_HOME": work + "/data", "XDG_RUNTIME_DIR": str(run), "TZ": "America/Chicago", "LC_ALL": "C.UTF-8"}
    env.setdefault("QT_QPA_PLATFORM", "offscreen")
    book = work + "/day.fieldbook"
    subprocess.run([build / "app/command/groundbook", "play", book, top / "demo/scenario.json"], check=True, env=env, stdout=subprocess.DEVNULL)

    def seconds(*command):
        began = time.monotonic()
        subprocess.run(command, check=True, env=env)
        return time.monotonic() - began

    programs = {"app": (build / "tests/first_frame", book), "empty window": (build / "tests/empty_window",), "window of controls": (build / "tests/empty_window_of_controls",)}
    taken = {name: [] for name in programs}
    for turn in range(22):
        for name, command in programs.items():
            one = seconds(*command)
            if turn:  # the first turn fills the system's caches
                taken[name].append(one)
middle = {name: statistics.median(each) * 1000 for name, each in taken.items()}
print(f"load {os.getloadavg()[0]:.1f}; first frame, median of 21: " + ", ".join(f"{name} {ms:.0f} ms" for name, ms in middle.items())
      + f"; ratio to the empty window {middle['app'] / middle['empty window']:.2f}, to the window of controls {middle['app'] / middle['window of controls']:.2f}")
