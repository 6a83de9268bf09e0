"""What an equipment grounding conductor is sized for here: which circuits, which device, which conductors."""

from __future__ import annotations

from calc.declare import NotCovered
from calc.grounding.circuit_fields import NONE
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
        )
    if circuit == "flexible-cord":
        raise NotCovered(
            say("Flexible cords and fixture wires have a rule of their own."),
            say(
                "Look into {section}, item (E).",
                section=working.section("naming/equipment_grounding_conductor_size"),
            ),
        )


def stay_with_whole_answers(installed: str, minimum: str, sets: int, raceways: int, working: Working) -> None:
    """Raise NotCovered where the conductors entered do not make a whole: one size without the other, broken sets."""
    if minimum != NONE and installed == NONE:
        raise NotCovered(
            say("The smallest hot conductor that would do is entered, the one installed is not."),
            say(
                "Enter both, or none for both; the increase goes by their areas ({section}).",
                section=working.section("grounding/equipment_grounding_increase"),
            ),
        )
    if sets % raceways:
        raise NotCovered(
            say("{sets} sets do not divide evenly into {raceways} raceways.", sets=sets, raceways=raceways),
            say(
                "Each raceway holds the same number of whole sets ({section}).",
                section=working.section("conductors/parallel_minimum"),
            ),
        )


def device_that_counts(device: float, circuit: str, motor: str, motor_current: object, working: Working) -> float:
    """Give the rating, ampere, that the table is entered with. Raises: NotCovered without a motor current it needs."""
    if circuit == "motor":
        working.step(
            say("The device that protects the motor circuit against short circuits and ground faults counts."),
            cites=("grounding/motor_circuit_device",),
        )
    if circuit == "feeder-tap":
        working.step(say("With a tap, the device ahead of the feeder counts."), cites=("grounding/feeder_tap",))
    if circuit != "motor-instantaneous-trip":
        return device
    if motor_current == NONE:
        raise NotCovered(
            say("Behind an instantaneous-trip breaker the full-load current of the motor counts; it is not entered."),
            say(
                "Enter the full-load current; the setting of the breaker does not count ({section}).",
                section=working.section("grounding/instantaneous_trip_device"),
            ),
        )
    return largest_dual_element_fuse(motor_current, motor, working)
