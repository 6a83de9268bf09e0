"""The circuit of the drawn scene as steps of a working, and what it takes for granted."""

from __future__ import annotations

from collections.abc import Mapping

from calc.conductors.impedance import REACTANCE_RULE, RESISTANCE_RULE
from calc.fault.scene.scene import GOOD_JOINT, Scene
from calc.fault.scene.scene_of import LOADS, MACHINE_ELECTRODE, SOURCE_ELECTRODE, TRANSFORMER, UTILITY
from calc.fault.source.sources import HALF_WINDING
from calc.messages import Message, message
from calc.raceways.return_impedance import DIMENSIONS_RULE, PIECE_RULE, STEEL_RULE
from calc.trace import Trace, shown_number
from calc.written import plain_number

FLEXIBLE_RULE = "fault/flexible_raceway_resistance"
WIRE = (RESISTANCE_RULE, REACTANCE_RULE)
SHOWN = (
    ("supply-hot-a", message("Supply conductors, 2/0 AWG aluminum, each one."), WIRE),
    ("supply-neutral", message("Its neutral, as it is here."), ()),
    ("feeder-hot-a", message("Feeder, 6 AWG copper, each conductor."), WIRE),
    ("feeder-neutral", message("Its neutral, as it is here."), ()),
    ("branch-hot", message("Branch circuit, 12 AWG copper, hot conductor."), WIRE),
    ("feeder-grounding-conductor", message("Equipment grounding conductor of the feeder, 10 AWG copper."), WIRE),
    (
        "feeder-raceway",
        message("Steel raceway of the feeder, trade size 1 tubing, as poor as it may be with tight joints."),
        (DIMENSIONS_RULE, STEEL_RULE, PIECE_RULE),
    ),
    ("branch-grounding-conductor", message("Equipment grounding conductor of the machine, 12 AWG copper."), WIRE),
    ("flexible-raceway", message("Flexible raceway of the machine."), (FLEXIBLE_RULE,)),
    ("main-bonding-jumper", message("Main bonding jumper."), ()),
    ("supply-side-bonding-jumper", message("Supply-side bonding jumper."), ()),
)


def show_the_circuit(scene: Scene, source: str, trace: Trace) -> None:
    """Record the impedance of the source and of every branch that is there, with the rules that gave them."""
    cites = (HALF_WINDING,) if source == "utility" else ()
    trace.step(message("Source, from a hot conductor to the neutral."), shown_ohm(scene.source), "ohm", cites)
    whole = dict(scene.runs) | dict(scene.bonds)
    for name, words, rules in SHOWN:
        ohm = whole.get(name)
        if ohm is not None and not _says_nothing_new(name, whole):
            trace.step(words, shown_ohm(ohm), "ohm", rules)
    trace.step(message("Solved as one circuit: every current and voltage follows from these and the electrodes."))


def _says_nothing_new(name: str, whole: Mapping[str, complex | None]) -> bool:
    """Whether a neutral is just like its hot conductor, or a jumper tight."""
    twin = {"supply-neutral": "supply-hot-a", "feeder-neutral": "feeder-hot-a"}.get(name)
    return whole[name] == (whole[twin] if twin else GOOD_JOINT)


def shown_ohm(value: complex) -> str:
    """Return an impedance as resistance and reactance, to four digits.

    >>> shown_ohm(0.0103680012 + 0.01105919j), shown_ohm(0.5)
    ('0.01037 + j 0.01106', '0.5')
    """
    value = complex(value)
    resistance, reactance = (plain_number(float(f"{part:.4g}")) for part in (value.real, value.imag))
    return f"{resistance} + j {reactance}" if value.imag else resistance


def assumptions(source: str, loads: str, electrode_ohm: float) -> list[Message]:
    """Return what the scene takes for granted, each as one sentence."""
    supplied = (
        message("120/240 V, {kva} kVA, {percent_r} % resistance and {percent_x} % reactance.", **UTILITY)
        if source == "utility"
        else message("208Y/120 V, {kva} kVA, {percent_r} % resistance and {percent_x} % reactance.", **TRANSFORMER)
    )
    given = [
        supplied,
        message("Nothing limits the current ahead of that transformer."),
        message("120 V to ground at the source, conductors at 75 °C, 60 Hz."),
        message("Wires in nonmetallic raceway; a steel raceway is figured beside its wires, not coupled to them."),
        message("A tight joint has half a milliohm; the fault itself is metal to metal, without an arc."),
        message(
            "The electrode at the source has {source} ohm, the one at the first disconnect {service} ohm, a rod at the "
            "machine {machine} ohm, in even soil.",
            service=shown_number(electrode_ohm),
            source=shown_number(SOURCE_ELECTRODE),
            machine=shown_number(MACHINE_ELECTRODE),
        ),
        message("The person stands on remote earth, away from every electrode."),
        message("Metal bonded to nothing takes on the voltage of whatever touches it."),
    ]
    if loads == "on":
        given.append(
            message(
                "The loads in the panel are {a} ohm on one hot conductor and {b} ohm on the other.",
                a=shown_number(LOADS["load-a"]),
                b=shown_number(LOADS["load-b"]),
            )
        )
    return given
