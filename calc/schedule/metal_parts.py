"""The rows that several schedules share: conductors to the electrodes, bonds of piping and structural metal."""

from __future__ import annotations

from calc.declare import needed
from calc.grounding.electrode_limit import DRIVEN, ELECTRODES
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.grounding.structural_metal_bonding import structural_metal_bonding
from calc.grounding.water_pipe_bonding import water_pipe_bonding
from calc.schedule.part_list import PartList
from calc.words import Sentence, say
from calc.working import Working

NEEDS_SECOND = "grounding/rod_needs_second"
WATER_PIPE_NEEDS_SECOND = "grounding/water_pipe_needs_second"


def add_electrodes(parts: PartList, electrodes: str, start: Sentence, inputs: dict) -> None:
    """Add the conductor to each of `electrodes` ("water-pipe,rod")."""
    listed = electrodes.split(",")
    for electrode in listed:
        parts.size(
            f"grounding-electrode-conductor-{electrode}",
            grounding_electrode_conductor,
            inputs | {"electrode": electrode},
            part=say("Grounding electrode conductor: {electrode}", electrode=ELECTRODES[electrode]),
            start=start if electrode == listed[0] else say("The same place, or an electrode already connected"),
            end=ELECTRODES[electrode],
            why=say("Ties the system and all its metal to the earth."),
        )
    if len(listed) > 1:
        parts.working.note(
            say(
                "All electrodes present are joined together ({joined}); a jumper between two of them has the size "
                "listed for the electrode it runs to ({size}).",
                joined=parts.working.section("naming/electrodes_joined"),
                size=parts.working.section("naming/electrode_bonding_jumper"),
            )
        )
    warn_of_a_lone_electrode(listed, parts.working)


def warn_of_a_lone_electrode(electrodes: list[str], working: Working) -> None:
    """Warn where one rod, pipe or plate, or a water pipe, is not enough by itself."""
    water_pipe = "water-pipe" in electrodes
    others = [electrode for electrode in electrodes if electrode != "water-pipe"]
    if water_pipe and not others:
        working.warn(
            say(
                "A water pipe is never the only electrode: add one of another kind ({section}).",
                section=working.section(WATER_PIPE_NEEDS_SECOND),
            )
        )
    if len(others) != 1 or others[0] not in DRIVEN:
        return
    ohm, section = working.cite(NEEDS_SECOND).value, working.section(NEEDS_SECOND)
    if water_pipe:
        working.warn(
            say(
                "Beside a water pipe too, one rod, pipe or plate needs a second one or {ohm} ohm or less to earth "
                "({pipe}, {section}). Some authorities accept one: ask.",
                ohm=ohm,
                pipe=working.section(WATER_PIPE_NEEDS_SECOND),
                section=section,
            )
        )
    else:
        working.warn(
            say(
                "One rod, pipe or plate alone needs a second electrode unless it measures {ohm} ohm or less to earth "
                "({section}).",
                ohm=ohm,
                section=section,
            )
        )


def add_metal_parts(
    parts: PartList,
    metal_parts: str | None,
    start: Sentence,
    piping: str,
    frame: dict,
    supply: dict,
    device: float | None,
    piping_device: float | None,
) -> None:
    """Add the bond of each of `metal_parts` ("water-pipe,other-metal").

    start: where the bonds of water piping and structural metal begin.
    piping: what the calculator of piping calls the case; frame: what that of structural metal is told of it.
    supply: conductor, sets, conductor_metal, metal. device: ahead of the feeder, where there is one;
    piping_device: of the circuit near other piping.
    """
    listed = metal_parts.split(",") if metal_parts else []
    why = say("A live wire that touches it must open its device; parts within reach stay at one voltage.")
    if "water-pipe" in listed:
        parts.size(
            "water-pipe-bonding",
            water_pipe_bonding,
            supply | {"piping": piping, "device": device},
            part=say("Bonding jumper to the water piping"),
            start=start,
            end=say("Metal water piping, where it can be reached"),
            why=why,
        )
    if "structural-metal" in listed:
        parts.size(
            "structural-metal-bonding",
            structural_metal_bonding,
            supply | frame,
            part=say("Bonding jumper to the structural metal"),
            start=start,
            end=say("Exposed structural metal, where it can be reached"),
            why=why,
        )
    if "other-metal" in listed:
        parts.size(
            "other-metal-piping",
            water_pipe_bonding,
            {"piping": "other-metal", "device": needed(piping_device, "piping_device"), "metal": supply["metal"]},
            part=say("Bonding jumper to the gas or other piping"),
            start=say("Equipment grounding conductor of that circuit, or the grounding bar"),
            end=say("The piping"),
            why=why,
        )
