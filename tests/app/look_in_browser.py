#!/usr/bin/python3
"""The look in as a browser shows it: phone and tablet, light and dark, both languages, both unit systems. By hand, not in tests/run.

usage: tests/app/look_in_browser.py PANSIDE FOLDER       needs chromium and python3-websocket; writes a picture each
Says what does not hold: a page wider than the screen, a number wider than its card, words the stream did not tell.
"""
import base64
import itertools
import json
import os
import pathlib
import secrets
import shutil
import socket
import subprocess
import sys
import tempfile
import time
import urllib.request

import websocket

SCREENS = {"phone": (390, 844, 2), "small": (320, 568, 2), "wide": (844, 390, 2), "tablet": (1024, 600, 1), "upright": (768, 1024, 1)}
FAULTS = """(()=>{const wrong=[];if(document.documentElement.scrollWidth>innerWidth)wrong.push("the page is wider than the screen");
for(const chief of document.querySelectorAll(".chief"))if(chief.scrollWidth>chief.clientWidth+1)wrong.push("wider than its card: "+chief.textContent);
const said=[news.said,...news.cards.map(c=>c.title)];for(const text of said)if(!document.body.textContent.includes(text))wrong.push("not shown: "+text);
news.cards.forEach((c,i)=>{const shown=document.querySelectorAll(".chief")[i].textContent.replace(/\\s/g,""),told=(c.order||c.chief.map(p=>p[0]).join("")).replace(/\\s/g,"");
if(shown!==told)wrong.push(shown+" for "+told)});
const size=e=>parseFloat(getComputedStyle(e).fontSize);
return JSON.stringify({wrong,chief:size(document.querySelector(".chief")),said:size(document.querySelector("h1")),high:document.body.scrollHeight/innerHeight})})()"""


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


class Browser:
    def __init__(self, folder):
        port = free_port()
        self.process = subprocess.Popen(["chromium", "--headless=new", "--no-sandbox", "--disable-gpu", f"--remote-debugging-port={port}",
                                         "--remote-allow-origins=*", f"--user-data-dir={folder}/browser", "about:blank"],
                                        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        self.number = 0
        until = time.monotonic() + 60
        while True:
            try:
                pages = json.load(urllib.request.urlopen(f"http://127.0.0.1:{port}/json", timeout=5))
                page = next(page for page in pages if page["type"] == "page")
                break
            except (OSError, StopIteration):
                if time.monotonic() > until:
                    raise
                time.sleep(0.3)
        self.line = websocket.create_connection(page["webSocketDebuggerUrl"], timeout=60)

    def ask(self, method, **parameters):
        self.number += 1
        self.line.send(json.dumps({"id": self.number, "method": method, "params": parameters}))
        while True:
            answer = json.loads(self.line.recv())
            if answer.get("id") == self.number:
                assert "error" not in answer, answer
                return answer["result"]

    def value(self, script):
        return self.ask("Runtime.evaluate", expression=script, returnByValue=True)["result"].get("value")

    def wait(self, script, seconds=90):
        until = time.monotonic() + seconds
        while not self.value(script):
            assert time.monotonic() < until, script
            time.sleep(0.3)

    def close(self):
        self.line.close()
        self.process.terminate()
        self.process.wait(20)


def console(panside, folder, language, units):
    """A rehearsal that is served, some hours into its boil."""
    home = pathlib.Path(tempfile.mkdtemp(dir=folder))
    key, port = secrets.token_hex(16), free_port()
    (home / ".config/panside").mkdir(parents=True)
    (home / ".config/panside/console.ini").write_text(
        f"[General]\ncautioned=true\nlookIn=true\nlookInAddress=127.0.0.1\nlookInPort={port}\nlookInKey={key}\n")
    surroundings = dict(os.environ, HOME=str(home), QT_QPA_PLATFORM="offscreen", LC_ALL="C.UTF-8")
    surroundings.pop("XDG_CONFIG_HOME", None)
    process = subprocess.Popen([panside, "--rehearsal", "--seed", "4", "--speed", "60", "--language", language, "--units", units],
                               env=surroundings, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    return process, f"http://127.0.0.1:{port}/{key}/"


def main(panside, out):
    out = pathlib.Path(out)
    out.mkdir(parents=True, exist_ok=True)
    folder = tempfile.mkdtemp(prefix="panside-look-")
    bad = 0
    browser = Browser(folder)
    try:
        browser.ask("Page.enable")
        for language, units in itertools.product(("en", "fr"), ("us", "metric")):
            process, link = console(panside, folder, language, units)
            try:
                until = time.monotonic() + 30
                while True:
                    try:
                        urllib.request.urlopen(link, timeout=5).close()
                        break
                    except OSError:
                        if time.monotonic() > until:
                            raise
                        time.sleep(0.3)
                for index, (name, (wide, high, scale)) in enumerate(SCREENS.items()):
                    for look in ("light", "dark"):
                        browser.ask("Emulation.setDeviceMetricsOverride", width=wide, height=high, deviceScaleFactor=scale, mobile=True)
                        browser.ask("Emulation.setEmulatedMedia", features=[{"name": "prefers-color-scheme", "value": look}])
                        browser.ask("Page.navigate", url=link)
                        # The chart has a draw behind it: the boil is well under way.
                        browser.wait("document.querySelectorAll('.card').length===3&&chart!==null"
                                     + ("&&chart.draws.length>0" if index == 0 else ""), 150)
                        seen = json.loads(browser.value(FAULTS))
                        bad += len(seen["wrong"])
                        print(f"{language} {units:6} {name:8} {look:5} chief {seen['chief']:.0f} px, sentence {seen['said']:.0f} px, "
                              f"{seen['high']:.2f} screens high{''.join('; ' + one for one in seen['wrong'])}", flush=True)
                        picture = browser.ask("Page.captureScreenshot")["data"]
                        (out / f"{name}_{look}_{language}_{units}.png").write_bytes(base64.b64decode(picture))
            finally:
                process.kill()
                process.wait()
    finally:
        browser.close()
        shutil.rmtree(folder, ignore_errors=True)
    return 1 if bad else 0


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    sys.exit(main(sys.argv[1], sys.argv[2]))
