"""The smallest conductors: what is made and allowed for wiring, and what a service may have."""

from __future__ import annotations

from calc.conductors.ampacity import ALUMINUM_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.declare import Mend
from calc.rulebook import rule
from calc.vocabulary import METAL_WORDS
from calc.words import say
from calc.working import Working

WIRING = "conductors/least_size"
SERVICE = "services/least_conductor"
ONE_CIRCUIT = "services/least_conductor_of_one_circuit"


def refuse_below_wiring(conductor: str | None, metal: str, working: Working, field: str = "conductor") -> None:
    """Raise Mend for a hot conductor smaller than general wiring has, so also for aluminum that nobody makes.

    conductor: size label, None for one left out; field: the name of what was entered. Source: conductors/least_size.
    """
    if conductor is not None:
        _refuse_below(WIRING, conductor, metal, working, field)


def refuse_below_service(conductor: str, metal: str, working: Working) -> None:
    """Raise Mend for a service conductor too small for any service; note which services may be as small as this one.

    Source: services/least_conductor_of_one_circuit, services/least_conductor.
    """
    refuse_below_wiring(conductor, metal, working)
    _refuse_below(ONE_CIRCUIT, conductor, metal, working, "conductor")
    least = _least(SERVICE, metal, working)
    if area(conductor, working.edition) < area(least, working.edition):
        working.note(
            say(
                "Service conductors are {least} {metal} or larger ({section}). Smaller ones are only for limited loads "
                "of a single branch circuit, as a controlled water heater ({exception}).",
                least=shown_size(least),
                metal=METAL_WORDS[metal],
                section=working.section(SERVICE),
                exception=working.section(ONE_CIRCUIT),
            )
        )


def _refuse_below(key: str, conductor: str, metal: str, working: Working, field: str) -> None:
    least = _least(key, metal, working)
    if area(conductor, working.edition) >= area(least, working.edition):
        return
    words = dict(
        typed=shown_size(conductor),
        least=shown_size(least),
        metal=METAL_WORDS[metal],
        section=rule(key, working.edition).section,
    )
    if key == ONE_CIRCUIT:
        mending = say("No service has {typed} {metal} conductors ({section}). Enter {least} or larger.", **words)
    elif ALUMINUM_COLUMN[metal] == "copper":
        mending = say(
            "Hot conductors smaller than {least} are not for general wiring ({section}). Enter {least} or larger.",
            **words,
        )
    else:
        mending = say(
            "{metal} starts at {least} ({section}). Enter {least} or larger, or choose copper.",
            **words | {"metal": say("Copper-clad aluminum") if "clad" in metal else say("Aluminum")},
        )
    raise Mend(field, mending)


def _least(key: str, metal: str, working: Working) -> str:
    return rule(key, working.edition).rows[0][ALUMINUM_COLUMN[metal]]
