"""man.py GROUNDBOOK VERSION OUT.gz: the manual page of groundbook, made from what the program itself says of its verbs."""
import gzip
import re
import subprocess
import sys

program, version, out = sys.argv[1:]


def help_of(*verb):
    return subprocess.run([program, *verb, "--help"], capture_output=True, text=True, check=True).stdout


def roff(text):
    escaped = text.replace("\\", "\\e").replace("-", "\\-")
    return "\n".join("\\&" + line if line.startswith((".", "'")) else line for line in escaped.splitlines())


overall = help_of()
verbs = [m.group(1) for m in re.finditer(r"^  ([a-z][a-z-]*)  +\S", overall[overall.rindex("Subcommands:"):], re.M)]
if len(verbs) < 10:
    sys.exit("man.py: the verbs of groundbook could not be read from its help")
page = [f'.TH GROUNDBOOK 1 "" "Groundcount {version}" "User commands"', ".SH NAME", "groundbook \\- field books of earthwork density tests on the command line",
        ".SH SYNOPSIS", ".B groundbook", ".I VERB", "[options]", ".SH DESCRIPTION",
        "Does on a terminal what the app groundcount does on a phone, over the same core: makes, checks, merges and exports field books, judges tests and writes sheets.",
        "The licence, local rules and the manufacturer's instructions govern the use of a gauge.", ".SH VERBS"]
for verb in verbs:
    page += [f".SS {verb}", ".nf", roff(help_of(verb).strip()), ".fi"]
page += [".SH EXIT STATUS", ".TP", ".B 0", "done; a test that fails its specification is an answer", ".TP", ".B 1",
         "refused, in one sentence on standard error; nothing was written. Also a check that found something", ".TP", ".B 2", "the command line itself is wrong"]
with gzip.GzipFile(out, "wb", mtime=0) as file:
    file.write(("\n".join(page) + "\n").encode())
