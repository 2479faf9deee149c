#!/usr/bin/python3
"""The manual from its Markdown: HTML pages that can be searched, and the man page.

manual.py html FOLDER OUT    every page of FOLDER, in the order in which its index.md names them; of a language's folder
                             ("fr") those that are not there come from the folder above
manual.py man PAGE OUT VERSION DATE

cmark-gfm turns Markdown into HTML and roff; here is what it leaves open: the frame around a page, the links between
pages, the search, and tables that a terminal can show.
"""
import datetime
import gzip
import html
import json
import pathlib
import re
import subprocess
import sys

LINK = re.compile(r"\[([^\]]*)\]\(([^)\s]+)\)")
WORDS = {
    "en": {"manual": "Panside: manual", "search": "Search", "pages": "Pages", "none": "No page has these words."},
    "fr": {"manual": "Panside : manuel", "search": "Chercher", "pages": "Pages", "none": "Aucune page n'a ces mots."},
}


def converted(markdown, form):
    return subprocess.run(["cmark-gfm", "--extension", "table", "--to", form], input=markdown, text=True,
                          capture_output=True, check=True).stdout


def anchor(heading):
    """As forges name a heading: small letters, no marks, a line for a space."""
    plain = re.sub(r"<[^>]*>|[`*]", "", html.unescape(heading)).lower()
    return re.sub(r"[^\w\- ]", "", plain).strip().replace(" ", "-")


def title_of(markdown):
    return re.search(r"^# (.+)$", markdown, re.M).group(1).replace("`", "")


def pages_in(folder):
    """The pages in the order of the index; what it does not name comes last."""
    index = (folder / "index.md").read_text(encoding="utf-8")
    order = ["index.md"] + [target for _, target in LINK.findall(index) if re.fullmatch(r"\w+\.md", target)]
    above = folder.parent if folder.name in WORDS else folder
    order = dict.fromkeys(order + sorted(page.name for page in above.glob("*.md")))
    return [(name, (folder / name if (folder / name).exists() else above / name).read_text(encoding="utf-8"))
            for name in order]


def body_of(markdown, pictures):
    body = converted(markdown, "html")
    body = re.sub(r'href="(\w+)\.md', r'href="\1.html', body)
    body = re.sub(r'src="(?:\.\./)+pictures/', f'src="{pictures}/', body)
    return re.sub(r"<h([1-6])>(.*?)</h\1>",
                  lambda found: f'<h{found[1]} id="{anchor(found[2])}">{found[2]}</h{found[1]}>', body)


STYLE = """:root{color-scheme:light dark;--ground:#f4f3ef;--word:#1a1f22;--quiet:#4c5357;--line:#6d7377;--sel:#d3dde1;--ink:#17485c}
@media(prefers-color-scheme:dark){:root{--ground:#18130f;--word:#cdb899;--quiet:#a8967d;--line:#83735f;--sel:#2d2319;--ink:#c89f64}}
body{margin:0;font:18px/1.5 "Noto Sans",sans-serif;background:var(--ground);color:var(--word);display:flex;flex-wrap:wrap}
nav{flex:1 1 14em;max-width:20em;padding:1em;box-sizing:border-box}main{flex:1 1 30em;max-width:52em;padding:1em;min-width:0}
nav a{display:block;padding:.3em .5em}nav a.here{background:var(--sel)}a{color:var(--ink)}
input{font:inherit;width:100%;box-sizing:border-box;padding:.4em}table{border-collapse:collapse;display:block;overflow-x:auto}
td,th{border:1px solid var(--line);padding:.3em .6em;text-align:left;vertical-align:top}pre{overflow-x:auto;padding:.6em;border:1px solid var(--line)}
img{max-width:100%}#found p{margin:.2em 0 .8em;color:var(--quiet)}
"""
# Without its accents a word is found too, as a hurried hand types it.
SEARCH = """const plain=t=>t.toLowerCase().normalize("NFD").replace(/[\\u0300-\\u036f]/g,"");
const field=document.getElementById("search"),found=document.getElementById("found"),main=document.querySelector("main");
field.addEventListener("input",()=>{const words=plain(field.value).split(/\\s+/).filter(w=>w);main.hidden=words.length>0;
found.hidden=!words.length;found.replaceChildren();for(const page of pages){const text=plain(page.text);
if(!words.length||!words.every(w=>text.includes(w)))continue;const at=Math.max(0,text.indexOf(words[0])-80);
const link=document.createElement("a");link.href=page.file;link.textContent=page.title;const about=document.createElement("p");
about.textContent="… "+page.text.slice(at,at+240)+" …";found.append(link,about);}
if(words.length&&!found.childElementCount)found.textContent=found.dataset.none;});
"""


def write_html(folder, out):
    folder, out = pathlib.Path(folder), pathlib.Path(out)
    language = folder.name if folder.name in WORDS else "en"
    words = WORDS[language]
    out.mkdir(parents=True, exist_ok=True)
    for old in out.glob("*.html"):  # of a page that is no more
        old.unlink()
    pages = pages_in(folder)
    index = []
    for name, markdown in pages:
        body, title = body_of(markdown, "pictures" if language == "en" else "../pictures"), title_of(markdown)
        file = name.replace(".md", ".html")
        links = "".join(f'<a href="{other.replace(".md", ".html")}"{" class=here" if other == name else ""}>'
                        f"{html.escape(title_of(text))}</a>" for other, text in pages)
        (out / file).write_text(
            f'<!DOCTYPE html>\n<html lang="{language}"><head><meta charset="utf-8"><title>{html.escape(title)} · Panside</title>'
            '<meta name="viewport" content="width=device-width,initial-scale=1"><link rel="stylesheet" href="manual.css"></head>'
            f'\n<body><nav aria-label="{words["pages"]}"><strong>{words["manual"]}</strong><p><input id="search" type="search" '
            f'aria-label="{words["search"]}" placeholder="{words["search"]}"></p>{links}</nav>\n<main>\n{body}</main>\n'
            f'<main id="found" data-none="{words["none"]}" hidden></main><script src="pages.js"></script></body></html>\n',
            encoding="utf-8")
        plain = re.sub(r"\s+", " ", html.unescape(re.sub(r"<[^>]*>", " ", body))).strip()
        index.append({"file": file, "title": title, "text": plain})
    (out / "pages.js").write_text(f"const pages={json.dumps(index, ensure_ascii=False)};\n{SEARCH}", encoding="utf-8")
    (out / "manual.css").write_text(STYLE, encoding="utf-8")


def rows_as_paragraphs(markdown):
    """A table's row as a pair of paragraphs, marked for a hanging one: a terminal is too narrow for the columns."""
    lines, inside = [], False
    for line in markdown.splitlines():
        if not line.startswith("|"):
            lines.append(line)
            inside = False
            continue
        cells = [cell.strip().replace("\\|", "|") for cell in re.split(r"(?<!\\)\|", line)[1:-1]]
        if inside and not set(cells[0]) <= set("-: "):
            lines += ["", f"@HANG@ {cells[0]}", "", f"@BODY@ {': '.join(cells[1:])}", ""]
        inside = True
    return "\n".join(lines) + "\n"


def man_page(markdown, version, date):
    markdown = LINK.sub(r"\1", rows_as_paragraphs(markdown))
    roff = converted(markdown, "man")
    roff = re.sub(r"\.PP\n@HANG@ (.*)\n\.PP\n@BODY@ ", r".TP\n\1\n", roff)
    roff = roff.replace(".IP\n.nf\n\\f[C]\n", ".IP\n.EX\n").replace("\n\\f[]\n.fi", "\n.EE")
    roff = roff.replace("\\f[C]", "\\f[B]").replace("\\f[]", "\\f[R]")
    roff = re.sub(r"\.SS\n(.*)", lambda heading: f".SH {heading[1].upper()}", roff)
    roff = re.sub(r"\.SH\n.*\n", "", roff, count=1)
    roff = "".join(letter if ord(letter) < 128 else f"\\[u{ord(letter):04X}]" for letter in roff)
    month = datetime.date.fromisoformat(date).strftime("%B %Y")
    return (f'.TH PANSIDE 1 "{month}" "Panside {version}" "User Commands"\n.nh\n'
            ".SH NAME\npanside \\- console beside the syrup pan of a wood-fired evaporator\n"
            ".SH SYNOPSIS\n.B panside\n[\\fIcommand\\fR] [\\fIoption\\fR]...\n"
            f".SH DESCRIPTION\n{roff}"
            ".SH SEE ALSO\nThe whole manual: F1 in the console, or\n.I /usr/share/panside/manual/index.html\n")


def main(words):
    if len(words) == 3 and words[0] == "html":
        write_html(*words[1:])
    elif len(words) == 5 and words[0] == "man":
        page = man_page(pathlib.Path(words[1]).read_text(encoding="utf-8"), *words[3:]).encode()
        # No name and no time in the archive: the same source gives the same bytes.
        pathlib.Path(words[2]).write_bytes(gzip.compress(page, 9, mtime=0) if words[2].endswith(".gz") else page)
    else:
        sys.exit(__doc__)


main(sys.argv[1:])
