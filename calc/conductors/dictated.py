"""How a phone writes down a size that was spoken: "three aught", "number six", "five hundred KC mil"."""

from __future__ import annotations

import re

_ONES = {
    "ONE": 1, "TWO": 2, "THREE": 3, "FOUR": 4, "FIVE": 5, "SIX": 6, "SEVEN": 7, "EIGHT": 8, "NINE": 9, "TEN": 10,
    "TWELVE": 12, "FOURTEEN": 14, "FIFTEEN": 15, "SIXTEEN": 16, "SEVENTEEN": 17, "EIGHTEEN": 18,
}  # fmt: skip
_NUMBER = f"({'|'.join(_ONES)}|A)"
_OF_AUGHT = {
    "1": 1, "ONE": 1, "SINGLE": 1, "2": 2, "TWO": 2, "TO": 2, "TOO": 2, "DOUBLE": 2, "3": 3, "THREE": 3, "TRIPLE": 3,
    "4": 4, "FOUR": 4, "FOR": 4, "QUADRUPLE": 4,
}  # fmt: skip
_AUGHT = re.compile(rf"\b({'|'.join(_OF_AUGHT)})[ -]?(?:AUGHTS?|OUGHTS?|NAUGHTS?|NOUGHTS?)\b")
_STROKE = re.compile(r"\b(\d|ONE|TWO|THREE|FOUR) ?(?:SLASH|OVER|/) ?(?:ZERO|OH|O|0)\b")
_HUNDREDS = re.compile(rf"\b{_NUMBER}[ -]HUNDRED(?:(?: AND)?[ -](FIFTY))?\b")
_THOUSAND = re.compile(r"\b(?:A|ONE|(TWO)) THOUSAND\b(?! CIRCULAR)")
_FIFTY = re.compile(rf"\b{_NUMBER}[ -]FIFTY\b")
_KCMIL = re.compile(r"\b(?:THOUSAND CIRCULAR MILS?|K ?C ?MILS?|K ?C ?M|M ?C ?M)\b")
_WORD = re.compile(rf"\b({'|'.join(_ONES)})\b")


def in_figures(spelled: str) -> str:
    """Return a size in capital letters with its words as figures; what is no such word stays.

    >>> in_figures("THREE AUGHT"), in_figures("NUMBER SIX"), in_figures("TWO FIFTY KC MIL")
    ('3/0', 'NO 6', '250 KCMIL')
    >>> in_figures("TWO SETS OF FIVE HUNDRED")
    '2 SETS OF 500'
    """
    text = _AUGHT.sub(lambda found: f"{_OF_AUGHT[found[1]]}/0", spelled)
    text = _STROKE.sub(lambda found: f"{_ONES.get(found[1], found[1])}/0", text)
    text = _HUNDREDS.sub(lambda found: f"{100 * _ONES.get(found[1], 1) + (50 if found[2] else 0)}", text)
    text = _THOUSAND.sub(lambda found: "2000" if found[1] else "1000", text)
    text = _FIFTY.sub(lambda found: f"{100 * _ONES.get(found[1], 1) + 50}", text)
    text = _KCMIL.sub("KCMIL", text)
    text = _WORD.sub(lambda found: str(_ONES[found[1]]), text)
    return re.sub(r"\bNUMBER\b", "NO", re.sub(r"\bGAUGE\b", "AWG", text))
