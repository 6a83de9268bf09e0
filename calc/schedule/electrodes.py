"""The rows of the electrodes: a conductor to each that is there, and the question whether there are others."""

from __future__ import annotations

from functools import partial

from calc.answer import Answer
from calc.conductors.area import area
from calc.data_file import Data
from calc.grounding.electrode_conductor_notes import words_of_run
from calc.grounding.electrode_limit import DRIVEN, ELECTRODES
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.messages import Message, message
from calc.schedule.fields import chosen, looked_for_others
from calc.schedule.part_list import PartList
from calc.trace import Trace

NEEDS_SECOND = "grounding/rod_needs_second"
WATER_PIPE_NEEDS_SECOND = "grounding/water_pipe_needs_second"
JOINED = "naming/electrodes_joined"
PRESENT = ("water-pipe", "structural-metal", "concrete-encased", "ring")  # those a building may have and nobody drove


def add_electrodes(
    parts: PartList, electrodes: str, start: Message, inputs: Data, conductor: str = "conductor"
) -> None:
    """Add the conductor to each of `electrodes` ("water-pipe,rod"), the largest first, and ask for others.

    conductor: the field of the schedule that the conductor among `inputs` was entered in.
    """
    in_order = _largest_first(parts, chosen(electrodes), inputs, conductor)
    if not in_order:
        _ask_for_one(parts, start)
        return
    for electrode in in_order:
        first = electrode == in_order[0]
        parts.size(
            f"grounding-electrode-conductor-{electrode}",
            grounding_electrode_conductor,
            inputs | {"electrode": electrode},
            part=message("Grounding electrode conductor: {electrode}", electrode=ELECTRODES[electrode]),
            start=start if first else message("The same point, or an electrode listed above it"),
            end=ELECTRODES[electrode],
            why=message("Connects the system and all its metal to ground."),
            conductor=conductor,
            **({} if first else {"shown": partial(_without_taps, edition=parts.trace.edition)}),
        )
    if len(in_order) > 1:
        parts.trace.note(
            message(
                "All electrodes present must be bonded together ({joined}); a bonding jumper between two of them has "
                "the size listed for the electrode it runs to ({size}).",
                joined=parts.trace.section(JOINED),
                size=parts.trace.section("naming/electrode_bonding_jumper"),
            )
        )
    warn_of_a_lone_electrode(in_order, parts.trace)
    if not looked_for_others(electrodes):
        _ask_for_others(parts, in_order)


def warn_of_a_lone_electrode(electrodes: list[str], trace: Trace) -> None:
    """Warn where one rod, pipe or plate, or a water pipe, is not enough by itself."""
    water_pipe = "water-pipe" in electrodes
    others = [electrode for electrode in electrodes if electrode != "water-pipe"]
    if water_pipe and not others:
        trace.warn(
            message(
                "A water pipe must never be the only electrode: add one of another type ({section}).",
                section=trace.section(WATER_PIPE_NEEDS_SECOND),
            )
        )
    if len(others) != 1 or others[0] not in DRIVEN:
        return
    ohm, section = trace.cite(NEEDS_SECOND).value, trace.section(NEEDS_SECOND)
    if water_pipe:
        trace.warn(
            message(
                "Even with a water pipe, a single rod, pipe or plate needs a second one unless it measures {ohm} ohms "
                "or less to ground ({pipe}, {section}). Some authorities accept one: ask.",
                ohm=ohm,
                pipe=trace.section(WATER_PIPE_NEEDS_SECOND),
                section=section,
            )
        )
    else:
        trace.warn(
            message(
                "A single rod, pipe or plate needs a second electrode unless it measures {ohm} ohms or less to ground "
                "({section}).",
                ohm=ohm,
                section=section,
            )
        )


def _largest_first(parts: PartList, electrodes: tuple[str, ...], inputs: Data, conductor: str) -> list[str]:
    """Return `electrodes` so that a jumper to each may start at any before it: no conductor grows on its way."""

    def size(electrode: str) -> int:
        answer = parts.work(grounding_electrode_conductor, inputs | {"electrode": electrode}, conductor).answer
        return area(answer.values["size"], parts.trace.edition) if answer else 0

    return sorted(electrodes, key=size, reverse=True)


def _without_taps(answer: Answer, edition: str) -> Message:
    """Return the size alone: the taps are those of the conductor that the disconnects share."""
    run = words_of_run(answer.values["size"], answer.values["metal"], Trace(edition))
    return message("{size} {run}", size=answer.headline, run=run)


def _ask_for_one(parts: PartList, start: Message) -> None:
    parts.ask(
        "grounding-electrode-conductor",
        JOINED,
        part=message("Grounding electrode conductor"),
        start=start,
        end=message("An electrode yet to be installed"),
        question=message(
            "Which electrode will be installed? The building has none and needs one: choose it, for example ground "
            "rods."
        ),
    )


def _ask_for_others(parts: PartList, in_order: list[str]) -> None:
    others = "; ".join(str(ELECTRODES[each]).lower() for each in PRESENT if each not in in_order)
    if not others:
        return
    parts.ask(
        "other-electrodes",
        JOINED,
        part=message("Other electrodes"),
        start=message("The electrodes listed"),
        end=message("Each additional electrode present"),
        question=message(
            "Is one of these present: {others}? Every one present must be used. Look, then choose it.", others=others
        ),
    )
