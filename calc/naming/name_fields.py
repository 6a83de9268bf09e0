"""What decides the name of a conductor: where it is, what it joins, and at a generator its neutral and device."""

from __future__ import annotations

from dataclasses import replace

from calc.declare import Choice
from calc.vocabulary import one_of
from calc.words import say

PLACE_WORDS = {
    "ahead-of-service-disconnect": say("Ahead of the service disconnect: meter, wireway, service raceway"),
    "service-disconnect": say("In a service disconnect enclosure"),
    "past-device": say("Past a feeder or branch-circuit breaker or fuse: panel, box, equipment"),
    "separate-building": say("In a building fed by a feeder from another building"),
    "transformer-primary": say("On the primary side of a transformer"),
    "transformer-secondary": say("On the secondary side of a transformer, up to its first breaker or fuse"),
    "generator": say("At a generator, or from it to its first disconnect"),
}
PART_WORDS = {
    "neutral": say("Grounded conductor (mostly the neutral) or its bar"),
    "source-neutral": say("Neutral point of the source"),
    "enclosure": say("Metal enclosure or its grounding bar: panel, meter, wireway, transformer or generator case"),
    "raceway": say("Metal raceway or a bonding bushing on it"),
    "equipment": say("Load equipment"),
    "box": say("Metal box of a receptacle, switch or outlet"),
    "receptacle": say("Ground terminal of a receptacle or switch"),
    "electrode": say("Electrode in the earth: rod, ring, footing steel, buried water pipe"),
    "water-pipe": say("Metal water piping in the building"),
    "other-piping": say("Gas or other metal piping"),
    "structural-metal": say("Building steel"),
    "communications": say("Telephone, cable or antenna grounding"),
}
FORM_WORDS = {
    "wire": say("Wire"),
    "busbar": say("Busbar"),
    "strap": say("Strap"),
    "screw": say("Screw"),
    "raceway": say("The metal raceway itself"),
}
NOT_GIVEN = "not-given"

_PLACE = one_of(
    say("Where it is"),
    say("The place decides most. Pick the side of the overcurrent device that it is on."),
    tuple(Choice(value, words) for value, words in PLACE_WORDS.items()),
)
_PARTS = tuple(Choice(value, words) for value, words in PART_WORDS.items())
_ENTER_PART = say("Choose one of the parts in the list.")
PLACE = replace(_PLACE, enter=say("Choose one of the places in the list."))
FROM_PART = replace(
    one_of(say("It joins"), say("Either end. The direction does not matter."), _PARTS), enter=_ENTER_PART
)
TO_PART = replace(
    one_of(say("To"), say("The other end. For two of a kind choose the same again."), _PARTS), enter=_ENTER_PART
)
FORM = one_of(
    say("What it looks like"),
    say("The form does not change the name, but not every form will do."),
    tuple(Choice(value, words) for value, words in FORM_WORDS.items()),
)
_GENERATOR_NEUTRAL = one_of(
    say("Generator: its neutral"),
    say("Only for a generator. A transfer switch with one more pole switches the neutral."),
    (
        Choice(NOT_GIVEN, say("No generator in question")),
        Choice("switched", say("Switched by the transfer switch")),
        Choice("unswitched", say("Not switched: joined to the neutral of the service")),
    ),
    rare=True,
)
_GENERATOR_DEVICE = one_of(
    say("Generator: breaker or fuses at the set"),
    say("Only for a generator. Is there an overcurrent device in the set itself?"),
    (
        Choice(NOT_GIVEN, say("No generator in question")),
        Choice("yes", say("Yes")),
        Choice("no", say("No")),
    ),
    rare=True,
)
GENERATOR_NEUTRAL = replace(_GENERATOR_NEUTRAL, enter=say("At a generator, choose switched or unswitched."))
GENERATOR_DEVICE = replace(_GENERATOR_DEVICE, enter=say("At a generator, choose yes or no."))
