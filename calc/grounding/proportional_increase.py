"""Hot conductors larger than needed make the equipment grounding conductor larger, area for area."""

from __future__ import annotations

from calc.calculator import NotCovered
from calc.conductors.area import AREA_RULE, area, listed_sizes, next_listed_size
from calc.conductors.size import shown_size
from calc.messages import message
from calc.trace import Trace, shown_number

INCREASE = "grounding/equipment_grounding_increase"
NOT_COUNTED = "grounding/increase_that_does_not_count"
QUALIFIED = "grounding/increase_by_qualified_person"
CLOSE = 0.001  # a share of the area: what two people who round differently may read differently


def increased_size(size: str, minimum: str, installed: str, reason: str, trace: Trace) -> str:
    """Return the size label that `size` grows to when `installed` conductors are larger than `minimum` ones.

    reason: "any", or "ambient-or-bundling", which does not count. Areas are compared in exact circular mils.
    Raises: NotCovered when the installed conductor is the smaller one or no listed size is large enough.
    Source: rule grounding/equipment_grounding_increase.
    """
    edition = trace.edition
    needed_cmil, installed_cmil = area(minimum, edition), area(installed, edition)
    if installed_cmil < needed_cmil:
        raise NotCovered(
            message(
                "The installed hot conductor ({installed}) is smaller than the minimum size required ({minimum}).",
                installed=shown_size(installed),
                minimum=shown_size(minimum),
            ),
            message("Check the ampacity of the circuit conductors first. This handbook does not size them."),
        )
    if installed_cmil == needed_cmil:
        return size
    if reason == "ambient-or-bundling":
        say_that_it_does_not_count(trace)
        return size
    larger, required = in_proportion(size, minimum, installed, trace)
    if size != minimum:  # one to one: the circuit conductors themselves are the limit
        _show_near_miss(area(size, edition), installed_cmil / needed_cmil, required, larger, trace)
    note_qualified_person(trace)
    return larger


def say_that_it_does_not_count(trace: Trace) -> None:
    """Record that ambient temperature or bundling alone makes no equipment grounding conductor larger."""
    trace.step(
        message(
            "The hot conductors are larger only because of ambient temperature or bundling corrections: no increase."
        ),
        cites=(NOT_COUNTED,),
    )


def in_proportion(size: str, minimum: str, installed: str, trace: Trace) -> tuple[str, float]:
    """Return the size label that `size` grows to, and the exact area, cmil, that asks for it.

    Raises: NotCovered when no listed size is large enough. Source: rule grounding/equipment_grounding_increase.
    """
    edition = trace.edition
    required = trace.compute(
        message(
            "The hot conductors are {installed} where {minimum} is the minimum: increase the area in proportion.",
            installed=shown_size(installed),
            minimum=shown_size(minimum),
        ),
        "base_area * installed_area / needed_area",
        "cmil",
        (INCREASE, AREA_RULE),
        exact=True,
        base_area=area(size, edition),
        installed_area=area(installed, edition),
        needed_area=area(minimum, edition),
    )
    larger = next_listed_size(required, edition)
    if larger is None:
        raise NotCovered(
            message(
                "It requires {required} cmil. No single listed conductor is that large.",
                required=shown_number(required),
            ),
            message("Ask the engineer for the installation ({section}).", section=trace.section(INCREASE)),
        )
    trace.step(
        message(
            "Next listed size at or above that area: {size}, {cmil} cmil.",
            size=shown_size(larger),
            cmil=shown_number(area(larger, edition)),
        ),
        shown_size(larger),
        "",
        (AREA_RULE,),
    )
    return larger, required


def _show_near_miss(base: int, ratio: float, required: float, size: str, trace: Trace) -> None:
    edition = trace.edition
    for digits in (1, 2, 3):
        rounded = round(ratio, digits)
        other = next_listed_size(base * rounded, edition)
        if other != size:
            trace.warn(
                message(
                    "Close call: the ratio rounded to {rounded} gives {area} cmil and {other}. The exact area is "
                    "{required} cmil, so {size} is correct by the arithmetic. Others may round; ask the authority "
                    "having jurisdiction.",
                    rounded=rounded,
                    area=shown_number(base * rounded),
                    other=shown_size(other) if other else message("no listed size"),
                    required=shown_number(required),
                    size=shown_size(size),
                )
            )
            return
    below = max((cmil for cmil in listed_sizes(edition).values() if cmil < required), default=0)
    if required - below <= CLOSE * required:
        trace.warn(
            message(
                "Close call: the required area is only {over} cmil above the next smaller size. The arithmetic "
                "requires {size}; ask the authority having jurisdiction before you go below it.",
                over=shown_number(required - below),
                size=shown_size(size),
            )
        )


def note_qualified_person(trace: Trace) -> None:
    """Note whether the edition lets a qualified person size an increased conductor otherwise."""
    stated = trace.cite(QUALIFIED)
    if stated.value == "permitted":
        trace.note(
            message(
                "A qualified person may size it another way, to provide an effective ground-fault current path "
                "({section}). This answer is the proportional one.",
                section=stated.section,
            )
        )
    else:
        trace.note(
            message(
                "The {edition} edition has no exception for sizing by a qualified person ({section}).",
                edition=trace.edition,
                section=stated.section,
            )
        )
