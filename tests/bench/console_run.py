"""What the scripts that measure the whole console share: what a process costs, and a probe of six series."""
import os
import pathlib

FIELDS = {"syrup_pan": ("degC", 103.2), "flue_pan": ("degC", 100.4), "stack": ("degC", 412.0), "pressure": ("kPa", 98.7),
          "flue_level": ("mm", 41.0), "tank_level": ("L", 812.0)}


def cpu(process):
    fields = pathlib.Path(f"/proc/{process.pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def resident(process):
    status = pathlib.Path(f"/proc/{process.pid}/status").read_text()
    return int(next(line for line in status.splitlines() if line.startswith("VmRSS")).split()[1]) / 1024


def probe_file(folder, device):
    fields = "".join(f'[[port.field]]\nis = "{name}"\nreads = "{name}"\nunit = "{unit}"\n' for name, (unit, _) in FIELDS.items())
    place = folder / "probe.toml"
    place.write_text(f'[[port]]\nname = "box"\ndevice = "{device}"\n{fields}')
    return place


def line_of(count):
    return (" ".join(f"{field}={value + count % 7 / 100:.2f}" for field, (_, value) in FIELDS.items()) + "\n").encode()
