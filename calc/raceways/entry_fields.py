"""What is asked about the place where a raceway or cable enters a box or enclosure."""

from __future__ import annotations

from calc import places
from calc.calculator import Choice
from calc.messages import message
from calc.raceways.kind import kind_choices
from calc.rulebook import every_edition
from calc.shared_fields import one_of, quantity
from calc.systems import system_choices

MAX_VOLT = 100_000
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
    "two-locknuts": message("Two standard locknuts, one inside and one outside"),
    "one-locknut": message("One standard locknut and a plain bushing"),
    "shoulder-connector": message("Connector with a shoulder outside and one standard locknut inside"),
    "threaded-hub": message("Listed threaded hub or threaded entry"),
    "bonding-locknut": message("Bonding locknut or wedge, without a jumper"),
    "bonding-bushing-and-jumper": message("Bonding bushing with a jumper"),
    "listed-fitting": message("Another fitting listed for bonding"),
}
SYSTEMS = tuple(
    dict.fromkeys(
        row["system"] for stated in every_edition("raceways/voltage_to_ground_of_system") for row in stated.rows
    )
)


PLACE = one_of(
    message("Conductors in the raceway or cable"),
    message("Ahead of the service disconnect, the rule applies at any voltage."),
    (
        Choice("load-side", message("Feeder or branch circuit, on the load side of an overcurrent device")),
        Choice("service", message("Service conductors, ahead of the service disconnect")),
        Choice(
            "derived-system",
            message("From a transformer or generator to its first disconnect"),
            places.also_called("derived-system"),
        ),
    ),
)
SYSTEM = one_of(
    message("System"),
    message("Sets the voltage to ground. Or enter the voltage below."),
    (
        Choice(NOT_GIVEN, message("Not one of these, or a service")),
        *system_choices(*SYSTEMS),
    ),
)
VOLTAGE = quantity(
    message("Voltage to ground"),
    message(
        "The highest in the raceway, for example 277. On a corner-grounded system, enter the full phase-to-phase "
        "voltage."
    ),
    "V",
    1,
    MAX_VOLT,
    example="277",
    also=message("Or choose the system."),
)
KNOCKOUT = one_of(
    message("Knockout"),
    message("Rings are what is left of a concentric or eccentric knockout."),
    (
        Choice("right-size", message("Right size for the fitting, no rings left")),
        Choice("rings", message("Concentric or eccentric rings left")),
        Choice("oversized", message("Oversized, with reducing washers")),
    ),
)
ENCLOSURE = one_of(
    message("Box or enclosure"),
    message("Applies where rings are left."),
    (
        Choice("cabinet", message("Panel, switch, cabinet or pull box, not marked for this")),
        Choice("outlet-box", message("Listed metal outlet box")),
        Choice("marked-enclosure", message("Marked as listed for bonding through its knockouts")),
    ),
)
ENTERING_RACEWAY = one_of(
    message("Raceway or cable"),
    message("The one that enters here."),
    kind_choices(*ENTERING),
)
FITTING = one_of(
    message("Fitting used"),
    message("Installed or planned. Required only where standard fittings may be permitted."),
    tuple(Choice(fitting, words) for fitting, words in FITTING_WORDS.items()),
)
LOCATION = one_of(
    message("Location"),
    message(""),
    (places.ORDINARY, places.HAZARDOUS),
    rare=True,
)
