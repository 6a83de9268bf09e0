"""An equipment grounding conductor need not be larger than the circuit conductors, singly or as a set."""

from __future__ import annotations

from calc.conductors.ampacity import ALUMINUM_COLUMN
from calc.conductors.area import area, next_listed_size
from calc.conductors.size import shown_size
from calc.vocabulary import METAL_WORDS
from calc.words import say
from calc.working import Working, shown_number

CIRCUIT = "grounding/not_larger_than_circuit_conductors"
TAP = "grounding/feeder_tap"
PARALLEL = "grounding/parallel_raceway_limit"


def not_larger_than_circuit(
    size: str, metal: str, installed: str, conductor_metal: str, sets: int, raceways: int, tap: bool, working: Working
) -> str:
    """Give `size`, or the smaller one that the circuit conductors allow.

    installed: one ungrounded conductor; sets: of them in parallel; raceways: in how many they run.
    tap: the conductors are those of a feeder tap. Source: rules named above.
    """
    edition = working.edition
    by_raceway = raceways > 1 and working.cite(PARALLEL).value == "one-conductor"
    counted = 1 if by_raceway else sets
    limit = area(installed, edition) * counted
    if area(size, edition) <= limit:
        return size
    rule = PARALLEL if by_raceway else TAP if tap else CIRCUIT
    if ALUMINUM_COLUMN[metal] == "aluminum" and ALUMINUM_COLUMN[conductor_metal] == "copper":
        working.warn(
            say(
                "It need not be larger than the circuit conductors ({section}). Copper and aluminum of one size do "
                "not conduct alike, so this answer keeps {size} {metal}.",
                section=working.section(rule),
                size=shown_size(size),
                metal=METAL_WORDS[metal],
            )
        )
        return size
    smaller = installed if counted == 1 else next_listed_size(limit, edition)
    if area(smaller, edition) >= area(size, edition):
        return size
    if by_raceway:
        words = say(
            "It need not be larger than the largest hot conductor in its raceway: {smaller}.",
            smaller=shown_size(smaller),
        )
        working.reading(say("where the authority does not take the limit by the conductor in each raceway"), size)
        working.warn(
            say(
                "The limit by the conductor in each raceway is new in {edition} and disputed ({section}). Earlier "
                "editions would ask for {size} in each raceway.",
                edition=edition,
                section=working.section(rule),
                size=shown_size(size),
            )
        )
    elif counted > 1:
        words = say(
            "It need not be larger than the circuit conductors; {sets} in parallel have {limit} cmil: {smaller}.",
            sets=sets,
            limit=shown_number(limit),
            smaller=shown_size(smaller),
        )
    elif tap:
        words = say("It need not be larger than the tap conductors: {smaller}.", smaller=shown_size(smaller))
    else:
        words = say("It need not be larger than the circuit conductors: {smaller}.", smaller=shown_size(smaller))
    working.step(words, shown_size(smaller), "", (rule,))
    return smaller
