"""Words as HTML."""

from __future__ import annotations

from html import escape

from calc.messages import CalculatorName, Message


def text(words: Message | CalculatorName | str) -> str:
    """Return words as HTML text, whatever was typed into them."""
    return escape(str(words))
