"""An independent reader of field books, written from docs/record-format.md alone: Python's json, sqlite3 and hashlib, Ed25519 by python3-nacl.
reference_record_format.py GROUNDBOOK SOURCE: plays the demo job, verifies every record of it, and sees 200 random changes.
Exit 77 with the reason when python3-nacl is missing."""
import hashlib
import json
import random
import sqlite3
import struct
import subprocess
import sys
import tempfile
import uuid
from pathlib import Path

try:
    from nacl.exceptions import BadSignatureError
    from nacl.signing import VerifyKey
except ImportError:
    print("Skipped: the module nacl is missing; Debian package python3-nacl.")
    sys.exit(77)

MEMBERS = "amends at body book by device kind offset_minutes prev reason seq subject".split()


def canonical(value):
    """RFC 8785. Members by UTF-16 code units; numbers here are whole, and a fraction would need ECMAScript's form."""
    if isinstance(value, dict):
        members = sorted(value.items(), key=lambda item: item[0].encode("utf-16-be"))
        return "{" + ",".join(canonical(name) + ":" + canonical(one) for name, one in members) + "}"
    if isinstance(value, list):
        return "[" + ",".join(map(canonical, value)) + "]"
    if isinstance(value, float):
        raise ValueError(f"a number that is not whole: {value}")
    return json.dumps(value, ensure_ascii=False)


def blake(data):
    return hashlib.blake2b(data, digest_size=32).hexdigest()


def read(path):
    """Records of a book as the page names them, and its contents."""
    head = Path(path).read_bytes()[:100]
    assert head[:16] == b"SQLite format 3\0"
    version, application = struct.unpack(">I", head[60:64])[0], struct.unpack(">I", head[68:72])[0]
    assert application == 0x47434642 and version == 2, (application, version)
    book = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    (own,) = book.execute("SELECT id FROM book").fetchone()
    columns = "kind subject amends reason by_person at offset_minutes device seq prev body hash signature".split()
    records = []
    for row in book.execute(f"SELECT {','.join(columns)} FROM record ORDER BY row"):
        record = dict(zip(columns, row))
        record["by"] = record.pop("by_person")
        record["book"] = own
        record["stored"] = record["body"]
        record["body"] = json.loads(record["body"])
        records.append(record)
    return own, records, dict(book.execute("SELECT hash, content FROM blob"))


def findings(own, records, blobs):
    found = []
    for r in records:
        try:
            if canonical(r["body"]) != r["stored"]:
                found.append((r["hash"], "body is not canonical"))
            if blake(canonical({name: r[name] for name in MEMBERS}).encode()) != r["hash"]:
                found.append((r["hash"], "hash"))
            VerifyKey(bytes.fromhex(r["device"])).verify(bytes.fromhex(r["hash"]), bytes.fromhex(r["signature"]))
        except (BadSignatureError, ValueError, TypeError, UnicodeError) as error:
            found.append((r["hash"], str(error)))
        if (r["amends"] or r["kind"] == "void") and not r["reason"].strip():
            found.append((r["hash"], "no reason"))
    first = records[0]
    raw = bytearray(hashlib.blake2b(f"{first['device']} {first['subject']} {first['at']}".encode(), digest_size=32).digest()[:16])
    raw[6], raw[8] = raw[6] & 0x0F | 0x80, raw[8] & 0x3F | 0x80
    if str(uuid.UUID(bytes=bytes(raw))) != own:
        found.append((first["hash"], "book id"))
    chains = {}
    for r in records:
        chains.setdefault(r["device"], {}).setdefault(r["seq"], []).append(r)
    for chain in chains.values():
        before = ""
        for number in range(1, max(chain) + 1):
            here = chain.get(number, [])
            if len(here) != 1 or here[0]["prev"] != before:
                found.append((here[0]["hash"] if here else "", f"chain at {number}"))
            before = here[0]["hash"] if here else before
    hashes = {r["hash"]: r for r in records}
    for r in records:
        if r["amends"] and (r["amends"] not in hashes or hashes[r["amends"]]["kind"] != r["kind"] or hashes[r["amends"]]["subject"] != r["subject"]):
            found.append((r["hash"], "amends"))
        if r["kind"] == "verdict" and any(one not in hashes for one in r["body"]["from"] + [r["body"]["rule_set"]]):
            found.append((r["hash"], "evidence"))
        if "blob" in r["body"] and r["body"]["blob"] not in blobs:
            found.append((r["hash"], "content"))
    found += [(name, "content") for name, content in blobs.items() if blake(content) != name]
    return found


groundbook, source = sys.argv[1:3]
with tempfile.TemporaryDirectory() as folder:
    path = folder + "/demo.fieldbook"
    subprocess.run([groundbook, "play", path, source + "/demo/scenario.json", "--key", folder + "/device.key"], check=True, stdout=subprocess.DEVNULL)
    own, records, blobs = read(path)
    kinds = {r["kind"] for r in records}
    wrong = findings(own, records, blobs)
    assert not wrong, wrong[:5]
    assert len(records) > 100 and len(kinds) > 12, (len(records), kinds)

    # the reader must be able to fail: one character of one part of one record changes, and its finding names the record
    chance = random.Random(8)
    parts = "kind subject by at device prev signature seq offset_minutes stored".split()
    for _ in range(200):
        part = chance.choice(parts)
        target = chance.choice([r for r in records if r[part] != ""])
        altered = dict(target)
        if isinstance(target[part], int):
            altered[part] = target[part] + chance.choice([-1, 1])
        else:
            at = chance.randrange(len(target[part]))
            altered[part] = target[part][:at] + chr(ord(target[part][at]) ^ 1) + target[part][at + 1:]
        if part == "stored":
            try:
                altered["body"] = json.loads(altered["stored"])
            except ValueError:
                continue  # told by any JSON reader
        seen = findings(own, [altered if r is target else r for r in records], blobs)
        assert any(name == target["hash"] for name, _ in seen), (part, altered[part])
    print(f"{len(records)} records of {len(kinds)} kinds and {len(blobs)} contents verified by a reader of the page alone; 200 changes seen")
