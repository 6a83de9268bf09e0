"""Inputs that can hardly be meant: they are answered all the same, with a remark."""

from __future__ import annotations

from calc.conductors.ampacity import AMPACITY_RULE, ampacity
from calc.conductors.size import shown_size
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, shown_number

OVER_RULE = "fault/device_over_ampacity"


def remark_on_device(device: float, conductor: str, metal: str, trace: Trace) -> None:
    """Warn where a device is many times what its wire carries. device: rating, ampere; conductor: a size label."""
    carries = ampacity(conductor, metal, trace.edition)
    if carries and device > trace.cite(OVER_RULE).value * carries:
        trace.warn(
            message(
                "A {device} A device on {size} {metal}, which carries {carries} A ({section}): check both.",
                device=shown_number(device),
                section=trace.section(AMPACITY_RULE),
                **_words(conductor, metal, carries),
            )
        )


def remark_on_load(load: float, conductor: str, metal: str, trace: Trace) -> None:
    """Warn where a load is more than its conductor carries. load: ampere; conductor: a size label."""
    carries = ampacity(conductor, metal, trace.edition)
    if carries and load > carries:
        trace.warn(
            message(
                "{load} A is more than {size} {metal} carries, {carries} A ({section}): check both.",
                load=shown_number(load),
                section=trace.section(AMPACITY_RULE),
                **_words(conductor, metal, carries),
            )
        )


def _words(conductor: str, metal: str, carries: float) -> dict[str, object]:
    return {"size": shown_size(conductor), "metal": METAL_WORDS[metal], "carries": shown_number(carries)}
