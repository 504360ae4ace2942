"""Commands, paths, options and targets that stand in running text, held against the tree and the programs' own help."""
import functools
import re
import subprocess
from pathlib import Path

TICKS = re.compile(r"`([^`\n]+)`")
PATH = re.compile(r"^(?:tests|demo|docs|core|app|qml)/[\w./*-]+")
LAYERS = {"density_test", "reference_test"}  # of the hand-over, not programs
PLACEHOLDER = re.compile(r"[A-Z]{4,}")


@functools.lru_cache(maxsize=None)
def help_of(groundbook, *verb):
    done = subprocess.run([groundbook, *verb, "--help"], capture_output=True, text=True)
    return done.stdout if done.returncode == 0 else ""


@functools.lru_cache(maxsize=None)
def verbs(groundbook):
    return re.findall(r"^  ([a-z]+) {2,}", help_of(groundbook), re.M)


@functools.lru_cache(maxsize=None)
def every_help(groundbook):
    return "".join(help_of(groundbook, verb) for verb in verbs(groundbook))


@functools.lru_cache(maxsize=None)
def sources(root):
    """What names targets, options of the build and options of the app."""
    listed = [root / "CMakeLists.txt", *root.glob("app/**/CMakeLists.txt"), *root.glob("core/**/CMakeLists.txt"), *root.glob("tests/**/CMakeLists.txt"),
              *root.glob("qml/CMakeLists.txt"), *root.glob("app/*.cpp"), *root.glob("app/view/*.cpp")]
    programs = {one.stem for pattern in ("*_test.cpp", "*_bench.cpp", "*_fuzz.cpp") for one in (root / "tests").glob(f"**/{pattern}")}
    return "\n".join(one.read_text(encoding="utf-8") for one in listed), programs


def groundbook_command(text, groundbook):
    words = text.split()
    if len(words) < 2 or words[1].startswith("-") or PLACEHOLDER.fullmatch(words[1]):
        return None
    if words[1] not in verbs(groundbook):
        return f"groundbook knows no verb {words[1]}"
    told = help_of(groundbook, words[1])
    unknown = [one for one in re.findall(r"(?<=\s)--[\w-]+", text) if not re.search(re.escape(one) + r"\b", told)]
    return f"groundbook {words[1]} knows no {unknown[0]}" if unknown else None


def program(name, root):
    text, programs = sources(root)
    return name in programs or re.search(rf"add_executable\(({name}|\$\{{name\}})", text) and (name in text or name in programs)


def wrong_with(text, root, groundbook):
    """None when the mention holds, "" when there is nothing to hold it against, else what is wrong."""
    held = False
    if text.startswith("groundbook "):
        held, wrong = True, groundbook_command(text, groundbook)
        if wrong:
            return wrong
    for option in re.findall(r"-D(GROUNDCOUNT_\w+)", text):
        held = True
        if f"option({option} " not in sources(root)[0] and f"{option}" not in sources(root)[0]:
            return f"the build has no option {option}"
    for target in re.findall(r"build-?\w*/tests/(\w+)", text) + re.findall(r"^(\w+_(?:test|bench|fuzz))$", text):
        if target in LAYERS:
            continue
        held = True
        if not program(target, root):
            return f"there is no program {target}"
    if text.startswith("--"):
        held = True
        option = re.match(r"--[\w-]+", text)[0]
        if f'"{option[2:]}"' not in sources(root)[0] and option not in every_help(groundbook):
            return f"neither groundbook nor groundcount knows {option}"
    path = PATH.match(text)
    if path and not PLACEHOLDER.search(path[0]):
        held = True
        if not list(Path(root).glob(path[0].rstrip("/."))):
            return f"there is no {path[0]}"
    return None if held else ""


def check(document, root, groundbook):
    held, problems = 0, []
    for number, line in enumerate(document.read_text(encoding="utf-8").split("\n"), 1):
        for text in TICKS.findall(line):
            wrong = wrong_with(text.strip(), root, groundbook)
            held += wrong is None
            if wrong:
                problems.append(f"{document.relative_to(root)}:{number}: `{text}`: {wrong}")
    return held, problems
