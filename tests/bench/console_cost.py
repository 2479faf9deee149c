#!/usr/bin/python3
"""What the whole console costs: its start beside an empty window's, then its CPU and memory at a line a second.

usage: tests/bench/console_cost.py BUILD      a tree built with -DPANSIDE_BENCH=ON; needs Xvfb
The journal holds a night of 12 h of six series at 1 Hz, still open; the probe is a pseudo-terminal.
"""
import os
import pathlib
import pty
import statistics
import subprocess
import sys
import tempfile
import time

from console_run import cpu, line_of, probe_file, resident

STARTS = 15
WATCHED = 40  # seconds


def seconds(command, surroundings):
    begun = time.perf_counter()
    subprocess.run(command, env=surroundings, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return time.perf_counter() - begun


def main(build):
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        told, tell = os.pipe()
        server = subprocess.Popen(["Xvfb", "-displayfd", str(tell), "-screen", "0", "1920x1080x24", "-noreset"],
                                  pass_fds=[tell], stderr=subprocess.DEVNULL)
        os.close(tell)
        surroundings = dict(os.environ, HOME=name, LC_ALL="C.UTF-8", DISPLAY=":" + os.fdopen(told).readline().strip())
        surroundings.pop("QT_QPA_PLATFORM", None)
        try:
            (folder / ".config/panside").mkdir(parents=True)
            (folder / ".config/panside/console.ini").write_text("[General]\ncautioned=true\n")
            panside, first_paint = build / "app/panside", build / "tests/bench/first_paint"
            journal = folder / "journal.db"
            subprocess.run([build / "tests/bench/make_night", "12", journal], check=True)

            empty, window, night = [], [], []
            for _ in range(STARTS):
                empty.append(seconds([first_paint, "empty"], surroundings))
                window.append(seconds([first_paint, "window", journal], surroundings))
                night.append(seconds([first_paint, "night", journal], surroundings))
            ratio = statistics.median(b / a for a, b in zip(empty, window))
            print(f"start to first paint: a window with a word in it {statistics.median(empty) * 1000:.0f} ms, the console's "
                  f"{statistics.median(window) * 1000:.0f} ms, ratio {ratio:.2f}; with the night's numbers "
                  f"{statistics.median(night) * 1000:.0f} ms")

            ours, theirs = pty.openpty()
            probe = probe_file(folder, os.ttyname(theirs))
            process = subprocess.Popen([panside, "--journal", journal, "--probe", probe], env=surroundings)
            time.sleep(5)
            spent, begun = cpu(process), time.monotonic()
            for count in range(WATCHED):
                os.write(ours, line_of(count))
                time.sleep(max(0, begun + count + 1 - time.monotonic()))
            share = (cpu(process) - spent) / (time.monotonic() - begun)
            print(f"at a line a second: {share * 100:.1f} % of a core, {resident(process):.0f} MB resident")
            process.terminate()
            process.wait(20)
        finally:
            server.kill()
            server.wait()


main(pathlib.Path(sys.argv[1]).resolve())
