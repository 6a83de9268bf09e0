"""Words as HTML."""

from __future__ import annotations

from html import escape

from calc.words import Sentence


def text(words: Sentence | str) -> str:
    """Give words as HTML text, whatever was typed into them."""
    return escape(str(words))
