"""Whether a metal elbow is out of reach: deep enough in the ground or, for some conductors, in concrete."""

from __future__ import annotations

from math import floor

from calc.calculator import require
from calc.messages import Message, message
from calc.trace import Trace, shown_number
from calc.units import convert

COVER_OF_SERVICE = "raceways/elbow_cover_service"
COVER_OF_OTHERS = "raceways/elbow_cover_other"
CONCRETE_OF_OTHERS = "raceways/elbow_concrete_other"
DECIMALS = 6  # decimals kept, so that 450 mm typed is 450 mm compared


def reasons_to_bond(
    circuit: str, joined: str, cover: float | None, concrete: float | None, trace: Trace
) -> tuple[str, list[Message]]:
    """Return the rule that decides and the reasons why the elbow is not out of reach; none where it is.

    circuit: "service", "derived-system" or "feeder-or-branch"; joined: "nonmetallic" or "metal";
    cover, concrete: inches. Raises: FieldError when the cover decides and is left out. Source: rules named above.
    """
    service = circuit == "service"
    rule = COVER_OF_SERVICE if service else COVER_OF_OTHERS
    if joined == "metal":
        trace.step(
            message("Only a metal part with nonmetallic raceway at both ends may be left unbonded."), cites=(rule,)
        )
        return rule, [message("It connects to metal that comes above grade.")]
    given: dict[str, float] = {} if cover is None else {rule: cover}
    if concrete is not None and service:
        trace.step(message("For service conductors, concrete around the elbow is not an exception."), cites=(rule,))
    elif concrete is not None:
        given[CONCRETE_OF_OTHERS] = concrete
    for key, inches in given.items():
        if _enough(key, inches, trace):
            return key, []
    require(cover, "cover")
    for key, inches in given.items():
        _warn_of_millimetres(key, inches, trace)
    return rule, [_short(key, inches, trace) for key, inches in given.items()]


def _enough(key: str, inches: float, trace: Trace) -> bool:
    (least,) = trace.cite(key).rows
    words = {"least": least["inches"], "given": _rounded_down(inches)}
    if key == CONCRETE_OF_OTHERS:
        step = message("Concrete on every side: {least} in. minimum. The elbow has {given} in.", **words)
    else:
        step = message("Cover over every part: {least} in. minimum. The elbow has {given} in.", **words)
    trace.step(step, shown_number(least["inches"]), "in", (key,))
    return inches >= least["inches"]


def _short(key: str, inches: float, trace: Trace) -> Message:
    (least,) = trace.cite(key).rows
    words = {"least": least["inches"], "given": _rounded_down(inches)}
    if key == CONCRETE_OF_OTHERS:
        return message("It has {given} in. of concrete; the minimum is {least} in.", **words)
    return message("It has {given} in. of cover; the minimum is {least} in.", **words)


def _warn_of_millimetres(key: str, inches: float, trace: Trace) -> None:
    (least,) = trace.cite(key).rows
    if round(convert(inches, "in", "mm"), DECIMALS) >= least["millimetres"]:
        trace.warn(
            message(
                "It reaches {millimetres} mm, the metric value for {inches} in., and either unit may be used "
                "({section}). This answer uses the inches; ask the authority having jurisdiction before you leave it "
                "unbonded.",
                millimetres=least["millimetres"],
                inches=least["inches"],
                section=trace.section("raceways/either_unit"),
            )
        )


def _rounded_down(inches: float) -> str:
    """Return inches to two decimals, never up: 17.999 in is not shown as the 18 in it misses."""
    return shown_number(floor(round(inches * 100, DECIMALS)) / 100)
