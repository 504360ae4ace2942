"""Runs every command of the documents: document_commands.py GROUNDBOOK SOURCE [--keep FOLDER] [DOCUMENT...]. A command is a line of a block of four
spaces, or a fenced block of sh. Each document has a folder of its own that looks like a clone; its lines run in order and must end with 0.
A document with fenced blocks of diff has a copy of the tree, into which all of them go before its first line; each must fit to the letter.
prepared.py names what lies there and what does not run as it stands. Commands in running text are held against verbs, options, targets and paths."""
import os
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

sys.dont_write_bytecode = True
import layer_columns
import prepared
import prose
from server import Server

GROUNDBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
NAMED = sys.argv[3:]
MISSING = [one for one in ("ogr2ogr", "ninja", "cmake", "patch") if not shutil.which(one)]
if MISSING:
    print(f"Skipped: {', '.join(MISSING)} missing; Debian packages gdal-bin, ninja-build, cmake, patch.")
    sys.exit(77)
FIRST = re.compile(r"(groundbook|groundcount|qt-cmake|cmake|ninja|ctest|cpack|sed|patch|cd|apt|apt-get|python3|[A-Z_]+=\S+|(demo|tests|qml|docs|build[-\w]*)/\S+) ?")


DIFF = re.compile(r"^```diff\n(.*?)^```$", re.M | re.S)


def documents():
    every = [ROOT / "README.md", ROOT / "DEVELOPERS.md", *sorted(ROOT.glob("docs/**/*.md")), *sorted(ROOT.glob("demo/*.md")), *sorted(ROOT.glob("tests/**/*.md"))]
    return [one for one in every if not NAMED or str(one.relative_to(ROOT)) in NAMED]


def commands(text):
    """(line number, command, "") of each command line; the third says what is wrong with a line that is neither command nor known text."""
    fenced, kind, block = None, None, False
    before = ""
    for number, line in enumerate(text.split("\n"), 1):
        if line.startswith("```"):
            fenced = None if fenced is not None else line[3:].strip()
        elif fenced in ("sh", "bash", "console"):
            yield number, line.strip(), ""
        elif fenced is None and line.startswith("    ") and (block or not before.strip()):
            if not block:
                kind = "json" if line.strip().startswith("{") else "commands" if FIRST.match(line.strip()) or line.strip().startswith("#") else "text"
            block = True
            if kind == "commands" and not line.strip().startswith("#"):
                yield number, line.strip(), "" if FIRST.match(line.strip()) else "a line among commands that begins with none known"
        else:
            block = False
        before = line


def without_comment(line):
    return re.sub(r"\s+# .*$|\s{2,}#.*$", "", line).strip()


def of(table, document, line, match):
    return [row for row in table if row[0] in (None, document) and match(row[1], line)]


def clone(folder, changes):
    """What a clone holds, by links, or as a copy with these changes in it; and the files of prepared.py beside it. Returns what of the changes does not fit."""
    wrong = []
    for one in ROOT.iterdir():
        if one.name.startswith((".", "build")):
            continue
        if not changes:
            os.symlink(one, folder / one.name)
        elif one.is_dir():
            shutil.copytree(one, folder / one.name, symlinks=True)
        else:
            shutil.copy2(one, folder / one.name)
    for change in changes:
        done = subprocess.run(["patch", "-p1", "--forward", "--batch", "--fuzz=0", "-d", folder], input=change, capture_output=True, text=True)
        if done.returncode:
            wrong.append(f"a diff does not fit: {done.stdout.strip()} {done.stderr.strip()}")
    prepared.files(folder, ROOT)
    return wrong


def shell(line, folder, server):
    tools = folder.parent / "bin"
    home = folder.parent / "home"
    environment = {"PATH": f"{tools}:{os.environ['PATH']}", "HOME": str(home), "XDG_DATA_HOME": str(home / "data"), "XDG_RUNTIME_DIR": str(home),
                   "TZ": "America/Chicago", "LC_ALL": "C.UTF-8", "QT_QPA_PLATFORM": "offscreen"}
    return subprocess.run(["bash", "-euo", "pipefail", "-c", line], cwd=folder, env=environment, stdin=subprocess.DEVNULL, capture_output=True, text=True,
                          timeout=300)


def run(document, server, problems, name=None):
    name = name or str(document.relative_to(ROOT))
    text = document.read_text(encoding="utf-8")
    lines, changes = list(commands(text)), DIFF.findall(text)
    done = 0
    if not lines and not changes:
        return 0
    top = Path(tempfile.mkdtemp(prefix="groundcount-documents-"))
    try:
        folder = top / "clone"
        for one in (folder, top / "bin", top / "home"):
            one.mkdir(mode=0o700)
        os.symlink(GROUNDBOOK, top / "bin" / "groundbook")
        problems += [f"{name}: {one}" for one in clone(folder, changes)]
        for book in prepared.BOOKS.get(name, []):
            shell(f"groundbook play {book}.fieldbook demo/scenario.json", folder, server)
        for number, written, wrong in lines:
            where = f"{name}:{number}: {written}"
            if wrong:
                problems.append(f"{where}: {wrong}")
                continue
            line = without_comment(written)
            for _, _, before in of(prepared.BEFORE, name, line, lambda a, b: b.startswith(a)):
                first = shell(before, folder, server)
                if first.returncode:
                    problems.append(f"{where}: what it takes for granted failed: {before}\n{first.stderr}")
            line = server.replaced(line)
            for _, pattern, instead, _ in of(prepared.REPLACED, name, line, re.search):
                line = re.sub(pattern, instead, line)
            kept = of(prepared.NOT_RUN, name, line, re.fullmatch)
            if kept:
                print(f"not run: {name}:{number}: {written.split('#')[0].strip()}: {kept[0][2]}")
                line = kept[0][3]
            answer = shell(line, folder, server)
            done += 1
            if answer.returncode:
                problems.append(f"{where}\n    ran as: {line}\n    exit {answer.returncode}: {(answer.stderr or answer.stdout).strip()[-1500:]}")
        if name == "docs/geopackage-layers.md":
            shell("groundbook export north.fieldbook layers.gpkg", folder, server)
            held, wrong = layer_columns.check(document, folder / "layers.gpkg")
            print(f"{name}: {held} columns of the file held against the page")
            problems += wrong
        return done
    finally:
        shutil.rmtree(top, ignore_errors=True)


def prove(server):
    """A refused command, an unknown verb, a missing script, a line that is no command and a diff that does not fit must each be found."""
    with tempfile.TemporaryDirectory() as folder:
        planted = Path(folder) / "planted.md"
        planted.write_text("# Planted\n\n    groundbook check nowhere.fieldbook\n    groundbook dance\n    tests/no-such-script\n    and so on\n\n"
                           "```diff\n--- a/README.md\n+++ b/README.md\n@@ -1 +1 @@\n-# Another program\n+# Planted\n```\n", encoding="utf-8")
        found = []
        run(planted, server, found, "planted.md")
    if len(found) != 5:
        sys.exit(f"FAILED: of five planted faults {len(found)} were found: {found}")
    for text in ("groundbook dance", "groundbook export --waltz", "tests/no-such-script", "no_such_test", "--waltz", "cmake -DGROUNDCOUNT_WALTZ=ON"):
        if not prose.wrong_with(text, ROOT, GROUNDBOOK):
            sys.exit(f"FAILED: the planted mention {text!r} was not found")


def main():
    problems, total, told = [], 0, 0
    with Server() as server:
        prove(server)
        for document in documents():
            done = run(document, server, problems)
            held, wrong = prose.check(document, ROOT, GROUNDBOOK)
            problems += wrong
            told += held
            total += done
            if done or held:
                print(f"{document.relative_to(ROOT)}: {done} lines run, {held} mentions held against the tree")
    for one in problems:
        print(f"FAILED: {one}")
    if not NAMED and (total < 60 or told < 60):
        problems.append("few")
        print(f"FAILED: only {total} lines and {told} mentions were found; is the reader of documents broken?")
    print(f"{total} command lines run, {told} mentions held, {len(problems)} failed")
    sys.exit(1 if problems else 0)


main()
