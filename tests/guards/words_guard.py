"""No word of unfinished work in code, tests or demo; no word of how the project came about anywhere but DEVELOPERS.md."""
import re
import sys

sys.dont_write_bytecode = True
from shared.guard import TEXT, TOP, files, lines, main

# Spelled in pieces, so that this file may be searched too.
UNFINISHED = re.compile(r"TO" r"DO|FIX" r"ME|\bX" r"XX\b|not imple" r"mented|placeholder" r" data")
ORIGIN = re.compile(r"tran" r"script|\bseed" r" document\b|\bvi" r"deo\b", re.IGNORECASE)


def check(root):
    problems, count = [], 0
    for path in files(root, TOP, TEXT):
        name = path.relative_to(root).as_posix()
        count += 1
        for number, line in enumerate(lines(path), 1):
            found = ORIGIN.search(line) if name != "DEVELOPERS.md" else None
            if not found and name.split("/")[0] in ("app", "core", "qml", "tests", "demo"):
                found = UNFINISHED.search(line)
            if found:
                problems.append(f"{name}:{number}: the word \"{found.group()}\"")
    return problems, {"files": count}


GOOD = {"core/a.cpp": "int a;  // kept", "docs/a.md": "provided, evident", "DEVELOPERS.md": "a vi" "deo"}
PLANTS = [("core/b.cpp", "// TO" "DO later"), ("qml/A.qml", "// FIX" "ME"), ("tests/a.py", "# X" "XX"), ("docs/b.md", "the Tran" "script says"),
          ("app/a.h", "// not imple" "mented"), ("README.md", "see the vi" "deo"), ("demo/a.json", "\"placeholder" " data\"")]
main(check, GOOD, PLANTS)
