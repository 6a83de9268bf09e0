"""Where things are, as calculators ask for it: choices with one value and one meaning each."""

from __future__ import annotations

from calc.field import Choice
from calc.words import say

ORDINARY = Choice("ordinary", say("Ordinary"))
HAZARDOUS = Choice("hazardous", say("Hazardous (classified)"))
PATIENT_CARE = Choice("patient-care", say("Patient care space"))
LOAD_SIDE = Choice("load-side", say("Past a breaker or fuse"))
SUPPLY_SIDE = Choice("supply-side", say("Ahead of the first one: service, transformer, generator"))
INSIDE = Choice("inside", say("Inside the raceway or enclosure"))
OUTSIDE = Choice("outside", say("Outside, along the raceway"))
OUTSIDE_AT_POLE = Choice("outside-at-pole", say("Outside at an outdoor pole, to an isolated metal section or elbow"))
# One place with two published values; each calculator writes its own and reads both.
DERIVED_SYSTEM = ("derived-system", "separately-derived-system")
NONMETALLIC = ("nonmetallic", "nonmetallic-raceway")


def also_called(value: str) -> tuple[str, ...]:
    """Return what other calculators call the place or raceway that one calls `value`.

    >>> also_called("derived-system"), also_called("inside")
    (('separately-derived-system',), ())
    """
    return tuple(
        other for names in (DERIVED_SYSTEM, NONMETALLIC) if value in names for other in names if other != value
    )
