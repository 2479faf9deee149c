#!/usr/bin/python3
"""How easily the manual's pages read: Flesch's reading ease and the number of words, a line a page.

The formula: Rudolf Flesch, "A new readability yardstick", Journal of Applied Psychology 32 (1948): 206.835 - 1.015 words a
sentence - 84.6 syllables a word. Syllables are counted by groups of vowels, which errs by some per cent. Exits 1 where a page
that the crew reads at the pan is harder than 60, or longer than 300 words.
"""
import pathlib
import re
import sys

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "resources" / "manual"
CREW = ("install", "first_boil", "the_draw", "the_morning_after", "will_not")


def plain(markdown):
    text = re.sub(r"^( {4}.*|\|.*|#+ .*)$", "", markdown, flags=re.M)  # code, tables, headings
    text = re.sub(r"\[([^\]]*)\]\([^)]*\)", r"\1", text)
    text = re.sub(r"`[^`]*`", "X", text)
    text = re.sub(r"^(\d+\.|-) ", "", text, flags=re.M)
    # A list's item without a stop ends a sentence too.
    text = re.sub(r"\n\s*\n", ". ", re.sub(r"[*_]", "", text))
    return re.sub(r"\s+", " ", text)


def syllables(word):
    word = word.lower()
    count = len(re.findall(r"[aeiouy]+", word))
    if re.search(r"[^aeiouyl]e$|[^td]ed$|[^scxzg]es$", word) and count > 1:
        count -= 1
    return max(1, count)


def ease(text):
    sentences = [s for s in re.split(r"[.!?]+(?:\s|$)", text) if re.search(r"[A-Za-z]", s)]
    words = re.findall(r"[A-Za-z][A-Za-z']*", text)
    return (206.835 - 1.015 * len(words) / len(sentences) - 84.6 * sum(map(syllables, words)) / len(words)), len(words)


def main():
    bad = 0
    for page in sorted(FOLDER.glob("*.md")):
        if page.stem == "index":
            continue
        figure, words = ease(plain(page.read_text(encoding="utf-8")))
        crew = page.stem in CREW
        wrong = crew and (figure < 60 or words > 300)
        bad += wrong
        print(f"{page.stem:20} {figure:5.0f} {words:6} words{'  crew' if crew else ''}{'  TOO HARD OR LONG' if wrong else ''}")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
