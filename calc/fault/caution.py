"""What every fault result says of itself: a model, and what it assumes."""

from __future__ import annotations

from collections.abc import Iterable

from calc.words import Sentence, say
from calc.working import Working


def state_the_model(working: Working, assumptions: Iterable[Sentence]) -> None:
    """Note that the result comes from a model, each of its assumptions, and who decides on a device."""
    working.note(say("This is a model for teaching and checking. It measures nothing on site."))
    for assumption in assumptions:
        working.note(say("Assumed: {assumption}", assumption=assumption))
    working.note(
        say(
            "Decide on a protective device by its own published curve and ratings. That decision belongs to a "
            "qualified person."
        )
    )
