"""Two windows on one journal, the one that writes and the one that reads killed in turn: one writes, the other takes its
place, and nothing that a person saw kept is lost. A row of tests/battery/run, which says how often:
    windows.py PANSIDE COUNT SEED
Each window has a screen of its own (Xvfb), and real keys (xdotool). Ends with one line of counts.
"""
import datetime
import os
import pathlib
import random
import signal
import sqlite3
import sys
import time

panside, count, seed = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
os.environ["PANSIDE"] = panside
os.environ["PANSIDE_SOURCE"] = str(pathlib.Path(__file__).resolve().parents[2])
sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[1] / "app"))
import program_test  # noqa: E402


class Windows(program_test.Window):
    def runTest(self):
        """One case."""

    def setUp(self):
        program_test.Place.setUp(self)
        self.screens = 0

    def window(self):
        """A console on the journal, and the display that it is on."""
        self.screens += 1
        self.serve(f"{1366 + self.screens}x768")
        process = self.open("--journal", "j.db")
        return process, self.surroundings["DISPLAY"]

    def enter(self, window):
        """A note, as a hand writes it."""
        self.surroundings["DISPLAY"] = window[1]
        for key in ("n", "x", "Return"):
            self.tool("key", key)
            time.sleep(0.1)

    def kept(self):
        journal = sqlite3.connect(f"file:{self.folder}/j.db?mode=ro", uri=True)
        try:
            return journal.execute("SELECT count(*) FROM fact WHERE row LIKE '%,note,%'").fetchone()[0]
        finally:
            journal.close()

    def is_kept(self, window, patience):
        """Enters until a note more is there."""
        before, end = self.kept(), time.monotonic() + patience
        while time.monotonic() < end:
            self.enter(window)
            for _ in range(10):
                time.sleep(0.1)
                if self.kept() > before:
                    return True
        return False

    def play(self, dice):
        # A shift goes on: a journal that has nothing would be met with the first questions.
        lit = datetime.datetime.now(datetime.timezone.utc) - datetime.timedelta(minutes=1)
        self.run_it("tend", "--journal", "j.db", stdin=f"{lit:%Y-%m-%dT%H:%M:%SZ},lit,,,\n")
        writer = self.window()
        assert self.is_kept(writer, 20), "the first keeps nothing"
        for _ in range(2):
            reader = self.window()
            before = self.kept()
            self.enter(reader)
            time.sleep(1)
            assert self.kept() == before, "the second writes as well"
            assert self.is_kept(writer, 10), "the first keeps nothing more beside a second"
            before = self.kept()
            time.sleep(dice.random() * 2)
            if dice.random() < 0.5:
                writer[0].kill()
                writer[0].wait()
                assert self.kept() >= before, "what was kept is gone with its writer"
                writer = reader
                assert self.is_kept(writer, 30), "the place of the one that died was not taken"
            else:
                reader[0].kill()
                reader[0].wait()
                assert self.is_kept(writer, 10), "the first keeps nothing more without a second"
            assert self.kept() > before
        before = self.kept()
        writer[0].send_signal(signal.SIGTERM)
        assert writer[0].wait(20) == 0, "it did not end well"
        assert self.kept() >= before
        assert self.run_it("export", "--journal", "j.db").stdout.count(",note,") == self.kept()


failed = 0
for number in range(1, count + 1):
    case = Windows()
    try:
        case.setUp()
        case.play(random.Random(seed * 100003 + number))
    except (AssertionError, case.failureException) as wrong:
        failed += 1
        print(f"windows: case {number} of seed {seed}: {wrong}")
    finally:
        case.doCleanups()
print(f"{count - failed} passed, {failed} failed")
sys.exit(failed > 0)
