"""Whether a raceway or cable is listed, identified or built as its kind must be to count as the path."""

from __future__ import annotations

from calc.calculator import FieldError
from calc.messages import Message, message
from calc.raceways.kind import NOT_LISTED


def listing(raceway: str, listed: str | None) -> list[Message]:
    """Return the reason against `raceway`, a key of `NOT_LISTED`, from the answer "yes", "no" or None for none.

    Raises: FieldError for metal-clad cable without an answer: the armor of the usual one is not identified for it.
    """
    if listed == "no":
        return [NOT_LISTED[raceway]]
    if listed is None and raceway == "metal-clad-cable":
        raise FieldError(
            "listed",
            message(
                "The answer depends on it. Ordinary interlocked armor is not identified for it: choose no if in doubt."
            ),
        )
    return []
