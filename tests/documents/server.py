"""A PostgreSQL of the test's own: a fresh cluster in a temporary folder, reached by a socket there and by nothing else."""
import os
import pwd
import re
import shutil
import subprocess
import tempfile
from pathlib import Path


class Server:
    """Logins, databases and addresses of the documents (postgresql://LOGIN@db.example/DATABASE) become those of the cluster."""

    def __enter__(self):
        self.folder = Path(tempfile.mkdtemp(prefix="groundcount-server-"))
        self.user = []
        if os.geteuid() == 0:  # it refuses to run as root
            owner = pwd.getpwnam("postgres")
            os.chown(self.folder, owner.pw_uid, owner.pw_gid)
            self.user = ["runuser", "-u", "postgres", "--"]
        self.run("initdb", "-D", self.data(), "-U", "boss", "-A", "trust", "-E", "UTF8", "--locale=C", "-N")
        self.run("pg_ctl", "-D", self.data(), "-l", self.folder / "log", "-w", "-t", "60", "-o",
                 f"-c listen_addresses='' -c unix_socket_directories={self.folder} -c fsync=off", "start")
        for database in ("job", "gis"):
            self.run("psql", "-h", self.folder, "-U", "boss", "-d", "postgres", "-c", f"CREATE DATABASE {database}")
        self.run("psql", "-h", self.folder, "-U", "boss", "-d", "job", "-c", "CREATE EXTENSION postgis")
        for statement in ("CREATE EXTENSION postgis", "CREATE ROLE desk LOGIN SUPERUSER", "CREATE ROLE phone7 LOGIN", "CREATE ROLE owner_gis"):
            self.run("psql", "-h", self.folder, "-U", "boss", "-d", "gis", "-v", "ON_ERROR_STOP=1", "-c", statement)
        return self

    def __exit__(self, *_):
        self.run("pg_ctl", "-D", self.data(), "-m", "immediate", "-w", "stop")
        shutil.rmtree(self.folder, ignore_errors=True)

    def data(self):
        return self.folder / "data"

    def address(self, login, database="job"):
        return f"host={self.folder} dbname={database} user={login}"

    def replaced(self, line):
        line = re.sub(r'"postgresql://(\w+)@db\.example/(\w+)\?sslmode=verify-full"', lambda m: f'"{self.address(m[1], m[2])}"', line)
        return re.sub(r"\bADDRESS\b", f'"{self.address("boss")}"', line)

    def run(self, program, *arguments):
        found = sorted(Path("/usr/lib/postgresql").glob(f"*/bin/{program}"))
        if not found:
            raise SystemExit("PostgreSQL is missing: Debian package postgresql")
        done = subprocess.run([*self.user, found[-1], *arguments], cwd=self.folder, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL,
                              stderr=subprocess.PIPE if program == "psql" else subprocess.DEVNULL, timeout=120)
        if done.returncode:
            raise SystemExit(f"{program} {arguments}: {(done.stderr or b'').decode()}")
