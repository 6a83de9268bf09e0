"""Which fields of a form are asked first, and which stand in its second part.

First comes what kind of case it is, then what it takes to answer. At most MAX_FIRST fields are shown before the first
answer, whatever kind is chosen; a field that counts only under a choice is shown once that choice is made.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import product

from calc.calculator import Calculator, Field
from calc.unknown.completions import NOT_A_STATE
from calc.unknown.safe_side import offers_unknown
from calc.unknown.states import WORD

MAX_FIRST = 5
# Where the order of the declaration is not that in which people are asked. Each is held to MAX_FIRST too.
_FIRST: Mapping[str, str] = {
    "service-schedule": "conductor sets conductor_metal metal electrodes",
    "transformer-schedule": "system kva device electrode conductor_metal",
    "generator-schedule": "neutral breaker conductor device electrodes",
    "separate-building-schedule": "device conductor sets conductor_metal electrodes",
    "main-bonding-jumper": "conductor sets conductor_metal metal form",
    "system-bonding-jumper": "conductor sets conductor_metal metal form",
    "supply-side-bonding-jumper": "form conductor sets conductor_metal metal",
    "equipment-bonding-jumper": "joins routing device metal length",
    "grounded-conductor": "conductor sets raceways conductor_metal metal",
    "grounding-electrode-conductor": "electrode conductor sets conductor_metal metal",
    "water-pipe-bonding": "piping device conductor sets conductor_metal",
    "buried-metal-elbow": "joined circuit cover device conductor",
    "knockouts-over-250-volts": "place system knockout raceway fitting",
    "available-fault-current": "source system kva percent_z three_phase_current subtransient",
    "ground-fault-loop": "device conductor length voltage_to_ground return_conductor",
    "longest-return-path": "device conductor voltage_to_ground return_conductor length",
    "device-clearing": "device_kind device fault_current instantaneous_multiple fuse_class voltage_to_ground",
    "jumper-withstand": "device_kind device fault_current clearing_time size",
    "electrode-resistance": "electrode soil length diameter resistivity",
    "pool-bonding-plan": "kind parts surfaces way water_contact",
    "livestock-equipotential-plane": "area animals metal plane tied",
    "bond-measurement": "method dead conductor length reading current",
    "surface-voltage": "shape soil cover resistivity pin_spacing pin_ohm",
}
# Its drawing shows one case from the beginning, so its choices stand as they are drawn.
_DRAWN = ("take-a-bond-away",)


def asked_first(calculator: Calculator) -> tuple[str, ...]:
    """Return the fields of the first part, in the order in which they are asked."""
    chosen: tuple[str, ...] = ()
    for name in _in_order(calculator):
        if most_shown(calculator, (*chosen, name)) <= MAX_FIRST:
            chosen = (*chosen, name)
    return chosen


def begins_unchosen(calculator: Calculator, name: str, first: tuple[str, ...]) -> bool:
    """Tell whether a field stands empty until someone fills it, although a link that leaves it out has a default.

    `first`: the fields of the first part. There every choice and every count does: a default that nobody chose is not
    to be read as chosen. One that says itself that nothing is known may stand.
    """
    field, default = calculator.fields[name], calculator.defaults.get(name)
    counted = field.kind == "choice" or field.whole_numbers is not None
    return (
        name in first and counted and default not in (None, WORD, *NOT_A_STATE) and calculator.slug not in _DRAWN
    )


def is_needed(calculator: Calculator, name: str, first: tuple[str, ...]) -> bool:
    """Tell whether there is no answer while a field stands empty; a choice that nobody made is answered as unknown."""
    if begins_unchosen(calculator, name, first):
        field = calculator.fields[name]
        return field.kind != "choice" or not offers_unknown(calculator.slug, name, field)
    return name not in calculator.defaults


def most_shown(calculator: Calculator, names: tuple[str, ...]) -> int:
    """Return how many of these fields are shown at most at one time, for all choices of which others depend."""
    return max(
        sum(is_shown(calculator.fields[name], chosen) for name in names) for chosen in _choices(calculator, names)
    )


def is_shown(field: Field, chosen: Mapping[str, str]) -> bool:
    """Tell whether a field is shown beside what is chosen: what depends on a choice waits until that is made."""
    return all(chosen.get(other) in values for other, values in field.relevant_when.items())


def _in_order(calculator: Calculator) -> Iterator[str]:
    if calculator.slug in _FIRST:
        yield from _FIRST[calculator.slug].split()
        return
    usual = [name for name, field in calculator.fields.items() if not field.rare]
    kinds = {other for name in usual for other in calculator.fields[name].relevant_when}
    yield from sorted(usual, key=lambda name: (name not in kinds, name in calculator.defaults))


def _choices(calculator: Calculator, names: tuple[str, ...]) -> Iterator[Mapping[str, str]]:
    """Yield every choice of the fields of which others depend; one outside the first part stands at its default."""
    kinds = dict.fromkeys(other for name in names for other in calculator.fields[name].relevant_when)
    values = [_values(calculator, kind, names) for kind in kinds]
    for each in product(*values):
        yield dict(zip(kinds, each, strict=True))


def _values(calculator: Calculator, kind: str, names: tuple[str, ...]) -> tuple[str, ...]:
    every = tuple(choice.value for choice in calculator.fields[kind].choices)
    return every if kind in names else (str(calculator.defaults.get(kind, "")), *every)
