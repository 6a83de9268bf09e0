"""The words of a text as the search knows them; `scripts/search-ranking.js` takes a query apart in the same way."""

from __future__ import annotations

import re
from unicodedata import combining, normalize

# 250.102(C)(1), 1/0 and 208Y/120 are one word each; other words end where their letters end.
_WORD = re.compile(r"\d[a-z0-9]*(?:[./]\d[a-z0-9]*|\([a-z0-9]{1,4}\))*|[a-z][a-z0-9]*(?:['’][a-z]+)*")


def words_of(text: str) -> list[str]:
    """Return the words of a text, without capitals, accents and apostrophes."""
    plain = "".join(letter for letter in normalize("NFKD", text) if not combining(letter)).lower()
    return [re.sub("['’]", "", word) for word in _WORD.findall(plain)]
