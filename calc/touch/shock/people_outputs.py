"""What answers hold of the current through people: what most get more than and less than, by skin and shoes."""

from __future__ import annotations

from calc.messages import Message, message
from calc.output import Output
from calc.touch.shock.people import PEOPLE_WORDS


def people_outputs(before: str = "") -> tuple[Output, ...]:
    """Return the outputs for what `calc.touch.shock.people.people_values` gives."""
    return tuple(
        Output(f"{before}milliampere_{who}_{share}", meaning, "number", "mA")
        for who, words in PEOPLE_WORDS.items()
        for share, meaning in _shares(words)
    )


def _shares(who: Message) -> tuple[tuple[str, Message], ...]:
    return (
        ("few", message("Current hand to both feet, {who}: 19 of 20 people get more", who=who)),
        ("most", message("Current hand to both feet, {who}: 19 of 20 people get less", who=who)),
    )
