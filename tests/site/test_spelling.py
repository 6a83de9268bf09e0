"""Every word of every page is English, Spanish from the glossary, or a word of the trade."""

import re
from collections import Counter
from pathlib import Path

from spellchecker import SpellChecker

from site_assets.build.glossary import terms
from site_assets.build.page_data import ROOMS, pages
from tests.site.pages import SITE, article
from tests.site.reading_level import data_prose, hazard_prose, prose

WORD = re.compile(r"[^\W\d_](?:['’]?[^\W\d_])*")  # "doesn't" is one word
TRADE_WORDS = Path(__file__).with_name("trade_words.txt")


def written() -> Counter:
    """Return every word of the prose of all pages, and of their checks and exercises, in lower case."""
    told = []
    for path in sorted(SITE.rglob("*.html")):
        html = path.read_text(encoding="utf-8")
        if "<article" in html:
            told += prose(article(html))
    for page in pages(*ROOMS):
        told += data_prose(page)
    told += hazard_prose()
    words = (
        word.lower().replace("’", "'").removesuffix("'s").strip("'") for each in told for word in WORD.findall(each)
    )
    return Counter(words)


def unknown(words) -> list[str]:
    """Return the words that neither the dictionary nor the trade knows."""
    trade = set(TRADE_WORDS.read_text(encoding="utf-8").split())
    spanish = {word for each in terms() for word in re.findall(r"[^\W\d_]+", each.spanish.lower())}
    left = {word for word in words if len(word) > 2} - trade - spanish
    return sorted(SpellChecker(language="en").unknown(left))


def test_a_slip_is_noticed():
    assert unknown({"condutor", "conductor", "bonding"}) == ["condutor"]


def test_every_word_is_spelled_as_a_dictionary_or_the_trade_spells_it():
    assert unknown(written()) == []


def test_every_trade_word_is_used():
    listed = TRADE_WORDS.read_text(encoding="utf-8").split()
    assert listed == sorted(set(listed))
    assert set(listed) - set(written()) == set()
