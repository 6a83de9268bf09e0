"""What an answer on a fault loop must say beside its numbers."""

from __future__ import annotations

from calc.fault.device import DOES_NOT_OPEN, NOT_ASSURED, SLOW, Opening, shown_time
from calc.fault.device_limits import value
from calc.fault.fault_energy import OPENING
from calc.fault.interrupting import INTERRUPTING, unmarked
from calc.fault.return_path_fields import APART
from calc.rounded import THREE, at_most
from calc.words import Sentence, say
from calc.working import Working


def note_the_loop(
    seen: Opening, highest: float, touch: float, joint: float, device_kind: str, working: Working
) -> None:
    """Warn of metal that stays live and of a loose joint; note the voltage to earth and the highest current.

    highest: ampere, touch: volt from the metal to the panel, at most; joint: ohm.
    """
    volt = at_most(touch, THREE)
    if seen.verdict in (NOT_ASSURED, DOES_NOT_OPEN):
        working.warn(
            say(
                "Nothing requires the device to open. Up to {volt} V stays on the metal until someone finds it.",
                volt=volt,
            )
        )
    elif seen.verdict == SLOW:
        working.warn(
            say(
                "The metal may be live for {time}, at up to {volt} V to the panel.",
                time=shown_time(seen.slowest_second),
                volt=volt,
            )
        )
    if joint:
        working.warn(say("A loose joint has no fixed resistance: it heats, opens, arcs. Make it tight and measure."))
    working.note(
        say(
            "The voltage is to the panel where the run begins. To the earth it is more: the fault lifts the panel's "
            "neutral and metal too."
        )
    )
    if highest > value(unmarked(device_kind)):
        working.note(
            say(
                "The device must be rated to interrupt the highest current available, here up to {ampere} A "
                "({section}). Look under {opening}.",
                ampere=at_most(highest, THREE),
                section=working.section(INTERRUPTING),
                opening=OPENING,
            )
        )


def assumptions(available: float | None, arc: float, wiring: str) -> list[Sentence]:
    """Give what the loop takes for granted, each as one sentence."""
    return [
        say("The fault is metal to metal, without an arc; an arc lowers the current further.")
        if not arc
        else say("The arc takes at most what was entered; without it the voltage on the metal is higher."),
        say("Neutral and metal are joined where the run begins. The earth carries nothing worth counting."),
        say("Wires between 25 and 75 °C; the source gives 95 to 100 percent of its voltage."),
        say("An unlimited source for every current told.")
        if available is None
        else say("The source gives at least what was entered; its impedance adds straight to the rest."),
        say("Out and back are parallel, in nonmetallic raceway or none, as far apart as entered.")
        if wiring == APART
        else say("Steel of a raceway differs widely; every joint is tight but for the one entered."),
    ]
