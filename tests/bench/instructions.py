#!/usr/bin/python3
"""What Panside asks of a small computer, in instructions: a count does not depend on the machine that counts, or on its load.

usage: tests/bench/instructions.py BUILD      a tree built with -DPANSIDE_BENCH=ON; needs valgrind; some minutes
Counted by callgrind in the program's own code and its libraries, not in the kernel. `replay` runs over an hour of a rehearsal
at a line a second; the console holds a shift of 12 h on a screen of 1366x768 (painted, not sent to a display) and reads a probe of
six series at a line a second.
"""
import os
import pathlib
import pty
import re
import subprocess
import sys
import tempfile
import time

from console_run import line_of, probe_file, resident

WATCHED = 60  # seconds
CLOCK = 1.5e9  # of a core of the Cortex-A72 class; one instruction a cycle is taken for it


def counted_in(folder):
    """The sum of all dumps in the folder; the last one is still empty."""
    found = (re.search(r"^(?:summary|totals): (\d+)", part.read_text(), re.M) for part in folder.glob("callgrind.out*"))
    return sum(int(one[1]) for one in found if one)


def callgrind(folder):
    return ["valgrind", "--tool=callgrind", f"--callgrind-out-file={folder}/callgrind.out"]


def of_replay(panside, folder, surroundings):
    night = folder / "hour.csv"
    subprocess.run([panside, "rehearse", "--hours", "1", "--seed", "3", "--out", night], check=True)
    out = folder / "replay"
    out.mkdir()
    subprocess.run([*callgrind(out), panside, "replay", night], env=surroundings, check=True, stdout=subprocess.DEVNULL,
                   stderr=subprocess.DEVNULL)
    return counted_in(out)


def feed(line, seconds, until=lambda: False):
    """A line a second, for so long or until something holds."""
    begun = time.monotonic()
    for count in range(seconds):
        os.write(line, line_of(count))
        time.sleep(max(0, begun + count + 1 - time.monotonic()))
        if until():
            return
    if seconds > WATCHED:
        sys.exit("the console keeps no reading")


def keeps(journal):
    """The start is over once what the probe reads is on the disk: three seconds on end."""
    kept = [journal.stat().st_mtime, 0]

    def looked():
        when = max(part.stat().st_mtime for part in journal.parent.glob(journal.name + "*"))
        kept[1] = kept[1] + 1 if when > kept[0] else 0
        kept[0] = when
        return kept[1] >= 3
    return looked


def of_console(panside, folder, surroundings):
    ours, theirs = pty.openpty()
    words = [panside, "--journal", folder / "journal.db", "--probe", probe_file(folder, os.ttyname(theirs))]

    plain = subprocess.Popen(words, env=surroundings)
    feed(ours, 300, keeps(folder / "journal.db"))
    feed(ours, WATCHED)
    megabytes = resident(plain)
    plain.terminate()
    plain.wait(30)

    out = folder / "console"
    out.mkdir()
    process = subprocess.Popen([*callgrind(out), *words], env=surroundings, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    dump = lambda: subprocess.run(["callgrind_control", "--dump", str(process.pid)], check=True, stdout=subprocess.DEVNULL,
                                  stderr=subprocess.DEVNULL)
    feed(ours, 600, keeps(folder / "journal.db"))
    dump()
    start = counted_in(out)
    feed(ours, WATCHED)
    dump()
    both = counted_in(out)
    process.kill()
    process.wait()
    return start, (both - start) / WATCHED, megabytes


def main(build):
    panside = build / "app/panside"
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        surroundings = dict(os.environ, HOME=name, LC_ALL="C.UTF-8", QT_QPA_PLATFORM="offscreen")
        (folder / ".config/panside").mkdir(parents=True)
        (folder / ".config/panside/console.ini").write_text("[General]\ncautioned=true\n")
        hour = of_replay(panside, folder, surroundings)
        print(f"replay: {hour / 3600 / 1e6:.2f} million instructions a second of boil", flush=True)
        subprocess.run([build / "tests/bench/make_night", "12", folder / "journal.db"], check=True)
        start, second, megabytes = of_console(panside, folder, surroundings)
        print(f"console: {second / 1e6:.1f} million instructions a second ({second / CLOCK * 100:.1f} % of {CLOCK / 1e9} GHz at one a cycle), "
              f"its start {start / 1e9:.2f} billion ({start / CLOCK:.1f} s), {megabytes:.0f} MB resident")


main(pathlib.Path(sys.argv[1]).resolve())
