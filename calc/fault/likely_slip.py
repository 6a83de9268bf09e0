"""Inputs that can hardly be meant: they are answered all the same, with a remark."""

from __future__ import annotations

from calc.conductors.ampacity import AMPACITY_RULE, ampacity
from calc.conductors.size import shown_size
from calc.vocabulary import METAL_WORDS
from calc.words import say
from calc.working import Working, shown_number

OVER_RULE = "fault/device_over_ampacity"


def remark_on_device(device: float, conductor: str, metal: str, working: Working) -> None:
    """Warn where a device is many times what its wire carries. device: rating, ampere; conductor: a size label."""
    carries = ampacity(conductor, metal, working.edition)
    if carries and device > working.cite(OVER_RULE).value * carries:
        working.warn(
            say(
                "A {device} A device on {size} {metal}, which carries {carries} A ({section}): check both.",
                device=shown_number(device),
                section=working.section(AMPACITY_RULE),
                **_words(conductor, metal, carries),
            )
        )


def remark_on_load(load: float, conductor: str, metal: str, working: Working) -> None:
    """Warn where a load is more than its conductor carries. load: ampere; conductor: a size label."""
    carries = ampacity(conductor, metal, working.edition)
    if carries and load > carries:
        working.warn(
            say(
                "{load} A is more than {size} {metal} carries, {carries} A ({section}): check both.",
                load=shown_number(load),
                section=working.section(AMPACITY_RULE),
                **_words(conductor, metal, carries),
            )
        )


def _words(conductor: str, metal: str, carries: float) -> dict[str, object]:
    return {"size": shown_size(conductor), "metal": METAL_WORDS[metal], "carries": shown_number(carries)}
