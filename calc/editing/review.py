"""What an owner of a book must read to confirm an edition, the figures that decide the most answers first."""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from calc.editing.figures_cell import figures_cell
from calc.editing.tree import RefusedError
from calc.editing.weight import Weight, weights
from calc.editions import EDITIONS
from calc.rulebook import DATED, Rule, document, rule, rule_keys

# Practice has no source: no book will confirm it.
NOT_ASKED = ("confirmed", "practice")
_TOKEN = re.compile(r"\d+|[A-Za-z]+")
_WORD = re.compile(r"[A-Z]?[a-z]{2,}")
_CHAPTER = re.compile(r"Chapter (\d+)")


@dataclass(frozen=True)
class Reading:
    """One statement to read in the book: our words and figures, its mark, and what hangs on it."""

    stated: Rule
    weight: Weight

    @property
    def figures(self) -> str:
        """The figures as one cell of a table, "" where the rule only names a section."""
        return figures_cell(self.stated)

    @property
    def stamp(self) -> str:
        """A short name for what is asked here: a tick confirms this statement and no later one."""
        stated = self.stated
        told = "\0".join(map(str, (stated.title, stated.applies, stated.unit, stated.section, self.figures)))
        return hashlib.sha256(told.encode()).hexdigest()[:10]


def readings(edition: str, *, confirmed_too: bool = False, in_book_order: bool = False) -> list[Reading]:
    """Return what is to be read of an edition: not yet confirmed, or with `confirmed_too` all that it states.

    Ranked by the worked answers that read it, then in the book's order of sections; `in_book_order` by the latter
    alone. Raises: RefusedError for an edition that the rules do not know.
    """
    if edition not in EDITIONS:
        raise RefusedError(f"The rules do not know the {edition} edition. They know {', '.join(EDITIONS)}.")
    weight = weights(edition)
    asked = [
        Reading(stated, weight[stated.key])
        for stated in dated_rules(edition)
        if confirmed_too or stated.mark not in NOT_ASKED
    ]
    asked.sort(key=lambda each: (book_order(each.stated.section), each.stated.key))
    return asked if in_book_order else sorted(asked, key=lambda each: -each.weight.answers)


def dated_rules(edition: str) -> Iterable[Rule]:
    """Return every rule that the edition itself states; physics and other standards are no matter of an edition."""
    return (rule(key, edition) for key in rule_keys() if DATED in document(key))


def book_order(section: str) -> tuple[Any, ...]:
    """Return what sorts places as the book prints them: by article and section, a table after its section.

    >>> sorted(["Chapter 9, Table 8", "Table 250.66", "250.102(C)(1)", "250.66", "Article 100"], key=book_order)
    ['Article 100', '250.66', 'Table 250.66', '250.102(C)(1)', 'Chapter 9, Table 8']
    """
    chapter = _CHAPTER.search(section)
    # Chapter 9 has no articles: it stands where articles of the 900s would.
    after = section[chapter.end() :] if chapter else section
    numbers = f"{int(chapter[1]) * 100 if chapter else ''}{_WORD.sub('', after)}"
    tokens = [(0, int(token), "") if token.isdigit() else (1, 0, token) for token in _TOKEN.findall(numbers)]
    return [*tokens[:2], (-1, 0, "")], "Table" in section, tokens
