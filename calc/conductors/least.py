"""The smallest conductors: what is made and allowed for wiring, and what a service may have."""

from __future__ import annotations

from calc.calculator import FieldError
from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.messages import message
from calc.rulebook import rule
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace

WIRING = "conductors/least_size"
SERVICE = "services/least_conductor"
ONE_CIRCUIT = "services/least_conductor_of_one_circuit"


def refuse_below_wiring(conductor: str | None, metal: str, trace: Trace, field: str = "conductor") -> None:
    """Raise FieldError for a hot conductor smaller than general wiring has, so also for aluminum that nobody makes.

    conductor: size label, None for one left out; field: the name of what was entered. Source: conductors/least_size.
    """
    if conductor is not None:
        _refuse_below(WIRING, conductor, metal, trace, field)


def refuse_below_service(conductor: str, metal: str, trace: Trace) -> None:
    """Raise FieldError for a conductor too small for any service; note which services may have one as small.

    Source: services/least_conductor_of_one_circuit, services/least_conductor.
    """
    refuse_below_wiring(conductor, metal, trace)
    _refuse_below(ONE_CIRCUIT, conductor, metal, trace, "conductor")
    least = _least(SERVICE, metal, trace)
    if area(conductor, trace.edition) < area(least, trace.edition):
        trace.note(
            message(
                "Service conductors must be {least} {metal} or larger ({section}). Smaller ones are permitted only for "
                "limited loads of a single branch circuit, such as a controlled water heater ({exception}).",
                least=shown_size(least),
                metal=METAL_WORDS[metal],
                section=trace.section(SERVICE),
                exception=trace.section(ONE_CIRCUIT),
            )
        )


def _refuse_below(key: str, conductor: str, metal: str, trace: Trace, field: str) -> None:
    least = _least(key, metal, trace)
    if area(conductor, trace.edition) >= area(least, trace.edition):
        return
    words = dict(
        typed=shown_size(conductor),
        least=shown_size(least),
        metal=METAL_WORDS[metal],
        section=rule(key, trace.edition).section,
    )
    if key == ONE_CIRCUIT:
        enter = message(
            "{typed} {metal} is not permitted for service conductors ({section}). Enter {least} or larger.",
            **words,
        )
    elif TABLE_COLUMN[metal] == "copper":
        enter = message(
            "Hot conductors smaller than {least} are not permitted for general wiring ({section}). Enter {least} or "
            "larger.",
            **words,
        )
    else:
        enter = message(
            "{metal} starts at {least} ({section}). Enter {least} or larger, or choose copper.",
            **words | {"metal": message("Copper-clad aluminum") if "clad" in metal else message("Aluminum")},
        )
    raise FieldError(field, enter)


def _least(key: str, metal: str, trace: Trace) -> str:
    return rule(key, trace.edition).rows[0][TABLE_COLUMN[metal]]
