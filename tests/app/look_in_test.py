"""A look in at `panside tend --serve`, as a phone does it, on 127.0.0.1 alone. Every wait is bounded.

PANSIDE names the program. The hostile requests are tried on the server itself, in tests/core/lookin.
"""
import http.client
import json
import os
import pathlib
import re
import shutil
import signal
import subprocess
import tempfile
import time
import unittest
import urllib.parse

PANSIDE = os.environ["PANSIDE"]
SOON = 20  # seconds, more than anything takes


class LookIn(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="panside-look-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.surroundings = dict(os.environ, HOME=str(self.folder), TZ="UTC", LC_ALL="C.UTF-8")
        for name in ("XDG_DATA_HOME", "XDG_CONFIG_HOME"):
            self.surroundings.pop(name, None)

    def tend(self, *words):
        process = subprocess.Popen([PANSIDE, "tend", *words], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                   stderr=subprocess.PIPE, text=True, env=self.surroundings, cwd=self.folder)
        self.addCleanup(self.end, process)
        return process

    @staticmethod
    def end(process):
        if process.poll() is None:
            process.kill()
        process.wait()
        for stream in (process.stdin, process.stdout, process.stderr):
            stream.close()

    def served(self):
        process = self.tend("--serve", "127.0.0.1:0")
        line = process.stderr.readline()
        found = re.fullmatch(r"Look in at (http://127\.0\.0\.1:\d+/[0-9a-f]{32}/)\n", line)
        self.assertTrue(found, line)
        return process, urllib.parse.urlsplit(found[1])

    @staticmethod
    def get(link, path):
        connection = http.client.HTTPConnection(link.hostname, link.port, timeout=SOON)
        connection.request("GET", path)
        return connection.getresponse()

    def events(self, link):
        """What the stream tells, as (name, value), for as long as it is asked."""
        answer = self.get(link, link.path + "stream")
        self.assertEqual(answer.status, 200)
        self.assertEqual(answer.getheader("Content-Type"), "text/event-stream")
        self.addCleanup(answer.close)
        name, until = "message", time.monotonic() + SOON
        while time.monotonic() < until:
            line = answer.fp.readline().decode().rstrip("\n")
            if line.startswith("event: "):
                name = line[7:]
            elif line.startswith("data: "):
                yield name, json.loads(line[6:])
                name = "message"
        self.fail("the stream went on without what was waited for")

    def enter(self, process, row):
        process.stdin.write(row + "\n")
        process.stdin.flush()

    def test_the_page_is_whole_and_the_stream_follows_the_boil(self):
        process, link = self.served()
        page = self.get(link, link.path)
        self.assertEqual(page.status, 200)
        text = page.read()
        self.assertLess(len(text), 100_000)
        self.assertIn(b"EventSource", text)
        self.enter(process, ",lit,,,")
        self.enter(process, ",fired,12,kg,")
        for name, told in self.events(link):
            if name == "message" and told["lit"]:
                break
        self.assertEqual(len(told["cards"]), 3)
        # The same as the JSON Lines say: the fire's call, in whole minutes.
        for _ in range(5):
            line = json.loads(process.stdout.readline())
            if line.get("fireDueS") is not None:
                break
        minutes = int("".join(text for text, small in told["cards"][1]["chief"] if not small))
        self.assertAlmostEqual(minutes, line["fireDueS"] / 60, delta=1.1)
        # A pan far too hot is an alarm: it calls.
        for row in (",set,300,m,key=elevation", ",pressure,98.7,kPa,probe=hand", ",syrup_pan,108.9,degC,probe=hand"):
            self.enter(process, row)
        names = set()
        for name, told in self.events(link):
            names.add(name)
            if name == "message" and told["call"]:
                break
        self.assertIn(told["tone"], ("high", "medium"))
        self.assertIn("chart", names)

    def test_it_ends_with_phones_that_look(self):
        process, link = self.served()
        looking = [self.events(link) for _ in range(3)]
        for phone in looking:
            next(phone)
        process.send_signal(signal.SIGTERM)
        self.assertEqual(process.wait(SOON), 0)

    def test_a_key_is_good_for_one_run(self):
        process, link = self.served()
        process.send_signal(signal.SIGTERM)
        process.wait(SOON)
        again, other = self.served()
        self.assertNotEqual(link.path, other.path)
        self.assertEqual(self.get(other, link.path).status, 404)

    def test_an_address_that_is_not_this_machines_is_refused(self):
        for words, status, said in (("192.0.2.7:8437", 3, "no address of this machine"),  # RFC 5737: nobody's
                                    ("0.0.0.0:8437", 3, "no address of this machine"),
                                    ("sugarhouse:8437", 2, "write an address"), ("127.0.0.1:99999", 2, "the port"),
                                    ("127.0.0.1:x", 2, "the port")):
            process = self.tend("--serve", words)
            _, err = process.communicate("", timeout=SOON)
            self.assertEqual(process.returncode, status, err)
            self.assertIn(said, err)

    def test_nothing_listens_unless_it_is_asked_to(self):
        process = self.tend()
        json.loads(process.stdout.readline())
        sockets = pathlib.Path(f"/proc/{process.pid}/fd")
        held = [os.readlink(one) for one in sockets.iterdir()]
        listening = {line.split()[9] for kind in ("tcp", "tcp6")
                     for line in pathlib.Path(f"/proc/net/{kind}").read_text().splitlines()[1:] if line.split()[3] == "0A"}
        self.assertFalse([one for one in held if one.removeprefix("socket:[").rstrip("]") in listening])


if __name__ == "__main__":
    unittest.main()
