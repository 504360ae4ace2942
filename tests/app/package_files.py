"""package_files.py BUILD_FOLDER GROUNDBOOK: what an installation brings, read by the tools of the desktop: menu entry, AppStream metadata, file type,
icon, manual page with every verb, and the library that the app loads late. 77 = a tool is missing, its package is named."""
import gzip
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
from pathlib import Path

build, groundbook = sys.argv[1:]
for tool, package in (("desktop-file-validate", "desktop-file-utils"), ("appstreamcli", "appstream"), ("man", "man-db")):
    if not shutil.which(tool):
        print(f"{tool} is missing: apt-get install {package}")
        sys.exit(77)
faults = []


def need(truth, sentence):
    if not truth:
        faults.append(sentence)


def said(*command):
    done = subprocess.run(command, capture_output=True, text=True, env={"PATH": "/usr/bin:/bin", "LC_ALL": "C.UTF-8", "MANWIDTH": "100", "HOME": "/tmp"})
    return done.returncode, done.stdout + done.stderr


with tempfile.TemporaryDirectory() as root:
    subprocess.run(["cmake", "--install", build, "--prefix", root + "/usr"], check=True, capture_output=True)
    usr = Path(root) / "usr"
    for program in ("groundcount", "groundbook"):
        need((usr / "bin" / program).is_file(), f"bin/{program} is not installed")
    wall = Path(root) / "wall.geojson"
    wall.write_text('{"type":"Feature","properties":{"name":"North wall"},"geometry":{"type":"Point","coordinates":[-92.3,38.4]}}')
    code, text = said(str(usr / "bin/groundcount"), "read-site", str(wall))
    need(code == 0 and "North wall" in text, "the installed program does not find its library of file formats: " + text)
    code, text = said("desktop-file-validate", str(usr / "share/applications/groundcount.desktop"))
    need(code == 0 and not text, "desktop entry: " + text)
    code, text = said("appstreamcli", "validate", "--no-net", "--no-color", str(usr / "share/metainfo/groundcount.metainfo.xml"))
    # No domain is ours, so the id is the program's name; everything else must be clean.
    complaints = [line for line in text.splitlines() if re.match(r"[EWI]: ", line) and "cid-desktopapp-is-not-rdns" not in line]
    need(not complaints, "AppStream: " + "; ".join(complaints))
    mime = xml.parse(usr / "share/mime/packages/groundcount.xml").getroot()
    globs = [g.get("pattern") for g in mime.iter("{http://www.freedesktop.org/standards/shared-mime-info}glob")]
    need(globs == ["*.fieldbook"], f"file type: {globs}")
    need("MimeType=application/vnd.groundcount.fieldbook;" in (usr / "share/applications/groundcount.desktop").read_text(), "the desktop entry does not open .fieldbook")
    need(xml.parse(usr / "share/icons/hicolor/scalable/apps/groundcount.svg").getroot().tag.endswith("svg"), "the icon is no SVG")
    page = usr / "share/man/man1/groundbook.1.gz"
    code, text = said("man", "--warnings", "-l", str(page))
    warned = [line for line in text.splitlines() if "warning" in line.lower() and "groff" in line.lower()]
    need(code == 0 and not warned, "manual page: " + "; ".join(warned[:3]))
    source = gzip.decompress(page.read_bytes()).decode()
    listed = subprocess.run([groundbook, "--help"], capture_output=True, text=True, check=True).stdout
    verbs = re.findall(r"^  ([a-z][a-z-]*)  +\S", listed[listed.rindex("Subcommands:"):], re.M)
    need(len(verbs) >= 20, f"only {len(verbs)} verbs in the help")
    for verb in verbs:
        need(f".SS {verb}\n" in source, f"the manual page lacks {verb}")

print("\n".join(faults) if faults else f"menu entry, metadata, file type, icon and a manual page of {len(verbs)} verbs are sound")
sys.exit(1 if faults else 0)
