"""Whether a metal elbow is out of reach: deep enough in the ground or, for some conductors, in concrete."""

from __future__ import annotations

from math import floor

from calc.declare import needed
from calc.units import convert
from calc.words import Sentence, say
from calc.working import Working, shown_number

COVER_OF_SERVICE = "raceways/elbow_cover_service"
COVER_OF_OTHERS = "raceways/elbow_cover_other"
CONCRETE_OF_OTHERS = "raceways/elbow_concrete_other"
FINEST = 6  # decimals kept, so that 450 mm typed is 450 mm compared


def reasons_to_bond(
    circuit: str, joined: str, cover: float | None, concrete: float | None, working: Working
) -> tuple[str, list[Sentence]]:
    """Give the rule that decides and the reasons why the elbow is not out of reach; none where it is.

    circuit: "service", "derived-system" or "feeder-or-branch"; joined: "nonmetallic" or "metal";
    cover, concrete: inches. Raises: Mend when the cover decides and is left out. Source: rules named above.
    """
    service = circuit == "service"
    rule = COVER_OF_SERVICE if service else COVER_OF_OTHERS
    if joined == "metal":
        working.step(say("Only a metal part with nonmetallic raceway on both sides may go without."), cites=(rule,))
        return rule, [say("It is joined to metal that leaves the ground.")]
    given = {rule: cover}
    if concrete is not None and service:
        working.step(say("For service conductors concrete around the elbow does not count."), cites=(rule,))
    elif concrete is not None:
        given[CONCRETE_OF_OTHERS] = concrete
    for key, inches in given.items():
        if inches is not None and _enough(key, inches, working):
            return key, []
    needed(cover, "cover")
    for key, inches in given.items():
        _warn_of_millimetres(key, inches, working)
    return rule, [_short(key, inches, working) for key, inches in given.items()]


def _enough(key: str, inches: float, working: Working) -> bool:
    (least,) = working.cite(key).rows
    words = {"least": least["inches"], "given": _rounded_down(inches)}
    if key == CONCRETE_OF_OTHERS:
        step = say("Concrete on every side: {least} in is the least. The elbow has {given} in.", **words)
    else:
        step = say("Cover over every part: {least} in is the least. The elbow has {given} in.", **words)
    working.step(step, shown_number(least["inches"]), "in", (key,))
    return inches >= least["inches"]


def _short(key: str, inches: float, working: Working) -> Sentence:
    (least,) = working.cite(key).rows
    words = {"least": least["inches"], "given": _rounded_down(inches)}
    if key == CONCRETE_OF_OTHERS:
        return say("It has {given} in of concrete; {least} in is the least.", **words)
    return say("It has {given} in of cover; {least} in is the least.", **words)


def _warn_of_millimetres(key: str, inches: float, working: Working) -> None:
    (least,) = working.cite(key).rows
    if round(convert(inches, "in", "mm"), FINEST) >= least["millimetres"]:
        working.warn(
            say(
                "It reaches the {millimetres} mm that stand beside the {inches} in, and either number may count "
                "({section}). This answer goes by the inches; ask the authority before you leave it unbonded.",
                millimetres=least["millimetres"],
                inches=least["inches"],
                section=working.section("raceways/either_unit"),
            )
        )


def _rounded_down(inches: float) -> str:
    """Give inches to two decimals, never up: 17.999 in is not shown as the 18 in it misses."""
    return shown_number(floor(round(inches * 100, FINEST)) / 100)
