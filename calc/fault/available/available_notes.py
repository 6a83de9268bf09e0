"""What an available fault current means, and what it must not be used for."""

from __future__ import annotations

from calc.fault.caution import state_the_model
from calc.fault.source.fault_currents import FaultCurrents
from calc.messages import Message, message
from calc.systems import CORNER, HIGH_LEG, SPLIT, SYSTEMS, UNGROUNDED, WYE
from calc.trace import Trace, shown_number


def note_the_limits(
    trace: Trace, system: str, source: str, raceway: str, currents: dict[str, FaultCurrents], limit: float | None
) -> None:
    """Note what holds for the system and source, warn of what raises the current, and state the model.

    limit: what no way back can exceed at the end of the run, ampere; None without a run.
    """
    kind = SYSTEMS[system].kind
    trace.warn(
        message(
            "This is the most that can flow, for ratings. Never take it to prove that a device opens: that needs "
            "the least current."
        )
    )
    if kind == UNGROUNDED:
        _warn_of_first_fault(trace, currents)
    if source == "generator":
        trace.warn(
            message(
                "A generator gives this for a few cycles only. Then its current falls, often below what a device needs."
            )
        )
    end = currents.get("end")
    if end and limit is not None and raceway != "nonmetallic" and kind != UNGROUNDED and limit > end.most:
        trace.warn(
            message(
                "Metal raceway carries ground-fault current beside the wire, which is not counted. Up to {limit} A "
                "could flow to ground at the end.",
                limit=shown_number(round(limit)),
            )
        )
    elif end and limit is not None and kind != UNGROUNDED:
        trace.note(
            message(
                "Metal raceway or pipe beside the way back adds to the current to ground. No way back lets more than "
                "{limit} A through.",
                limit=shown_number(round(limit)),
            )
        )
    if kind == SPLIT:
        _note_the_ratio(trace, currents)
    trace.note(
        message(
            "Services other than dwellings carry this current and the date as a mark. Work it out again after "
            "every change ({section}).",
            section=trace.section("fault/available_current_marking"),
        )
    )
    state_the_model(trace, _assumptions(kind, source))


def _warn_of_first_fault(trace: Trace, currents: dict[str, FaultCurrents]) -> None:
    place = currents.get("end", currents["terminals"])
    trace.warn(
        message(
            "Ungrounded: the first fault to ground opens nothing, and everything runs on. Ground detectors show it "
            "({section}): find it at once.",
            section=trace.section("fault/ground_detectors"),
        )
    )
    trace.warn(
        message(
            "A second fault, on another line, then drives up to {current} A through the metal between the two.",
            current=shown_number(round(place.line_to_line)),
        )
    )


def _note_the_ratio(trace: Trace, currents: dict[str, FaultCurrents]) -> None:
    terminals = currents["terminals"]
    trace.note(
        message(
            "At the terminals line to neutral is {ratio} times line to line. Such a multiple belongs there, before "
            "the run. Put on the end of a run it is far too high.",
            ratio=shown_number(round(terminals.line_to_ground / terminals.line_to_line, 2)),
        )
    )


def _assumptions(kind: str, source: str) -> list[Message]:
    stated = [
        message("a fault without arc or resistance of its own, and symmetrical current; the first peak is higher."),
        message(
            "conductors cold, joints without resistance, and no other source that feeds in, such as solar or storage."
        ),
        message("no fuse or breaker that limits the current."),
    ]
    if source == "transformer":
        stated += {
            SPLIT: [message("halves of the winding interlaced. Others let less through from line to neutral.")],
            WYE: [message("a delta primary and a solidly grounded wye secondary.")],
            HIGH_LEG: [
                message("a closed delta of three like units. An open delta or unlike units give other currents."),
                message("ground faults from a 120 V line. The high leg drives less."),
            ],
        }.get(kind, [])
    if source == "given-current" and kind == WYE:
        stated.append(
            message("a current to ground as large as the three-phase one where only that is known. It may be larger.")
        )
    if source == "given-current" and kind in (SPLIT, HIGH_LEG):
        stated.append(message("what is not known divides as in one transformer."))
    if source == "generator" and kind == SPLIT:
        stated.append(message("halves of the winding coupled without a leak, the most from line to neutral."))
    if kind == CORNER:
        stated.append(
            message("the grounded line as large as the others. A ground fault then is one from line to line.")
        )
    return stated
