"""Links that last: the inputs of a calculator as a query, written and read back."""

from __future__ import annotations

from functools import lru_cache
from urllib.parse import parse_qsl, quote

from calc.declare import Result


def read(query: str) -> list[tuple[str, str]]:
    """Give the names and texts of a query ("edition=2023&conductor=3/0"), blank ones too, in order.

    `h` and `q` belong to the page's own search and are left out.
    """
    pairs = parse_qsl(query.removeprefix("?"), keep_blank_values=True, max_num_fields=None)
    return [(name, text) for name, text in pairs if name not in ("h", "q")]


def write(result: Result) -> str:
    """Give the link that restores a result: always the edition, every input given, and what was answered."""
    given = [(name, value) for name, value in result.inputs.items() if value is not None]
    pairs = [("edition", result.edition), *given, ("said", result.said)]
    query = "&".join(f"{name}={_quoted(str(value))}" for name, value in pairs)
    return f"calculators/{result.calculator.slug}.html?{query}"


@lru_cache(maxsize=1000)
def _quoted(text: str) -> str:
    # Most values of most links are one of a few choices.
    return quote(text, safe="/,")
