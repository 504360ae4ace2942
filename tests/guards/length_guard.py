"""A source of more than 250 lines has a reason in DEVELOPERS.md ("Long files"), and every reason there a file that is so long."""
import re
import sys

sys.dont_write_bytecode = True
from shared.guard import files, lines, main

LONG = 250
ROW = re.compile(r"^\| `([^`]+)` \| ([^|]*\w[^|]*) \|$")


def reasons(root):
    text, listed = "\n".join(line for one in files(root, ["DEVELOPERS.md"], {".md"}) for line in lines(one)), set()
    section = text.partition("## Long files\n")[2].partition("\n## ")[0]
    for line in section.split("\n"):
        found = ROW.match(line)
        if found:
            listed.add(found.group(1))
    return listed


def check(root):
    listed, problems, count = reasons(root), [], 0
    for path in files(root, ["app", "core", "qml"], {".h", ".cpp", ".qml"}):
        name, length = path.relative_to(root).as_posix(), len(lines(path)) - 1
        count += 1
        if length > LONG and name not in listed:
            problems.append(f"{name}: {length} lines, above {LONG}, without a reason in DEVELOPERS.md")
        if length > LONG:
            listed.discard(name)
    problems += [f"DEVELOPERS.md: {name} is not above {LONG} lines any more" for name in sorted(listed)]
    return problems, {"files": count}


HEAD = "## Long files\n\n| file | why |\n| --- | --- |\n"
GOOD = {"core/a.cpp": "x\n" * 251, "core/b.cpp": "x\n" * 250, "DEVELOPERS.md": HEAD + "| `core/a.cpp` | one machine |\n"}
PLANTS = [("core/c.cpp", "x\n" * 251), ("qml/A.qml", "x\n" * 300), ("app/a.h", "x\n" * 400), ("DEVELOPERS.md", HEAD),
          ("DEVELOPERS.md", HEAD + "| `core/a.cpp` |  |\n"), ("DEVELOPERS.md", GOOD["DEVELOPERS.md"] + "| `core/b.cpp` | short |\n")]
main(check, GOOD, PLANTS)
