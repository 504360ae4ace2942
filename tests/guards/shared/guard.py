"""What every guard shares: the walk over the tree, the proof that the guard can fail, and the report.

A guard has check(root) -> (problems, counts): problems is a list of sentences "PATH:LINE: what", counts a dict of what
was looked at. GOOD is a small tree that passes, PLANTS are files that, one at a time, must each be found in it."""
import os
import sys
import tempfile
from pathlib import Path

TOP = ["CMakeLists.txt", "README.md", "DEVELOPERS.md", "app", "core", "demo", "docs", "qml", "tests"]
TEXT = {".h", ".cpp", ".in", ".qml", ".py", ".md", ".txt", ".json", ".tsv", ".csv", ".cmake", ".sql", ".sh", ""}


def files(root, folders, endings):
    """Files under the given top-level names, sorted, by ending; what a build leaves is not looked at."""
    for name in folders:
        top = Path(root) / name
        if top.is_file() and top.suffix in endings:
            yield top
        for folder, inner, names in os.walk(top):
            inner[:] = sorted(one for one in inner if not one.startswith(".") and one != "__pycache__")
            for one in sorted(names):
                if Path(one).suffix in endings and not one.startswith("."):
                    yield Path(folder) / one


def lines(path):
    try:
        return path.read_text(encoding="utf-8").split("\n")
    except UnicodeDecodeError:
        return []


def plant(root, tree):
    for name, content in tree.items():
        path = Path(root) / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(content, encoding="utf-8")


def prove(check, good, plants):
    """The guard must pass the good tree, find every plant in it, and refuse an empty tree."""
    failures = []
    with tempfile.TemporaryDirectory() as root:
        plant(root, good)
        problems, counts = check(root)
        if problems or not all(counts.values()):
            failures.append(f"self-test: the good tree gives {problems or counts}")
    for name, content in plants:
        with tempfile.TemporaryDirectory() as root:
            plant(root, {**good, name: content})
            problems, _ = check(root)
            if not any(name.split("/")[0] in one for one in problems):
                failures.append(f"self-test: not found in {name}: {content!r}")
    with tempfile.TemporaryDirectory() as root:
        problems, counts = check(root)
        if not problems and all(counts.values()):
            failures.append("self-test: an empty tree passes")
    return failures


def main(check, good, plants):
    if len(sys.argv) != 2 or not Path(sys.argv[1]).is_dir():
        sys.exit(f"usage: python3 {Path(sys.argv[0]).name} SOURCE_DIR")
    failures = prove(check, good, plants)
    problems, counts = check(sys.argv[1])
    failures += problems
    failures += [f"nothing checked: 0 {what}" for what, count in counts.items() if not count]
    for one in failures:
        print(one)
    looked = ", ".join(f"{count} {what}" for what, count in counts.items())
    print(f"{Path(sys.argv[0]).stem}: {looked}; {len(plants)} planted violations tried; {len(failures)} problems")
    sys.exit(1 if failures else 0)
