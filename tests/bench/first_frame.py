"""first_frame.py BUILD_FOLDER: from the start of the process to the first frame, the app on the demo book beside an empty window, in turn,
each 21 times; prints both medians and their ratio (wanted: at most 1.5). Offscreen, software renderer or what QT_QPA_PLATFORM says."""
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

    ours, peer = [], []
    for turn in range(22):
        empty = seconds(build / "tests/empty_window")
        app = seconds(build / "tests/first_frame", book)
        if turn:  # the first turn fills the system's caches
            peer.append(empty)
            ours.append(app)
print(f"load {os.getloadavg()[0]:.1f}; first frame, median of {len(ours)}: app {statistics.median(ours) * 1000:.0f} ms, empty window {statistics.median(peer) * 1000:.0f} ms, "
      f"ratio {statistics.median(ours) / statistics.median(peer):.2f}")
