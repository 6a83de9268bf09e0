"""What decides the name of a conductor: where it is, what it joins, and at a generator its neutral and device."""

from __future__ import annotations

from dataclasses import replace

from calc.calculator import Choice
from calc.messages import message
from calc.shared_fields import one_of

PLACE_WORDS = {
    "ahead-of-service-disconnect": message("Ahead of the service disconnect: meter, wireway, service raceway"),
    "service-disconnect": message("In a service disconnect enclosure"),
    "past-device": message("Past a feeder or branch-circuit breaker or fuse: panel, box, equipment"),
    "separate-building": message("In a building fed by a feeder from another building"),
    "transformer-primary": message("On the primary side of a transformer"),
    "transformer-secondary": message("On the secondary side of a transformer, up to its first breaker or fuse"),
    "generator": message("At a generator, or from it to its first disconnect"),
}
PART_WORDS = {
    "neutral": message("Grounded conductor (mostly the neutral) or its bar"),
    "source-neutral": message("Neutral point of the source"),
    "enclosure": message("Metal enclosure or its grounding bar: panel, meter, wireway, transformer or generator case"),
    "raceway": message("Metal raceway or a bonding bushing on it"),
    "equipment": message("Load equipment"),
    "box": message("Metal box of a receptacle, switch or outlet"),
    "receptacle": message("Ground terminal of a receptacle or switch"),
    "electrode": message("Electrode in the earth: rod, ring, footing steel, buried water pipe"),
    "water-pipe": message("Metal water piping in the building"),
    "other-piping": message("Gas or other metal piping"),
    "structural-metal": message("Building steel"),
    "communications": message("Telephone, cable or antenna grounding"),
}
FORM_WORDS = {
    "wire": message("Wire"),
    "busbar": message("Busbar"),
    "strap": message("Strap"),
    "screw": message("Screw"),
    "raceway": message("The metal raceway itself"),
}
NOT_GIVEN = "not-given"

_PLACE = one_of(
    message("Where it is"),
    message("The place decides most. Pick the side of the overcurrent device that it is on."),
    tuple(Choice(value, words) for value, words in PLACE_WORDS.items()),
)
_PARTS = tuple(Choice(value, words) for value, words in PART_WORDS.items())
_ENTER_PART = message("Choose one of the parts in the list.")
PLACE = replace(_PLACE, enter=message("Choose one of the places in the list."))
FROM_PART = replace(
    one_of(message("It joins"), message("Either end. The direction does not matter."), _PARTS), enter=_ENTER_PART
)
TO_PART = replace(
    one_of(message("To"), message("The other end. For two of a kind choose the same again."), _PARTS), enter=_ENTER_PART
)
FORM = one_of(
    message("What it looks like"),
    message("The form does not change the name, but not every form will do."),
    tuple(Choice(value, words) for value, words in FORM_WORDS.items()),
)
_GENERATOR_NEUTRAL = one_of(
    message("Generator: its neutral"),
    message("Only for a generator. A transfer switch with one more pole switches the neutral."),
    (
        Choice(NOT_GIVEN, message("No generator in question")),
        Choice("switched", message("Switched by the transfer switch")),
        Choice("unswitched", message("Not switched: joined to the neutral of the service")),
    ),
    rare=True,
)
_GENERATOR_DEVICE = one_of(
    message("Generator: breaker or fuses at the set"),
    message("Only for a generator. Is there an overcurrent device in the set itself?"),
    (
        Choice(NOT_GIVEN, message("No generator in question")),
        Choice("yes", message("Yes")),
        Choice("no", message("No")),
    ),
    rare=True,
)
GENERATOR_NEUTRAL = replace(_GENERATOR_NEUTRAL, enter=message("At a generator, choose switched or unswitched."))
GENERATOR_DEVICE = replace(_GENERATOR_DEVICE, enter=message("At a generator, choose yes or no."))
