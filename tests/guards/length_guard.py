"""A source of more than 250 lines says in its first line why, and no shorter one does."""
import re
import sys

sys.dont_write_bytecode = True
from shared.guard import files, lines, main

LONG = 250
WHY = re.compile(r"^// Longer than 250 lines: \w.*\w\.$")


def check(root):
    problems, count = [], 0
    for path in files(root, ["app", "core", "qml"], {".h", ".cpp", ".qml"}):
        text = lines(path)
        length, explained = len(text) - 1, bool(WHY.match(text[0]))
        count += 1
        if (length > LONG) != explained:
            problems.append(f"{path.relative_to(root).as_posix()}: {length} lines, " + (f"above {LONG} without a reason in the first" if length > LONG else "no longer long"))
    return problems, {"files": count}


HEAD = "// Longer than 250 lines: one machine.\n"
GOOD = {"core/a.cpp": HEAD + "x\n" * 250, "core/b.cpp": "x\n" * 250}
PLANTS = [("core/c.cpp", "x\n" * 251), ("qml/A.qml", "// Longer than 250 lines: .\n" + "x\n" * 300), ("app/a.h", "x\n" * 400), ("core/b.cpp", HEAD + "x\n")]
main(check, GOOD, PLANTS)
