"""Where things are, as calculators ask for it: choices with one value and one meaning each."""

from __future__ import annotations

from calc.field import Choice
from calc.messages import message

ORDINARY = Choice("ordinary", message("Ordinary"))
HAZARDOUS = Choice("hazardous", message("Hazardous (classified)"))
PATIENT_CARE = Choice("patient-care", message("Patient care space"))
LOAD_SIDE = Choice("load-side", message("On the load side of a breaker or fuse"))
SUPPLY_SIDE = Choice("supply-side", message("Ahead of the first breaker or fuse: service, transformer, generator"))
INSIDE = Choice("inside", message("Inside the raceway or enclosure"))
OUTSIDE = Choice("outside", message("Outside, routed with the raceway"))
OUTSIDE_AT_POLE = Choice("outside-at-pole", message("At an outdoor pole, to an isolated metal section or elbow"))
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
