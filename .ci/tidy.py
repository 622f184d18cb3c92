#!/usr/bin/env python3
"""Runs clang-tidy over the project's own files of a compile database.

Usage: tidy.py BUILD_DIRECTORY

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
OWN_FOLDERS = ("app", "core", "ui", "tests")


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
    files = {pathlib.Path(entry["file"])} | {path for path in includes if is_own(path)}
    for path in sorted(files):
        digest.update(str(path).encode())
        digest.update(path.read_bytes())
    return digest.hexdigest()


def check(build: pathlib.Path, file: str) -> tuple[str, bool, str]:
    result = subprocess.run(["clang-tidy", "-quiet", "-p", str(build), file],
                            capture_output=True, text=True, check=False)
    clean = result.returncode == 0 and "warning:" not in result.stdout
    return file, clean, result.stdout + ("" if clean else result.stderr)


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

    keys: dict[str, str] = {}
    for entry in json.loads((build / "compile_commands.json").read_text()):
        path = pathlib.Path(entry["file"])
        if is_own(path) and path.is_file():
            keys[entry["file"]] = key_of(entry, deps.get(object_of(entry), []), setup)
    pending = [file for file, key in keys.items() if not (stamps / key).exists()]
    print(f"{len(keys)} files, {len(pending)} to look at", flush=True)

    unclean = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count() or 2) as pool:
        for file, clean, output in pool.map(lambda f: check(build, f), pending):
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
