"""The outputs that calculators share: one name, one meaning, one unit."""

from __future__ import annotations

from calc.messages import Message, message
from calc.output import Output
from calc.shared_fields import METAL_WORDS

METALS = tuple(METAL_WORDS)


def wire(
    size: Message,
    *,
    metals: tuple[str, ...] = METALS,
    when: Message | None = None,
    sized: Message | None = None,
) -> tuple[Output, ...]:
    """Return the outputs of a wire that an answer asks for: its size, its metal and the area of that size.

    size: what it is, in words. metals: those it may be of. when: for which answers a wire is asked for. sized: for
    which of these it has a size, where that is not all.
    """
    return (
        Output("size", size, "size", when=sized or when),
        Output("metal", message("Conductor material"), "choice", choices=metals, when=when),
        Output(
            "area_cmil",
            message("Area of that size, as listed in the code"),
            "whole-number",
            "cmil",
            when=sized or when,
        ),
    )


def reasons(meaning: Message, *, when: Message | None = None) -> Output:
    """Return the output for the reasons of an answer, each a sentence."""
    return Output("reasons", meaning, "text", shape="list", when=when)


def how_many() -> Output:
    """Return the output for how many wires of the size are run, one for each raceway or set."""
    return Output(
        "count", message("Number to install"), "whole-number", when=message("where the number of raceways is known")
    )


def unless_increased() -> Output:
    """Return the output for the size of a wire before larger hot conductors raise it."""
    return Output("size_unless_increased", message("Size before the increase for upsized hot conductors"), "size")


def slowest_second() -> Output:
    """Return the output for the longest time in which a device opens."""
    return Output(
        "slowest_second",
        message("Longest opening time of the overcurrent device"),
        "number",
        "s",
        when=message("where a published standard or curve sets one"),
    )
