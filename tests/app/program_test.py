"""The whole program from outside: commands and their exit statuses, a probe on a pseudo-terminal, a power cut, the window.

PANSIDE names the program, PANSIDE_SOURCE the tree. Needs nothing beyond the standard library; the window's tests need Xvfb and
xdotool.
"""
import csv
import datetime
import hashlib
import json
import os
import pathlib
import pty
import resource
import select
import shutil
import signal
import sqlite3
import struct
import subprocess
import sys
import tempfile
import termios
import threading
import time
import unittest
import zipfile

PANSIDE = os.environ["PANSIDE"]
SAMPLE = pathlib.Path(os.environ["PANSIDE_SOURCE"]) / "sample-data" / "first-run.csv"
HEADER = "time,what,value,unit,detail\n"


class Place(unittest.TestCase):
    """A folder of its own, and a home in it, for each test."""

    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="panside-test-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.surroundings = dict(os.environ, HOME=str(self.folder), TZ="UTC", LC_ALL="C.UTF-8")
        for name in ("XDG_DATA_HOME", "XDG_CONFIG_HOME", "DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
            self.surroundings.pop(name, None)

    def run_it(self, *words, status=0, stdin=""):
        done = subprocess.run([PANSIDE, *map(str, words)], input=stdin, capture_output=True, text=True, timeout=120,
                              env=self.surroundings, cwd=self.folder)
        self.assertEqual(done.returncode, status, f"{words}\n{done.stdout[-2000:]}\n{done.stderr[-2000:]}")
        return done

    def write(self, name, text):
        place = self.folder / name
        place.write_bytes(text if isinstance(text, bytes) else text.encode())
        return place

    def start(self, *words, **more):
        process = subprocess.Popen([PANSIDE, *map(str, words)], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE, text=True, env=self.surroundings, cwd=self.folder, **more)
        self.addCleanup(self.end, process)
        return process

    @staticmethod
    def end(process):
        if process.poll() is None:
            process.kill()
        process.wait()
        for stream in (process.stdin, process.stdout, process.stderr):
            if stream:
                stream.close()


class Logs(Place):
    def test_a_rehearsal_is_the_same_to_the_last_byte(self):
        first = self.run_it("rehearse", "--hours", "0.5", "--seed", "7").stdout
        self.assertEqual(first, self.run_it("rehearse", "--hours", "0.5", "--seed", "7").stdout)
        self.assertNotEqual(first, self.run_it("rehearse", "--hours", "0.5", "--seed", "8").stdout)
        self.run_it("rehearse", "--hours", "0.5", "--seed", "7", "--out", "a.csv")
        self.assertEqual((self.folder / "a.csv").read_text(), first)
        self.run_it("check", "a.csv")

    def test_a_replay_prints_one_object_a_step_on_whole_seconds(self):
        log = self.write("a.csv", HEADER + "2027-03-14T21:00:00.4Z,pressure,101.325,kPa,\n"
                                           "2027-03-14T21:00:01Z,syrup_pan,101,degC,\n2027-03-14T21:02:00.2Z,lit,,,\n")
        lines = [json.loads(line) for line in self.run_it("replay", log, "--every", "60").stdout.splitlines()]
        self.assertEqual([line["t"] for line in lines], ["2027-03-14T21:00:01Z", "2027-03-14T21:01:01Z",
                                                         "2027-03-14T21:02:01Z"])
        # Water boils at 99.974 degC at one standard atmosphere (ITS-90; IAPWS R7-97).
        self.assertAlmostEqual(lines[0]["waterBoilsC"], 99.974, delta=0.002)

    def test_an_export_replays_to_the_same_pictures(self):
        self.run_it("import", SAMPLE, "--journal", "j.db")
        self.run_it("export", "--journal", "j.db", "--out", "b.csv")
        before = self.run_it("replay", SAMPLE, "--every", "300").stdout
        self.assertEqual(before, self.run_it("replay", "b.csv", "--every", "300").stdout)
        self.assertGreater(len(before.splitlines()), 5)

    def test_a_log_imported_twice_is_there_once(self):
        self.run_it("import", SAMPLE, "--journal", "j.db")
        once = self.run_it("export", "--journal", "j.db").stdout
        self.run_it("import", SAMPLE, "--journal", "j.db")
        self.assertEqual(once, self.run_it("export", "--journal", "j.db").stdout)

    def test_several_shifts_must_be_chosen_from(self):
        for seed in (1, 2):
            text = self.run_it("rehearse", "--hours", "0.5", "--seed", seed).stdout
            self.write(f"{seed}.csv", text.replace("2026-02-27", f"2026-02-2{seed}").replace("2026-02-28", f"2026-02-2{seed + 1}"))
            self.run_it("import", f"{seed}.csv", "--journal", "j.db")
        refused = self.run_it("export", "--journal", "j.db", status=1)
        names = [line.split()[0] for line in refused.stderr.splitlines() if line.startswith("  ")]
        self.assertEqual(len(names), 2)
        self.assertIn("lit", self.run_it("export", "--journal", "j.db", "--shift", names[0]).stdout)
        self.run_it("export", "--journal", "j.db", "--shift", "1999-01-01T00:00:00Z", status=1) # there is none

    def test_a_report_as_table_and_as_page(self):
        self.run_it("import", SAMPLE, "--journal", "j.db")
        self.assertIn("draws,", self.run_it("report", "--journal", "j.db").stdout)
        self.run_it("report", "--journal", "j.db", "--out", "night.pdf")
        self.assertTrue((self.folder / "night.pdf").read_bytes().startswith(b"%PDF-"))
        self.assertEqual((self.folder / "night.pdf").read_bytes().count(b"/Type /Page\n"), 1)
        self.run_it("report", "--journal", "j.db", "--out", "night.xlsx")
        self.assertTrue((self.folder / "night.xlsx").read_bytes().startswith(b"PK"))
        self.run_it("report", "--journal", "j.db", "--out", "night.doc", status=2)

    def test_lots_and_the_book_as_table_as_pages_and_as_a_spreadsheet(self):
        self.run_it("rehearse", "--season", "--seed", "3", "--out", "made")
        house = sorted(place for place in (self.folder / "made").iterdir() if place.is_dir())[0]
        self.run_it("import", *sorted(house.glob("*.csv")), "--journal", "j.db")
        for what in ("--lots", "--book"):
            self.assertGreater(len(self.run_it("report", "--journal", "j.db", what).stdout.splitlines()), 3)
            for name, begins in (("a.pdf", b"%PDF-"), ("a.xlsx", b"PK"), ("a.csv", b"")):
                self.run_it("report", "--journal", "j.db", what, "--out", name)
                self.assertTrue((self.folder / name).read_bytes().startswith(begins), name)
            self.assertIn(b"%%EOF", (self.folder / "a.pdf").read_bytes()[-16:])
        self.assertEqual([place.name for place in self.folder.glob("*.part*")], [])

    def test_a_season_as_table_as_pages_and_as_a_spreadsheet(self):
        """Larkspur Hollow's five evenings lie in one spring; an unknown year is refused with those there are."""
        logs = sorted(SAMPLE.parent.glob("*.csv"))
        self.run_it("import", *logs, "--journal", "j.db")
        table = self.run_it("report", "--journal", "j.db", "--season", "2026").stdout.splitlines()
        self.assertEqual(len(table), len(logs) + 2)
        heads, last = table[0].split(","), table[-1].split(",")
        self.assertEqual(last[0], "together")
        draws = heads.index("draws")
        self.assertEqual(sum(int(row.split(",")[draws]) for row in table[1:-1]), int(last[draws]))
        self.run_it("report", "--journal", "j.db", "--season", "--out", "season.pdf", "--language", "fr", "--units", "us")
        pages = (self.folder / "season.pdf").read_bytes().count(b"/Type /Page\n")
        self.assertEqual(pages, len(logs) + 2)
        self.run_it("report", "--journal", "j.db", "--season", "2026", "--out", "season.xlsx", "--language", "fr")
        with zipfile.ZipFile(self.folder / "season.xlsx") as book:
            self.assertIn("sirop".encode(), book.read("xl/sharedStrings.xml"))
        refused = self.run_it("report", "--journal", "j.db", "--season", "1999", status=1).stderr
        self.assertIn("1999", refused)
        self.assertIn("2026", refused)
        self.run_it("report", "--journal", "j.db", "--season", "soon", status=2)


class Seasons(Place):
    """The made-up season of both houses against its truth, by the commands alone."""

    LOST_WEEK = ("2027-03-08", "2027-03-15")

    def book(self, journal, house, without=None):
        """Kilograms of sugar and their doubt by vessel, and what the balance says, out of the inspector's book."""
        kept = self.folder / journal
        kept.mkdir()
        for log in sorted(house.glob("*.csv")):
            rows = log.read_text().splitlines(True)
            if without:
                rows = rows[:1] + [row for row in rows[1:] if not without[0] <= row[:10] < without[1]]
            if len(rows) > 1:
                (kept / log.name).write_text("".join(rows))
        self.run_it("import", *sorted(kept.glob("*.csv")), "--journal", f"{journal}.db")
        said, at, held = self.run_it("report", "--journal", f"{journal}.db", "--book").stdout, None, {}
        for row in csv.reader(said.splitlines()):
            at = row[0] if len(row) == 1 else None if not row else at
            if at == "Vessels" and len(row) == 8 and row[0] != "vessel":
                held[row[0]] = (float(row[5]), float(row[6]), row[7])
        return held, {row[0]: row[1] for row in csv.reader(said.splitlines()) if len(row) == 2}

    def test_sugar_in_every_vessel_and_pan_is_the_truth_or_within_what_is_said(self):
        for seed in (1, 3):
            self.run_it("rehearse", "--season", "--seed", seed, "--out", f"made{seed}")
            for house in ("small", "large"):
                place = self.folder / f"made{seed}" / house
                made = json.loads((place / "truth.json").read_text())
                truth = {name: one["sugarKg"] for name, one in made["vessels"].items()}
                truth["the pans"] = made["pans"]["sugarKg"]
                held, balance = self.book(f"all-{house}-{seed}", place)
                self.assertEqual(set(held), set(truth))
                for name, kg in truth.items():
                    self.assertAlmostEqual(held[name][0], kg, delta=0.011, msg=f"{house} {seed} {name}")
                self.assertLess(abs(float(balance["does not close"].split(" ")[0])), 0.11)
                lost, balance = self.book(f"lost-{house}-{seed}", place, self.LOST_WEEK)
                wrong = 0
                for name, kg in truth.items():
                    book, doubt, silence = lost[name]
                    wrong += abs(book - kg) > 0.1
                    self.assertLessEqual(abs(book - kg), doubt + 0.011, f"{house} {seed} {name}: {lost[name]}")
                    self.assertTrue(silence or doubt <= max(0.5, 0.45 * max(book, kg)), f"{name}: {lost[name]}")
                self.assertGreater(wrong, 0, "the week mattered")
                self.assertTrue(any(silence for _, _, silence in lost.values()))


class BadSap(Place):
    """What people write wrong of sap: marked or refused with its line and what was likely meant, never forced to balance."""

    TANKS = HEADER + "".join(f"2027-03-01T06:00:00Z,vessel,{litres},L,name={name};kind={kind}\n" for name, kind, litres in (
        ("north", "gather", 1000), ("truck", "truck", 1000), ("house tank", "hold", 3000), ("sweet", "concentrate", 500),
        ("old", "gather", 800))) + "2027-03-01T07:00:00Z,vessel,,,name=old;out=yes\n"
    SAP = "09:00:00Z,gathered,900,L,to=north;brix=2"

    def told(self, *rows, status=0):
        book = self.write("book.csv", self.TANKS + "".join(f"2027-03-02T{row}\n" for row in rows))
        checked = self.run_it("check", book, status=status)
        journal = self.folder / "j.db"
        journal.unlink(missing_ok=True)
        kept = self.run_it("import", book, "--journal", journal, status=status)
        for line in (checked.stdout + checked.stderr).splitlines():
            if line.startswith(f"{book}:") and line[len(str(book)) + 1].isdigit():
                self.assertIn(line, kept.stdout + kept.stderr)
        if status:
            self.assertIn("nothing was imported", kept.stderr)
            return checked.stdout + checked.stderr, {}
        said = self.run_it("report", "--journal", journal, "--book").stdout
        return checked.stdout, {row[0]: row for row in csv.reader(said.splitlines()) if row}

    def test_what_does_not_fit_is_kept_and_marked_with_the_entry_that_does_not(self):
        for rows, mark in (
                ((self.SAP, "11:00:00Z,gathered,300,L,to=north;brix=2"), "200.0 L over its rim of 1000.0 L. The entry before it, of "
                 "2027-03-02T09:00:00Z, does not fit"),
                ((self.SAP, "10:00:00Z,moved,1400,L,from=north;to=house tank"), "500.0 L more were taken out"),
                (("09:00:00Z,gathered,300,L,to=north;brix=22",), "Did you mean 2.2?"),
                ((self.SAP, "10:00:00Z,concentrated,100,L,from=north;to=sweet;brix=1.8"), "thinner than the 2.0"),
                (("09:00:00Z,gathered,300,L,to=old;brix=2",), "old was retired before this")):
            self.assertIn(mark, self.told(*rows)[0])

    def test_a_count_is_whole_and_a_limit_is_written_out(self):
        syrup = "09:00:00Z,bought,90,L,what=syrup;from=a;vessel=truck;brix=67"
        for row, says in (("packed,10.5,,lot=A;from=truck;size=1L", "value 10.5 is not a whole number. Write how many there are."),
                          ("packed,10,,lot=A;from=truck;size=1L;broken=1.5", "broken 1.5 is not a whole number"),
                          ("packed,-3,,lot=A;from=truck;size=1L", "it must be 0 to 10000000"),
                          ("packed,,,lot=A;from=truck;size=1L", "the value is missing. Write a whole number."),
                          ("gathered,50gal,,to=north", "Write 50 as the value and gal as the unit.")):
            self.assertIn(says, self.told(syrup, "10:00:00Z," + row, status=1)[0])

    def test_a_book_is_one_though_it_is_quoted_or_begins_with_a_row_that_nobody_knows(self):
        rows = ["2027-03-01T06:00:00Z,vessel,400,L,name=barrel;kind=hold", "2027-03-02T06:00:00Z,gathered,30,L,to=barrel;brix=2"]
        quoted = "\n".join('"' + row.replace(",", '","') + '"' for row in [HEADER.strip(), *rows]) + "\n"
        strange = HEADER + "2027-03-01T05:00:00Z,moon,full,,\n" + "\n".join(rows) + "\n"
        for i, text in enumerate((quoted, strange)):
            book = self.write(f"b{i}.csv", text)
            self.assertIn("added to the day book of 2027", self.run_it("import", book, "--journal", f"b{i}.db").stdout)

    def test_rows_of_the_day_book_in_a_shifts_log_are_judged_as_there(self):
        book = self.write("book.csv", HEADER + "2027-03-01T06:00:00Z,vessel,400,L,name=drum 7;kind=drum\n"
                         "2027-03-01T07:00:00Z,bought,40,L,what=syrup;vessel=drum 7;brix=66.9\n"
                         "2027-03-01T08:00:00Z,packed,3,,lot=A;from=drum 7;size=1L\n")
        def night(row):
            return self.write("night.csv", HEADER + "2027-03-03T20:00:00Z,lit,,,\n2027-03-03T22:00:00Z,draw_close,5,L,to=pail 1\n"
                             f"2027-03-03T22:10:00Z,{row}\n2027-03-03T23:00:00Z,shift_end,,,\n")
        for i, (row, says) in enumerate((("moved,1,L,from=pail 1;to=drum 8", 'night.csv:4: to="drum 8" is a vessel nobody named. Did you mean "drum 7"?'),
                                         ("packed,1,,lot=a;from=pail 1;size=1L", 'night.csv:4: lot "a" is a code twice'))):
            self.run_it("import", book, "--journal", f"n{i}.db")
            refused = self.run_it("import", night(row), "--journal", f"n{i}.db", status=1)
            self.assertIn(says, refused.stderr)
            self.assertIn("nothing was imported", refused.stderr)
            self.assertIn(says, self.run_it("check", night(row), "--journal", f"n{i}.db", status=1).stdout)
        # A vessel of a book that comes in with it is known, in whichever order they are named.
        good = night("moved,1,L,from=pail 1;to=drum 7")
        self.run_it("import", good, book, "--journal", "both.db")
        self.run_it("check", good, "--journal", "both.db")
        self.assertAlmostEqual(json.loads(self.run_it("trace", "drum 7", "--journal", "both.db", "--json").stdout)["litres"], 38, places=5)

    def test_marks_at_a_shifts_rows_are_said_with_their_line(self):
        book = self.write("book.csv", HEADER + "2027-03-01T06:00:00Z,vessel,400,L,name=barrel;kind=hold\n"
                          "2027-03-01T06:00:00Z,vessel,4,L,name=pail 1;kind=pail\n2027-03-02T06:00:00Z,gathered,300,L,to=barrel;brix=2\n")
        night = self.write("night.csv", HEADER + "2027-03-03T20:00:00Z,lit,,,\n2027-03-03T20:01:00Z,sap_in,350,L,from=barrel\n"
                           "2027-03-03T22:00:00Z,draw_close,5,L,to=pail 1\n"
                           "2027-03-03T22:03:00Z,draw_close,5,L,to=pail 1;entered=2027-03-03T23:00:00Z\n"
                           "2027-03-03T23:00:00Z,draw_close,1,L,\n2027-03-03T23:30:00Z,shift_end,,,\n")
        twice = "night.csv:5:22: this draw is told twice"
        alone = self.run_it("check", night).stdout
        self.assertIn(twice, alone)
        self.assertEqual(alone.count("night.csv:"), 2, alone)  # and the count
        self.run_it("import", book, "--journal", "j.db")
        for said in (self.run_it("check", night, "--journal", "j.db").stdout, self.run_it("import", night, "--journal", "j.db").stdout,
                     self.run_it("import", night, book, "--journal", "both.db").stdout):
            self.assertIn("night.csv:3: barrel: 50.0 L more were taken out", said)
            self.assertIn("night.csv:4: pail 1:", said)
            self.assertIn("night.csv:6: ", said)
        told = json.loads(self.run_it("import", night, "--json", "--journal", "only.db").stdout)
        self.assertEqual((told["logs"][0]["marks"], told["logs"][0]["warnings"]), ([], 1))
        told = json.loads(self.run_it("check", night, "--json", "--journal", "both.db").stdout)
        self.assertEqual([mark["line"] for mark in told["marks"]], [3, 4, 6])

    def test_a_day_book_is_not_replayed(self):
        book = self.write("book.csv", self.TANKS)
        self.assertIn(f"{book}: is a day book", self.run_it("replay", book, status=1).stderr)

    def test_a_ring_of_tanks_and_what_is_lost_with_a_name_balance_without_force(self):
        said, book = self.told(self.SAP, "10:00:00Z,moved,300,L,from=north;to=truck", "10:10:00Z,moved,100,L,from=truck;to=north",
                               "10:20:00Z,moved,100,L,from=north;to=truck", "11:00:00Z,lost,300,L,from=truck;why=spilled",
                               "12:00:00Z,lost,,,from=north;why=sour")
        self.assertIn("0 marks", said)
        self.assertEqual(book["does not close"][1].split(" ")[0].lstrip("-"), "0.0")
        self.assertAlmostEqual(float(book["lost: spilled"][1]) + float(book["lost: sour"][1]), float(book["gathered"][1]), delta=0.11)
        _, book = self.told(self.SAP, "18:00:00Z,dipped,960,L,in=north")
        self.assertAlmostEqual(float(book["does not close"][1].split(" ")[0]), 60 * 1.006 * 0.02, delta=0.11)

    def test_water_through_the_membrane_is_no_sea(self):
        said, _ = self.told("09:00:00Z,gathered,100,L,to=north;brix=0", "10:00:00Z,concentrated,20,L,from=north;to=sweet;brix=8")
        self.assertNotRegex(said.replace(str(self.folder), ""), r"[0-9]{5}")

    def test_heat_that_cannot_be_is_refused(self):
        self.assertIn("Did you mean 38 degF?", self.told("09:00:00Z,gathered,300,L,to=north;brix=2.2;temp=380degF", status=1)[0])
        night = self.write("night.csv", HEADER + "2027-03-02T17:00:00Z,sap_in,300,L,brix=2.2;temp=380degF\n")
        said = self.run_it("check", night, status=1)
        self.assertIn("Did you mean 38 degF?", said.stdout + said.stderr)


class BadInput(Place):
    def test_a_bad_row_is_named_and_nothing_is_imported(self):
        log = self.write("bad.csv", HEADER + "2027-03-14T21:00:00Z,syrup_pan,100,degC,\n"
                                             "2027-03-14T21:00:01Z,syrup_pan,1O1,degC,\n2027-03-14T21:00:02Z,syrup_pan,100,,\n")
        for words in (("check", log), ("replay", log), ("import", log, "--journal", "j.db")):
            done = self.run_it(*words, status=1)
            said = done.stdout + done.stderr
            self.assertIn("bad.csv:3", said)
            self.assertIn("1O1", said)
            self.assertIn("bad.csv:4", said)
        self.run_it("export", "--journal", "j.db", status=1)

    def test_another_loggers_table_is_read_by_a_mapping_file(self):
        table = self.write("logger.csv", "Station 7\nDate;Time;Pan;Stack\n14.03.2027;21:00:00;217,4;410\n"
                                         "14.03.2027;21:00:30;218,3;open\n")
        mapping = self.write("logger.toml", 'delimiter = ";"\ndecimal = ","\nheading = 2\ntimes = "day-first"\n'
                                            'date = "Date"\ntime = "Time"\nzone = "America/New_York"\n'
                                            'probe = "pan box"\n[[column]]\nis = "Pan"\nreads = "syrup_pan"\n'
                                            'unit = "degF"\n[[column]]\nis = 4\nreads = "stack"\nunit = "degC"\n')
        self.run_it("import", table, "--journal", "j.db", status=1)  # without one it is no log
        done = self.run_it("import", table, "--mapping", mapping, "--journal", "j.db").stdout
        self.assertIn("cells without a reading: 1", done)
        rows = self.run_it("export", "--journal", "j.db").stdout.splitlines()
        # In New York the clocks went forward that morning (second Sunday of March, 15 USC 260a): four hours to UTC.
        self.assertEqual(rows, [HEADER.strip(), "2027-03-15T01:00:00Z,syrup_pan,217.4,degF,probe=pan box",
                                "2027-03-15T01:00:00Z,stack,410,degC,probe=pan box",
                                "2027-03-15T01:00:30Z,syrup_pan,218.3,degF,probe=pan box"])
        mixed = self.run_it("import", table, SAMPLE, "--mapping", mapping, "--journal", "j.db", "--json").stdout
        self.assertEqual([one["outcome"] for one in json.loads(mixed)["logs"]], ["alreadyThere", "added"])

    def test_a_mapping_that_does_not_fit_is_told_and_nothing_is_imported(self):
        table = self.write("logger.csv", "Time,Pan\n2027-03-14 21:00:00,101\n")
        mapping = self.write("logger.toml", 'time = "Zeit"\nzone = "Mars/Base"\nspeed = 3\n[[column]]\nis = "Pan"\n'
                                            'reads = "syrup_pan"\nunit = "kPa"\n')
        told = self.run_it("import", table, "--mapping", mapping, "--journal", "j.db", status=1).stderr
        for part in ('logger.toml:1:8', '"Time" or "Pan"', "zone", "speed", "degC"):
            self.assertIn(part, told)
        told = self.run_it("import", table, "--mapping", "pan box", "--journal", "j.db", status=1).stderr
        self.assertIn("pan box: is neither a mapping file nor", told)

    def test_a_mapping_gives_no_name_that_a_log_cannot_carry(self):
        table = self.write("logger.csv", "Time,Pan\n2027-03-14 21:00:00,101\n")
        rest = '\ntime = "Time"\nzone = "UTC"\n[[column]]\nis = "Pan"\nreads = "syrup_pan"\nunit = "degC"\n'
        for name in ('"""pan\nbox"""', '"pan;box"', '"pan|box"', '"hand"', '" pan"', f'"{"x" * 61}"'):
            mapping = self.write("logger.toml", f"probe = {name}{rest}")
            told = self.run_it("import", table, "--mapping", mapping, "--journal", "j.db", status=1).stderr
            self.assertIn("a short name without", told, name)
        mapping = self.write("logger.toml", f'probe = "{"x" * 60}"{rest}')
        self.run_it("import", table, "--mapping", mapping, "--journal", "j.db")

    def test_a_table_and_a_log_come_through_a_pipe(self):
        table = "Time,Pan\n2027-03-14 21:00:00,101\n"
        mapping = self.write("logger.toml", 'time = "Time"\nzone = "UTC"\n[[column]]\nis = "Pan"\n'
                                            'reads = "syrup_pan"\nunit = "degC"\n')
        for text in (table, pathlib.Path(SAMPLE).read_text()):
            pipe = self.folder / "pipe"
            os.mkfifo(pipe)
            writer = threading.Thread(target=pipe.write_text, args=(text,))
            writer.start()
            done = self.run_it("import", pipe, "--mapping", mapping, "--journal", "j.db", "--json").stdout
            writer.join()
            pipe.unlink()
            self.assertEqual(json.loads(done)["logs"][0]["outcome"], "added")

    def test_a_map_made_on_the_screen_is_used_by_name(self):
        table = self.write("logger.csv", "Time,Pan\n2027-03-14 21:00:00,101\n")
        told = self.run_it("import", table, "--mapping", "remembered", "--journal", "j.db", status=1).stderr
        self.assertIn("no map is remembered", told)
        # As the screen keeps it: under the SHA-1 of the columns' names, a line each.
        key = hashlib.sha1(b"Time\nPan\n").hexdigest()
        choices = self.folder / ".config" / "panside" / "console.ini"
        choices.parent.mkdir(parents=True)
        choices.write_text(f'[maps]\n{key}="1|44|point|1|0|-|0|UTC|pan box|1:syrup_pan:degC"\n')
        self.run_it("import", table, "--mapping", "pan box", "--journal", "j.db")
        self.assertIn("2027-03-14T21:00:00Z,syrup_pan,101,degC,probe=pan box",
                      self.run_it("export", "--journal", "j.db").stdout)
        other = self.write("other.csv", "Time,Stack\n2027-03-15 21:00:00,400\n")
        told = self.run_it("import", other, "--mapping", "pan box", "--journal", "j.db", status=1).stderr
        self.assertIn("no map is remembered for a table with these columns", told)

    def test_mixed_line_ends_and_a_byte_order_mark_are_no_fault(self):
        log = self.write("mixed.csv", b"\xef\xbb\xbf" + HEADER.replace("\n", "\r\n").encode()
                         + b"2027-03-14T21:00:00Z,lit,,,\n2027-03-14T21:00:01Z,fired,,,\r\n")
        self.run_it("check", log)

    def test_wood_and_tank_that_cannot_be_are_refused_with_what_to_do(self):
        log = self.write("wood.csv", HEADER + "2027-03-14T21:00:00Z,lit,,,\n"
                         "2027-03-14T21:01:00Z,fired,900,lb,\n2027-03-14T21:09:00Z,fired,30,lb,moisture=120\n"
                         "2027-03-14T21:17:00Z,fired,30,gal,\n2027-03-14T21:18:00Z,set,120,percent,key=wood_moisture\n"
                         "2027-03-14T21:19:00Z,tank_level,2000000,gal,\n")
        told = self.run_it("check", log, status=1).stdout
        for line in (":3:28: value 900 cannot be: it must be 0 to 881.85 lb. Did you mean 90 lb?",
                     ":4:34: moisture 120 cannot be: it must be 0 to 80 percent. Did you mean 12 percent?",
                     ':5:31: unit "gal" cannot stand here. Write kg or lb.',
                     ":6:26: value 120 cannot be: it must be 0 to 80 percent. Did you mean 12 percent?",
                     ":7:33: tank_level 2000000 cannot be true; kept, and not believed."):
            self.assertIn("wood.csv" + line, told)

    def test_a_name_that_is_not_there_is_refused_with_those_like_it(self):
        self.write("book.csv", HEADER + "2027-03-01T06:00:00Z,vessel,40,gal,name=drum 7;kind=drum\n"
                   "2027-03-01T07:00:00Z,bought,30,gal,what=syrup;vessel=drum 7;brix=66.9\n"
                   "2027-03-02T07:00:00Z,packed,24,,lot=27-061;from=drum 7;size=1pt\n")
        self.run_it("import", "--journal", "house.journal", "book.csv")
        for words, like in ((("trace", "--journal", "house.journal", "drum 77"), "drum 7"),
                            (("report", "--journal", "house.journal", "--recall", "27-062"), "27-061")):
            self.assertIn(f"Was one of these meant? {like}", self.run_it(*words, status=1).stderr)
        self.assertEqual('"drum 7": no lot has this code.\n',
                         self.run_it("report", "--journal", "house.journal", "--recall", "drum 7", status=1).stderr)

    def test_a_mark_at_the_gauge_of_the_press_has_its_line(self):
        self.write("book.csv", HEADER + "2027-03-01T06:00:00Z,vessel,40,gal,name=drum 7;kind=drum\n"
                   "2027-03-01T06:00:00Z,vessel,20,gal,name=canner;kind=canner\n"
                   "2027-03-01T07:00:00Z,bought,30,gal,what=syrup;vessel=drum 7;brix=66.9\n"
                   "2027-03-01T08:00:00Z,press_on,,,from=drum 7;to=canner\n"
                   "2027-03-01T08:20:00Z,press_off,10,gal,result=clear\n")
        night = self.write("night.csv", HEADER + "2027-03-02T18:00:00Z,lit,,,\n" + "".join(
            f"2027-03-02T18:0{minute}:00Z,filter_pressure,21,psi,\n" for minute in range(1, 6)))
        self.run_it("import", "--journal", "house.journal", "book.csv")
        for words in (("check", night), ("import", night)):
            said = self.run_it(*words, "--journal", "house.journal").stdout
            self.assertIn("night.csv:6: ", said)

    def test_the_book_is_written_in_the_units_that_are_asked_for(self):
        self.write("book.csv", HEADER + "2027-03-01T06:00:00Z,vessel,40,gal,name=drum 7;kind=drum\n"
                   "2027-03-01T07:00:00Z,bought,30,gal,what=syrup;vessel=drum 7;brix=66.9\n")
        self.run_it("import", "--journal", "house.journal", "book.csv")
        for units, volume, other in (("us", "30\u00a0gal,", "\u00a0L,"), ("metric", "\u00a0L,", "\u00a0gal,")):
            said = self.run_it("report", "--journal", "house.journal", "--book", "--units", units).stdout
            self.assertIn(volume, said)
            self.assertNotIn(other, said)

    def test_an_import_says_what_it_changes_for_packed_lots(self):
        head = "time,what,value,unit,detail\n"
        (self.folder / "book.csv").write_text(head + """2027-03-01T06:00:00Z,vessel,400,L,name=barrel;kind=hold
2027-03-01T06:00:00Z,vessel,300,L,name=feed;kind=feed
2027-03-01T06:00:00Z,vessel,20,L,name=pail 3;kind=pail
2027-03-05T09:00:00Z,gathered,300,L,to=barrel;from=buckets;brix=2
2027-03-05T18:00:00Z,bought,5,L,what=syrup;from=neighbour;vessel=pail 3;brix=66.9
2027-03-06T12:00:00Z,packed,8,,lot=A;from=pail 3;size=0.5L;capped=84degC
2027-03-06T13:00:00Z,shipped,4,,lot=A;size=0.5L;to=Corner Shop
""")
        (self.folder / "night.csv").write_text(head + """2027-03-05T17:00:00Z,sap_in,,,from=barrel
2027-03-05T17:10:00Z,tank_level,300,L,
2027-03-05T19:00:00Z,tank_level,150,L,
2027-03-05T19:00:00Z,defoamer,2,,kind=butter
2027-03-05T19:01:00Z,draw_open,,,
2027-03-05T19:05:00Z,draw_close,3,L,to=pail 3
2027-03-05T22:00:00Z,shift_end,,,
""")
        first = self.run_it("import", self.folder / "book.csv", "--journal", "j.db").stdout
        self.assertNotIn("lot A", first)
        later = self.run_it("import", self.folder / "night.csv", "--journal", "j.db").stdout
        self.assertIn("lot A (8 × 0.5L; Corner Shop 4): held from now on; milk in it.", later)
        self.assertIn("the row of 2027-03-06T12:00:00Z: lot A: milk in it", later)
        # What is marked stays marked when the file is looked at again.
        self.assertIn("book.csv:7: lot A: milk in it", self.run_it("check", self.folder / "book.csv", "--journal", "j.db").stdout)

    def test_of_two_fires_the_next_to_fall_due_is_called(self):
        # Eight minutes a load the one, twelve the other: 22:36 and 22:38 the last, so 22:44 and then 22:50.
        rows = [f"2027-03-14T{21 + m // 60:02}:{m % 60:02}:00Z,fired,,," for m in range(0, 97, 8)]
        rows += [f"2027-03-14T{21 + m // 60:02}:{m % 60:02}:00Z,fired,,,fire=finishing" for m in range(2, 99, 12)]
        log = self.write("two.csv", HEADER + "2027-03-14T21:00:00Z,lit,,,\n" + "\n".join(sorted(rows)) + "\n"
                         + "2027-03-14T22:48:00Z,fired,,,\n2027-03-14T22:52:00Z,note,,,end\n")
        due = {line["t"]: line for line in map(json.loads, self.run_it("replay", log, "--every", "60").stdout.splitlines())}
        self.assertAlmostEqual(due["2027-03-14T22:40:00Z"]["fireDueS"], 240, delta=2)
        self.assertAlmostEqual(due["2027-03-14T22:46:00Z"]["fireDueS"], -120, delta=2)
        # Late by a quarter of its eight minutes, it is overdue; a minute late the twelve are called, no more.
        self.assertEqual(due["2027-03-14T22:46:00Z"]["alarms"], ["fire_overdue"])
        self.assertAlmostEqual(due["2027-03-14T22:49:00Z"]["fireDueS"], 60, delta=2)
        self.assertAlmostEqual(due["2027-03-14T22:51:00Z"]["fireDueS"], -60, delta=2)
        self.assertEqual(due["2027-03-14T22:51:00Z"]["alarms"], [])

    def test_what_is_not_there_or_no_journal_is_refused(self):
        self.assertIn("no such file", self.run_it("replay", "none.csv", status=1).stderr)
        self.assertIn("no such file", self.run_it("check", "none.csv", status=1).stderr)
        self.run_it("export", "--journal", "none.db", status=1)
        self.write("text.db", "this is no journal, but a letter to my aunt\n" * 50)
        for words in (("export", "--journal", "text.db"), ("import", SAMPLE, "--journal", "text.db")):
            self.assertIn("text.db", self.run_it(*words, status=1).stderr)
        other = sqlite3.connect(self.folder / "other.db")
        other.execute("CREATE TABLE bees(name)")
        other.commit()
        other.close()
        self.run_it("import", SAMPLE, "--journal", "other.db", status=1)

    def test_wrong_usage_is_status_two(self):
        for words in (("replay",), ("boil",), ("rehearse",), ("reckon", "moon"), ("replay", SAMPLE, "--set", "height=3m")):
            self.run_it(*words, status=2)

    def test_impossible_amounts_are_refused_with_their_place(self):
        log = self.write("odd.csv", HEADER + "2027-03-14T21:00:00Z,sap_in,-5,L,\n2027-03-14T21:00:01Z,syrup_pan,100,psi,\n")
        said = self.run_it("check", log, status=1).stdout
        self.assertIn("odd.csv:2", said)
        self.assertIn("odd.csv:3", said)

    def test_a_probe_file_with_a_fault_is_refused_with_its_line(self):
        probe = self.write("probe.toml", '[[port]]\ndevice = "/dev/ttyS0"\nbauds = 9600\n')
        self.assertIn("probe.toml:3", self.run_it("tend", "--probe", probe, "--journal", "j.db", status=1).stderr)


class Faults(Place):
    """What a disk, a file or a letter may do, and what then stands."""

    def test_letters_that_act_on_a_terminal_are_shown(self):
        log = self.write("n\x1b[2Jight.csv", HEADER + "2025-03-14T18:00:00Z,l\x1b[31mit,,,\n2025-03-14,\x9b31m,,,\n")
        done = self.run_it("check", log, status=1)
        said = done.stdout + done.stderr
        self.assertNotIn("\x1b", said)
        self.assertNotIn("\x9b", said)
        self.assertIn("\\x1b[31m", said)
        self.assertIn("n\\x1b[2Jight.csv", said)

    def test_a_cell_of_a_report_is_no_formula(self):
        log = self.write("night.csv", HEADER + "2025-03-14T18:00:00Z,crew,,,by==cmd|calc\n2025-03-14T18:01:00Z,lit,,,\n"
                                             "2025-03-14T18:02:00Z,note,,,=HYPERLINK(1)\n")
        self.run_it("import", log, "--journal", "j.db")
        for words in (["report", "--journal", "j.db"], ["report", "--journal", "j.db", "--season"]):
            table = self.run_it(*words).stdout
            for line in table.splitlines():
                for cell in line.split(","):
                    self.assertFalse(cell.strip('"').startswith(("=", "@")), line)
            self.assertIn("'=cmd|calc", table)

    def test_a_report_that_does_not_fit_on_the_disk_leaves_the_old_one(self):
        self.run_it("import", SAMPLE, "--journal", "j.db")

        def small():  # the system lets no file grow further
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (2000, 2000))

        for name, command in (("night.pdf", "report"), ("night.csv", "report"), ("log.csv", "export")):
            self.run_it(command, "--journal", "j.db", "--out", name)
            before = (self.folder / name).read_bytes()
            there = len(list(self.folder.iterdir()))
            done = subprocess.run([PANSIDE, command, "--journal", "j.db", "--out", name], capture_output=True, text=True,
                                  timeout=60, env=self.surroundings, cwd=self.folder, preexec_fn=small)
            self.assertEqual(done.returncode, 3, done.stderr)
            self.assertIn(name, done.stderr)
            self.assertEqual((self.folder / name).read_bytes(), before)
            self.assertEqual(len(list(self.folder.iterdir())), there, "nothing half written is left")

    def test_a_report_is_not_written_through_a_link(self):
        self.run_it("import", SAMPLE, "--journal", "j.db")
        theirs = self.write("theirs", "theirs")
        for name in ("night.pdf", "night.xlsx", "night.xlsx.part", "night.csv"):
            (self.folder / name).symlink_to(theirs)
        for name in ("night.pdf", "night.xlsx", "night.csv"):
            self.run_it("report", "--journal", "j.db", "--out", name)
            self.assertFalse((self.folder / name).is_symlink(), name)
        self.assertEqual(theirs.read_text(), "theirs")

    def test_a_name_that_is_no_utf_8_is_answered_in_json(self):
        shutil.copy(SAMPLE, os.fsencode(self.folder) + b"/n\xccme.csv")
        for words in (("check",), ("import", "--journal", "j.db")):
            done = subprocess.run([PANSIDE, words[0], b"n\xccme.csv", "--json", *words[1:]], capture_output=True,
                                  timeout=120, env=self.surroundings, cwd=self.folder)
            self.assertEqual(done.returncode, 0, done.stderr)
            json.loads(done.stdout)

    def test_a_check_and_an_import_agree(self):
        lit = "2025-03-14T18:00:00Z,lit,,,\n"
        for name, text, status in (
                ("two", lit + "2025-03-14T19:00:00Z,shift_end,,,\n2025-03-14T20:00:00Z,lit,,,\n", 1),
                ("long", "2025-03-14T18:00:00Z,note,,," + "x" * 1000000 + "\n", 1),
                ("late", lit + "9226-03-14T18:00:00Z,fired,,,\n", 1),
                ("huge", lit + "2025-03-14T18:00:01Z,pressure,1e308,kPa,\n", 1),
                ("good", lit, 0)):
            log = self.write(name + ".csv", HEADER + text)
            self.run_it("check", log, status=status)
            self.run_it("import", log, "--journal", name + ".db", status=status)
        told = self.run_it("check", self.folder / "two.csv", "--json", status=1).stdout
        self.assertIn("Split the log", json.loads(told)["faults"][0]["says"])

    def test_many_probe_names_and_long_nights_do_not_hang(self):
        """Whatever a log says, a replay or a report of it ends soon: it is refused with its line, or it is short work."""
        begin = datetime.datetime(2025, 3, 14, 18)
        rows = "".join(f"{begin + datetime.timedelta(seconds=i):%Y-%m-%dT%H:%M:%SZ},stack,300,degC,probe=p{i}\n" for i in range(3000))
        done = self.run_it("replay", self.write("names.csv", HEADER + rows), status=1)
        self.assertIn("names.csv:66", done.stderr)
        done = self.run_it("replay", self.write("years.csv", HEADER + "1901-01-01T00:00:00Z,lit,,,\n"
                                                "2199-01-01T00:00:00Z,fired,,,\n"), status=1)
        self.assertIn("years.csv:3", done.stderr)


class Tending(Place):
    def tend(self, *words):
        process = self.start("tend", "--journal", "j.db", *words)
        return process

    def line(self, process, patience=20):
        ready, _, _ = select.select([process.stdout], [], [], patience)
        self.assertTrue(ready, "no line in time")
        return json.loads(process.stdout.readline())

    def pan_box(self, checksum="false"):
        """A pseudo-terminal as the pan's probe; returns the end that a test writes to, and the probe file."""
        ours, theirs = pty.openpty()
        self.addCleanup(os.close, ours)
        self.addCleanup(os.close, theirs)
        settings = termios.tcgetattr(theirs)
        settings[3] &= ~(termios.ECHO | termios.ICANON)
        termios.tcsetattr(theirs, termios.TCSANOW, settings)
        probe = self.write("probe.toml", f"""
[[port]]
name = "pan box"
device = "{os.ttyname(theirs)}"
checksum = {checksum}
[[port.field]]
is = "syrup"
reads = "syrup_pan"
unit = "degC"
[[port.field]]
is = "baro"
reads = "pressure"
unit = "kPa"
""")
        return ours, probe

    def test_rows_on_standard_input_are_kept_and_bad_ones_refused(self):
        done = self.run_it("tend", "--journal", "j.db",
                           stdin=",lit,,,by=Odile\n,fired,twelve,kg,\n,fired,12,kg,\n2099-01-01T00:00:00Z,fired,,,\n")
        self.assertIn("standard input:2", done.stderr)
        self.assertIn("standard input:4", done.stderr)
        self.assertEqual(json.loads(done.stdout.splitlines()[-1])["drawing"], False)
        log = self.run_it("export", "--journal", "j.db").stdout
        self.assertIn(",lit,,,by=Odile", log)
        self.assertEqual(log.count(",fired,"), 1)

    def test_what_the_shift_has_set_already_is_not_set_again(self):
        self.run_it("tend", "--journal", "j.db", stdin=",lit,,,\n,set,66.9,brix,key=target_density\n")
        again = self.run_it("tend", "--journal", "j.db", "--set", "target_density=68brix", "--set", "elevation=300m", stdin="")
        self.assertIn("target_density: the shift has it set already", again.stderr)
        log = self.run_it("export", "--journal", "j.db").stdout
        self.assertEqual(log.count("key=target_density"), 1)
        self.assertEqual(log.count("key=elevation"), 1)

    def test_a_row_of_the_day_book_and_one_of_the_shift_in_one_moment_are_both_kept(self):
        for i, rows in enumerate((",lit,,,\n,gathered,100,L,to=tank;brix=2\n", ",gathered,100,L,to=tank;brix=2\n,lit,,,\n")):
            done = self.run_it("tend", "--journal", f"j{i}.db", stdin=rows)
            self.assertNotIn("refuses", done.stderr)
            year = datetime.datetime.now(datetime.timezone.utc).year
            self.assertIn(",gathered,100,L,", self.run_it("export", "--journal", f"j{i}.db", "--shift", year).stdout)
            self.assertIn(",lit,", self.run_it("export", "--journal", f"j{i}.db").stdout)

    def test_a_probe_is_read_and_shown_and_kept(self):
        ours, probe = self.pan_box()
        process = self.tend("--probe", probe)
        # Kept open: the input of a terminal does not end.
        shown = []
        for count in range(12):
            os.write(ours, b"syrup=%.2f baro=98.71\r\n" % (103 + count / 100))
            time.sleep(0.5)
            while select.select([process.stdout], [], [], 0)[0]:
                shown.append(json.loads(process.stdout.readline()))
        process.send_signal(signal.SIGTERM)
        process.wait(10)
        self.assertEqual(process.returncode, 0)
        self.assertAlmostEqual(shown[-1]["pressureKPa"], 98.71, places=3)
        self.assertAlmostEqual(shown[-1]["syrupPanC"], 103.1, delta=0.15)
        log = self.run_it("export", "--journal", "j.db").stdout
        self.assertGreaterEqual(log.count(",syrup_pan,"), 10)
        self.assertIn("probe=pan box", log)

    def test_the_end_of_the_typed_rows_ends_no_boil_that_a_probe_is_read_of(self):
        _, probe = self.pan_box()
        process = self.tend("--probe", probe)
        process.stdin.close()
        for _ in range(3):
            self.line(process)
        self.assertIsNone(process.poll())

    def test_a_killed_shift_is_taken_up_with_all_that_was_acknowledged(self):
        process = self.tend()
        process.stdin.write(",lit,,,\n,fired,11,kg,\n")
        process.stdin.flush()
        self.line(process)
        self.line(process)
        process.kill()
        process.wait()
        again = self.tend()
        picture = self.line(again)
        self.assertIsNotNone(picture["fireDueS"])
        again.stdin.write(",note,,,the power came back\n")
        again.stdin.close()
        again.wait(10)
        again.stdin = None
        log = self.run_it("export", "--journal", "j.db").stdout  # one shift only, or it would ask which
        self.assertIn(",fired,11,kg,", log)
        self.assertIn("the power came back", log)

    def test_a_disk_that_is_full_at_the_start_ends_no_boil(self):
        """The system lets no file grow; later it does."""
        def small():
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (2000, resource.RLIM_INFINITY))

        process = self.start("tend", "--journal", "j.db", preexec_fn=small)
        process.stdin.write(",lit,,,\n")
        process.stdin.flush()
        while "journal_trouble" not in self.line(process)["alarms"]:
            pass
        resource.prlimit(process.pid, resource.RLIMIT_FSIZE, (resource.RLIM_INFINITY, resource.RLIM_INFINITY))
        while "journal_trouble" in self.line(process)["alarms"]:
            pass
        process.stdin.close()
        process.wait(20)
        process.stdin = None
        self.assertEqual(process.returncode, 0)
        self.assertIn(",lit,", self.run_it("export", "--journal", "j.db").stdout)

    def test_a_second_writer_is_refused_and_told_why(self):
        process = self.tend()
        self.line(process)
        refused = self.run_it("tend", "--journal", "j.db", stdin=",lit,,,\n", status=3)
        self.assertIn("j.db", refused.stderr)

    def test_a_late_row_takes_its_place_and_says_when_it_was_entered(self):
        now = datetime.datetime.now(datetime.timezone.utc).replace(microsecond=0)
        earlier = (now - datetime.timedelta(minutes=10)).strftime("%Y-%m-%dT%H:%M:%SZ")
        self.run_it("tend", "--journal", "j.db", stdin=f",lit,,,\n{earlier},fired,,,\n")
        row = next(line for line in self.run_it("export", "--journal", "j.db").stdout.splitlines() if ",fired," in line)
        self.assertTrue(row.startswith(earlier))
        self.assertIn("entered=", row)


class Terminal(Place):
    def test_without_a_display_it_says_so_and_rehearses(self):
        lines = self.run_it("--rehearsal").stdout.splitlines()
        self.assertIn("no display", lines[0])
        self.assertGreater(len(lines), 60)
        self.assertIn("rise", lines[-1])

    def test_the_console_itself_needs_one(self):
        self.assertIn("no display", self.run_it(status=3).stderr)

    def test_a_display_that_does_not_answer_is_named(self):
        # No X server has so high a number; the Wayland socket is not there.
        for variable, value in (("DISPLAY", ":60999"), ("WAYLAND_DISPLAY", "wayland-60999")):
            self.surroundings[variable] = value
            lines = self.run_it("--rehearsal").stdout.splitlines()
            self.assertIn(f"The display {value} does not answer", lines[0])
            self.assertGreater(len(lines), 60)
            refused = self.run_it(status=3).stderr.splitlines()
            self.assertEqual(len(refused), 1, refused)
            self.assertIn("panside tend", refused[0])
            del self.surroundings[variable]


class Photograph:
    """What the screen shows now: the server keeps it in a file (XWD: a header in 32-bit words, colours, rows of pixels)."""

    def __init__(self, place):
        data = place.read_bytes()
        header = struct.unpack(">25I", data[:100])
        self.width, self.height, self.line, bits = header[4], header[5], header[12], header[11]
        assert header[1] == 7 and bits == 32, header
        self.pixels = data[header[0] + 12 * header[19]:]

    def row(self, y, left=0, right=None):
        """The pixels of a row, as (blue, green, red)."""
        row = self.pixels[y * self.line + 4 * left:y * self.line + 4 * (self.width if right is None else right)]
        return list(zip(row[0::4], row[1::4], row[2::4]))

    def column(self, x):
        start = self.pixels[4 * x:]
        return list(zip(start[0::self.line], start[1::self.line], start[2::self.line]))

    def brightness(self):
        return sum(self.pixels[1::4]) / len(self.pixels[1::4])  # of green, which carries most of it

    def colours(self, top, bottom):
        return {pixel for y in range(top, bottom) for pixel in self.row(y)}


class Window(Place):
    def setUp(self):
        super().setUp()
        self.serve("1366x768")

    def serve(self, size):
        # The server finds a free number itself and tells it.
        self.screen = self.folder / size
        self.screen.mkdir()
        told, tell = os.pipe()
        server = subprocess.Popen(["Xvfb", "-displayfd", str(tell), "-screen", "0", f"{size}x24", "-dpi", "96", "-noreset",
                                   "-nolisten", "tcp", "-fbdir", str(self.screen)],
                                  pass_fds=[tell], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(tell)
        self.addCleanup(server.wait)
        self.addCleanup(server.kill)
        with os.fdopen(told) as number:
            self.surroundings["DISPLAY"] = ":" + number.readline().strip()
        (self.folder / ".config/panside").mkdir(parents=True, exist_ok=True)
        self.write(".config/panside/console.ini", "[General]\ncautioned=true\n")

    def tool(self, *words):
        return subprocess.run(["xdotool", *words], env=self.surroundings, capture_output=True, text=True, timeout=30)

    def open(self, *words):
        process = self.start("--language", "en", *words)
        for _ in range(150):
            found = self.tool("search", "--onlyvisible", "--name", "Panside").stdout.split()
            if found:
                time.sleep(0.5)
                self.tool("windowfocus", "--sync", found[-1])
                return process
            self.assertIsNone(process.poll(), "the console ended by itself")
            time.sleep(0.1)
        self.fail("no window came")

    def photograph(self):
        return Photograph(self.screen / "Xvfb_screen0")

    def press(self, *keys):
        for key in keys:
            self.tool("key", key)
            time.sleep(0.3)

    def test_keys_become_facts_that_are_kept(self):
        process = self.open("--journal", "j.db")
        self.press("f", "Return")   # the fire is lit
        self.press("f", "Return")   # fired
        self.press("d", "Return")   # the draw is opened
        self.press("u")             # and taken back
        time.sleep(1)
        process.send_signal(signal.SIGTERM)
        process.wait(15)
        log = self.run_it("export", "--journal", "j.db").stdout
        self.assertEqual(log.count(",lit,"), 1, log)
        self.assertEqual(log.count(",fired,"), 1, log)
        self.assertNotIn("draw_open", log)

    def look_at_day_and_night(self, width, height):
        process = self.open("--rehearsal", "--day")
        window = self.tool("search", "--onlyvisible", "--name", "Panside").stdout.split()[-1]
        shape = self.tool("getwindowgeometry", "--shell", window).stdout.split()
        self.assertLessEqual({"X=0", "Y=0", f"WIDTH={width}", f"HEIGHT={height}"}, set(shape))
        day = self.photograph()
        self.press("F9")
        night = self.photograph()
        self.end(process)
        self.assertEqual((day.width, day.height), (width, height))
        for picture in (day, night):
            self.assertGreater(len(picture.colours(0, height)), 30, "blank, or nearly so")
            # No word runs into the edge of the screen: the outermost pixels are plain, and the line at the foot is whole.
            for edge in (picture.row(0), picture.row(height - 1), picture.column(0), picture.column(width - 1)):
                self.assertLessEqual(len(set(edge)), 2, "something is cut at the edge")
            self.assertGreater(len(picture.colours(height - 20, height)), 5, "no line at the foot")
        # A room with windows, and eyes that are used to the dark.
        self.assertGreater(day.brightness(), 170)
        self.assertLess(night.brightness(), 60)
        bright = sum(night.pixels[1::4].count(value) for value in range(225, 256))
        self.assertLess(bright, 400, "something dazzles that is larger than the pointer")

    def test_a_laptops_screen_is_filled_by_day_and_by_night(self):
        self.look_at_day_and_night(1366, 768)

    def test_a_large_screen_is_filled_by_day_and_by_night(self):
        self.serve("1920x1080")
        self.look_at_day_and_night(1920, 1080)

    def test_the_frame_flashes_until_the_alarm_is_seen(self):
        earlier = datetime.datetime.now(datetime.timezone.utc) - datetime.timedelta(minutes=40)
        self.run_it("tend", "--journal", "j.db", stdin=f"{earlier:%Y-%m-%dT%H:%M:%SZ},lit,,,\n")

        def frames():
            seen = set()
            for _ in range(14):
                seen.add(tuple(self.photograph().row(2, 600, 700)))
                time.sleep(0.1)
            return seen

        self.open("--journal", "j.db")
        flashing = frames()
        self.assertEqual(len(flashing), 2)
        for frame in flashing:
            self.assertEqual(len(set(frame)), 1, "a frame is of one colour")
        self.press("a")
        self.assertEqual(len(frames()), 1)

    def test_a_journal_that_another_program_writes_takes_nothing(self):
        other = self.start("tend", "--journal", "j.db")
        self.assertTrue(select.select([other.stdout], [], [], 20)[0])
        process = self.open("--journal", "j.db")
        self.press("f", "Return")
        process.send_signal(signal.SIGTERM)
        process.wait(15)
        other.stdin.close()
        other.wait(10)
        other.stdin = None
        self.run_it("export", "--journal", "j.db", status=1)  # there is no shift

    def test_a_console_that_only_watched_takes_over_when_the_writer_has_died(self):
        other = self.start("tend", "--journal", "j.db")
        self.assertTrue(select.select([other.stdout], [], [], 20)[0])
        process = self.open("--journal", "j.db")
        other.kill()
        other.wait(10)
        for _ in range(20):  # it looks each five seconds
            time.sleep(1)
            self.press("f", "Return")
            time.sleep(1)
            with sqlite3.connect(f"file:{self.folder}/j.db?mode=ro", uri=True) as journal:
                if journal.execute("SELECT count(*) FROM fact WHERE row LIKE '%,lit,%'").fetchone()[0] == 1:
                    break
        else:
            self.fail("it never took over")
        process.send_signal(signal.SIGTERM)
        self.assertEqual(process.wait(15), 0)

    def test_the_console_opens_on_a_spoilt_journal_and_loses_nothing_of_the_night(self):
        """What is entered is held in memory, and kept as soon as the journal is sound again."""
        self.run_it("import", SAMPLE, "--journal", "j.db")
        journal = self.folder / "j.db"
        sound = journal.read_bytes()
        journal.write_bytes(b"\0" * 100 + sound[100:])
        process = self.open("--journal", "j.db")
        self.press("f", "Return")
        self.assertIsNone(process.poll())
        self.assertEqual(journal.read_bytes()[:100], b"\0" * 100, "a file that is no journal is left as it is")
        beside = self.folder / "sound"
        beside.write_bytes(sound)
        beside.rename(journal)
        time.sleep(3)
        process.send_signal(signal.SIGTERM)
        self.assertEqual(process.wait(15), 0)
        with sqlite3.connect(f"file:{journal}?mode=ro", uri=True) as kept:
            self.assertEqual(kept.execute("SELECT count(*) FROM fact JOIN shift ON shift.id=shift WHERE live=1 AND row "
                                          "LIKE '%,lit,%'").fetchone()[0], 1)

    def test_an_import_asked_for_while_the_journal_is_away_ends_nothing(self):
        process = self.open("--journal", "at/j.db")
        self.press("f", "Return")
        time.sleep(1)
        (self.folder / "at").rename(self.folder / "away")
        self.press("F2", "i")
        time.sleep(1)
        self.assertIsNone(process.poll())
        (self.folder / "away").rename(self.folder / "at")
        time.sleep(2)
        process.send_signal(signal.SIGTERM)
        self.assertEqual(process.wait(15), 0)

    def test_a_lot_is_packed_and_its_recall_printed_by_keys_alone(self):
        """A hand with gloves: a pack in 30 s, a mock recall in 10 s, at 0.4 s a key."""
        today = datetime.datetime.now(datetime.timezone.utc)
        earlier = [f"{today - datetime.timedelta(minutes=back):%Y-%m-%dT%H:%M:%SZ}" for back in (60, 50)]
        self.write("book.csv", HEADER + f"{earlier[0]},vessel,100,L,name=drum 1;kind=drum\n"
                                        f"{earlier[1]},bought,40,L,what=syrup;from=a neighbour;vessel=drum 1;brix=67\n")
        self.run_it("import", "book.csv", "--journal", "j.db")
        process = self.open("--journal", "j.db", "--units", "metric")
        self.press("F4")
        pack = ["3", "p", *"24", "Tab", *"500mL", "Tab", "Tab", *"86", "Tab", *"84", "Tab", "6", "7", "Return"]
        self.press(*pack)
        self.assertLessEqual(0.4 * (1 + len(pack)), 30)
        self.until(lambda: "500mL,24," in self.run_it("report", "--journal", "j.db", "--lots").stdout)
        recall = ["F4", "5", "Down", "r", "Return"]
        self.press(*recall)
        self.assertLessEqual(0.4 * len(recall), 10)
        paper = self.folder / "recall.pdf"
        self.until(paper.exists)
        process.send_signal(signal.SIGTERM)
        process.wait(15)
        made = self.run_it("report", "--journal", "j.db", "--lots").stdout.splitlines()[2].split(",")
        self.assertEqual((made[2:5], made[12]), (["drum 1", "500mL", "24"], "84.0\u00a0\u00b0C"), made)
        self.assertTrue(paper.read_bytes().startswith(b"%PDF-"))

    def until(self, reached, patience=20):
        end = time.monotonic() + patience
        while not reached():
            self.assertLess(time.monotonic(), end, "it did not come")
            time.sleep(0.2)

    def test_a_rehearsal_leaves_the_journal_alone(self):
        process = self.open("--rehearsal")
        self.press("f", "Return")
        process.send_signal(signal.SIGTERM)
        process.wait(15)
        self.assertFalse((self.folder / ".local/share/panside/journal.db").exists())


if __name__ == "__main__":
    unittest.main(argv=[sys.argv[0], "-v", *sys.argv[1:]])
