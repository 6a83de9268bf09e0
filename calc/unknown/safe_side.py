"""Which of two answers is on the safe side, and which inputs push it there: declared for each calculator.

`rank` gives what an answer asks for as pairs (family, amount). An answer is on the safe side of another when it asks
for as much or more in every pair of the same family; the family "" compares with any. Where no order is declared,
or families differ, as copper and aluminum do, no answer is called safe for both.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from calc.field import Field
from calc.messages import Message, message
from calc.unknown import ranks
from calc.unknown.ranks import OPENS, Order, Rank
from calc.unknown.states import answers_without, takes_unknown

# Their figures are the only ratings at which the size behind a device changes: calc.grounding.size_for_circuit.
_SIZES = (
    "grounding/equipment_grounding_size", "conductors/ampacity_75c", "conductors/small_conductor_device",
    "conductors/ampacity_60c",
)  # fmt: skip
# Their figures are the only ratings at which the time that a standard promises changes.
_TIMES = tuple(
    f"fault/{name}"
    for name in (
        "breaker_at_135_percent", "breaker_at_135_percent_small", "breaker_at_200_percent",
        "breaker_at_200_percent_small", "breaker_field_test", "fuse_at_135_percent", "fuse_class_c",
        "fuse_class_largest", "household_breaker_opens",
    )
)  # fmt: skip


@dataclass(frozen=True)
class SafeSide:
    """How a calculator's answers are ordered, and what is known of each of its numbers.

    `rising`: inputs that, growing, never let an answer ask for less; `falling`: that never let it ask for more. A case
    not covered or a field to correct stands at an end. `at_ends`: those of which no value between two others asks for
    more than both of these. `turns`: for an input, the rules at whose figures its direction may turn; between them it
    has one. `not_zero`: inputs of which 0 says that there is none or that nobody knows, so that no range begins there.
    `only_with`: values of other inputs without which no bounds can be given for an input. `enter`: what to enter
    instead, and why, for an input that no bounds can be given for.
    `figures`: the answer is a number that moves with every step of its inputs, so that only the ends of a range are
    worked out. `by_code`: the words repeat what was entered, so that the headline and the rank tell outcomes apart.
    `heavy`: a run takes tens of milliseconds. `purposes`: which end is safe depends on what the answer is for, so that
    none is called safe.
    """

    rank: Order | None = None
    rising: tuple[str, ...] = ()
    falling: tuple[str, ...] = ()
    at_ends: tuple[str, ...] = ()
    turns: Mapping[str, tuple[str, ...]] = field(default_factory=dict[str, tuple[str, ...]])
    not_zero: tuple[str, ...] = ()
    only_with: Mapping[str, Mapping[str, float]] = field(default_factory=dict[str, Mapping[str, float]])
    enter: Mapping[str, Message] = field(default_factory=dict[str, Message])
    figures: bool = False
    by_code: bool = False
    purposes: bool = False
    heavy: bool = False

    def bounds(self, name: str, inputs: Mapping[str, object]) -> bool:
        """Tell whether an answer is known between two values of a number when it is known at these, beside others."""
        needed = self.only_with.get(name, {})
        declared = (*self.rising, *self.falling, *self.at_ends, *self.turns)
        return name in declared and all(inputs.get(other) == value for other, value in needed.items())


_WIRE = SafeSide(ranks.size)
_LIST = SafeSide(
    ranks.parts, rising=("primary_device", "piping_device"), at_ends=("kva",), turns={"device": _SIZES}
)
_MEASURED = message("It is what the test gives: without it there is nothing to check.")
_DECLARED = {
    "service-schedule": _LIST,
    "transformer-schedule": _LIST,
    "generator-schedule": _LIST,
    "separate-building-schedule": _LIST,
    "main-bonding-jumper": _WIRE,
    "system-bonding-jumper": _WIRE,
    "supply-side-bonding-jumper": SafeSide(ranks.size, rising=("length",)),
    "equipment-bonding-jumper": SafeSide(
        ranks.both(ranks.size, lambda answer: (("", 0.0 if answer.values["fits"] else 1.0),)),
        rising=("length",),
        turns={"device": _SIZES},
        enter={"other_devices": message("The largest device decides: enter that one as the upstream device.")},
        by_code=True,
    ),
    "equipment-grounding-conductor": SafeSide(ranks.size, rising=("motor_current",), turns={"device": _SIZES}),
    "grounded-conductor": _WIRE,
    "grounding-electrode-conductor": _WIRE,
    "water-pipe-bonding": SafeSide(ranks.size, rising=("device",)),
    "structural-metal-bonding": SafeSide(ranks.size, by_code=True),
    "raceway-as-grounding-path": SafeSide(
        ranks.verdict("may", "may-not"), rising=("device", "length"), falling=("tray_area",), by_code=True
    ),
    "buried-metal-elbow": SafeSide(
        ranks.verdict("no-bond", "bond"), rising=("device",), falling=("cover", "concrete"), by_code=True
    ),
    "knockouts-over-250-volts": SafeSide(
        ranks.verdict("ordinary", "enough", "jumper-if-path", "jumper"), rising=("voltage_to_ground",), by_code=True
    ),
    "available-fault-current": SafeSide(
        ranks.amount("available_ampere"),
        rising=(
            "kva", "three_phase_current", "tolerance", "utility_kva", "utility_current", "primary_voltage",
            "line_to_ground_current", "motor_current", "voltage_factor",
        ),
        falling=("length", "percent_z", "subtransient", "percent_r", "percent_x", "zero_sequence", "temperature"),
        at_ends=("x_over_r",),
        enter={"utility_x_over_r": message(
            "The current is highest where this is as large as X/R of what it feeds, and less on both sides."
        )},
        figures=True,
        purposes=True,
    ),
    "longest-return-path": SafeSide(
        lambda answer: (
            ("", 1.0 if answer.values["within"] == "no" else 0.0), ("", -float(answer.values["shortest_ft"])),
        ),
        rising=("device", "multiple", "length", "arc", "spacing"),
        falling=("voltage_to_ground", "available"),
        figures=True,
    ),
    "stray-neutral-current": SafeSide(
        ranks.amount("metal_ampere"),
        rising=("load",),
        at_ends=("pipe",),
        not_zero=("pipe",),
        enter={"length": message(
            "A longer run changes the share of the current on metal, and lets less flow in all."
        )},
        figures=True,
    ),
    "electrode-resistance": SafeSide(
        ranks.amount("ohm_likely"),
        rising=("resistivity", "pin_spacing", "pin_ohm", "concrete_resistivity"),
        falling=("length", "diameter", "spacing", "depth"),
        at_ends=("width", "height"),  # more concrete helps in poor soil, and hinders in good soil
        figures=True,
    ),
    "measured-electrode": SafeSide(
        ranks.verdict("plateau", "no-plateau", "too-flat", "disturbed", "too-near", "too-low", "not-isolated"),
        at_ends=("dimension",),
        enter=dict.fromkeys(("probe", "distances", "readings"), _MEASURED),
        figures=True,
    ),
    "pool-bonding-plan": SafeSide(
        ranks.decisions("wire_feet"),
        rising=("pool_length", "pool_width"),
        falling=(
            "fence", "door", "piping", "raceway", "other_metal", "other_height", "wall_height", "water_area",
        ),
        at_ends=("rim_height",),
    ),
    "livestock-equipotential-plane": SafeSide(
        ranks.decisions("lowest_cow_milliampere"), rising=("volt",), at_ends=("resistor",), figures=True
    ),
    "waterside-equipotential-plane": SafeSide(
        ranks.decisions(), rising=("depth",), at_ends=("voltage_to_ground", "distance", "reach")
    ),
    "bond-measurement": SafeSide(
        ranks.verdict("pass", "joined", "cannot-tell", "lower-than-the-wire", "investigate", "stop"),
        falling=("joints", "limit_ohm"),
        at_ends=(
            "length", "celsius", "reading", "lead_spread", "current", "drop", "drop_off", "lead_ohm", "digit",
            "meter_percent",
        ),
        enter={"reverse_reading": _MEASURED},
        not_zero=("length", "meter_percent"),
        figures=True,
    ),
    "clamp-reading": SafeSide(
        ranks.clamp, rising=("ampere",), at_ends=("empty", "off_ampere", "appliances", "digit", "meter_percent"),
        figures=True,
    ),
    "surface-voltage": SafeSide(
        ranks.amount("volt_over_high", "volt_there_high", "milliampere_most"),
        rising=("voltage_to_ground", "length", "diameter", "bend"),
        falling=("cover", "resistivity", "pin_spacing", "pin_ohm", "distance"),
        at_ends=("device",),
        only_with={"cover": {"distance": 0}},
        enter={"cover": message(
            "Beside the metal the voltage first rises and then falls with depth. For the worst, enter the least cover "
            "and a distance of 0."
        )},
        figures=True,
        heavy=True,
    ),
    "shock-limits": SafeSide(
        ranks.both(
            ranks.verdict("hardly-felt", "felt", "cannot-let-go", "can-kill"), ranks.amount("milliampere_most")
        ),
        rising=("voltage", "time"),
        figures=True,
    ),
    "device-clearing": SafeSide(
        ranks.verdict(*OPENS),
        rising=("instantaneous_multiple", "voltage_to_ground", "available"),
        falling=("interrupting_rating",),
        at_ends=("fault_current",),
        turns={"device": _TIMES},
        by_code=True,
    ),
    "ground-fault-loop": SafeSide(
        lambda answer: (*ranks.verdict(*OPENS)(answer), ("", -float(answer.values["lowest_ampere"]))),
        rising=("length", "joint", "instantaneous_multiple", "arc", "spacing"),
        falling=("voltage_to_ground", "available"),
        turns={"device": _TIMES},
        figures=True,
        heavy=True,
    ),
    "jumper-withstand": SafeSide(
        lambda answer: (
            ranks.verdict("survives", "too-small") if "checked" in answer.values else ranks.size
        )(answer),
        rising=("fault_current", "clearing_time", "instantaneous_multiple", "start_celsius", "let_through", "x_over_r"),
        turns={"device": _TIMES},
        by_code=True,
    ),
    "earth-only-return": SafeSide(
        ranks.verdict("not-assured", "does-not-open"),
        rising=("device", "electrode_ohm", "source_ohm"),
        falling=("voltage_to_ground",),
        figures=True,
    ),
    "take-a-bond-away": SafeSide(
        ranks.both(
            ranks.verdict("no-fault", *OPENS), lambda answer: (("", float(max(answer.values["volts"].values()))),)
        ),
        rising=("loose_ohm",),
        at_ends=("person_ohm", "electrode_ohm", "supply_length", "feeder_length", "branch_length"),
        figures=True,
        heavy=True,
    ),
    # Every ohm here is a resistance, so each voltage is (a + b R) / (c + d R): it only rises or only falls with R.
    "voltage-between": SafeSide(
        ranks.amount("milliampere_worst"),
        rising=("leak_ampere", "voltage", "neutral_volt"),
        falling=("leak_ohm",),
        at_ends=(
            "one_neutral_ohm", "one_earth_ohm", "two_neutral_ohm", "two_earth_ohm", "bond_ohm", "neutral_ohm",
        ),
        figures=True,
        heavy=True,
    ),
    "deck-voltage": SafeSide(
        ranks.amount("touch_volt"),
        rising=("rise",),
        at_ends=("pool_length", "pool_width", "distance", "ring_distance", "depth", "shell_depth"),
        enter=dict.fromkeys(
            ("mesh_width", "spacing"),
            message("Where its wires fall beside the wall moves the result up and down. Enter it as it is built."),
        ),
        figures=True,
        heavy=True,
    ),
}
_NONE_DECLARED = SafeSide()
_NEVER = ("compare-editions",)  # which editions to compare is no matter of knowing


def safe_side(slug: str) -> SafeSide:
    """Return what is declared for a calculator; nothing of it where no order is."""
    return _DECLARED.get(slug, _NONE_DECLARED)


def offers_unknown(slug: str, name: str, field: Field) -> bool:
    """Tell whether a form offers “don't know” for a field: an open input of which the answer has something to say.

    A choice of a heavy calculator would go through too many cases; an empty field may say the same.
    """
    declared = safe_side(slug)
    if slug in _NEVER or not takes_unknown(field) or answers_without(slug, name):
        return False
    if field.kind in ("choice", "size"):
        return not declared.heavy
    return field.kind in ("quantity", "whole number") and name not in (*declared.enter, *declared.not_zero)


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
