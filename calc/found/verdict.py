"""Is what was found on site enough? Its size against the size that the rule requires of that metal.

The size of the answer counts, the safe one where two readings are open; the other one is a condition. Only the size
is checked, so a route that is not allowed, or a part that nobody saw, never passes.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import NamedTuple

from calc.answer import Answer
from calc.calculator import FieldError, NotCovered, Result
from calc.conductors.area import AREA_RULE, area, listed_sizes
from calc.conductors.size import shown_size
from calc.found.declared import FOUND as NAME
from calc.found.declared import SiteCheck
from calc.found.field import FOUND, UNSEEN, shown_found, size_and_metal
from calc.messages import Message, message
from calc.rulebook import rule
from calc.shared_fields import METAL_WORDS
from calc.trace import Reading, Trace, shown_number

ENOUGH, SHORT, UNKNOWN, NOT_PERMITTED = "enough", "short", "unknown", "not-permitted"


@dataclass(frozen=True)
class Verdict:
    """What was found, the size required of its metal, and whether it is enough.

    verdict: "enough", "short", "unknown", or "not-permitted" where the size would do and something else does not.
    sizes, cmil: listed sizes and circular mils above what is required, below zero where short; None where no sizes
    were compared. only_if: the condition on which a short one is enough. open: what this verdict leaves open. parts: of
    a list, the verdict on each part.
    """

    found: str
    verdict: str
    headline: Message
    section: str
    required: tuple[str, str] | None = None
    sizes: int | None = None
    cmil: int | None = None
    only_if: Message | None = None
    open: tuple[Message, ...] = ()
    parts: tuple[PartVerdict, ...] = ()

    @property
    def by(self) -> Message | None:
        """Return by how much it is larger or smaller than required, None where no sizes were compared."""
        if self.sizes is None or self.cmil is None:
            return None
        words: dict[str, object] = dict(sizes=_counted(abs(self.sizes)), cmil=shown_number(abs(self.cmil)))
        if self.required:
            words["required"] = _wire(*self.required)
        if self.sizes == 0:
            return message("Exactly the required size.")
        if self.sizes > 0:
            return message("{sizes} larger than the {required} required ({cmil} cmil).", **words)
        return message("{sizes} smaller than the {required} required ({cmil} cmil).", **words)

    @property
    def more(self) -> list[Message]:
        """Return what stands beside the verdict: by how much, when a short one is enough, what is left open."""
        return [*([self.by] if self.by else []), *([self.only_if] if self.only_if else []), *self.open]

    def note(self, edition: str) -> list[Message]:
        """Return the lines that an inspector copies: what was found, what is required and where, and the verdict."""
        if self.parts:
            return [line for each in self.parts for line in (each.part, *each.verdict.note(edition))]
        lines = [message("Observed: {found}.", found=shown_found(self.found))]
        if self.required:
            required = _wire(*self.required)
            words = dict(required=required, section=self.section, edition=edition)
            lines.append(message("Required: {required} or larger ({section}, {edition} edition).", **words))
        lines.append(message("{verdict}.", verdict=self.headline))
        return [*lines, *self.more]


class PartVerdict(NamedTuple):
    """The verdict on one part of a list: its key there, its name, and the verdict."""

    key: str
    part: Message
    verdict: Verdict


def check_size(result: Result, *, listed_rule: str | None = None) -> Verdict:
    """Return the verdict on what was found beside the answer of `result`; what its metal changes is warned of.

    listed_rule: the rule by which a listed part supplied with its equipment needs no size.
    """
    found = str(result.inputs[NAME])
    seen = size_and_metal(found)
    if seen is None:
        return _without_a_size(found, result, listed_rule)
    size, metal = seen
    try:
        answer, trace = _of_metal(metal, result)
    except (NotCovered, FieldError) as fault:
        why = fault.why if isinstance(fault, NotCovered) else message("{words}", words=fault.words or "")
        words = message("Not checked, no {metal} size is known: {why}", metal=METAL_WORDS[metal], why=why)
        return Verdict(found, UNKNOWN, words, _section(result.answered, result.trace))
    return _compared(found, size, answer, trace)


def _section(answer: Answer, trace: Trace) -> str:
    """Return where the size required is stated: by the step that first gave it, else by what the answer rests on."""
    required = _required_of(answer)
    shown = required and shown_size(required[0])
    place = next((at for at, step in enumerate(trace.steps) if shown and step.value == shown), -1)
    for step in reversed(trace.steps[: place + 1]):
        for cited in step.citations:
            if cited.key != AREA_RULE:  # areas compare sizes, and require none
                return cited.section
    return rule(answer.basis, trace.edition).section


def _of_metal(metal: str, result: Result) -> tuple[Answer, Trace]:
    """Return the answer for the metal found, by the rule for that metal; its warnings and sections join the others'."""
    if metal == result.inputs["metal"]:
        return result.answered, result.trace
    inputs = {name: value for name, value in result.inputs.items() if name != NAME}
    aside, trace = Trace(result.edition), result.trace
    answer = result.calculator.answer(aside, inputs | {"metal": metal})
    for words in aside.warnings:
        if words not in trace.warnings:
            trace.warn(words)
    for cited in aside.citations:
        trace.cite(cited.key)
    return answer, aside


def _without_a_size(found: str, result: Result, listed_rule: str | None) -> Verdict:
    required, section = _required_of(result.answered), _section(result.answered, result.trace)
    if found == UNSEEN:
        words = message("Not checked: it could not be seen")
    elif listed_rule is None:
        words = message("Size not checked: the listing and instructions of this part apply")
    else:
        stated = result.trace.cite(listed_rule).section
        words = message("OK if it came with this equipment and is installed per its instructions ({section})",
                    section=stated)  # fmt: skip
        return Verdict(found, ENOUGH, words, stated)
    return Verdict(found, UNKNOWN, words, section, required)


def _required_of(answer: Answer) -> tuple[str, str] | None:
    size = answer.values.get("size")
    return (str(size), str(answer.values["metal"])) if size else None


def _compared(found: str, size: str, answer: Answer, trace: Trace) -> Verdict:
    required, section, edition = _required_of(answer), _section(answer, trace), trace.edition
    words: dict[str, object] = {"found": shown_found(found)}
    if answer.values.get("may") or any(answer.values.get(name) is False for name in ("bond", "needed", "wire_needed")):
        as_jumper = [Reading(message("where a wire is used as the jumper"), required[0])] if required else []
        open_words = _larger(size, edition, as_jumper)
        return Verdict(found, ENOUGH, message("Not required here: {found} found", **words), section, open=open_words)
    if required is None:
        headline = message(
            "Not checked: the conductor or device it is sized from was not entered. {found} found", **words
        )
        return Verdict(found, UNKNOWN, headline, section)
    words["required"] = _wire(*required)
    order = list(listed_sizes(edition))
    sizes, cmil = order.index(size) - order.index(required[0]), area(size, edition) - area(required[0], edition)
    judged = partial(Verdict, found, section=section, required=required, sizes=sizes, cmil=cmil)
    if cmil < 0:
        met = [each for each in _smaller(trace.readings, required[0], edition) if _at_least(size, each, edition)]
        only_if = message("Large enough only {condition}.", condition=met[0].condition) if met else None
        by = message("1 size") if sizes == -1 else message("{count} sizes", count=-sizes)
        headline = message("{found} is there: short by {by}", by=by, **words)
        return judged(SHORT, headline, only_if=only_if)
    open_words = _larger(size, edition, trace.readings)
    if answer.values.get("fits") is False:
        headline = message("{found} is there: large enough, but not permitted as entered", **words)
        return judged(NOT_PERMITTED, headline, open=open_words)
    return judged(ENOUGH, message("{found} is there: enough", **words), open=open_words)


def _smaller(readings: list[Reading], required: str, edition: str) -> list[Reading]:
    """Return the readings that require less, the largest size first."""
    less = [each for each in readings if each.size and area(each.size, edition) < area(required, edition)]
    return sorted(less, key=lambda each: area(each.size or "", edition), reverse=True)


def _at_least(size: str, reading: Reading, edition: str) -> bool:
    return area(size, edition) >= area(reading.size or "", edition)


def _larger(size: str, edition: str, readings: list[Reading]) -> tuple[Message, ...]:
    """Return what the size found leaves open: readings that require more than it has, or no size at all."""
    return tuple(
        message("{size} is required {condition}.", size=shown_size(each.size), condition=each.condition)
        if each.size
        else each.condition
        for each in readings
        if not each.size or area(each.size, edition) > area(size, edition)
    )


def _wire(size: str, metal: str) -> Message:
    return message("{size} {metal}", size=shown_size(size), metal=METAL_WORDS[metal])


def _counted(sizes: int) -> Message:
    return message("One size") if sizes == 1 else message("{count} sizes", count=sizes)


SIZE = SiteCheck(FOUND, check_size)


def size_or_listed(listed_rule: str) -> SiteCheck:
    """Return the check of a part that `listed_rule` accepts as supplied with listed equipment, whatever its size."""
    return SiteCheck(FOUND, lambda result: check_size(result, listed_rule=listed_rule))
