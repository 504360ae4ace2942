"""Every source that the code names is a row of docs/sources.md: [KEY] after @source, "source" in a rule set, the last
text of a step in explain(), "# sources:" of a reference table; open standards (RFC, OGC) by their numbers."""
import re
import sys
from pathlib import Path

sys.dont_write_bytecode = True
from shared.guard import files, lines, main

KEY = r"[A-Z][A-Z0-9]*(?:-[A-Z0-9]+)*"
BRACKET = re.compile(r"\[(" + KEY + r")\]")
STANDARD = re.compile(r"\b(RFC \d+|OGC \d\d-\d+r\d+)\b")
JSON = re.compile(r'"source"\s*:\s*"([^"]*)"')
LITERAL = re.compile(r'"(' + KEY + r"(?:, " + KEY + r')*)"')
ROW = re.compile(r"^\| `(" + KEY + r"|RFC \d+|OGC [\w-]+)` \|")


def annotations(text):
    """(line, key) of each @source with what follows it in its comment, up to the next tag or a blank comment line."""
    inside = False
    for number, line in enumerate(text, 1):
        comment = line[line.find("//"):] if "//" in line else ""
        if not comment or not comment.strip("/ <"):
            inside = False
            continue
        for part in re.split(r"(?=@\w+)", comment):
            inside = part.startswith("@source") or (inside and not part.startswith("@"))
            if inside:
                yield from ((number, key) for key in BRACKET.findall(part) + STANDARD.findall(part))


def cited(root):
    for path in files(root, ["core", "app", "qml", "tests"], {".h", ".cpp"}):
        text = lines(path)
        yield from ((path, number, key, "notes") for number, key in annotations(text))
        if path.name.startswith("explain"):
            for number, line in enumerate(text, 1):
                for keys in LITERAL.findall(line):
                    yield from ((path, number, key, "explained") for key in keys.split(", "))
    for path in files(root, ["core", "demo", "tests"], {".json"}):
        for number, line in enumerate(lines(path), 1):
            for keys in JSON.findall(line):
                yield from ((path, number, key, "in rule sets") for key in keys.split(", ") if key)
    for path in files(root, ["tests"], {".tsv"}):
        for number, line in enumerate(lines(path), 1):
            if line.startswith("# sources:"):
                yield from ((path, number, key.strip(), "in tables") for key in line[len("# sources:"):].split(",") if key.strip())


def check(root):
    page = Path(root) / "docs" / "sources.md"
    rows = [match.group(1) for match in map(ROW.match, lines(page) if page.exists() else []) if match]
    counts = {"rows": len(rows), "notes": 0, "explained": 0, "in rule sets": 0, "in tables": 0}
    problems = [f"docs/sources.md: {row} has more than one row" for row in sorted({row for row in rows if rows.count(row) > 1})]
    known = set(rows)
    for path, number, key, where in cited(root):
        counts[where] += 1
        if key not in known:
            problems.append(f"{path.relative_to(root).as_posix()}:{number}: {key} has no row in docs/sources.md")
    return problems, counts


GOOD = {"docs/sources.md": "| `AB-1` | A | 2000 | 1 | SEEN |\n| `RFC 7946` | B | 2016 | - | SEEN |\n",
        "core/a.h": "/// @return x[N] @source [AB-1] @error none [Z-9]\n/// @source RFC 7946\n", "core/explain.cpp": 'add("Name", "AB-1");',
        "core/r.json": '{"source": "AB-1"}', "tests/t.tsv": "# sources: AB-1, AB-1\n"}
PLANTS = [("core/b.h", "/// Text. @source [AB-1], [NO-1]"), ("core/b.h", "/// @source sign [AB-1]; foot\n/// [NO-1]"), ("core/b.h", "/// @source RFC 1"),
          ("app/explain_b.cpp", 'add("Name", "AB-1, NO-1");'), ("core/b.json", '{"a": {"source": "NO-1"}}'), ("tests/b.tsv", "# sources: AB-1, NO-1\n"),
          ("docs/sources.md", "| `AB-1` | A |\n| `AB-1` | A |\n| `RFC 7946` | B |")]
if __name__ == "__main__":
    main(check, GOOD, PLANTS)
