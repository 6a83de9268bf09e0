"""What an equipment grounding conductor is sized for here: which circuits, which device, which conductors."""

from __future__ import annotations

from calc.conductors.least import refuse_below_wiring
from calc.declare import NotCovered, needed
from calc.grounding.motor_device import largest_dual_element_fuse
from calc.words import say
from calc.working import Working


def stay_with_the_load_side(circuit: str, working: Working) -> None:
    """Raise NotCovered, with the name to look under, where no overcurrent device is ahead or another rule holds."""
    if circuit == "service":
        raise NotCovered(
            say(
                "Service conductors have no overcurrent device ahead, so no equipment grounding conductor goes by one."
            ),
            say(
                "Look under supply-side bonding jumper ({section}). It goes by the conductors.",
                section=working.section("naming/supply_side_bonding_jumper"),
            ),
            "supply-side-bonding-jumper",
        )
    if circuit == "flexible-cord":
        raise NotCovered(
            say("Flexible cords and fixture wires have a rule of their own."),
            say(
                "Look into {section}, item (E).",
                section=working.section("naming/equipment_grounding_conductor_size"),
            ),
        )


def stay_with_whole_answers(
    installed: str | None, minimum: str | None, metal: str, sets: int, raceways: int | None, working: Working
) -> None:
    """Raise Mend or NotCovered where the conductors make no whole: one size alone, none that is made, broken sets."""
    if minimum:
        needed(installed, "installed_conductor")
    refuse_below_wiring(installed, metal, working, "installed_conductor")
    refuse_below_wiring(minimum, metal, working, "minimum_conductor")
    if raceways and sets % raceways:
        raise NotCovered(
            say("Parallel sets ({sets}) do not divide evenly into {raceways} raceways.", sets=sets, raceways=raceways),
            say(
                "Each raceway holds the same number of whole sets ({section}).",
                section=working.section("conductors/parallel_minimum"),
            ),
        )


def device_that_counts(device: float, circuit: str, motor: str, motor_current: float | None, working: Working) -> float:
    """Give the rating, ampere, that the table is entered with. Raises: Mend without a motor current it needs."""
    if circuit == "motor":
        working.step(
            say("The device that protects the motor circuit against short circuits and ground faults counts."),
            cites=("grounding/motor_circuit_device",),
        )
    if circuit == "feeder-tap":
        working.step(say("With a tap, the device ahead of the feeder counts."), cites=("grounding/feeder_tap",))
    if circuit != "motor-instantaneous-trip":
        return device
    return largest_dual_element_fuse(needed(motor_current, "motor_current"), motor, working)
