"""What every fault result says of itself: a model, and what it assumes."""

from __future__ import annotations

from collections.abc import Iterable

from calc.messages import Message, message
from calc.trace import Trace


def state_the_model(trace: Trace, assumptions: Iterable[Message]) -> None:
    """Note that the result comes from a model, each of its assumptions, and who decides on a device."""
    trace.note(message("This is a model for teaching and checking. It measures nothing on site."))
    for assumption in assumptions:
        trace.note(message("Assumed: {assumption}", assumption=assumption))
    trace.note(
        message(
            "Choose a protective device from its own published curve and ratings. That decision belongs to a "
            "qualified person."
        )
    )
