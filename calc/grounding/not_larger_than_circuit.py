"""An equipment grounding conductor need not be larger than the circuit conductors, singly or as a set."""

from __future__ import annotations

from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area, next_listed_size
from calc.conductors.size import shown_size
from calc.known import known
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, shown_number

CIRCUIT = "grounding/not_larger_than_circuit_conductors"
TAP = "grounding/feeder_tap"
PARALLEL = "grounding/parallel_raceway_limit"


def not_larger_than_circuit(
    size: str, metal: str, installed: str, conductor_metal: str, sets: int, raceways: int, tap: bool, trace: Trace
) -> str:
    """Return `size`, or the smaller one that the circuit conductors allow.

    installed: one ungrounded conductor; sets: of them in parallel; raceways: in how many they run.
    tap: the conductors are those of a feeder tap. Source: rules named above.
    """
    edition = trace.edition
    by_raceway = raceways > 1 and trace.cite(PARALLEL).value == "one-conductor"
    counted = 1 if by_raceway else sets
    limit = area(installed, edition) * counted
    if area(size, edition) <= limit:
        return size
    rule = PARALLEL if by_raceway else TAP if tap else CIRCUIT
    if TABLE_COLUMN[metal] == "aluminum" and TABLE_COLUMN[conductor_metal] == "copper":
        trace.warn(
            message(
                "It is not required to be larger than the circuit conductors ({section}). Copper and aluminum of the "
                "same size do not have the same conductance, so this answer keeps {size} {metal}.",
                section=trace.section(rule),
                size=shown_size(size),
                metal=METAL_WORDS[metal],
            )
        )
        return size
    smaller = installed if counted == 1 else known(next_listed_size(limit, edition))
    if area(smaller, edition) >= area(size, edition):
        return size
    if by_raceway:
        words = message(
            "It is not required to be larger than the largest hot conductor in its raceway: {smaller}.",
            smaller=shown_size(smaller),
        )
        trace.reading(message("where the authority having jurisdiction does not accept the limit per raceway"), size)
        trace.warn(
            message(
                "The limit by the largest conductor in each raceway is new in {edition} and disputed ({section}). "
                "Earlier editions would require {size} in each raceway.",
                edition=edition,
                section=trace.section(rule),
                size=shown_size(size),
            )
        )
    elif counted > 1:
        words = message(
            "It is not required to be larger than the circuit conductors; {sets} in parallel total {limit} cmil: "
            "{smaller}.",
            sets=sets,
            limit=shown_number(limit),
            smaller=shown_size(smaller),
        )
    elif tap:
        words = message(
            "It is not required to be larger than the tap conductors: {smaller}.", smaller=shown_size(smaller)
        )
    else:
        words = message(
            "It is not required to be larger than the circuit conductors: {smaller}.",
            smaller=shown_size(smaller),
        )
    trace.step(words, shown_size(smaller), "", (rule,))
    return smaller
