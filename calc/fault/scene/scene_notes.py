"""What the reader of a scene must know before anything else, as warnings and notes."""

from __future__ import annotations

from calc.fault.circuit.network import Solution
from calc.fault.scene.scene_opening import OpeningDevice, shown
from calc.fault.scene.scene_words import BRANCH_WORDS, PART_IN_SENTENCE
from calc.messages import message
from calc.touch.shock.lasting_current import lasting_verdict
from calc.touch.shock.people import MEANING_WORDS
from calc.trace import Trace

AHEAD_OF_ALL = ("service", "supply-raceway")
NOT_CLEARED = ("does-not-open", "not-assured")
METAL_PATHS = ("feeder-grounding-conductor", "feeder-raceway", "neutral-bond-at-panel")
ELECTRODES = ("service-electrode", "electrode-on-enclosure", "machine-electrode", "elbow-soil")
STRAY = 0.1  # A: less is the electrodes' own share of a sound neutral's drop


def say_what_happens(
    fault: str, breaker: OpeningDevice | None, solved: Solution, highest: str, touched: str, trace: Trace
) -> None:
    """Warn of metal that stays live, of a shock and of current on metal; note what earth carries."""
    volt = abs(solved.voltages[highest])
    if fault in AHEAD_OF_ALL:
        trace.warn(
            message(
                "Ahead of the first device, nothing in the building opens this fault. The device on the primary of "
                "the source's transformer may take minutes, or never open."
            ),
            grave=True,
        )
    elif fault != "none" and (breaker is None or breaker.opening.verdict in NOT_CLEARED):
        trace.warn(
            message(
                "The metal stays live: {volt} V to earth on {part}, until someone finds it.",
                volt=shown(volt),
                part=PART_IN_SENTENCE[highest],
            ),
            grave=True,
        )
    elif fault != "none":
        trace.warn(
            message(
                "Until it opens, there is {volt} V to earth on {part}. Bonding alone does not bring that to zero.",
                volt=shown(volt),
                part=PART_IN_SENTENCE[highest],
            ),
            grave=True,
        )
    elif volt > 1:
        trace.warn(
            message(
                "Even with no fault, there is {volt} V to earth on {part}.",
                volt=shown(volt),
                part=PART_IN_SENTENCE[highest],
            )
        )
    if touched != "none":
        milliampere = 1000 * abs(solved.currents["person"])
        trace.warn(
            message(
                "{milliampere} mA through the person: {meaning}.",
                milliampere=shown(milliampere),
                meaning=MEANING_WORDS[lasting_verdict(milliampere, trace)],
            ),
            grave=True,
        )
    if fault == "none":
        _warn_of_stray_current(solved, trace)
    else:
        _note_what_earth_carries(solved, trace)


def _warn_of_stray_current(solved: Solution, trace: Trace) -> None:
    stray = {name: abs(solved.currents[name]) for name in METAL_PATHS if name in solved.currents}
    most = max(stray, key=lambda name: stray[name], default=None)
    if most and stray[most] > STRAY:
        trace.warn(
            message(
                "Even with no fault, {ampere} A of neutral current flows on metal. Path: {path}.",
                ampere=shown(stray[most]),
                path=BRANCH_WORDS[most],
            )
        )


def _note_what_earth_carries(solved: Solution, trace: Trace) -> None:
    earth = [abs(solved.currents[name]) for name in ELECTRODES if name in solved.currents]
    trace.note(
        message(
            "No electrode here carries more than {ampere} A: the earth is not a return path that opens a device.",
            ampere=shown(max(earth)),
        )
    )
