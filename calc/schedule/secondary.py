"""The secondary of a transformer as far as sizing needs it: its current, its device, its conductors."""

from __future__ import annotations

import math

from calc.calculator import NotCovered
from calc.conductors.ampacity import AMPACITY_RULE, ampacity, size_of_ampacity
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.messages import message
from calc.rulebook import rule
from calc.shared_fields import METAL_WORDS, one_of, quantity
from calc.systems import SPLIT, SYSTEMS, system_choices
from calc.trace import Trace, shown_number

NO_NEXT_SIZE = "conductors/secondary_no_next_size_up"
DEVICE_SHARE = "conductors/transformer_secondary_device"
SMALL_SHARE = "conductors/transformer_secondary_device_small"
SMALL_BELOW = "conductors/transformer_secondary_small_below"
NEXT_RATING = "conductors/transformer_secondary_next_rating"
RATINGS = "grounding/standard_fuse_ratings"
PARALLEL = "conductors/parallel_minimum"
MAX_KVA = 10_000


KVA = quantity(message("Transformer rating"), message(
    "From the nameplate, in kVA."
), "kVA", 0.05, MAX_KVA, example="75")
SYSTEM = one_of(
    message("Secondary system"),
    message("The voltage is used only to calculate the secondary current."),
    system_choices(
        "120/240", "208Y/120", "240/120-high-leg", "480Y/277", "600Y/347", "over-1000", "direct-current"
    ),
)


def secondary_current(kva: float, system: str, trace: Trace) -> float:
    """Return the full-load current of the secondary, ampere. Raises: NotCovered for systems outside the rules here."""
    if system not in SYSTEMS:
        key = "naming/over_1000_volts" if system == "over-1000" else "naming/direct_current"
        raise NotCovered(
            message("The sizes here are for AC systems up to 1000 V."),
            message("Look in {section}.", section=trace.section(key)),
        )
    if SYSTEMS[system].kind == SPLIT:
        return trace.compute(
            message("Secondary full-load current."),
            "kva * 1000 / volt",
            "A",
            exact=True,
            kva=kva,
            volt=SYSTEMS[system].line_voltage,
        )
    return trace.compute(
        message("Secondary full-load current."),
        "kva * 1000 / (root_three * line_volt)",
        "A",
        exact=True,
        kva=kva,
        root_three=math.sqrt(3),
        line_volt=SYSTEMS[system].line_voltage,
    )


def warn_of_a_large_device(device: float, current: float, trace: Trace) -> None:
    """Warn where the secondary device exceeds the share of the full-load current that the code allows."""
    small = current < rule(SMALL_BELOW, trace.edition).value
    key = SMALL_SHARE if small else DEVICE_SHARE
    most = trace.compute(
        message("Largest secondary overcurrent device, as a percentage of that current."),
        "share * current / 100",
        "A",
        (key, SMALL_BELOW) if small else (key,),
        exact=True,
        share=rule(key, trace.edition).value,
        current=current,
    )
    if not small:
        ratings = [row["ampere"] for row in trace.cite(RATINGS).rows]
        most = next((ampere for ampere in ratings if ampere >= most), most)
        trace.step(message("The next standard rating is permitted."), most, "A", (NEXT_RATING, RATINGS))
    if device > most:
        trace.warn(
            message(
                "A {device} A secondary overcurrent device is over the {most} A permitted for this transformer "
                "({section}).",
                device=shown_number(device),
                most=shown_number(round(most, 1)),
                section=trace.section(key),
            )
        )


def secondary_conductor(conductor: str | None, sets: int, metal: str, device: float, trace: Trace) -> str:
    """Return the secondary conductor: the one entered, or the smallest that carries the device's rating.

    A conductor that carries less than `device` is warned of: no next larger device here.
    Raises: NotCovered when no listed size is large enough.
    """
    if conductor is None:
        return _smallest(sets, metal, device, trace)
    carried = ampacity(conductor, metal, trace.edition)
    if carried is not None and carried * sets < device:
        trace.warn(
            message(
                "{sets} × {size} {metal} is good for {carried} A at 75 °C, less than the {device} A device. The next "
                "larger device is not permitted at a transformer secondary ({section}).",
                sets=sets,
                size=shown_size(conductor),
                metal=METAL_WORDS[metal],
                carried=shown_number(carried * sets),
                device=shown_number(device),
                section=trace.section(NO_NEXT_SIZE),
            )
        )
    return conductor


def _smallest(sets: int, metal: str, device: float, trace: Trace) -> str:
    size = size_of_ampacity(device / sets, metal, trace.edition)
    if size is None:
        raise NotCovered(
            message(
                "No listed {metal} size in {sets} sets is good for {device} A at 75 °C.",
                metal=METAL_WORDS[metal],
                sets=sets,
                device=shown_number(device),
            ),
            message("Enter more sets in parallel ({section}).", section=trace.section(AMPACITY_RULE)),
        )
    floor = rule(PARALLEL, trace.edition).value
    if sets > 1 and area(size, trace.edition) < area(floor, trace.edition):
        size = floor
    trace.step(
        message(
            "Smallest secondary conductor with the ampacity of the device: {sets} × {size} {metal}. "
            "Nothing is rounded down.",
            sets=sets,
            size=shown_size(size),
            metal=METAL_WORDS[metal],
        ),
        shown_size(size),
        "",
        (NO_NEXT_SIZE, AMPACITY_RULE),
    )
    return size
