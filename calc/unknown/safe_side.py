"""Which of two answers is on the safe side, and which inputs push it there: declared for each calculator.

`rank` gives what an answer asks for as pairs (family, amount). An answer is on the safe side of another when it asks
for as much or more in every pair of the same family; the family "" compares with any. Where no order is declared,
or families differ, as copper and aluminum do, no answer is called safe for both.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from calc.answer import Answer
from calc.field import Field
from calc.unknown.states import takes_unknown

Rank = tuple[tuple[str, float], ...]


@dataclass(frozen=True)
class SafeSide:
    """How a calculator's answers are ordered.

    `rising`: inputs that, growing, never let an answer ask for less; `falling`: that never let it ask for more. A case
    not covered or a field to correct stands at an end. `figures`: the answer is a number that moves with every step of
    its inputs, so that only the ends of a range are worked out. `by_code`: the words repeat what was entered, so that
    the headline and the rank tell outcomes apart. `heavy`: a run takes tens of milliseconds. `purposes`: which end is
    safe depends on what the answer is for, so that none is called safe.
    """

    rank: Callable[[Answer], Rank] | None = None
    rising: tuple[str, ...] = ()
    falling: tuple[str, ...] = ()
    figures: bool = False
    by_code: bool = False
    purposes: bool = False
    heavy: bool = False


def _size(answer: Answer) -> Rank:
    """Return the area of a wire in its metal, and how many of them; nothing where no bond is needed."""
    values = answer.values
    if not values.get("area_cmil"):
        return (("", 1.0 if values.get("bond") else 0.0), ("", 0.0))
    return ((str(values["metal"]), float(values["area_cmil"])), ("", float(values.get("count") or 1)))


def _verdict(*least_first: str) -> Callable[[Answer], Rank]:
    """Return the order of answers whose code begins with one of these words, least demanding first."""

    def rank(answer: Answer) -> Rank:
        word = next(
            (each for each in least_first if answer.answer_code == each or answer.answer_code.startswith(f"{each}-")),
            None,
        )
        if word is None:
            return (("another answer", 0.0),)
        values = answer.values
        wire = (str(values["metal"]), float(values["area_cmil"])) if values.get("area_cmil") else ("", 0.0)
        return (("", float(least_first.index(word))), wire)

    return rank


def _parts(answer: Answer) -> Rank:
    """Return what a list of parts asks for, row by row: the size of each wire, by its metal."""
    from calc.conductors.area import undated_area

    def one(key: str, said: object) -> tuple[str, float]:
        size, _, metal = str(said).partition("-")
        try:
            return f"{key} {metal}", float(undated_area(size))
        except (KeyError, ValueError):
            return f"{key} {said}", 0.0

    sizes: Mapping[str, object] | None = answer.values["sizes"]
    return tuple(one(key, said) for key, said in sizes.items()) if sizes else ()


def _amount(name: str, sign: int = 1) -> Callable[[Answer], Rank]:
    """Return the order of answers by one of their values: the larger counts as safe, with -1 the smaller."""
    return lambda answer: (("", sign * float(answer.values[name])),)


def _loop(answer: Answer) -> Rank:
    """Return how weak a fault loop is: what its device does, and how little current flows."""
    return (*_verdict(*_OPENS)(answer), ("", -float(answer.values["lowest_ampere"])))


_OPENS = ("assured", "likely", "slow", "not-assured", "does-not-open", "beyond-rating")
_WIRE = SafeSide(_size)
_LIST = SafeSide(_parts)
_DECLARED = {
    "service-schedule": _LIST,
    "transformer-schedule": _LIST,
    "generator-schedule": _LIST,
    "separate-building-schedule": _LIST,
    "main-bonding-jumper": _WIRE,
    "system-bonding-jumper": _WIRE,
    "supply-side-bonding-jumper": SafeSide(_size, rising=("length",)),
    "equipment-bonding-jumper": SafeSide(
        lambda answer: (*_size(answer), ("", 0.0 if answer.values["fits"] else 1.0)),
        rising=("device", "length"),
        by_code=True,
    ),
    "equipment-grounding-conductor": SafeSide(_size, rising=("device",)),
    "grounded-conductor": _WIRE,
    "grounding-electrode-conductor": _WIRE,
    "water-pipe-bonding": SafeSide(_size, rising=("device",)),
    "structural-metal-bonding": SafeSide(_size, by_code=True),
    "raceway-as-grounding-path": SafeSide(
        _verdict("may", "may-not"), rising=("device", "length"), by_code=True
    ),
    "buried-metal-elbow": SafeSide(
        _verdict("no-bond", "bond"), rising=("device",), falling=("cover", "concrete"), by_code=True
    ),
    "knockouts-over-250-volts": SafeSide(
        _verdict("ordinary", "enough", "jumper-if-path", "jumper"), rising=("voltage_to_ground",), by_code=True
    ),
    "available-fault-current": SafeSide(
        _amount("available_ampere"), falling=("length",), figures=True, purposes=True
    ),
    "longest-return-path": SafeSide(_amount("shortest_ft", -1), rising=("device",), figures=True),
    "electrode-resistance": SafeSide(
        _amount("ohm_likely"), rising=("resistivity",), falling=("length",), figures=True
    ),
    "shock-limits": SafeSide(_amount("milliampere_most"), rising=("voltage",), figures=True),
    "device-clearing": SafeSide(_verdict(*_OPENS), falling=("fault_current",), by_code=True),
    "ground-fault-loop": SafeSide(_loop, rising=("length",), figures=True, heavy=True),
    "jumper-withstand": SafeSide(
        lambda answer: _size(answer) if "checked" not in answer.values else _verdict("survives", "too-small")(answer),
        rising=("fault_current", "clearing_time"),
        by_code=True,
    ),
    "earth-only-return": SafeSide(_verdict("not-assured", "does-not-open"), by_code=True),
    "take-a-bond-away": SafeSide(figures=True, heavy=True),
    "voltage-between": SafeSide(figures=True, heavy=True),
    "surface-voltage": SafeSide(figures=True, heavy=True),
    "deck-voltage": SafeSide(_amount("touch_volt"), rising=("rise",), figures=True, heavy=True),
}
_NONE_DECLARED = SafeSide()
_NEVER = ("compare-editions",)  # which editions to compare is no matter of knowing


def safe_side(slug: str) -> SafeSide:
    """Return what is declared for a calculator; nothing of it where no order is."""
    return _DECLARED.get(slug, _NONE_DECLARED)


def offers_unknown(slug: str, field: Field) -> bool:
    """Tell whether a form offers “don't know” for a field: a choice of a calculator that goes through its cases."""
    return field.kind == "choice" and takes_unknown(field) and not safe_side(slug).heavy and slug not in _NEVER


def on_the_safe_side(one: Rank, other: Rank) -> bool:
    """Tell whether an answer of rank `one` asks for as much as one of rank `other` in everything.

    >>> on_the_safe_side((("copper", 5.0),), (("copper", 3.0),)), on_the_safe_side((("copper", 5.0),), (("", 0.0),))
    (True, True)
    >>> on_the_safe_side((("copper", 5.0),), (("aluminum", 3.0),))
    False
    """
    return len(one) == len(other) and all(
        (mine == theirs or not theirs or not mine) and amount >= least
        for (mine, amount), (theirs, least) in zip(one, other, strict=True)
    )
