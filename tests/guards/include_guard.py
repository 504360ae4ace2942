"""Arrows only point down: each folder includes what the table of docs/architecture.md lets it. Qt headers are looked up in
Qt's own include folders to learn their module; QML may import the one module, Qt Quick, and Controls as C."""
import glob
import re
import sys
from functools import lru_cache
from pathlib import Path

sys.dont_write_bytecode = True
from shared.guard import files, lines, main

STD = r"[a-z_]+|c[a-z]+"
BASE = r"tl/expected\.hpp"
POSIX = r"(?:sys/\w+|unistd|fcntl|dirent)\.h"
GDAL = r"(?:ogr|gdal|cpl)\w*\.h"
IMPURE = r"fstream|filesystem|iostream|locale|clocale|thread|mutex|shared_mutex|future|condition_variable|ctime|chrono"
CORE = ["method", "book", "gis", "share"]

# folder: (allowed project folders, allowed <system> headers, allowed Qt modules, forbidden <system> headers)
TABLE = {
    "core/method/rules": (["method"], rf"{STD}|{BASE}|boost/(?:math|multiprecision)/.*|nlohmann/.*", [], IMPURE),
    "core/method": (["method"], rf"{STD}|{BASE}|boost/(?:math|multiprecision)/.*", [], IMPURE),
    "core/book": (["method", "book"], rf"{STD}|{BASE}|{POSIX}|sqlite3\.h|sodium(?:/\w+)?\.h|nlohmann/.*", [], "$^"),
    "core/gis/gdal": (["method", "book", "gis"], rf"{STD}|{BASE}|{GDAL}", [], "$^"),
    "core/gis": (["method", "book", "gis"], rf"{STD}|{BASE}|{POSIX}|geos_c\.h|proj\.h", [], "$^"),
    "core/share": (["method", "book", "gis", "share"], rf"{STD}|{BASE}|{POSIX}|libpq-fe\.h|nlohmann/.*", [], "$^"),
    "app/view": (CORE + ["view"], rf"{STD}|{BASE}|nlohmann/.*", ["Core", "Qml"], "$^"),
    "app/position": (["method", "position"], STD, ["Core", "Positioning"], "$^"),
    "app/map": (CORE + ["map"], STD, ["Core", "Gui", "Qml", "Quick"], "$^"),
    "app/paper": (CORE + ["paper"], STD, ["Core", "Gui"], "$^"),
    "app/device": (["device"], STD, ["Core", "DBus"], "$^"),
    "app/command": (CORE + ["paper", "command"], rf"{STD}|{BASE}|{POSIX}|CLI/.*|nlohmann/.*", ["Core", "Gui"], "$^"),
    "qml": (["view", "map", "paper", "parts", "pages", "theme"], STD, ["Core", "Gui", "Qml", "Quick"], "$^"),
}
# Steps beyond the table, each with its reason. One that nothing uses any more fails.
SETTLED = [
    ("core/method/soil/*.cpp", "Eigen/Dense", "least squares of the compaction curve; pure arithmetic, header only"),
    ("core/gis/geodesy.cpp", "geodesic.h", "geodesic lines of PROJ"),
    ("core/gis/late/formats.cpp", "dlfcn.h", "loads the library with GDAL when it is first needed; docs/decisions/0011"),
    ("core/gis/late/late_call.h", "dlfcn.h", "PROJ and libpq are loaded when they are first called; docs/decisions/0013"),
    ("core/gis/late/proj.cpp", "geodesic.h", "geodesic lines of PROJ"),
    ("core/gis/site_child.cpp", "sched.h", "a foreign file is read in a bounded child process"),
    *[("core/gis/foreign_child.cpp", f"{header}.h", "a foreign file is read in a bounded child process") for header in ("poll", "signal", "spawn")],
    *[(f"core/share/{name}.cpp", "poll.h", "waits for a server that may be silent, and can be told to stop") for name in ("connect", "connection_wait")],
    ("core/gis/geopackage_store.h", "sqlite3.h", "a GeoPackage with titles, relations and styles; docs/decisions/0008"),
    ("core/gis/landxml.cpp", "expat.h", "reads LandXML, for which GDAL has no driver; core may not use Qt's reader"),
    ("app/view/map_*.h", "map/map_scene.h", "plain values: what the map shows; docs/decisions/0005"),
    ("app/view/site_file_sheet.h", "map/map_scene.h", "plain values: a site file over the job before it is sealed; docs/decisions/0005"),
    ("app/view/map_background.cpp", "map/background_paint.h", "the picture under the map; docs/decisions/0005"),
    ("app/view/*.cpp", "position/position_source.h", "fixes for the pages; docs/decisions/0005"),
    ("app/view/place_step.h", "position/averager.h", "the mean of fixes; docs/decisions/0005"),
    ("app/position/position_source.cpp", "QTcpSocket", "a receiver on the local network"),
    ("app/position/position_source.cpp", "QSerialPort", "a receiver on a serial line"),
    ("app/position/position_source.h", "device/permission.h", "whether the app may know where it is; docs/decisions/0005"),
    ("app/view/photo_take.h", "device/permission.h", "whether the app may use the camera; docs/decisions/0005"),
    ("app/view/fonts.cpp", "device/system_fonts.h", "what the system says about fonts; docs/decisions/0016"),
    ("app/device/system_fonts.cpp", "fontconfig/fontconfig.h", "what the system says about fonts; docs/decisions/0016"),
    ("app/device/permission.cpp", "QPermissions", "Qt Core from 6.5 on, not in the Qt of the reference system"),
    ("app/paper/code_mark.cpp", "qrencode.h", "the QR code of a sheet; docs/decisions/0005"),
    ("app/view/paper_sheet.h", "paper/pages.h", "the pages that are shown and saved; docs/decisions/0005"),
    ("app/view/paper_sheet.cpp", "paper/sheets.h", "what the sheets say; docs/decisions/0005"),
    ("app/view/ui_start.cpp", "device/end_signal.h", "the end of a count, heard and felt; docs/decisions/0005"),
    ("app/view/photo_file.cpp", "QImage", "a small picture of an attached photo; docs/decisions/0005"),
    ("app/view/photo_file.cpp", "QImageReader", "tells a picture by its content; docs/decisions/0005"),
    ("app/view/fonts.cpp", "QFont", "loads the shipped fonts before the first page"),
    ("app/view/fonts.cpp", "QFontDatabase", "loads the shipped fonts before the first page"),
    ("app/view/fonts.cpp", "QFontMetricsF", "has the fonts of the first page ready before it"),
    ("app/view/fonts.cpp", "QGuiApplication", "loads the shipped fonts before the first page"),
]
INCLUDE = re.compile(r'^\s*#\s*include\s*(?:<([^>]+)>|"([^"]+)")')
IMPORT = re.compile(r"^\s*import\s+(.+?)\s*(?://.*)?$")
QML = re.compile(r"Groundcount(?:\.\w+)*|QtQuick(?:\.(?:Layouts|Window|Shapes|Dialogs))?|QtQuick\.Controls(?:\.\w+)? as C")
# The one page that Qt Multimedia is imported by; it is loaded by its name when it is asked for, and the app runs without it.
CAMERA = "qml/pages/CameraPage.qml"
QT_FOLDERS = "/usr/include/*/qt6 /usr/include/qt6 /opt/*/include/qt6".split()


@lru_cache(maxsize=None)
def qt_module(header):
    if "/" in header:
        return header.split("/")[0].removeprefix("Qt")
    for folder in QT_FOLDERS:
        for found in sorted(glob.glob(f"{folder}/Qt*/{header}")):
            return Path(found).parent.name.removeprefix("Qt")
    return None


def layer_of(name):
    return max((folder for folder in TABLE if name.startswith(folder + "/")), key=len, default=None)


def wrong(name, layer, system, own):
    """Why this include is not allowed, or None."""
    folders, headers, modules, forbidden = TABLE[layer]
    if own is not None:
        above = own.split("/")[0] if "/" in own else None
        return None if above is None or above in folders else f"{layer} may not include {above}/"
    if re.match(r"Q(?:t|[A-Z])", system):
        module = qt_module(system)
        return None if module in modules else f"{layer} may not include Qt {module or '(module of ' + system + ' not found)'}"
    if re.fullmatch(forbidden, system):
        return f"{layer} must stay free of <{system}>"
    return None if re.fullmatch(headers, system) else f"{layer} may not include <{system}>"


def check(root):
    problems, counts, used = [], {"includes": 0, "imports": 0}, set()
    for path in files(root, ["core", "app", "qml"], {".h", ".cpp"}):
        name = path.relative_to(root).as_posix()
        layer = layer_of(name)
        if layer is None:
            if name != "app/main.cpp":
                problems.append(f"{name}: stands in no folder of the table")
            continue
        for number, line in enumerate(lines(path), 1):
            match = INCLUDE.match(line)
            if not match:
                continue
            counts["includes"] += 1
            why = wrong(name, layer, *match.groups())
            header = match.group(1) or match.group(2)
            step = next((one for one in SETTLED if why and header == one[1] and Path(name).match(one[0])), None)
            if step:
                used.add(step)
            elif why:
                problems.append(f"{name}:{number}: {why} ({header})")
    for path in files(root, ["qml"], {".qml"}):
        for number, line in enumerate(lines(path), 1):
            match = IMPORT.match(line)
            if match:
                counts["imports"] += 1
                name = path.relative_to(root).as_posix()
                if not QML.fullmatch(match.group(1)) and (name, match.group(1)) != (CAMERA, "QtMultimedia"):
                    problems.append(f"{name}:{number}: may not import {match.group(1)}")
    if (Path(root) / "CMakeLists.txt").exists():
        problems += [f"{one[0]}: the settled step to {one[1]} is not used any more" for one in SETTLED if one not in used]
    return problems, counts


GOOD = {"core/method/a.h": '#include "method/b.h"\n#include <cmath>\n#include <boost/math/tools/x.hpp>\n', "core/method/rules/a.cpp": "#include <nlohmann/json.hpp>\n",
        "core/book/a.cpp": '#include <sqlite3.h>\n#include "method/a.h"\n', "core/gis/a.cpp": '#include <proj.h>\n#include "book/a.h"\n', "core/gis/gdal/a.cpp": '#include <ogr_api.h>\n#include "gis/a.h"\n',
        "app/view/a.h": '#include <QObject>\n#include <QString>\n#include "book/a.h"\n', "app/main.cpp": '#include <QQuickView>\n',
        "app/paper/a.cpp": "#include <QPainter>\n", "qml/A.qml": "import QtQuick\nimport QtQuick.Controls.Basic as C\nimport Groundcount\n"}
PLANTS = [("core/method/b.h", "#include <QString>"), ("core/method/b.h", '#include "book/a.h"'), ("core/method/b.cpp", "#include <fstream>"),
          ("core/method/b.cpp", "#include <chrono>"), ("core/method/b.cpp", "#include <ogr_api.h>"), ("core/method/b.cpp", "#include <nlohmann/json.hpp>"),
          ("core/book/b.cpp", "#include <libpq-fe.h>"), ("core/book/b.cpp", '#include "gis/a.h"'), ("core/book/b.cpp", "# include <QFile>"),
          ("core/gis/b.cpp", "#include <QPointF>"), ("core/gis/b.cpp", '#include "share/a.h"'), ("core/gis/b.cpp", "#include <libpq-fe.h>"), ("core/gis/b.cpp", "#include <ogr_api.h>"),
          ("core/share/b.cpp", "#include <QObject>"), ("core/share/b.cpp", '#include "view/a.h"'), ("core/new/b.cpp", "#include <cmath>"),
          ("app/view/b.cpp", "#include <QQuickItem>"), ("app/view/b.cpp", "#include <gdal_priv.h>"), ("app/view/b.cpp", '#include "map/a.h"'),
          ("app/position/b.cpp", '#include "view/a.h"'), ("app/position/b.cpp", '#include "book/a.h"'), ("app/map/b.cpp", '#include "view/a.h"'),
          ("app/map/b.cpp", "#include <QGeoPositionInfo>"), ("app/paper/b.cpp", "#include <QQuickItem>"), ("app/command/b.cpp", "#include <QQuickItem>"),
          ("app/command/b.cpp", '#include "view/a.h"'), ("qml/parts/b.cpp", '#include "book/a.h"'), ("qml/B.qml", "import QtPositioning"),
          ("qml/B.qml", "import QtQuick.Controls"), ("qml/B.qml", "import QtMultimedia"), ("qml/B.qml", "import QtQuick.Controls.Basic"), ("qml/B.qml", 'import "tools.js" as T')]
main(check, GOOD, PLANTS)
