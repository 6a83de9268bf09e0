"""The one question: the open input whose answer leaves the fewest outcomes, and of equals the easiest to look up."""

from __future__ import annotations

from collections.abc import Hashable, Mapping, Sequence
from dataclasses import dataclass

from calc.field import Field
from calc.messages import Message, message
from calc.trace import shown_number

ON_A_LABEL, WITH_A_TAPE, PANEL_OPEN, ASK_OTHERS, UNDECLARED = range(5)
_EFFORT = {
    ON_A_LABEL: ("device", "device_kind", "kva", "percent_z", "fuse_class", "interrupting_rating", "generator_device",
                 "breaker", "listed", "form", "appliances", "area", "animals", "kind", "water", "equipment"),
    WITH_A_TAPE: ("length", "cover", "concrete", "distance", "trade_size", "raceway", "joined", "routing", "run",
                  "where", "electrode", "piping", "location", "place", "enclosures", "disconnect_raceways", "frame",
                  "exposed"),
    PANEL_OPEN: ("conductor", "sets", "conductor_metal", "metal", "raceways", "installed_conductor", "circuits",
                 "wiring", "return_conductor", "fitting", "knockout", "bonded", "neutral", "generator_neutral"),
    ASK_OTHERS: ("system", "system_grounding", "available", "minimum_conductor", "increase_reason", "soil",
                 "conductor_basis", "load_size", "utility_kva", "utility_current"),
}  # fmt: skip
_WHERE = {
    ON_A_LABEL: message("Read it on the device, its label or its nameplate."),
    WITH_A_TAPE: message("Look or measure on site."),
    PANEL_OPEN: message(
        "It shows with the cover off: qualified persons only, de-energized, locked out, tested for absence of voltage."
    ),
    ASK_OTHERS: message("Ask the utility or whoever designed it."),
}


@dataclass(frozen=True)
class Question:
    """The input to settle first, its words, and why this one."""

    field: str
    label: Message | str
    why: Message


def effort(name: str) -> int:
    """Return how much work it is to learn an input, 0 to 3, and more for one of which nothing is declared."""
    return next((level for level, names in _EFFORT.items() if name in names), UNDECLARED)


def left_after(name: str, cases: Sequence[tuple[Mapping[str, object], Hashable]]) -> float:
    """Return how many outcomes are left on average when an input is known, each of its values taken as likely.

    cases: settled inputs and the mark of the outcome.

    >>> left_after("metal", [({"metal": "copper"}, "4"), ({"metal": "aluminum"}, "2")])
    1.0
    """
    outcomes: dict[object, set[Hashable]] = {}
    for settled, mark in cases:
        outcomes.setdefault(settled[name], set()).add(mark)
    return sum(map(len, outcomes.values())) / len(outcomes)


def the_question(fields: Mapping[str, Field], cases: Sequence[tuple[Mapping[str, object], Hashable]]) -> Question:
    """Return the question that leaves the fewest outcomes."""
    names = list(cases[0][0])
    left = {name: left_after(name, cases) for name in names}
    best = min(names, key=lambda name: (round(left[name], 9), effort(name), names.index(name)))
    outcomes = len({mark for _, mark in cases})
    if left[best] == 1:
        why = message("It settles the answer.")
    else:
        shown = shown_number(round(left[best], 1))
        why = message("It leaves {left} of {outcomes} answers on average, the fewest.", left=shown, outcomes=outcomes)
    if effort(best) == UNDECLARED:
        return Question(best, fields[best].label, why)
    return Question(best, fields[best].label, message("{why} {where}", why=why, where=_WHERE[effort(best)]))
