"""The outputs that calculators share: one name, one meaning, one unit."""

from __future__ import annotations

from calc.output import Output
from calc.vocabulary import METAL_WORDS
from calc.words import Sentence, say

METALS = tuple(METAL_WORDS)


def wire(
    size: Sentence,
    *,
    metals: tuple[str, ...] = METALS,
    when: Sentence | None = None,
    sized: Sentence | None = None,
) -> tuple[Output, ...]:
    """Return the outputs of a wire that an answer asks for: its size, its metal and the area of that size.

    size: what it is, in words. metals: those it may be of. when: for which answers a wire is asked for. sized: for
    which of these it has a size, where that is not all.
    """
    return (
        Output("size", size, "size", when=sized or when),
        Output("metal", say("Metal of that wire"), "choice", choices=metals, when=when),
        Output("area_cmil", say("Area of that size, as the code lists it"), "whole-number", "cmil", when=sized or when),
    )


def reasons(meaning: Sentence, *, when: Sentence | None = None) -> Output:
    """Return the output for the reasons of an answer, each a sentence."""
    return Output("reasons", meaning, "text", shape="list", when=when)


def how_many() -> Output:
    """Return the output for how many wires of the size are run, one for each raceway or set."""
    return Output(
        "count", say("How many of them to run"), "whole-number", when=say("where the number of raceways is settled")
    )


def unless_increased() -> Output:
    """Return the output for the size of a wire before larger hot conductors raise it."""
    return Output("size_unless_increased", say("Size if the hot conductors were not upsized"), "size")
