"""What a link was answered, in words: a link carries the answer as a code, and no reader is shown one."""

from __future__ import annotations

import re

from calc.conductors.area import sizes_of_any_edition
from calc.conductors.size import shown_size
from calc.messages import Message, message
from calc.registry import CALCULATORS
from calc.shared_fields import METAL_WORDS

_SIZE = re.compile(rf"(?P<size>.+?)-(?P<metal>{'|'.join(sorted(METAL_WORDS, key=len, reverse=True))})")
_AMOUNT = re.compile(r"(?P<number>[\d.]+)-?(?P<unit>A|V|ft|ohm|volt)")
_UNITS = {"volt": "V"}


def words_of_code(code: str) -> Message | None:
    """Return the answer that a link carries in words, None where its code has none that a reader would know.

    >>> str(words_of_code("4-copper")), str(words_of_code("depends-1/0-copper")), words_of_code("yes,no")
    ('4 AWG copper', 'It depends. On the safe side: 1/0 AWG copper', None)
    """
    if code == "not-covered":
        return message("Not covered here")
    if code.startswith("depends-"):
        safe = words_of_code(code.removeprefix("depends-"))
        return message("It depends. On the safe side: {safe}", safe=safe) if safe else message("It depends")
    sized = _SIZE.fullmatch(code)
    if sized and sized["size"] in sizes_of_any_edition():
        return message("{size} {metal}", size=shown_size(sized["size"]), metal=METAL_WORDS[sized["metal"]])
    amount = _AMOUNT.fullmatch(code)
    if amount:
        unit = _UNITS.get(amount["unit"], amount["unit"])
        return message("{number} {unit}", number=amount["number"], unit=unit)
    return CALCULATORS[code].name if code in CALCULATORS else None

