"""The kinds of raceway and cable, and where the list of equipment grounding conductors names each."""

from __future__ import annotations

from calc.calculator import Choice
from calc.messages import message
from calc.places import also_called
from calc.shared_fields import one_of

KIND_WORDS = {
    "rigid-metal-conduit": message("Rigid metal conduit (RMC)"),
    "intermediate-metal-conduit": message("Intermediate metal conduit (IMC)"),
    "electrical-metallic-tubing": message("Electrical metallic tubing (EMT)"),
    "flexible-metal-conduit": message("Flexible metal conduit (FMC)"),
    "liquidtight-flexible-metal-conduit": message("Liquidtight flexible metal conduit (LFMC)"),
    "flexible-metallic-tubing": message("Flexible metallic tubing (FMT)"),
    "armored-cable": message("Armored cable (AC)"),
    "metal-clad-cable": message("Metal-clad cable (MC)"),
    "mineral-insulated-copper": message("Mineral-insulated cable (MI), copper sheath"),
    "mineral-insulated-steel": message("Mineral-insulated cable (MI), steel sheath"),
    "metal-wireway": message("Metal wireway"),
    "auxiliary-gutter": message("Metal auxiliary gutter"),
    "surface-metal-raceway": message("Surface metal raceway"),
    "cable-tray": message("Metal cable tray"),
    "cablebus": message("Cablebus framework"),
    "nonmetallic-raceway": message("Nonmetallic raceway"),
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
    "flexible-metal-conduit": message("The conduit is not listed."),
    "liquidtight-flexible-metal-conduit": message("The conduit is not listed."),
    "armored-cable": message("The armor has no bonding strip under it, as in old cable."),
    "metal-clad-cable": message("The sheath is not listed and identified as an equipment grounding conductor."),
    "metal-wireway": message("The wireway is not listed."),
    "auxiliary-gutter": message("The gutter is not listed."),
    "surface-metal-raceway": message("The raceway is not listed for grounding."),
    "cable-tray": message("The tray is not identified for grounding, or its metal area is not marked on it."),
}



def kind_choices(*kinds: str) -> tuple[Choice, ...]:
    """Return the choices of a calculator that asks for one of these kinds of raceway."""
    return tuple(Choice(kind, KIND_WORDS[kind], also_called(kind)) for kind in kinds)


RACEWAY = one_of(
    message("Raceway or cable"),
    message("The one that would serve as the ground-fault return path."),
    kind_choices(*KIND_WORDS),
)


def named_in(raceway: str) -> str:
    """Return the key of the rule where the list names `raceway`, a value of `RACEWAY`."""
    return NAMED_IN.get(raceway, f"raceways/{raceway.replace('-', '_')}")
