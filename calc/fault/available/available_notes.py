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
            "This is the most that can flow. Use it for ratings. "
            "Never use it to prove that a device opens: that takes the lowest current."
        )
    )
    if kind == UNGROUNDED:
        _warn_of_first_fault(trace, currents)
    if source == "generator":
        trace.warn(
            message(
                "A generator delivers this for a few cycles only. Then its current drops, often below what a device "
                "needs to open."
            )
        )
    end = currents.get("end")
    if end and limit is not None and raceway != "nonmetallic" and kind != UNGROUNDED and limit > end.most:
        trace.warn(
            message(
                "Metal raceway also carries ground-fault current. That is not included here. Up to {limit} A could "
                "flow to ground at the end.",
                limit=shown_number(round(limit)),
            )
        )
    elif end and limit is not None and kind != UNGROUNDED:
        trace.note(
            message(
                "Metal raceway or pipe in parallel adds ground-fault current. No return path lets more than {limit} "
                "A through.",
                limit=shown_number(round(limit)),
            )
        )
    if kind == SPLIT:
        _note_the_ratio(trace, currents)
    trace.note(
        message(
            "Mark this current and the date on service equipment, except at dwellings. Recalculate after every "
            "change ({section}).",
            section=trace.section("fault/available_current_marking"),
        )
    )
    state_the_model(trace, _assumptions(kind, source))


def _warn_of_first_fault(trace: Trace, currents: dict[str, FaultCurrents]) -> None:
    place = currents.get("end", currents["terminals"])
    trace.warn(
        message(
            "Ungrounded: the first ground fault opens nothing, and everything keeps running. Ground detectors show "
            "it ({section}): find it at once.",
            section=trace.section("fault/ground_detectors"),
        )
    )
    trace.warn(
        message(
            "A second fault, on another phase, then drives up to {current} A through the metal between the two.",
            current=shown_number(round(place.line_to_line)),
        )
    )


def _note_the_ratio(trace: Trace, currents: dict[str, FaultCurrents]) -> None:
    terminals = currents["terminals"]
    trace.note(
        message(
            "At the terminals, line to neutral is {ratio} times line to line. Use that multiplier only there, ahead "
            "of the run. At the end of a run it comes out far too high.",
            ratio=shown_number(round(terminals.line_to_ground / terminals.line_to_line, 2)),
        )
    )


def _assumptions(kind: str, source: str) -> list[Message]:
    stated = [
        message(
            "a bolted fault, with no arc or resistance of its own, and symmetrical current; the first peak is higher."
        ),
        message(
            "cold conductors, joints without resistance, and no other source feeding in, such as solar or storage."
        ),
        message("no current-limiting fuse or breaker."),
    ]
    if source == "transformer":
        stated += {
            SPLIT: [message("interlaced half windings. Others let less through from line to neutral.")],
            WYE: [message("a delta primary and a solidly grounded wye secondary.")],
            HIGH_LEG: [
                message(
                    "a closed delta of three identical units. An open delta or units that differ give other currents."
                ),
                message("ground faults from a 120 V leg. The high leg drives less."),
            ],
        }.get(kind, [])
    if source == "given-current" and kind == WYE:
        stated.append(
            message(
                "a ground-fault current equal to the three-phase current where only that is known. It may be larger."
            )
        )
    if source == "given-current" and kind in (SPLIT, HIGH_LEG):
        stated.append(message("what is not known splits as it does in a single transformer."))
    if source == "generator" and kind == SPLIT:
        stated.append(message("half windings coupled with no leakage, which gives the most from line to neutral."))
    if kind == CORNER:
        stated.append(
            message("a grounded phase conductor as large as the others. A ground fault is then line to line.")
        )
    return stated
