"""Text in a table that a spreadsheet would run as a formula: an apostrophe goes before it, and off again."""

from __future__ import annotations

FORMULA_SIGNS = tuple("=+-@＝＋－＠")
BREAKS = ("\t", "\r", "\n")
UNREADABLE = "\N{REPLACEMENT CHARACTER}"


def escape_formula(text: str) -> str:
    """Return a text so that no spreadsheet takes it for a formula: an apostrophe goes before it."""
    text = text.replace("\0", UNREADABLE)
    seen = next((letter for letter in text if letter.isprintable() and letter != " "), "")
    return f"'{text}" if seen in FORMULA_SIGNS or text[:1] in BREAKS else text


def without_escape(text: str) -> str:
    """Return what the reader entered, without the apostrophe that an earlier answer put before it."""
    return text[1:].strip() if text[:1] == "'" and escape_formula(text[1:]) == text else text.strip()
