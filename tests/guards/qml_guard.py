"""QML shows: no arithmetic from JavaScript, no formatting of numbers, no functions, no untyped properties. Long files are named, not refused."""
import re
import sys

sys.dont_write_bytecode = True
from shared.guard import files, lines, main

FORBIDDEN = re.compile(r"\bMath\.|\bparseFloat\b|\bparseInt\b|\btoFixed\b|\btoPrecision\b|\bproperty\s+var\b|\bfunction\s*\w*\s*\(")
LONG = 250


def check(root):
    problems, count = [], 0
    for path in files(root, ["qml"], {".qml"}):
        name = path.relative_to(root).as_posix()
        count += 1
        text = lines(path)
        if len(text) > LONG + 1:
            print(f"warning: {name} has {len(text) - 1} lines, above {LONG}")
        for number, line in enumerate(text, 1):
            found = FORBIDDEN.search(line.split("//")[0])
            if found:
                problems.append(f"{name}:{number}: {found.group()}")
    return problems, {"QML files": count}


GOOD = {"qml/A.qml": "import QtQuick\nItem { id: root; property int a: 1; width: a * 2 } // no Math.x here"}
PLANTS = [("qml/B.qml", f"Item {{ {bad} }}") for bad in
          ("x: Math.max(1, 2)", "x: parseFloat(t)", "text: a.toFixed(1)", "property var a", "function go() { }", "onDone: function (a) { }", "x: parseInt(t)",
           "text: a.toPrecision(3)")]
main(check, GOOD, PLANTS)
