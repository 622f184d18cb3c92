#!/usr/bin/env python3
"""Keeps the translation files of the printed pages complete.

    languages.py check  [--root DIR] [--lupdate PATH]   ends with 1 and says what is wrong
    languages.py update [--root DIR] [--lupdate PATH]   takes new texts into the files

Checked in every resources/languages/ladlework_*.ts: each text of the sources of printed.txt and of
the reference tables is there, nothing is unfinished, obsolete or empty, the plural forms are as
many as the language has, and the placeholders (%1, %n, ...) are those of the source.
ladlework_en.ts holds the plural forms alone: the texts in the code are English.
"""
import argparse
import csv
import json
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
from pathlib import Path

LANGUAGES = Path("resources/languages")
TABLES = Path("resources/reference")
PLACEHOLDER = re.compile(r"%L?(?:\d{1,2}|n)")
DECLARED = re.compile(r"struct (\w+) \{\s*Q_DECLARE_TR_FUNCTIONS\((\w+)\)")
PATIENCE_SECONDS = 60
# As Qt Linguist counts them; a new language is entered here.
PLURAL_FORMS = {"en": 2, "es": 2}


class Broken(Exception):
    """The files cannot be checked at all."""


def rows_of(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


def read_sources(root):
    """The source files, and (context, text) of the reference tables, from printed.txt."""
    files, texts = [], []
    for line in (root / LANGUAGES / "printed.txt").read_text(encoding="utf-8").splitlines():
        words = line.split()
        if not words or line.startswith("#"):
            continue
        if words[0] == "table":
            name, context, columns = words[1], words[2], words[3:]
            for row in rows_of(root / TABLES / f"{name}.csv"):
                texts += [(context, row[column]) for column in columns if row[column]]
            continue
        if words[0] == "without":
            files.remove(root / words[1])
            continue
        path = root / words[0]
        found = sorted(path.glob("*.cpp")) + sorted(path.glob("*.h")) if path.is_dir() else [path]
        if not found or not all(file.is_file() for file in found):
            raise Broken(f"printed.txt: {words[0]} is not there")
        files += found
    return files, list(dict.fromkeys(texts))


def spelled_out(files, work):
    """Copies of the sources in which each tr() stands alone with the name of its context.

    lupdate does not find the class that a tr() belongs to everywhere (inside a function that
    returns a type of another namespace, for one); a class that it does not know it takes for the
    context."""
    contexts = {}
    for file in files:
        contexts.update(DECLARED.findall(file.read_text(encoding="utf-8")))
    copies = []
    for index, file in enumerate(files):
        text = file.read_text(encoding="utf-8")
        own = {**contexts, **dict(DECLARED.findall(text))}

        def context_of(match, own=own, file=file):
            if match[1] not in own:
                raise Broken(f"{file.name}: in which context does {match[1]}::tr() stand?")
            return f"{own[match[1]]}::tr("

        copies.append(work / f"{index}-{file.name}")
        text = re.sub(r"\b(\w+)::tr\(", context_of, text)
        text = re.sub(r"^#include.*$", "", text, flags=re.MULTILINE)
        copies[-1].write_text(text, encoding="utf-8")
    return copies


def update(root, lupdate, ts, work, *more):
    """Brings the translation file `ts` up to the sources; `work` is a folder to work in."""
    files, texts = read_sources(root)
    lines = [f"QT_TRANSLATE_NOOP({json.dumps(context)}, {json.dumps(text, ensure_ascii=False)});"
             for context, text in texts]
    tables = work / "tables.cpp"
    tables.write_text("void tables() {\n" + "\n".join(lines) + "\n}\n", encoding="utf-8")
    language = ts.stem.split("_")[1]
    command = [lupdate, "-silent", "-locations", "none", "-source-language", "en",
               "-target-language", language, *more]
    if language == "en":
        command.append("-pluralonly")
    command += [str(file) for file in spelled_out(files, work)] + [str(tables), "-ts", str(ts)]
    try:
        run = subprocess.run(command, capture_output=True, text=True, check=False,
                             timeout=PATIENCE_SECONDS)
    except subprocess.TimeoutExpired as late:
        raise Broken(f"lupdate did not end within {PATIENCE_SECONDS} s") from late
    if run.returncode != 0:
        raise Broken(f"lupdate ended with {run.returncode}: {run.stderr.strip()}")


def messages_of(ts):
    """(context, text, comment) -> message element."""
    found = {}
    for context in ElementTree.parse(ts).getroot().iter("context"):
        for message in context.iter("message"):
            key = (context.findtext("name"), message.findtext("source"),
                   message.findtext("comment") or "")
            found[key] = message
    return found


def placeholders(text):
    return sorted(set(PLACEHOLDER.findall(text)))


def complaints_on(key, message, language):
    """What is wrong with one message."""
    translation = message.find("translation")
    kind = translation.get("type")
    if kind is not None:
        return [f"is {kind}"]
    forms = [translation.text or ""]
    if message.get("numerus") == "yes":
        forms = [form.text or "" for form in translation.iter("numerusform")]
        if len(forms) != PLURAL_FORMS[language]:
            return [f"has {len(forms)} plural forms, not {PLURAL_FORMS[language]}"]
    wrong = []
    for index, form in enumerate(forms):
        # The form of one may say the number in words, or leave it out.
        one = len(forms) > 1 and index == 0
        asked, given = placeholders(key[1]), placeholders(form)
        if one:
            asked = [mark for mark in asked if mark in given or mark != "%n"]
        if not form.strip():
            wrong.append("is empty")
        elif asked != given:
            wrong.append(f"has the placeholders {given}, the text has {asked}")
        elif (form[:1].isspace(), form[-1:].isspace()) != (key[1][:1].isspace(),
                                                          key[1][-1:].isspace()):
            wrong.append("begins or ends with another blank than the text")
    return wrong


def check(root, lupdate):
    """Every complaint there is, one a line."""
    complaints = []
    files = sorted((root / LANGUAGES).glob("ladlework_*.ts"))
    if not files:
        raise Broken("there is no translation file")
    for ts in files:
        language = ts.stem.split("_")[1]
        if language not in PLURAL_FORMS:
            raise Broken(f"{ts.name}: enter in .ci/languages.py how many plural forms it has")
        with tempfile.TemporaryDirectory() as folder:
            fresh = Path(folder) / ts.name
            shutil.copy(ts, fresh)
            update(root, lupdate, fresh, Path(folder))
            shipped, wanted = messages_of(ts), messages_of(fresh)
        for key, message in wanted.items():
            wrong = complaints_on(key, message, language)
            if key not in shipped:
                wrong = ["is missing"]
            complaints += [f"{ts.name}: {key[0]}: {json.dumps(key[1], ensure_ascii=False)} {one}"
                           for one in wrong]
    return complaints


def find_lupdate(given):
    for name in (given, "/usr/lib/qt6/bin/lupdate", "lupdate6", "lupdate"):
        path = name and shutil.which(name)
        if path:
            return path
    raise Broken("lupdate of Qt 6 is not installed (Debian: qt6-l10n-tools)")


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("what", choices=["check", "update"])
    parser.add_argument("--root", type=Path, default=Path(__file__).resolve().parent.parent)
    parser.add_argument("--lupdate")
    arguments = parser.parse_args()
    lupdate = find_lupdate(arguments.lupdate)
    if arguments.what == "update":
        for ts in sorted((arguments.root / LANGUAGES).glob("ladlework_*.ts")):
            with tempfile.TemporaryDirectory() as folder:
                update(arguments.root, lupdate, ts, Path(folder), "-no-obsolete")
        return 0
    complaints = check(arguments.root, lupdate)
    print("\n".join(complaints) or "Every text of the printed pages is translated.")
    return 1 if complaints else 0


if __name__ == "__main__":
    try:
        sys.exit(main())
    except Broken as broken:
        print(broken, file=sys.stderr)
        sys.exit(1)
