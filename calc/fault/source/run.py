"""A run of conductors from a source to the place of a fault: out on a line, back on another conductor."""

from __future__ import annotations

from dataclasses import dataclass

from calc.calculator import FieldError, require
from calc.conductors.impedance import REACTANCE_RULE, RESISTANCE_RULE, impedance
from calc.conductors.size import shown_size
from calc.fault.source.fault_currents import shown_impedance
from calc.fault.source.source_fields import COLD_RULE, CONDUCTOR
from calc.messages import message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, shown_number


@dataclass(frozen=True)
class Run:
    """One line of a run and the way back for a fault to ground, ohm, all sets in parallel."""

    line: complex
    back: complex


def run_entered(
    conductor: str | None,
    metal: str,
    sets: int,
    raceway: str,
    length: float,
    return_conductor: str | None,
    celsius: float,
    trace: Trace,
) -> Run | None:
    """Return the run by its fields, None where none was entered. Raises: FieldError for what is missing or unlisted."""
    if conductor is None:
        if length:
            require(conductor, "conductor")
        return None
    if not length:
        raise FieldError(
            "length", message("Enter how long the run is, for example 75 ft. Or leave the conductor empty.")
        )

    def of(size: str, field: str) -> complex:
        try:
            each = impedance(size, metal, raceway, celsius)
        except KeyError:
            raise FieldError(field, CONDUCTOR.enter) from None
        ohm = each * length / sets
        trace.step(
            message(
                "One conductor of the run, {length} ft of {sets} × {size} {metal} at {celsius} °C: {ohm} mΩ.",
                length=shown_number(length),
                sets=sets,
                size=shown_size(size),
                metal=METAL_WORDS[metal],
                celsius=shown_number(celsius),
                ohm=shown_impedance(ohm),
            ),
            cites=(RESISTANCE_RULE, REACTANCE_RULE, COLD_RULE),
        )
        return ohm

    line = of(conductor, "conductor")
    if return_conductor in (None, conductor):
        return Run(line, line)
    return Run(line, of(return_conductor, "return_conductor"))
