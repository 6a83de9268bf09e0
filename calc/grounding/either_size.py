"""The words where hot conductors larger or smaller than the device asks for leave two sizes, and the question."""

from __future__ import annotations

from calc.conductors.size import shown_size
from calc.grounding.proportional_increase import INCREASE
from calc.grounding.size_for_circuit import HotConductors, Sized
from calc.known import known
from calc.messages import Message, message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace


def ask_for_the_smallest(sized: Sized, hot: HotConductors, trace: Trace) -> None:
    """Note the question that leaves one answer, where there are two."""
    if sized.unless_increased:
        trace.note(
            message(
                "Were the hot conductors upsized, for example for voltage drop? Enter the minimum size required before "
                "upsizing, or {installed} if they were not. Then there is one answer ({section}).",
                installed=shown_size(known(hot.installed)),
                section=trace.section(INCREASE),
            )
        )


def words_of(sized: Sized, metal: str, hot: HotConductors, detail: Message, trace: Trace) -> Message:
    """Return `detail` with what else the answer may be, and where."""
    smaller = words_of_smaller(sized, metal, hot.installed)
    record_the_smaller(sized, hot.installed, trace)
    if sized.unless_increased:
        return message(
            "{detail}, where the hot conductors were upsized ({section}). {smaller}",
            detail=detail,
            section=trace.section(INCREASE),
            smaller=smaller,
        )
    return message("{detail}. {smaller}", detail=detail, smaller=smaller) if smaller else detail


def record_the_smaller(sized: Sized, installed: str | None, trace: Trace) -> None:
    """Record the condition on which a smaller size is enough, for what is found on site."""
    words = {"installed": shown_size(installed) if installed else ""}
    if sized.unless_increased:
        condition = message("where {installed} is the minimum hot conductor size", **words)
        trace.reading(condition, sized.unless_increased)
    elif sized.if_small_allowed:
        condition = message(
            "where a rule, such as the one for motors, permits {installed} on this breaker or fuse",
            **words,
        )
        trace.reading(condition, sized.if_small_allowed)


def words_of_smaller(sized: Sized, metal: str, installed: str | None) -> Message | None:
    """Return the smaller size and the condition that it holds on, None where there is one answer."""
    words = {"metal": METAL_WORDS[metal], "installed": shown_size(installed) if installed else ""}
    if sized.unless_increased:
        return message(
            "{size} {metal} where {installed} is the minimum size",
            size=shown_size(sized.unless_increased),
            **words,
        )
    if sized.if_small_allowed:
        return message(
            "{size} {metal} only where a rule, such as the one for motors, permits {installed} on this breaker or fuse",
            size=shown_size(sized.if_small_allowed),
            **words,
        )
    return None
