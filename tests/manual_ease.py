#!/usr/bin/python3
"""How easily the manual's pages read: the reading ease and the number of words, a line a page.

English by Rudolf Flesch, "A new readability yardstick", Journal of Applied Psychology 32 (1948): 206.835 - 1.015 words a
sentence - 84.6 syllables a word. French by Kandel and Moles, "Application de l'indice de Flesch a la langue francaise",
Cahiers d'etudes de radio-television 19 (1958), from memory: 207 - 1.015 words a sentence - 73.6 syllables a word. Syllables are
counted by groups of vowels, which errs by some per cent. Exits 1 where a page that the crew reads at the pan, as the first two
parts of the index name them, is harder than 60 or longer than 300 words (340 in French, which takes more), or is not there in French.
"""
import pathlib
import re
import sys

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "resources" / "manual"
MOST = {"en": 300, "fr": 340}
LETTER = "A-Za-zÀ-ÿœŒ"


def crew_pages(index):
    """What stands in the first two parts of the index."""
    parts = re.split(r"^\*\*.*$", index, flags=re.M)
    return re.findall(r"\((\w+)\.md\)", "".join(parts[1:3]))


def plain(markdown):
    text = re.sub(r"^( {4}.*|\|.*|#+ .*|!\[.*)$", "", markdown, flags=re.M)  # code, tables, headings, pictures
    text = re.sub(r"\[([^\]]*)\]\([^)]*\)", r"\1", text)
    text = re.sub(r"`[^`]*`", "X", text)
    text = re.sub(r"^(\d+\.|-) ", "", text, flags=re.M)
    # A list's item without a stop ends a sentence too.
    text = re.sub(r"\n\s*\n", ". ", re.sub(r"[*_]", "", text))
    return re.sub(r"\s+", " ", text)


def syllables(word, language):
    word = word.lower()
    count = len(re.findall("[aeiouyà-öø-ÿœ]+", word))
    mute = r"[^aeiouyà-ÿ](e|es|ent)$" if language == "fr" else r"[^aeiouyl]e$|[^td]ed$|[^scxzg]es$"
    if re.search(mute, word) and count > 1:
        count -= 1
    return max(1, count)


def ease(text, language):
    sentences = [s for s in re.split(r"[.!?]+(?:\s|$)", text) if re.search(f"[{LETTER}]", s)]
    words = re.findall(f"[{LETTER}][{LETTER}']*", text)
    begin, weight = (207, 73.6) if language == "fr" else (206.835, 84.6)
    each = sum(syllables(word, language) for word in words) / len(words)
    return begin - 1.015 * len(words) / len(sentences) - weight * each, len(words)


def told(page, language, crew):
    figure, words = ease(plain(page.read_text(encoding="utf-8")), language)
    wrong = crew and (figure < 60 or words > MOST[language])
    note = "  TOO HARD OR LONG" if wrong else ""
    print(f"{language} {page.stem:20} {figure:5.0f} {words:6} words{'  crew' if crew else ''}{note}")
    return wrong


def main():
    crew = crew_pages((FOLDER / "index.md").read_text(encoding="utf-8"))
    bad = len(crew) < 8
    for language, folder in (("en", FOLDER), ("fr", FOLDER / "fr")):
        for page in sorted(folder.glob("*.md")):
            if page.stem != "index":
                bad |= told(page, language, page.stem in crew)
        for name in crew:
            if not (folder / f"{name}.md").exists():
                bad = print(f"{language} {name:20} is not there") is None
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
