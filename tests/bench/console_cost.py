#!/usr/bin/python3
"""What the whole console costs: its start beside an empty window's, then its CPU and memory at a line a second.

usage: tests/bench/console_cost.py BUILD      a tree built with -DPANSIDE_BENCH=ON; needs Xvfb
The journal holds a night of 12 h of six series at 1 Hz, still open; the probe is a pseudo-terminal.
"""
import datetime
import os
import pathlib
import pty
import statistics
import subprocess
import sys
import tempfile
import time

STARTS = 15
WATCHED = 40  # seconds
FIELDS = {"syrup_pan": ("degC", 103.2), "flue_pan": ("degC", 100.4), "stack": ("degC", 412.0), "pressure": ("kPa", 98.7),
          "flue_level": ("mm", 41.0), "tank_level": ("L", 812.0)}


def seconds(command, surroundings):
    begun = time.perf_counter()
    subprocess.run(command, env=surroundings, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return time.perf_counter() - begun


def cpu(process):
    fields = pathlib.Path(f"/proc/{process.pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def resident(process):
    status = pathlib.Path(f"/proc/{process.pid}/status").read_text()
    return int(next(line for line in status.splitlines() if line.startswith("VmRSS")).split()[1]) / 1024


def ending_now(log):
    """The night as it were had it just passed: the console takes an open shift up where it stands."""
    head, *rows = log.splitlines()
    moment = lambda row: datetime.datetime.fromisoformat(row.split(",", 1)[0].replace("Z", "+00:00"))
    later = datetime.datetime.now(datetime.timezone.utc).replace(microsecond=0) - moment(rows[-1])
    moved = [f"{(moment(row) + later).strftime('%Y-%m-%dT%H:%M:%SZ')},{row.split(',', 1)[1]}" for row in rows]
    return "\n".join([head, *moved]) + "\n"


def probe_file(folder, device):
    fields = "".join(f'[[port.field]]\nis = "{name}"\nreads = "{name}"\nunit = "{unit}"\n' for name, (unit, _) in FIELDS.items())
    place = folder / "probe.toml"
    place.write_text(f'[[port]]\nname = "box"\ndevice = "{device}"\n{fields}')
    return place


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
            night, journal = folder / "night.csv", folder / "journal.db"
            made = subprocess.run([build / "tests/bench/make_night", "12"], capture_output=True, text=True, check=True)
            night.write_text(ending_now(made.stdout))
            subprocess.run([panside, "import", night, "--journal", journal], check=True, stdout=subprocess.DEVNULL)

            empty, console = [], []
            for _ in range(STARTS):
                empty.append(seconds([first_paint, "empty"], surroundings))
                console.append(seconds([first_paint, journal], surroundings))
            ratio = statistics.median(b / a for a, b in zip(empty, console))
            print(f"start to first paint: empty window {statistics.median(empty) * 1000:.0f} ms, console with the night "
                  f"{statistics.median(console) * 1000:.0f} ms, ratio {ratio:.2f}")

            ours, theirs = pty.openpty()
            probe = probe_file(folder, os.ttyname(theirs))
            process = subprocess.Popen([panside, "--journal", journal, "--probe", probe], env=surroundings)
            time.sleep(5)
            spent, begun = cpu(process), time.monotonic()
            for count in range(WATCHED):
                line = " ".join(f"{field}={value + count % 7 / 100:.2f}" for field, (_, value) in FIELDS.items())
                os.write(ours, line.encode() + b"\n")
                time.sleep(max(0, begun + count + 1 - time.monotonic()))
            share = (cpu(process) - spent) / (time.monotonic() - begun)
            print(f"at a line a second: {share * 100:.1f} % of a core, {resident(process):.0f} MB resident")
            process.terminate()
            process.wait(20)
        finally:
            server.kill()
            server.wait()


main(pathlib.Path(sys.argv[1]).resolve())
