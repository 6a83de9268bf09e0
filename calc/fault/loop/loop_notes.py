"""What an answer on a fault loop must say beside its numbers."""

from __future__ import annotations

from calc.fault.device.device import DOES_NOT_OPEN, NOT_ASSURED, SLOW, Opening, shown_time
from calc.fault.device.device_limits import value
from calc.fault.device.interrupting import INTERRUPTING, unmarked
from calc.fault.return_path.return_path_fields import APART
from calc.fault.withstand.fault_energy import OPENING
from calc.known import known
from calc.messages import Message, message
from calc.rounded import THREE, at_most
from calc.trace import Trace


def note_the_loop(
    seen: Opening, highest: float, touch: float, joint: float, device_kind: str, trace: Trace
) -> None:
    """Warn of metal that stays live and of a loose joint; note the voltage to earth and the highest current.

    highest: ampere, touch: volt from the metal to the panel, at most; joint: ohm.
    """
    volt = at_most(touch, THREE)
    if seen.verdict in (NOT_ASSURED, DOES_NOT_OPEN):
        trace.warn(
            message(
                "Nothing requires the device to open. Up to {volt} V stays on the metal until someone finds it.",
                volt=volt,
            ),
            grave=True,
        )
    elif seen.verdict == SLOW:
        trace.warn(
            message(
                "The metal may be live for {time}, at up to {volt} V to the panel.",
                time=shown_time(known(seen.slowest_second)),
                volt=volt,
            ),
            grave=True,
        )
    if joint:
        trace.warn(message("A loose joint has no fixed resistance: it heats, opens, arcs. Tighten it and measure."))
    trace.note(
        message(
            "The voltage is to the panel where the run begins. To earth it is higher: the fault raises the panel's "
            "neutral and metal too."
        ),
        grave=True,
    )
    if highest > value(unmarked(device_kind)):
        trace.note(
            message(
                "The device must be rated to interrupt the highest available fault current, here up to {ampere} A "
                "({section}). See {opening}.",
                ampere=at_most(highest, THREE),
                section=trace.section(INTERRUPTING),
                opening=OPENING,
            )
        )


def assumptions(available: float | None, arc: float, wiring: str) -> list[Message]:
    """Return what the loop takes for granted, each as one sentence."""
    return [
        message("The fault is metal to metal, without an arc; an arc lowers the current further.")
        if not arc
        else message("The arc takes at most what was entered; without it the voltage on the metal is higher."),
        message("Neutral and metal are bonded where the run begins. The earth carries next to nothing."),
        message("Wires between 25 and 75 °C; the source gives 95 to 100 percent of its voltage."),
        message("An infinite source for every current shown.")
        if available is None
        else message("The source gives at least what was entered; its impedance adds straight to the rest."),
        message("The conductors out and back run parallel, in nonmetallic raceway or none, as far apart as entered.")
        if wiring == APART
        else message("Raceway steel varies widely; every joint is tight except the one entered."),
    ]
