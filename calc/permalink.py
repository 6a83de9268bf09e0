"""Links that last: a calculator and its inputs as "slug?name=value&...", written and read back.

What makes a web address of a link is `address.page_address`.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from urllib.parse import parse_qsl, quote

from calc.calculator import Result
from calc.unknown_name import is_tracker
from calc.written import plain_number

RESERVED = ("edition", "said", "assumed")


def read(query: str) -> list[tuple[str, str]]:
    """Return the names and texts of a query ("edition=2023&conductor=3/0"), blank ones too, in order.

    `h` and `q` belong to the page's own search and are left out, and so is what `trackers` returns.
    """
    return [(name, text) for name, text in _pairs(query) if name not in ("h", "q") and not is_tracker(name)]


def trackers(query: str) -> tuple[str, ...]:
    """Return the names in a query that others added to count visits, each once.

    >>> trackers("conductor=3/0&utm_source=mail&fbclid=1")
    ('utm_source', 'fbclid')
    """
    return tuple(dict.fromkeys(name for name, _ in _pairs(query) if is_tracker(name)))


def _pairs(query: str) -> list[tuple[str, str]]:
    return parse_qsl(query.removeprefix("?"), keep_blank_values=True, max_num_fields=None)


def write(result: Result) -> str:
    """Return the link that restores a result, "slug?name=value&...": edition, inputs, what was left out, the answer."""
    left_out = [*([] if result.edition_chosen else ["edition"]), *result.left_out]
    assumed = [("assumed", ",".join(left_out))] if left_out else []
    pairs = [("edition", result.edition), *_given(result), *assumed, ("said", result.answer_code)]
    return case_of(result.calculator.slug, pairs)


def without_answer(link: str) -> str:
    """Return a link without the answer it was made with, for the handbook's own: those are of today's rules.

    >>> without_answer("main-bonding-jumper?edition=2023&conductor=3/0&said=4-copper")
    'main-bonding-jumper?edition=2023&conductor=3/0'
    """
    slug, _, query = link.partition("?")
    kept = (pair for pair in query.split("&") if not pair.startswith("said="))
    return f"{slug}?{'&'.join(kept)}"


def case(result: Result) -> str:
    """Return a result's calculator and inputs alone, "slug?name=value&...", for a calculator that runs others."""
    return case_of(result.calculator.slug, _given(result))


def case_of(slug: str, pairs: Sequence[tuple[str, object]]) -> str:
    """Return the case of a calculator on written inputs."""
    return f"{slug}?{_query(pairs)}"


def read_case(text: str) -> tuple[str, list[tuple[str, str]]]:
    """Return the slug and the inputs that a case, a link or its whole address names, without edition and answer.

    >>> read_case("https://example.org/handbook/main-bonding-jumper?edition=2020&conductor=3/0&said=4-copper")
    ('main-bonding-jumper', [('conductor', '3/0')])
    """
    path, _, query = text.strip().partition("?")
    slug = path.rpartition("/")[2].partition(".")[0]
    return slug, [(name, value) for name, value in read(query.partition("#")[0]) if name not in RESERVED]


def edition_of(text: str) -> str | None:
    """Return the edition that a case or a whole link names, None where it names none. Raises: ValueError for two.

    >>> edition_of("main-bonding-jumper?conductor=3/0&edition=2020"), edition_of("main-bonding-jumper?conductor=3/0")
    ('2020', None)
    """
    query = text.strip().partition("?")[2].partition("#")[0]
    named = {value for name, value in read(query) if name == "edition" and value}
    if len(named) > 1:
        raise ValueError(text)
    return named.pop() if named else None


def _given(result: Result) -> list[tuple[str, object]]:
    return [(name, value) for name, value in result.inputs.items() if value is not None]


def _query(pairs: Sequence[tuple[str, object]]) -> str:
    return "&".join(f"{_quoted(name)}={_quoted(_plain(value))}" for name, value in pairs)


def _plain(value: object) -> str:
    return plain_number(value) if isinstance(value, float) else str(value)


@lru_cache(maxsize=1000)
def _quoted(text: str) -> str:
    # Most values of most links are one of a few choices.
    return quote(text, safe="/,")
