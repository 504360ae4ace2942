"""Every text that the program shows has its Spanish: what Qt's lupdate finds in app and qml stands in qml/language/groundcount_es.ts, translated, and nothing else does."""
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
from pathlib import Path

sys.dont_write_bytecode = True
from shared.guard import main

LUPDATE = "/usr/lib/qt6/bin/lupdate"
SPANISH = "qml/language/groundcount_es.ts"


def texts(path):
    """Context, source and comment of each message, with whether it is translated, and the file that shows it."""
    found = {}
    for context in xml.parse(path).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            key = (context.findtext("name"), message.findtext("source"), message.findtext("comment") or "")
            parts = [translation, *translation] if translation is not None else []
            ready = bool(parts) and parts[0].get("type") is None and all((one.text or "").strip() for one in (parts[1:] or parts))
            place = message.find("location")
            found[key] = ready, (place.get("filename") or "") if place is not None else ""
    return found


def check(root):
    root = Path(root)
    if not (root / SPANISH).exists():
        return [f"{SPANISH}: missing"], {"texts": 0}
    with tempfile.TemporaryDirectory() as work:
        shown = Path(work) / "shown.ts"
        subprocess.run([LUPDATE, "-locations", "relative", "-I", "app", "-I", "core", "qml", "app", "-ts", shown], cwd=root, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        wanted, there = texts(shown), texts(root / SPANISH)
    problems = [f"{place}: {one[0]} shows {one[1]!r}, which is not in {SPANISH}" for one, (_, place) in wanted.items() if one not in there]
    problems += [f"{SPANISH}: {one[0]} no longer shows {one[1]!r}" for one in there if one not in wanted]
    problems += [f"{SPANISH}: {one[0]} shows {one[1]!r} without its Spanish" for one, (done, _) in there.items() if not done]
    return problems, {"texts": len(wanted)}


PAGE = 'import QtQuick\nText { text: qsTr("Lot") }\n'
HEAD = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n<TS version="2.1" language="es">\n<context><name>A</name>\n'
LOT = "<message><source>Lot</source><translation>Lote</translation></message>\n"
GOOD = {"qml/A.qml": PAGE, "app/a.cpp": "int a;\n", SPANISH: HEAD + LOT + "</context></TS>\n"}
PLANTS = [
    ("app/position/b.cpp", '#include <QObject>\nclass B : public QObject {\n    Q_OBJECT\n    QString c() { return tr("No fix"); }\n};\n'),
    (SPANISH, HEAD + LOT.replace("Lote", "") + "</context></TS>\n"),
    (SPANISH, HEAD + LOT.replace("<translation>", '<translation type="unfinished">') + "</context></TS>\n"),
    (SPANISH, HEAD + LOT + LOT.replace("Lot<", "Lift<") + "</context></TS>\n"),
    ("qml/A.qml", PAGE.replace("Lot", "Lift")),
]
main(check, GOOD, PLANTS)
