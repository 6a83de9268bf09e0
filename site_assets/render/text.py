"""Words as HTML."""

from __future__ import annotations

import re
from html import escape

from calc.messages import CalculatorName, Message

UNITS = "AWG kcmil cmil kVA kA mA A V ohm·m ohm kilohm milliohm mΩ Ω ft in mm cm m ms s min h % °C °F".split()
NUMBER_WITH_UNIT = re.compile(rf"[\d.,/]*\d (?:{'|'.join(UNITS)})(?![\w·²])")


def text(words: Message | CalculatorName | str) -> str:
    """Return words as HTML text, whatever was typed into them."""
    return escape(str(words))


def unbroken(html: str) -> str:
    """Return words in which no number stands on one line and its unit on the next."""
    return NUMBER_WITH_UNIT.sub(r'<span class="whole">\g<0></span>', html)


def linked(words: Message | str) -> str:
    """Return words as HTML text; each calculator that they name becomes a link to its page."""
    shown = text(words)
    for named in words.values.values() if isinstance(words, Message) else ():
        if isinstance(named, CalculatorName):
            shown = shown.replace(text(named), f'<a href="{named.slug}.html">{text(named)}</a>', 1)
    return shown
