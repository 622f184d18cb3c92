"""The completeness check of the translations finds each kind of fault that it is there for."""
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
LUPDATE = sys.argv.pop()


class FindsFaults(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.root = Path(self.folder.name)
        shutil.copytree(ROOT / "resources" / "languages", self.root / "resources" / "languages")
        shutil.copytree(ROOT / "resources" / "reference", self.root / "resources" / "reference")
        shutil.copytree(ROOT / "core", self.root / "core")
        (self.root / "ui").symlink_to(ROOT / "ui")
        self.spanish = self.root / "resources" / "languages" / "ladlework_es.ts"

    def replace(self, path, pattern, new):
        text, count = re.subn(pattern, new, path.read_text(encoding="utf-8"), count=1)
        self.assertEqual(count, 1, pattern)
        path.write_text(text, encoding="utf-8")

    def check(self):
        return subprocess.run(
            [sys.executable, str(ROOT / ".ci" / "languages.py"), "check", "--root", str(self.root),
             "--lupdate", LUPDATE], capture_output=True, text=True, check=False)

    def assert_found(self, *parts):
        run = self.check()
        self.assertEqual(run.returncode, 1, run.stdout)
        for part in parts:
            self.assertIn(part, run.stdout + run.stderr)

    def test_passes_as_shipped(self):
        self.assertEqual(self.check().returncode, 0)

    def test_a_text_new_in_the_code(self):
        self.replace(self.root / "core/handout/cover_card.cpp", "Who drinks what", "Who has what")
        self.assert_found('"Who has what" is missing', '"Who drinks what" is vanished')

    def test_a_cut_new_in_the_catalogue(self):
        self.replace(self.root / "resources/reference/cuts.csv", ",whole chicken,",
                     ",half a chicken,")
        self.assert_found('Catalogue: "half a chicken" is missing')

    def test_an_unfinished_one(self):
        self.replace(self.spanish, "<translation>Lista de compras", '<translation type="unfinished">'
                     "Lista de compras")
        self.assert_found('"Shopping list" is unfinished')

    def test_an_empty_one(self):
        self.replace(self.spanish, "<translation>Lista de compras", "<translation>")
        self.assert_found('"Shopping list" is empty')

    def test_another_placeholder(self):
        self.replace(self.spanish, "<translation>Fuentes: %1", "<translation>Fuentes: %2")
        self.assert_found("has the placeholders ['%2']")

    def test_a_lost_number_in_a_plural(self):
        self.replace(self.spanish, "<numerusform>%n horas", "<numerusform>horas")
        self.assert_found('"%n hour(s)" has the placeholders []')

    def test_a_plural_form_too_few(self):
        self.replace(self.spanish, r"<numerusform>%n hora</numerusform>\s*", "")
        self.assert_found('"%n hour(s)" is empty')

    def test_an_english_plural_left_out(self):
        self.replace(self.root / "resources/languages/ladlework_en.ts",
                     "<numerusform>%n hours</numerusform>", "<numerusform></numerusform>")
        self.assert_found('ladlework_en.ts: Handout: "%n hour(s)"')

    def test_a_language_of_unknown_plurals(self):
        shutil.copy(self.spanish, self.spanish.with_name("ladlework_fr.ts"))
        self.assert_found("ladlework_fr.ts: enter in .ci/languages.py")


if __name__ == "__main__":
    unittest.main()
