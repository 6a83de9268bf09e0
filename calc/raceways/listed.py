"""Whether a raceway or cable is listed, identified or built as its kind must be to count as the path."""

from __future__ import annotations

from calc.declare import Mend
from calc.raceways.kind import NOT_LISTED
from calc.words import Sentence, say


def listing(raceway: str, listed: str | None) -> list[Sentence]:
    """Give the reason against `raceway`, a key of `NOT_LISTED`, from the answer "yes", "no" or None for none.

    Raises: Mend for metal-clad cable without an answer: the armor of the usual one is not identified for it.
    """
    if listed == "no":
        return [NOT_LISTED[raceway]]
    if listed is None and raceway == "metal-clad-cable":
        raise Mend(
            "listed",
            say("It decides here. The usual interlocked armor is not identified for it: choose no if in doubt."),
        )
    return []
