"""map_frames.py BUILD_FOLDER [POINTS ...]: how long a frame of the map takes, on both renderers (software offscreen; OpenGL on llvmpipe under
xvfb-run), at device pixel ratio 1 and 3, with 10 thousand and a million tests, then with ground, lots and alignments. One line each.
Wanted at ratio 1 with a million: p95 below 5 ms on llvmpipe and 10 ms on software, at ratio 3 below 16.7 ms on both, and at most 1.5 times
that of 10 thousand; with the ground no frame above 33 ms; a pick below 5 ms."""
import os
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy
from osgeo import gdal, osr

gdal.UseExceptions()
build = Path(sys.argv[1]).resolve()
counts = [int(text) for text in sys.argv[2:]] or [10_000, 1_000_000]
WEST, NORTH, PIXEL, SIDE = 500_000, 3_620_000, 5, 4096


def ground(path):
    """Smooth noise in three colours, 5 m a pixel, as a Cloud Optimized GeoTIFF in UTM."""
    rng = numpy.random.default_rng(5)
    raster = gdal.GetDriverByName("MEM").Create("", SIDE, SIDE, 3, gdal.GDT_Byte)
    raster.SetGeoTransform((WEST, PIXEL, 0, NORTH, 0, -PIXEL))
    system = osr.SpatialReference()
    system.ImportFromEPSG(32614)
    raster.SetProjection(system.ExportToWkt())
    for band in range(3):
        coarse = rng.integers(60, 200, (SIDE // 16, SIDE // 16)).repeat(16, 0).repeat(16, 1)
        raster.GetRasterBand(band + 1).WriteArray((coarse + rng.integers(0, 30, (SIDE, SIDE))).astype(numpy.uint8))
    gdal.GetDriverByName("COG").CreateCopy(str(path), raster, options=["COMPRESS=JPEG", "BLOCKSIZE=512"])


with tempfile.TemporaryDirectory() as work:
    run = Path(work) / "run"
    run.mkdir(mode=0o700)
    picture = Path(work) / "ground.tif"
    ground(picture)
    origin = [str(WEST), str(NORTH - SIDE * PIXEL)]
    print(f"load {os.getloadavg()[0]:.1f}")
    for renderer in ("software", "OpenGL"):
        for ratio in (1, 3):
            for extra in ([], [str(picture), *origin]):
                for count in counts:
                    env = {**os.environ, "XDG_RUNTIME_DIR": str(run), "LC_ALL": "C.UTF-8", "QT_SCALE_FACTOR": str(ratio)}
                    command = [build / "tests/map_frames", str(count), *extra]
                    if renderer == "software":
                        env["QT_QPA_PLATFORM"] = "offscreen"
                    else:
                        env.update(QT_QPA_PLATFORM="xcb", LIBGL_ALWAYS_SOFTWARE="1")
                        command = ["xvfb-run", "-a", "-s", "-screen 0 1280x2600x24", *command]
                    print(subprocess.run(command, check=True, env=env, stdout=subprocess.PIPE, text=True).stdout.strip(), flush=True)
