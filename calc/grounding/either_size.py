"""The words where hot conductors larger or smaller than the device asks for leave two sizes, and the question."""

from __future__ import annotations

from calc.conductors.size import shown_size
from calc.grounding.proportional_increase import INCREASE
from calc.grounding.size_for_circuit import HotConductors, Sized
from calc.vocabulary import METAL_WORDS
from calc.words import Sentence, say
from calc.working import Working


def ask_for_the_smallest(sized: Sized, hot: HotConductors, working: Working) -> None:
    """Note the question that leaves one answer, where there are two."""
    if sized.unless_increased:
        working.note(
            say(
                "Were the hot conductors made larger than the load needs, as for voltage drop? Enter the smallest that "
                "would do, or {installed} if they were not. Then there is one answer ({section}).",
                installed=shown_size(hot.installed),
                section=working.section(INCREASE),
            )
        )


def words_of(sized: Sized, metal: str, hot: HotConductors, detail: Sentence, working: Working) -> Sentence:
    """Give `detail` with what else the answer may be, and where."""
    smaller = words_of_smaller(sized, metal, hot.installed)
    record_the_smaller(sized, hot.installed, working)
    if sized.unless_increased:
        return say(
            "{detail}, where the hot conductors were made larger than the load needs ({section}). {smaller}",
            detail=detail,
            section=working.section(INCREASE),
            smaller=smaller,
        )
    return say("{detail}. {smaller}", detail=detail, smaller=smaller) if smaller else detail


def record_the_smaller(sized: Sized, installed: str | None, working: Working) -> None:
    """Record the condition on which a smaller size is enough, for what is found on site."""
    words = {"installed": shown_size(installed) if installed else ""}
    if sized.unless_increased:
        condition = say("where {installed} is the smallest hot conductor that would do", **words)
        working.reading(condition, sized.unless_increased)
    elif sized.if_small_allowed:
        condition = say("where a rule, as for motors, allows {installed} behind this device", **words)
        working.reading(condition, sized.if_small_allowed)


def words_of_smaller(sized: Sized, metal: str, installed: str | None) -> Sentence | None:
    """Give the smaller size and the condition that it holds on, None where there is one answer."""
    words = {"metal": METAL_WORDS[metal], "installed": shown_size(installed) if installed else ""}
    if sized.unless_increased:
        return say(
            "{size} {metal} where {installed} is the smallest that would do",
            size=shown_size(sized.unless_increased),
            **words,
        )
    if sized.if_small_allowed:
        return say(
            "{size} {metal} only where a rule, as for motors, allows {installed} behind this device",
            size=shown_size(sized.if_small_allowed),
            **words,
        )
    return None
