"""What decides the name of a conductor: where it is, what it joins, and at a generator its neutral and device."""

from __future__ import annotations

from dataclasses import replace

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import one_of

PLACE_WORDS = {
    "ahead-of-service-disconnect": message(
        "Ahead of the service disconnect: meter enclosure, wireway, service raceway"
    ),
    "service-disconnect": message("In a service disconnect enclosure"),
    "past-device": message("On the load side of a feeder or branch-circuit breaker or fuse: panel, box, equipment"),
    "separate-building": message("In a building supplied by a feeder from another building"),
    "transformer-primary": message("On the primary side of a transformer"),
    "transformer-secondary": message("On the secondary side of a transformer, up to its first breaker or fuse"),
    "generator": message("At a generator, or from it to its first disconnect"),
}
PART_WORDS = {
    "neutral": message("Grounded conductor (usually the neutral) or its bar"),
    "source-neutral": message("Neutral point of the source"),
    "enclosure": message(
        "Metal enclosure or its grounding bar: panel, meter enclosure, wireway, transformer or generator case"
    ),
    "raceway": message("Metal raceway or a bonding bushing on it"),
    "equipment": message("Load equipment"),
    "box": message("Metal box of a receptacle, switch or outlet"),
    "receptacle": message("Grounding terminal of a receptacle or switch"),
    "electrode": message("Grounding electrode: ground rod, ring, footing steel, underground water pipe"),
    "water-pipe": message("Metal water piping in the building"),
    "other-piping": message("Gas or other metal piping"),
    "structural-metal": message("Building steel"),
    "communications": message("Telephone, cable TV or antenna grounding"),
}
FORM_WORDS = {
    "wire": message("Wire"),
    "busbar": message("Busbar"),
    "strap": message("Strap"),
    "screw": message("Screw"),
    "raceway": message("Metal raceway itself"),
}
NOT_GIVEN = "not-given"

_PLACE = one_of(
    message("Location"),
    message("Location matters most. Choose the side of the overcurrent device it is on."),
    tuple(Choice(value, words) for value, words in PLACE_WORDS.items()),
)
_PARTS = tuple(Choice(value, words) for value, words in PART_WORDS.items())
_ENTER_PART = message("Choose one of the parts in the list.")
PLACE = replace(_PLACE, enter=message("Choose one of the locations in the list."))
FROM_PART = replace(
    one_of(message("Connects from"), message("Either end. The direction does not matter."), _PARTS), enter=_ENTER_PART
)
TO_PART = replace(
    one_of(
        message("Connects to"),
        message("The other end. If both ends are the same kind of part, choose it again."),
        _PARTS,
    ),
    enter=_ENTER_PART,
)
FORM = one_of(
    message("Form"),
    message("The form does not change the name, but not every form is permitted."),
    tuple(Choice(value, words) for value, words in FORM_WORDS.items()),
)
_GENERATOR_NEUTRAL = one_of(
    message("Generator neutral"),
    message("Only for a generator. A transfer switch with an additional pole switches the neutral."),
    (
        Choice(NOT_GIVEN, message("No generator")),
        Choice("switched", message("Switched by the transfer switch")),
        Choice("unswitched", message("Not switched: solidly connected to the service neutral")),
    ),
    rare=True,
)
_GENERATOR_DEVICE = one_of(
    message("Generator overcurrent device"),
    message("Only for a generator: a breaker or fuses in the generator set itself."),
    (
        Choice(NOT_GIVEN, message("No generator")),
        Choice("yes", message("Yes")),
        Choice("no", message("No")),
    ),
    rare=True,
)
GENERATOR_NEUTRAL = replace(_GENERATOR_NEUTRAL, enter=message("At a generator, choose switched or unswitched."))
GENERATOR_DEVICE = replace(_GENERATOR_DEVICE, enter=message("At a generator, choose yes or no."))
