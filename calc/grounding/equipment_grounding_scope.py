"""What an equipment grounding conductor is sized for here: which circuits, which device, which conductors."""

from __future__ import annotations

from calc.calculator import NotCovered, require
from calc.conductors.least import refuse_below_wiring
from calc.grounding.motor_device import largest_dual_element_fuse
from calc.messages import message
from calc.scope import OutOfScope, SectionOf
from calc.trace import Trace

OUT_OF_SCOPE = (
    OutOfScope(
        "circuit",
        "service",
        message(
            "Service conductors have no overcurrent device ahead, so no equipment grounding conductor can be sized "
            "from one."
        ),
        message(
            "Look under supply-side bonding jumper ({section}). It is sized from the conductors.",
            section=SectionOf("naming/supply_side_bonding_jumper"),
        ),
        ("supply-side-bonding-jumper",),
    ),
    OutOfScope(
        "circuit",
        "flexible-cord",
        message("Flexible cords and fixture wires have their own rule."),
        message(
            "Look in {section}, item (E).",
            section=SectionOf("naming/equipment_grounding_conductor_size"),
        ),
    ),
)


def require_whole_conductors(
    installed: str | None, minimum: str | None, metal: str, sets: int, raceways: int | None, trace: Trace
) -> None:
    """Raise FieldError or NotCovered where the conductors do not fit: one size alone, none made, broken sets."""
    if minimum:
        require(installed, "installed_conductor")
    refuse_below_wiring(installed, metal, trace, "installed_conductor")
    refuse_below_wiring(minimum, metal, trace, "minimum_conductor")
    if raceways and sets % raceways:
        raise NotCovered(
            message(
                "{sets} sets in parallel do not divide evenly into {raceways} raceways.", sets=sets, raceways=raceways
            ),
            message(
                "Each raceway must hold the same number of complete sets ({section}).",
                section=trace.section("conductors/parallel_minimum"),
            ),
        )


def device_that_counts(device: float, circuit: str, motor: str, motor_current: float | None, trace: Trace) -> float:
    """Return the rating, ampere, that the table is entered with. Raises: FieldError without a needed motor current."""
    if circuit == "motor":
        trace.step(
            message("Size it from the motor branch-circuit short-circuit and ground-fault protective device."),
            cites=("grounding/motor_circuit_device",),
        )
    if circuit == "feeder-tap":
        trace.step(
            message("For a tap, size it from the overcurrent device ahead of the feeder."), cites=(
                "grounding/feeder_tap",
            )
        )
    if circuit != "motor-instantaneous-trip":
        return device
    return largest_dual_element_fuse(require(motor_current, "motor_current"), motor, trace)
