#!/usr/bin/python3
"""What a whole `panside tend` costs with 16 probe boxes at ten lines a second each, its CPU as the kernel counts it.

usage: tests/bench/ports_cost.py PANSIDE [SECONDS]
Each box is a pseudo-terminal that sends two readings a line. Tending folds them, keeps the journal and prints a line of
JSON a second; all of that is in the figure.
"""
import os
import pathlib
import pty
import subprocess
import sys
import tempfile
import time
import tty

PORTS, LINES_A_SECOND, SETTLES = 16, 10, 5


def cpu(process):
    fields = pathlib.Path(f"/proc/{process.pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def probe_file(folder, devices):
    ports = []
    for number, device in enumerate(devices):
        ports.append(f'[[port]]\nname = "box {number}"\ndevice = "{device}"\n'
                     '[[port.field]]\nis = "syrup"\nreads = "syrup_pan"\nunit = "degC"\n'
                     '[[port.field]]\nis = "stack"\nreads = "stack"\nunit = "degC"\n')
    place = folder / "probe.toml"
    place.write_text("\n".join(ports))
    return place


def main(panside, seconds):
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        cables = [pty.openpty() for _ in range(PORTS)]
        for _, theirs in cables:
            tty.setraw(theirs)
        probe = probe_file(folder, [os.ttyname(theirs) for _, theirs in cables])
        printed = open(folder / "printed.jsonl", "w+")
        process = subprocess.Popen([panside, "tend", "--probe", probe, "--journal", folder / "journal.db"],
                                   stdin=subprocess.PIPE, stdout=printed, text=True)
        process.stdin.write(",lit,,,\n")
        process.stdin.flush()
        spent = begun = sent = 0
        count, start = 0, time.monotonic()
        while time.monotonic() - start < SETTLES + seconds:
            if not begun and time.monotonic() - start >= SETTLES:
                spent, begun, sent = cpu(process), time.monotonic(), 0
            ours = cables[count % PORTS][0]
            os.write(ours, f"syrup={103 + count % 97 / 100:.2f} stack={400 + count % 31 / 10:.1f}\n".encode())
            sent += 1
            count += 1
            time.sleep(max(0, start + count / (PORTS * LINES_A_SECOND) - time.monotonic()))
        passed = time.monotonic() - begun
        share = (cpu(process) - spent) / passed
        process.terminate()
        process.wait(20)
        printed.seek(0)
        pictures = printed.read().splitlines()
        exported = subprocess.run([panside, "export", "--journal", folder / "journal.db"], capture_output=True, text=True)
        kept = sum("syrup_pan" in row for row in exported.stdout.splitlines())
        boxes = sum(f"probe=box {number}" in exported.stdout for number in range(PORTS))
        print(f"{sent / passed:.0f} lines a second from {PORTS} ports: {share * 100:.2f} % of a core "
              f"({len(pictures)} pictures printed, {kept} pan readings kept of {boxes} boxes)")
        return 0 if share < 0.05 and boxes == PORTS else 1


sys.exit(main(pathlib.Path(sys.argv[1]).resolve(), int(sys.argv[2]) if len(sys.argv) > 2 else 30))
