"""The rows of metal that is no conductor: bonds of piping and structural metal, and what else a building may have."""

from __future__ import annotations

from calc.calculator import require
from calc.data_file import Data
from calc.grounding.structural_metal_bonding import structural_metal_bonding
from calc.grounding.water_pipe_bonding import water_pipe_bonding
from calc.messages import Message, message
from calc.schedule.fields import chosen, looked_for_others
from calc.schedule.part_list import PartList

PART_WORDS = {
    "water-pipe": message("metal water piping"),
    "structural-metal": message("structural metal"),
    "other-metal": message("gas or other metal piping"),
}
OTHER_PIPING = "grounding/other_metal_piping_bond"
OF_BUILDING = ("grounding/water_pipe_bond", "grounding/structural_metal_bond", OTHER_PIPING)
OF_FED_BUILDING = ("grounding/water_pipe_bond_separate_building", "grounding/structural_metal_bond", OTHER_PIPING)
OF_DERIVED = (
    "grounding/water_pipe_bond_derived_system",
    "grounding/structural_metal_bond_derived",
    OTHER_PIPING,
)


def add_metal_parts(
    parts: PartList,
    metal_parts: str | None,
    start: Message,
    piping: str,
    frame: Data,
    supply: Data,
    device: float | None,
    piping_device: float | None,
    rules: tuple[str, str, str],
) -> None:
    """Add the bond of each of `metal_parts` ("water-pipe,other-metal"), and ask for those not chosen.

    start: where the bonds of water piping and structural metal begin.
    piping: what the calculator of piping calls the case; frame: what that of structural metal is told of it.
    supply: conductor, sets, conductor_metal, metal. device: ahead of the feeder, where there is one;
    piping_device: of the circuit near other piping. rules: of water piping, structural metal and other piping.
    """
    systems = chosen(metal_parts)
    why = message(
        "If a hot conductor touches it, its overcurrent device must open; parts within reach stay at one voltage."
    )
    if "water-pipe" in systems:
        parts.size(
            "water-pipe-bonding",
            water_pipe_bonding,
            supply | {"piping": piping, "device": device},
            part=message("Bonding jumper to the water piping"),
            start=start,
            end=message("Metal water piping, at an accessible point"),
            why=why,
        )
    if "structural-metal" in systems:
        parts.size(
            "structural-metal-bonding",
            structural_metal_bonding,
            supply | frame,
            part=message("Bonding jumper to the structural metal"),
            start=start,
            end=message("Exposed structural metal, at an accessible point"),
            why=why,
        )
    if "other-metal" in systems:
        parts.size(
            "other-metal-piping",
            water_pipe_bonding,
            {"piping": "other-metal", "device": require(piping_device, "piping_device"), "metal": supply["metal"]},
            part=message("Bonding jumper to the gas or other piping"),
            start=message("Equipment grounding conductor of that circuit, or the grounding bar"),
            end=message("The piping"),
            why=why,
        )
    if not looked_for_others(metal_parts):
        _ask_for_others(parts, systems, start, dict(zip(PART_WORDS, rules, strict=True)))


def add_derived_metal(
    parts: PartList,
    metal_parts: str | None,
    start: Message,
    electrodes: list[str],
    supply: Data,
    piping_device: float | None,
    *,
    shared: bool = False,
) -> None:
    """Add the bonds of metal near a separately derived system, as `add_metal_parts` does.

    electrodes: what grounds the system. shared: several systems have one grounding electrode conductor.
    """
    frame = {
        "supply": "common-electrode-conductor" if shared else "separately-derived-system",
        "electrode": "structural-metal" if "structural-metal" in electrodes else "other",
    }
    if "structural-metal" in chosen(metal_parts) and frame["electrode"] == "other" and "water-pipe" in electrodes:
        parts.trace.note(
            message(
                "The bond to the structural metal is not required where the water pipe that grounds this source is "
                "bonded to that metal in the area served ({section}). Nothing entered says so.",
                section=parts.trace.section("grounding/structural_metal_spared_by_piping"),
            )
        )
    add_metal_parts(
        parts, metal_parts, start, "water-derived-system", frame, supply, None, piping_device, OF_DERIVED
    )


def ask_for_building_systems(parts: PartList, start: Message) -> None:
    """Ask for what every service and fed building may need and nothing here asks: communications, lightning."""
    trace = parts.trace
    parts.ask(
        "intersystem-termination",
        "grounding/intersystem_termination",
        "grounding/intersystem_not_needed",
        part=message("Intersystem bonding termination"),
        start=start,
        end=message("Outside the enclosure, accessible"),
        question=message(
            "Is a phone, cable TV or antenna system likely at the building? Then it needs a termination for at least "
            "{count} conductors, connected with {size} copper or larger unless it is mounted on the metal it bonds to.",
            count=trace.cite("grounding/intersystem_terminals").value,
            size=f"{trace.cite('grounding/intersystem_termination').value} AWG",
        ),
    )
    parts.ask(
        "lightning-protection",
        "places/lightning_bonded",
        part=message("Lightning protection bond"),
        start=message("Electrodes listed"),
        end=message("Lightning protection ground terminals"),
        question=message(
            "Is there a lightning protection system? Its ground terminals must be bonded to the building's grounding "
            "electrodes."
        ),
    )


def _ask_for_others(parts: PartList, systems: tuple[str, ...], start: Message, rules: dict[str, str]) -> None:
    others = {each: rules[each] for each in PART_WORDS if each not in systems}
    if not others:
        return
    kinds = "; ".join(str(PART_WORDS[each]) for each in others)
    parts.ask(
        "other-metal-parts",
        *others.values(),
        part=message("Bonding of {kinds}", kinds=kinds),
        start=start,
        end=message("Each one present"),
        question=message("Is there any? Look, then choose it under “Metal to be bonded.”"),
    )
