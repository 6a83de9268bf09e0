"""The index of the search: made once here, so that a phone only looks words up and adds.

`pages` are what can be found; `names` are whole names of a page or of a part of it; `words` give for each word the
pages that have it, each with how much it tells of that page; the rest is what people say (`docs/spoken.toml`).
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable
from math import log
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

from calc.address import page_address
from calc.data_file import Data
from calc.editions import EDITIONS
from calc.messages import message
from calc.registry import CALCULATORS
from calc.rulebook import rule
from site_assets.build.front_matter import parted
from site_assets.build.glossary import terms
from site_assets.build.search_text import PageText, page_text
from site_assets.build.search_words import words_of
from site_assets.build.spoken import Sense, Slang, spoken

FILE = "search/index.json"
KINDS = {
    "parts": message("Part"),
    "places": message("Place"),
    "calculators": message("Calculator"),
    "editions": message("Editions"),
    "method": message("How we check"),
}
# How much a word tells of a page by where it stands there, against once in its text.
TITLE, NAME, HEADING, LEAD = 10, 7, 3, 2
ENOUGH = 1.5  # of a word in the text: more of it adds less and less
LONGEST_LINE = 120
RATINGS = "grounding/standard_fuse_ratings"


def write_search_index(site: Path, pages: dict[Path, str], markdown: Path) -> None:
    """Write the index of the generated pages (path in the site: HTML) into the site.

    `markdown` is the folder that they were made of: what the search is told of a page stands at its head.
    """
    read = {
        path.with_suffix("").as_posix(): _read(path, html, markdown)
        for path, html in pages.items()
        if (markdown / path.with_suffix(".md")).is_file()  # the page for unknown addresses is nobody's aim
    }
    index = search_index(read)
    (site / FILE).parent.mkdir(exist_ok=True)
    (site / FILE).write_text(json.dumps(index, ensure_ascii=False, separators=(",", ":")), encoding="utf-8")


def _read(path: Path, html: str, markdown: Path) -> tuple[Data, PageText]:
    told, _ = parted((markdown / path.with_suffix(".md")).read_text(encoding="utf-8"))
    return told, page_text(html)


def search_index(pages: dict[str, tuple[Data, PageText]]) -> dict[str, Any]:
    """Return the index of pages, "parts/bonding" and so on, each with what stands at its head and its text."""
    numbers = {page: number for number, page in enumerate(pages)}
    said = spoken()
    return {
        "pages": [_page(page, *read) for page, read in pages.items()],
        "names": list(_names(pages, numbers)),
        "words": _weights(pages, numbers),
        "same": {_one(word): [_one(other) for other in others] for word, others in said.same.items()},
        "quiet": [_one(word) for word in said.quiet],
        "beside": [_one(word) for word in said.beside],
        "amps": [_one(word) for word in said.amps],
        "slang": [_slang(slang) for slang in said.slang],
        "notCovered": [
            {
                "said": [words_of(words) for words in each.said],
                "title": each.title,
                "why": each.why,
                "steps": each.steps,
                "at": _address(each.page),
            }
            for each in said.not_covered
        ],
    }


def _one(word: str) -> str:
    """Return a word of `spoken.toml` as the search knows it."""
    (plain,) = words_of(word)
    return plain


def _address(page: str) -> str:
    path, hash_, anchor = page.partition("#")
    return f"{path}.html{hash_}{anchor}"


def _page(page: str, told: Data, text: PageText) -> dict[str, Any]:
    found: dict[str, Any] = {"at": f"{page}.html", "title": text.title, "boost": told["search"].get("boost", 1)}
    room = page.partition("/")[0]
    if room in KINDS:
        found["kind"] = str(KINDS[room])
    found["line"] = _line(page, text)
    if not _is_list(told):
        found["headings"] = [[anchor, words] for anchor, words in text.headings if anchor]
    return found


def _line(page: str, text: PageText) -> str:
    """Return what a page is about, in a line."""
    calculator = CALCULATORS.get(page.removeprefix("calculators/"))
    told = str(calculator.purpose) if calculator else text.lead
    sentence = told.partition(". ")[0].removesuffix(".")
    if len(sentence) <= LONGEST_LINE:
        return sentence
    return f"{sentence[:LONGEST_LINE].rpartition(' ')[0].rstrip(',;:')} …"


def _is_list(told: Data) -> bool:
    """Tell whether a page repeats what others say, so that only its own name finds it."""
    return bool(told["search"].get("exclude"))


def _names(pages: dict[str, tuple[Data, PageText]], numbers: dict[str, int]) -> Iterable[list[Any]]:
    """Yield every name as its words and the number of its page, with the anchor where it names a part of one."""
    for page, (told, text) in pages.items():
        whole = [text.title, *told.get("tags", ()), *spoken().names.get(page, ())]
        for words in dict.fromkeys(" ".join(words_of(name)) for name in whole):
            yield [words, numbers[page]]
    if "glossary" in numbers:
        for term in terms():
            for name in dict.fromkeys((term.term, *term.also, *filter(None, term.spanish.split("; ")))):
                yield [" ".join(words_of(name)), numbers["glossary"], term.anchor]


def _weights(pages: dict[str, tuple[Data, PageText]], numbers: dict[str, int]) -> dict[str, list[int]]:
    """Return for each word its pages, each number followed by how much the word tells of that page, times ten."""
    strengths = {numbers[page]: _strengths(page, told, text) for page, (told, text) in pages.items()}
    having = Counter(word for words in strengths.values() for word in words)
    weights: dict[str, list[int]] = {}
    for number, words in strengths.items():
        for word, strength in words.items():
            weight = round(10 * strength * log(1 + len(pages) / having[word]))
            weights.setdefault(word, []).extend((number, weight))
    return dict(sorted(weights.items()))


def _strengths(page: str, told: Data, text: PageText) -> dict[str, float]:
    """Return how strongly each word stands in a page: by the best place that it has there, and by how often."""
    named = " ".join((*told.get("tags", ()), *spoken().names.get(page, ())))
    places = [(TITLE, text.title), (NAME, named)]
    counted: Counter[str] = Counter()
    if not _is_list(told):
        places += [(HEADING, " ".join(words for _, words in text.headings)), (LEAD, text.lead)]
        counted = Counter(words_of(text.rest))
    best: dict[str, float] = {}
    for strength, words in places:
        for word in words_of(words):
            best[word] = max(best.get(word, 0), strength)
    return {
        word: best.get(word, 0) + counted[word] / (counted[word] + ENOUGH) * 2 for word in best.keys() | counted.keys()
    }


def _slang(slang: Slang) -> dict[str, Any]:
    return {
        "said": [words_of(words) for words in slang.said],
        "asks": slang.asks,
        "senses": [_sense(sense) for sense in slang.senses],
    }


def _sense(sense: Sense) -> dict[str, Any]:
    told: dict[str, Any] = {"name": sense.name, "answer": sense.answer, "at": _address(sense.page)}
    if sense.device:
        ratings = sorted({row["ampere"] for edition in EDITIONS for row in rule(RATINGS, edition).rows})
        told["sizes"] = {str(amps): said for amps in ratings if (said := _size(sense.device, amps))}
    return told


def _size(slug: str, amps: int) -> list[str]:
    """Return what a calculator answers for a breaker alone, and its address; nothing where editions differ."""
    results = [CALCULATORS[slug](edition=edition, device=str(amps)) for edition in EDITIONS]
    answers = {f"{each.answer.headline} {each.answer.detail}" for each in results if each.answer}
    if len(answers) > 1 or not all(each.answer for each in results):
        return []
    said = message("{amps} A breaker or fuse: {answer}.", amps=amps, answer=answers.pop())
    return [str(said), page_address(f"{slug}?{urlencode({'device': amps})}")]
