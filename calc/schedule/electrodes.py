"""The rows of the electrodes: a conductor to each that is there, and the question whether there are others."""

from __future__ import annotations

from functools import partial

from calc.answer import Answer
from calc.conductors.area import area
from calc.grounding.electrode_conductor_notes import words_of_run
from calc.grounding.electrode_limit import DRIVEN, ELECTRODES
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.schedule.fields import chosen, looked_for_others
from calc.schedule.part_list import PartList
from calc.words import Sentence, say
from calc.working import Working

NEEDS_SECOND = "grounding/rod_needs_second"
WATER_PIPE_NEEDS_SECOND = "grounding/water_pipe_needs_second"
JOINED = "naming/electrodes_joined"
PRESENT = ("water-pipe", "structural-metal", "concrete-encased", "ring")  # those a building may have and nobody drove


def add_electrodes(
    parts: PartList, electrodes: str, start: Sentence, inputs: dict, conductor: str = "conductor"
) -> None:
    """Add the conductor to each of `electrodes` ("water-pipe,rod"), the largest first, and ask for others.

    conductor: the field of the schedule that the conductor among `inputs` was entered in.
    """
    listed = _largest_first(parts, chosen(electrodes), inputs, conductor)
    if not listed:
        _ask_for_one(parts, start)
        return
    for electrode in listed:
        first = electrode == listed[0]
        parts.size(
            f"grounding-electrode-conductor-{electrode}",
            grounding_electrode_conductor,
            inputs | {"electrode": electrode},
            part=say("Grounding electrode conductor: {electrode}", electrode=ELECTRODES[electrode]),
            start=start if first else say("The same place, or an electrode listed above it"),
            end=ELECTRODES[electrode],
            why=say("Ties the system and all its metal to the earth."),
            conductor=conductor,
            **({} if first else {"shown": partial(_without_taps, edition=parts.working.edition)}),
        )
    if len(listed) > 1:
        parts.working.note(
            say(
                "All electrodes present are joined together ({joined}); a jumper between two of them has the size "
                "listed for the electrode it runs to ({size}).",
                joined=parts.working.section(JOINED),
                size=parts.working.section("naming/electrode_bonding_jumper"),
            )
        )
    warn_of_a_lone_electrode(listed, parts.working)
    if not looked_for_others(electrodes):
        _ask_for_others(parts, listed)


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


def _largest_first(parts: PartList, electrodes: tuple[str, ...], inputs: dict, conductor: str) -> list[str]:
    """Give `electrodes` so that a jumper to each may start at any before it: no conductor grows on its way."""

    def size(electrode: str) -> int:
        answer = parts.work(grounding_electrode_conductor, inputs | {"electrode": electrode}, conductor).answer
        return area(answer.values["size"], parts.working.edition) if answer else 0

    return sorted(electrodes, key=size, reverse=True)


def _without_taps(answer: Answer, edition: str) -> Sentence:
    """Give the size alone: the taps are those of the conductor that the disconnects share."""
    run = words_of_run(answer.values["size"], answer.values["metal"], Working(edition))
    return say("{size} {run}", size=answer.headline, run=run)


def _ask_for_one(parts: PartList, start: Sentence) -> None:
    parts.ask(
        "grounding-electrode-conductor",
        JOINED,
        part=say("Grounding electrode conductor"),
        start=start,
        end=say("An electrode yet to be installed"),
        question=say("Which electrode will be installed? The building has none and needs one: choose it, say rods."),
    )


def _ask_for_others(parts: PartList, listed: list[str]) -> None:
    others = "; ".join(str(ELECTRODES[each]).lower() for each in PRESENT if each not in listed)
    if not others:
        return
    parts.ask(
        "other-electrodes",
        JOINED,
        part=say("Other electrodes"),
        start=say("The electrodes listed"),
        end=say("Each further electrode that is there"),
        question=say(
            "Is one of these there: {others}? Every one that is present is used. Look, then choose it.", others=others
        ),
    )
