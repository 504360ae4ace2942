"""Only the names of the house stand at the top level. Dot-files and the build folders of .gitignore (/build*/) are let be."""
import sys
from pathlib import Path

sys.dont_write_bytecode = True
from shared.guard import TOP, main


def check(root):
    names = sorted(one.name for one in Path(root).iterdir()
                   if not one.name.startswith(".") and not (one.is_dir() and one.name.startswith("build")))
    return [f"{name}: not a name of the top level" for name in names if name not in TOP], {"names": len(names)}


GOOD = {"README.md": "x", "core/a.h": "x", ".gitignore": "x", "build-x/a.o": "x"}
PLANTS = [("scripts/run.sh", "x"), ("notes.txt", "x"), ("build.log", "x")]
main(check, GOOD, PLANTS)
