"""What a package installs, looked at from outside: `cmake --install` of the build tree into a folder, then the tools of
the standards over it. And what the scripts say while they build and install.

PANSIDE_BUILD names the tree, PANSIDE_SOURCE the sources. Uses desktop-file-utils, appstream, shared-mime-info, gio, man
and bash-completion; where one is missing, the test fails.
"""
import gzip
import os
import pathlib
import pty
import re
import shutil
import struct
import subprocess
import tempfile
import unittest
import xml.etree.ElementTree

BUILD = os.environ["PANSIDE_BUILD"]
SOURCE = pathlib.Path(os.environ["PANSIDE_SOURCE"])
SIZES = (16, 22, 24, 32, 48, 64, 128, 256)


def run(*words, **more):
    done = subprocess.run([str(word) for word in words], capture_output=True, text=True, timeout=120, **more)
    return done.returncode, done.stdout + done.stderr


class Installed(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.root = pathlib.Path(tempfile.mkdtemp(prefix="panside-install-"))
        cls.addClassCleanup(shutil.rmtree, cls.root, ignore_errors=True)
        status, said = run("cmake", "--install", BUILD, "--prefix", "/usr", env=dict(os.environ, DESTDIR=str(cls.root)))
        assert status == 0, said
        cls.usr = cls.root / "usr"
        cls.share = cls.usr / "share"
        cls.panside = cls.usr / "bin" / "panside"
        cls.surroundings = dict(os.environ, HOME=str(cls.root), LC_ALL="C.UTF-8", PATH=f"{cls.usr}/bin:/usr/bin:/bin")

    def good(self, *words, **more):
        status, said = run(*words, **more)
        self.assertEqual(status, 0, f"{words}\n{said}")
        return said

    def test_the_program_runs_where_it_was_installed(self):
        self.assertRegex(self.good(self.panside, "--version", env=self.surroundings), r"^panside \d+\.\d+\.\d+$")
        nights = sorted((self.share / "panside" / "sample-data").glob("*.csv"))
        self.assertEqual([night.name for night in nights],
                         sorted(night.name for night in (SOURCE / "sample-data").glob("*.csv")))
        for night in nights:
            self.good(self.panside, "check", night, env=self.surroundings)

    def test_desktop_entries_are_valid_and_start_what_is_there(self):
        for entry in (self.share / "applications" / "panside.desktop",
                      self.share / "panside" / "autostart" / "panside-kiosk.desktop"):
            self.assertEqual(self.good("desktop-file-validate", entry), "")
            for command in re.findall(r"^Exec=(\S+)(.*)$", entry.read_text(), re.M):
                self.assertTrue((self.usr / "bin" / command[0]).is_file(), command)
                self.good(self.panside, *command[1].split(), "--help", env=self.surroundings)
            icon = re.search(r"^Icon=(.+)$", entry.read_text(), re.M)[1]
            self.assertTrue((self.share / f"icons/hicolor/scalable/apps/{icon}.svg").is_file())

    def test_metainfo_is_valid_and_of_this_version(self):
        place = self.share / "metainfo" / "org.panside.panside.metainfo.xml"
        # Panside has no page on the net: the one thing that AppStream 1.0 may warn of.
        status, said = run("appstreamcli", "validate", "--no-net", "--pedantic", place)
        faults = [line for line in said.splitlines() if line.startswith(("E:", "W:"))]
        self.assertTrue(status == 0 or faults, said)
        self.assertEqual([line for line in faults if "url-homepage-missing" not in line], [])
        component = xml.etree.ElementTree.parse(place).getroot()
        version = self.good(self.panside, "--version", env=self.surroundings).split()[1]
        self.assertEqual(component.find("releases/release").get("version"), version)
        changes = gzip.decompress((self.share / "doc/panside/changelog.gz").read_bytes()).decode()
        self.assertRegex(changes, rf"^panside \({re.escape(version)}")
        self.assertTrue((self.share / "applications" / component.findtext("launchable")).is_file())

    def test_icons_have_the_size_of_their_folder(self):
        for size in SIZES:
            for kind, name in (("apps", "panside"), ("mimetypes", "text-x-panside-shift-log")):
                png = (self.share / f"icons/hicolor/{size}x{size}/{kind}/{name}.png").read_bytes()
                self.assertEqual(png[:8], b"\x89PNG\r\n\x1a\n")
                self.assertEqual(struct.unpack(">II", png[16:24]), (size, size))

    def test_a_shift_log_is_known_by_name_and_first_line_and_another_table_is_not(self):
        mime = self.root / "mime-home"
        shutil.copytree(self.share / "mime", mime / "mime")
        shutil.copy("/usr/share/mime/packages/freedesktop.org.xml", mime / "mime" / "packages")
        self.good("update-mime-database", mime / "mime")
        around = dict(self.surroundings, XDG_DATA_HOME=str(mime), XDG_DATA_DIRS=str(self.root / "nothing"))
        log = (SOURCE / "sample-data" / "steady.csv").read_text()
        for name, text, kind in (("no-ending", log, "text/x-panside-shift-log"),
                                 ("shift.csv", log, "text/x-panside-shift-log"),
                                 ("other.csv", "date,pan\n2027-03-14,103.4\n", "text/csv")):
            (self.root / name).write_text(text)
            said = self.good("gio", "info", "-a", "standard::content-type", self.root / name, env=around)
            self.assertIn(f"standard::content-type: {kind}\n", said)

    def test_the_man_page_is_well_formed_and_names_every_command(self):
        page = self.share / "man" / "man1" / "panside.1.gz"
        said = self.good("man", "--warnings", "-E", "UTF-8", "-l", page,
                         env=dict(self.surroundings, MANROFFSEQ="", MANWIDTH="100"))
        self.assertNotIn("warning", said)
        for command in self.commands():
            self.assertIn(f"panside {command}", said)
        self.assertIn("\nNAME\n       panside - ", said)

    def commands(self):
        said = self.good(self.panside, "--help", env=self.surroundings)
        found = re.findall(r"^  ([a-z]+) ", said.split("Subcommands:\n")[1].split("\n\n")[0], re.M)
        self.assertGreater(len(found), 5)
        return found

    def completed(self, *words):
        """What bash would offer after these words, the last of them unfinished."""
        script = (f"source /usr/share/bash-completion/bash_completion; source '{self.share}/bash-completion/completions/panside'\n"
                  'COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _panside; printf "%s\\n" "${COMPREPLY[@]}"')
        return set(self.good("bash", "-c", script, "bash", "panside", *words, env=self.surroundings,
                             cwd=SOURCE / "sample-data").split())

    def test_the_shell_completes_what_the_program_knows(self):
        self.assertEqual(self.completed(""), set(self.commands()))
        self.assertEqual(self.completed("re"), {c for c in self.commands() if c.startswith("re")})
        for command in [c for c in self.commands() if c != "reckon"]:
            said = self.good(self.panside, command, "--help", env=self.surroundings)
            options = set(re.findall(r"^  (?:-h,)?(--[a-z-]+)", said, re.M))
            self.assertGreater(len(options), 1, command)
            self.assertEqual(self.completed(command, "--"), options, command)
        self.assertEqual(self.completed("--language", ""), {"en", "fr"})
        self.assertEqual(self.completed("report", "--units", "m"), {"metric"})
        self.assertIn("boiling", self.completed("reckon", "b"))
        self.assertIn("steady.csv", self.completed("replay", "st"))

    def test_the_manual_is_beside_the_program(self):
        manual = self.share / "panside" / "manual"
        self.assertEqual({page.stem for page in manual.glob("*.html")},
                         {page.stem for page in (SOURCE / "resources" / "manual").glob("*.md")})
        self.assertEqual((self.share / "doc/panside/html").resolve(), manual.resolve())
        for page in manual.glob("*.html"):
            self.assertNotRegex(page.read_text(), r'(src|href)="https?:', "the manual needs no network")

    def test_the_seated_user_gets_the_ports_of_adapters(self):
        # systemd's 73-seat-late.rules gives out what is tagged before it (sd-login, "uaccess").
        rule = self.usr / "lib/udev/rules.d/70-panside.rules"
        self.assertLess(rule.name, "73-seat-late.rules")
        lines = [line for line in rule.read_text().splitlines() if line and not line.startswith("#")]
        self.assertEqual(len(lines), 1)
        self.assertRegex(lines[0], r'KERNEL=="ttyUSB\[0-9\]\*\|ttyACM\[0-9\]\*".*TAG\+="uaccess"$')


class HowFar(unittest.TestCase):
    """The scripts' `counting`, over commands that say what ninja and apt-get say."""

    NINJA = "printf '[1/2] Building a\\n[2/2] Linking b\\nFAILED: c\\n'; exit 4"
    APT = "printf '0 upgraded, 2 newly installed, 0 to remove.\\nSetting up a (1) ...\\nSetting up b (1) ...\\n'"

    def counting(self, command, terminal):
        with tempfile.NamedTemporaryFile("r") as log:
            ours, theirs = pty.openpty()
            script = 'set -euo pipefail; . app/packages.sh; counting "$0" bash -c "$1"'
            done = subprocess.run(["bash", "-c", script, log.name, command], cwd=SOURCE, timeout=60,
                                  stdout=subprocess.PIPE, stderr=theirs if terminal else subprocess.PIPE)
            os.close(theirs)
            said = b"" if terminal else done.stderr
            try:
                while terminal and (more := os.read(ours, 4096)):
                    said += more
            except OSError:  # a terminal that nobody writes to any more
                pass
            os.close(ours)
            self.assertEqual(done.stdout, b"")
            return done.returncode, said.decode(), log.read()

    def test_a_terminal_is_told_the_steps_and_left_clean(self):
        status, said, log = self.counting(self.NINJA, True)
        self.assertEqual(status, 4)
        self.assertEqual(said, "\r[1/2] \r[2/2] \r\x1b[K")
        self.assertIn("FAILED: c", log)
        status, said, _ = self.counting(self.APT, True)
        self.assertEqual((status, said), (0, "\r[1/2] \r[2/2] \r\x1b[K"))

    def test_what_is_no_terminal_is_told_nothing(self):
        status, said, log = self.counting(self.NINJA, False)
        self.assertEqual((status, said), (4, ""))
        self.assertEqual(log, "[1/2] Building a\n[2/2] Linking b\nFAILED: c\n")


if __name__ == "__main__":
    unittest.main()
