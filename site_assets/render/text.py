"""Words as HTML."""

from __future__ import annotations

from html import escape

from calc.messages import Message


def text(words: Message | str) -> str:
    """Return words as HTML text, whatever was typed into them."""
    return escape(str(words))
