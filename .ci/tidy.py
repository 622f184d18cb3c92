#!/usr/bin/env python3
"""Runs clang-tidy over the own files of a compile database, without the tests (a matter of time).

Usage: tidy.py BUILD_DIRECTORY

Most of clang-tidy's time goes into Qt's headers, so the files of one target are looked at several
at a time, included into one. Where that does not compile (two files may use one name in their
unnamed namespaces) or is not clean, the batch is halved, down to single files; what is reported
comes from single files.

A file that was clean is not looked at again until it, a header of the project that it includes,
its compile command, .clang-tidy or the version of clang-tidy changes. What is known to be clean
is kept in BUILD_DIRECTORY/tidy-clean. Exit status 1 when a file is not clean.
"""

import concurrent.futures
import hashlib
import json
import os
import pathlib
import shlex
import subprocess
import sys

ROOT = pathlib.Path(__file__).resolve().parent.parent
OWN_FOLDERS = ("app", "core", "ui")


def is_own(path: pathlib.Path) -> bool:
    """True for a source of the project, false for generated and system files."""
    try:
        return path.resolve().relative_to(ROOT).parts[0] in OWN_FOLDERS
    except ValueError:
        return False


def included_files(build: pathlib.Path) -> dict[str, list[pathlib.Path]]:
    """The files each object was compiled from, as ninja wrote them down."""
    listing = subprocess.run(["ninja", "-C", str(build), "-t", "deps"], check=True,
                             capture_output=True, text=True).stdout
    deps: dict[str, list[pathlib.Path]] = {}
    current: list[pathlib.Path] = []
    for line in listing.splitlines():
        if line and not line.startswith((" ", "ninja:")):
            current = deps.setdefault(line.split(":")[0], [])
        elif line.strip():
            current.append(build / line.strip())
    return deps


def object_of(entry: dict) -> str:
    """The object that an entry of the compile database makes, as ninja names it."""
    words = shlex.split(entry["command"])
    return words[words.index("-o") + 1]


def key_of(entry: dict, includes: list[pathlib.Path], setup: bytes) -> str:
    """A hash of everything the verdict of clang-tidy on a file depends on."""
    digest = hashlib.sha256(setup)
    digest.update(entry["command"].encode())
    files = {pathlib.Path(entry["file"])} | {path for path in includes if is_own(path) and path.is_file()}
    for path in sorted(files):
        digest.update(str(path).encode())
        digest.update(path.read_bytes())
    return digest.hexdigest()


def flags_of(entry: dict) -> list[str]:
    """The compiler's flags of an entry, without its compiler, input, output and precompiled header."""
    words = shlex.split(entry["command"])
    while not words[0].startswith("-"):
        words.pop(0)
    flags = []
    skip = False
    for word in words:
        if skip or word in ("-c", "-Winvalid-pch", entry["file"]):
            skip = False
        elif word in ("-o", "-include"):
            skip = True
        else:
            flags.append(word)
    return flags


class Batch:
    """Files of one target that are looked at together."""

    def __init__(self, files: list[str], flags: list[str], folder: str, scratch: pathlib.Path):
        self.files, self.flags, self.folder, self.scratch = files, flags, folder, scratch

    def look(self) -> list[tuple[str, bool, str]]:
        """Each file, whether it is clean, and what clang-tidy said of it."""
        source = self.files[0]
        if len(self.files) > 1:
            name = hashlib.sha256("".join(self.files).encode()).hexdigest()[:16]
            together = self.scratch / f"{name}.cpp"
            together.write_text("".join(f'#include "{file}"\n' for file in self.files))
            source = str(together)
        result = subprocess.run(["clang-tidy", "-quiet", source, "--", *self.flags],
                                cwd=self.folder, capture_output=True, text=True, check=False)
        clean = result.returncode == 0 and "warning:" not in result.stdout
        if clean:
            return [(file, True, "") for file in self.files]
        if len(self.files) == 1:
            return [(source, False, result.stdout + result.stderr)]
        middle = len(self.files) // 2
        halves = (self.files[:middle], self.files[middle:])
        return [seen for half in halves
                for seen in Batch(half, self.flags, self.folder, self.scratch).look()]


def batches(entries: list[dict], scratch: pathlib.Path) -> list[Batch]:
    """The entries by target and flags, a few files each."""
    most = 8
    groups: dict[tuple, list[dict]] = {}
    for entry in entries:
        groups.setdefault((entry["directory"], *flags_of(entry)), []).append(entry)
    return [Batch([entry["file"] for entry in group[start:start + most]], flags_of(group[0]),
                  group[0]["directory"], scratch)
            for group in groups.values() for start in range(0, len(group), most)]


def main() -> int:
    if len(sys.argv) != 2:
        print(__doc__, file=sys.stderr)
        return 2
    build = pathlib.Path(sys.argv[1]).resolve()
    stamps = build / "tidy-clean"
    stamps.mkdir(exist_ok=True)
    version = subprocess.run(["clang-tidy", "--version"], check=True, capture_output=True).stdout
    setup = version + (ROOT / ".clang-tidy").read_bytes()
    deps = included_files(build)

    scratch = build / "tidy-batches"
    scratch.mkdir(exist_ok=True)

    keys: dict[str, str] = {}
    pending: list[dict] = []
    for entry in json.loads((build / "compile_commands.json").read_text()):
        path = pathlib.Path(entry["file"])
        if is_own(path) and path.is_file():
            key = key_of(entry, deps.get(object_of(entry), []), setup)
            keys[entry["file"]] = key
            if not (stamps / key).exists():
                pending.append(entry)
    print(f"{len(keys)} files, {len(pending)} to look at", flush=True)

    unclean = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count() or 2) as pool:
        for seen in pool.map(Batch.look, batches(pending, scratch)):
            for file, clean, output in seen:
                if clean:
                    (stamps / keys[file]).touch()
                else:
                    unclean += 1
                    print(f"Not clean: {os.path.relpath(file, ROOT)}\n{output}", flush=True)
    # Stamps of older states are of no use.
    for stamp in stamps.iterdir():
        if stamp.name not in keys.values():
            stamp.unlink()
    if not keys:
        print("The compile database holds no file of the project.", file=sys.stderr)
        return 1
    return 1 if unclean else 0


if __name__ == "__main__":
    sys.exit(main())
