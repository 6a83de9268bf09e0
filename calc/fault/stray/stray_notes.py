"""What is to be done about neutral current on metal, and in which order: opened live, a bond can kill."""

from __future__ import annotations

from calc.fault.stray.stray_circuit import VOLT, Stray
from calc.messages import message
from calc.rounded import three_figures
from calc.trace import Trace

NO_SECOND_BOND = "grounding/no_neutral_bond_on_load_side"


def say_what_to_do(broken: bool, houses: bool, stray: Stray, trace: Trace) -> None:
    """Warn of what stands across a gap, and note the order of work; nothing is opened beside a broken neutral."""
    if broken:
        _neutral_first(houses, stray, trace)
    elif houses:
        trace.warn(
            message(
                "Anyone who opens this water main may get between its two ends: {gap} V, or {volt} V where the "
                "neutral is loose. Measure the current first, and put a jumper across before the pipe is cut.",
                gap=three_figures(stray.gap),
                volt=VOLT,
            ),
            grave=True,
        )
    if not houses:
        _second_bond_last(broken, stray, trace)
    trace.note(
        message(
            "A clamp meter around the pipe or the grounding conductor shows this current, even where a voltmeter "
            "shows next to nothing."
        )
    )


def _neutral_first(houses: bool, stray: Stray, trace: Trace) -> None:
    what = message("the water main") if houses else message("the second bond")
    trace.warn(
        message(
            "Do not open {what}: it carries all of the load's current now. Opened live, it puts {gap} V across the "
            "gap, and loads on the other leg of a 120/240 V supply get up to {both} V.",
            what=what,
            gap=three_figures(stray.gap),
            both=2 * VOLT,
        ),
        grave=True,
    )
    trace.note(
        message(
            "Turn the power off, lock it out and test for absence of voltage. Repair the neutral; ahead of the "
            "service that is the utility's work. Then take care of {what}.",
            what=what,
        )
    )


def _second_bond_last(broken: bool, stray: Stray, trace: Trace) -> None:
    """Say when the second bond comes out, and that this is work on dead parts: it carries current."""
    if broken:
        first = message("Take the second bond out only with the neutral repaired and the power still off")
    else:
        first = message(
            "Take the second bond out with the power off, locked out and tested for absence of voltage: it carries "
            "{ampere} A, and if the neutral is loose, the gap has {volt} V across it",
            ampere=three_figures(stray.currents["bond"]),
            volt=VOLT,
        )
    trace.note(
        message(
            "{first}. Downstream of the service the neutral stays isolated from metal ({section}). Check the "
            "grounding conductor first: alone, it may let metal rise to twice the voltage in a fault.",
            first=first,
            section=trace.section(NO_SECOND_BOND),
        )
    )
