"""What is asked about the place where a raceway or cable enters a box or enclosure."""

from __future__ import annotations

from calc import places
from calc.declare import Choice
from calc.raceways.kind import kind_choices
from calc.rulebook import every_edition
from calc.systems import system_choices
from calc.vocabulary import one_of, quantity
from calc.words import say

MOST_VOLT = 100_000
NOT_GIVEN = "not-given"
RIGID = ("rigid-metal-conduit", "intermediate-metal-conduit")
NONMETALLIC = "nonmetallic-raceway"
ENTERING = (
    *RIGID,
    "electrical-metallic-tubing",
    "flexible-metal-conduit",
    "liquidtight-flexible-metal-conduit",
    "flexible-metallic-tubing",
    "armored-cable",
    "metal-clad-cable",
    "mineral-insulated-copper",
    "mineral-insulated-steel",
    NONMETALLIC,
)
FITTING_WORDS = {
    "two-locknuts": say("Two ordinary locknuts, one inside and one outside"),
    "one-locknut": say("One ordinary locknut and a plain bushing"),
    "shoulder-connector": say("Connector with a shoulder outside and one ordinary locknut inside"),
    "threaded-hub": say("Listed threaded hub or threaded entry"),
    "bonding-locknut": say("Bonding locknut or wedge, without a jumper"),
    "bonding-bushing-and-jumper": say("Bonding bushing with a jumper"),
    "listed-fitting": say("Another fitting listed for bonding"),
}
SYSTEMS = tuple(
    dict.fromkeys(
        row["system"] for stated in every_edition("raceways/voltage_to_ground_of_system") for row in stated.rows
    )
)


PLACE = one_of(
    say("Which conductors are in it"),
    say("What is ahead of the service disconnect counts at any voltage."),
    (
        Choice("load-side", say("Feeder or branch circuit, behind an overcurrent device")),
        Choice("service", say("Service conductors, ahead of the service disconnect")),
        Choice(
            "derived-system",
            say("From a transformer or generator to its first disconnect"),
            places.also_called("derived-system"),
        ),
    ),
)
SYSTEM = one_of(
    say("System"),
    say("It gives the voltage to ground. Or enter the voltage below."),
    (
        Choice(NOT_GIVEN, say("Not one of these, or a service")),
        *system_choices(*SYSTEMS),
    ),
)
VOLTAGE = quantity(
    say("Voltage to ground"),
    say("The highest in the raceway, for example 277. With a grounded corner it is the full voltage between wires."),
    "V",
    1,
    MOST_VOLT,
    example="277",
    also=say("Or choose the system."),
)
KNOCKOUT = one_of(
    say("The hole"),
    say("Rings are what is left of a knockout with several sizes, in one center or off it."),
    (
        Choice("right-size", say("Fits the fitting, no rings left around it")),
        Choice("rings", say("Rings of a concentric or eccentric knockout are left")),
        Choice("oversized", say("Too large, closed with reducing washers")),
    ),
)
ENCLOSURE = one_of(
    say("The box or enclosure"),
    say("It counts where rings are left."),
    (
        Choice("cabinet", say("Panel, switch, cabinet or pull box, with no mark for this")),
        Choice("outlet-box", say("Listed metal outlet box")),
        Choice("marked-enclosure", say("Marked as listed for bonding through its knockouts")),
    ),
)
ENTERING_RACEWAY = one_of(
    say("Raceway or cable"),
    say("The one that enters here."),
    kind_choices(*ENTERING),
)
FITTING = one_of(
    say("What holds it"),
    say("What is there, or what you plan. Needed only where ordinary ones may do."),
    tuple(Choice(fitting, words) for fitting, words in FITTING_WORDS.items()),
)
LOCATION = one_of(
    say("Location"),
    say(""),
    (places.ORDINARY, places.HAZARDOUS),
    rare=True,
)
