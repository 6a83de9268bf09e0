"""Which side of which overcurrent device a place is on: the question that most names turn on."""

from __future__ import annotations

from typing import NamedTuple

from calc.calculator import FieldError
from calc.identify.name_fields import NOT_GIVEN
from calc.messages import message
from calc.trace import Trace

SERVICE = "service"
SERVICE_DISCONNECT = "service-disconnect"
DERIVED = "derived"
JOINED_GENERATOR = "joined-generator"
BUILDING = "building"
PRIMARY = "primary"
LOAD = "load"


class Side(NamedTuple):
    """A place as the names see it; `supply` where no overcurrent device is ahead of its metal parts."""

    place: str
    supply: bool


def side_of(where: str, generator_neutral: str, generator_device: str, trace: Trace) -> Side:
    """Return the side of a place and record why. Raises: FieldError where a generator is told too little of."""
    if where == "ahead-of-service-disconnect":
        trace.step(
            message("Ahead of the service disconnect, no overcurrent device in the building protects the conductors.")
        )
        return Side(SERVICE, True)
    if where == "service-disconnect":
        trace.step(message("A service disconnect enclosure is where the neutral is bonded to metal."))
        return Side(SERVICE_DISCONNECT, True)
    if where == "transformer-secondary":
        trace.step(
            message(
                "In these names, the supply side of a transformer is the secondary up to its first overcurrent device. "
                "It is not the primary."
            ),
            cites=("naming/defined_supply_side_bonding_jumper",),
        )
        return Side(DERIVED, True)
    if where == "generator":
        return _generator(generator_neutral, generator_device, trace)
    if where == "separate-building":
        trace.step(
            message(
                "A building supplied by a feeder has an equipment grounding conductor, and its neutral stays isolated "
                "from ground."
            ),
            cites=("naming/separate_building",),
        )
        return Side(BUILDING, False)
    if where == "transformer-primary":
        trace.step(
            message(
                "The primary is on the load side of the overcurrent device that feeds the transformer. In these names, "
                "the supply side is the secondary."
            )
        )
        return Side(PRIMARY, False)
    trace.step(message("An overcurrent device is ahead: this is its load side."))
    return Side(LOAD, False)


def _generator(generator_neutral: str, generator_device: str, trace: Trace) -> Side:
    for value, field in ((generator_neutral, "generator_neutral"), (generator_device, "generator_device")):
        if value == NOT_GIVEN:
            raise FieldError(field)
    derived = generator_neutral == "switched"
    if derived:
        trace.step(
            message("The neutral is switched: the generator is a separately derived system."),
            cites=("naming/same_system_as_service",),
        )
    else:
        trace.step(
            message(
                "The neutral stays connected to the service neutral: the generator is not a separately derived system, "
                "and the main bonding jumper serves it too."
            ),
            cites=("naming/same_system_as_service",),
        )
    if generator_device == "yes":
        trace.step(
            message("An overcurrent device is at the generator: everything leaving the generator is on its load side.")
        )
    else:
        trace.step(message("No overcurrent device is at the generator: up to the first one, this is the supply side."))
    return Side(DERIVED if derived else JOINED_GENERATOR, generator_device == "no")
