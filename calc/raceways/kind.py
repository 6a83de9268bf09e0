"""The kinds of raceway and cable, and where the list of equipment grounding conductors names each."""

from __future__ import annotations

from calc.declare import Choice
from calc.places import also_called
from calc.vocabulary import one_of
from calc.words import say

KIND_WORDS = {
    "rigid-metal-conduit": say("Rigid metal conduit (RMC)"),
    "intermediate-metal-conduit": say("Intermediate metal conduit (IMC)"),
    "electrical-metallic-tubing": say("Electrical metallic tubing (EMT)"),
    "flexible-metal-conduit": say("Flexible metal conduit (FMC)"),
    "liquidtight-flexible-metal-conduit": say("Liquidtight flexible metal conduit (LFMC)"),
    "flexible-metallic-tubing": say("Flexible metallic tubing (FMT)"),
    "armored-cable": say("Armored cable (AC)"),
    "metal-clad-cable": say("Metal-clad cable (MC)"),
    "mineral-insulated-copper": say("Mineral-insulated cable (MI), copper sheath"),
    "mineral-insulated-steel": say("Mineral-insulated cable (MI), steel sheath"),
    "metal-wireway": say("Metal wireway"),
    "auxiliary-gutter": say("Metal auxiliary gutter"),
    "surface-metal-raceway": say("Surface metal raceway"),
    "cable-tray": say("Metal cable tray"),
    "cablebus": say("Cablebus framework"),
    "nonmetallic-raceway": say("Nonmetallic raceway"),
}
NAMED_IN = {
    "mineral-insulated-copper": "raceways/mineral_insulated_cable",
    "mineral-insulated-steel": "raceways/mineral_insulated_cable",
    "metal-wireway": "raceways/other_metal_raceway",
    "auxiliary-gutter": "raceways/other_metal_raceway",
}
FLEXIBLE = ("flexible-metal-conduit", "liquidtight-flexible-metal-conduit", "flexible-metallic-tubing")
# What is told of the voltage limits of 2026 begins at the kind after these, item (7) of the list.
BEFORE_VOLTAGE_LIMITS = (
    "rigid-metal-conduit",
    "intermediate-metal-conduit",
    "electrical-metallic-tubing",
    "flexible-metal-conduit",
    "liquidtight-flexible-metal-conduit",
)
CABLES = ("armored-cable", "metal-clad-cable", "mineral-insulated-copper", "mineral-insulated-steel")
NOT_LISTED = {
    "flexible-metal-conduit": say("The conduit is not listed."),
    "liquidtight-flexible-metal-conduit": say("The conduit is not listed."),
    "armored-cable": say("The armor has no bonding strip under it, as old cable has none."),
    "metal-clad-cable": say("The sheath is not listed and identified as an equipment grounding conductor."),
    "metal-wireway": say("The wireway is not listed."),
    "auxiliary-gutter": say("The gutter is not listed."),
    "surface-metal-raceway": say("The raceway is not listed for grounding."),
    "cable-tray": say("The tray is not identified for grounding, or its metal area is not marked on it."),
}



def kind_choices(*kinds: str) -> tuple[Choice, ...]:
    """Return the choices of a calculator that asks for one of these kinds of raceway."""
    return tuple(Choice(kind, KIND_WORDS[kind], also_called(kind)) for kind in kinds)


RACEWAY = one_of(
    say("Raceway or cable"),
    say("The one that is to be the way back for a fault."),
    kind_choices(*KIND_WORDS),
)


def named_in(raceway: str) -> str:
    """Give the key of the rule where the list names `raceway`, a value of `RACEWAY`."""
    return NAMED_IN.get(raceway, f"raceways/{raceway.replace('-', '_')}")
