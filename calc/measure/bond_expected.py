"""The resistance that a sound bond may have: its own wire and tight joints."""

from __future__ import annotations

from calc.conductors.resistance import dc_resistance
from calc.fault.circuit.ranges import Between
from calc.measure.bond_fields import OF_RACEWAY
from calc.measure.bond_reading import MILLI, shown_ohm
from calc.messages import message
from calc.trace import Trace

RACEWAY_JOINT, WIRE_JOINT = "raceways/steel_as_return", "measure/joint_of_wire"
CONDUCTIVITY = "conductors/conductivity"
LAY = "conductors/lay_of_strands"
STRANDS = "measure/strand_example"
INCHES = 12


def expected_bond(
    conductor: str | None, metal: str, length: float, celsius: float, joints: int, joint_kind: str, trace: Trace
) -> tuple[Between, float]:
    """Return the resistance of a sound bond, milliohm, and the least that its wire alone may have.

    conductor: a size label, None only with a length of 0; length: ft; celsius: of the wire; joints: how many;
    joint_kind: "wire" or "raceway".
    Source: rules conductors/conductivity, conductors/lay_of_strands; for a joint that of `joint_rule`.
    """
    solid = stranded = 0.0
    if conductor and length:
        trace.cite(CONDUCTIVITY)
        trace.cite(LAY)
        solid = MILLI * length * dc_resistance(conductor, metal, celsius, stranded=False)
        stranded = trace.compute(
            message("The wire alone, stranded, at its temperature."),
            "per_foot * feet",
            "milliohm",
            per_foot=MILLI * dc_resistance(conductor, metal, celsius),
            feet=length,
        )
    each = _one_joint(joint_kind, trace)
    likely = trace.compute(
        message("With its joints, likely.") if joint_kind == OF_RACEWAY else message("With its joints, at most."),
        "wire + joints * each",
        "milliohm",
        cites=(joint_rule(joint_kind),),
        wire=stranded,
        joints=joints,
        each=each.likely,
    )
    found = Between(solid + joints * each.low, likely, stranded + joints * each.high)
    trace.step(
        message("A sound bond may have from {low} to {high}.", low=shown_ohm(found.low), high=shown_ohm(found.high)),
        found.high,
        "milliohm",
    )
    return found, solid


def joint_rule(joint_kind: str) -> str:
    """Return the rule that says what one sound joint may have. joint_kind: "wire" or "raceway"."""
    return RACEWAY_JOINT if joint_kind == OF_RACEWAY else WIRE_JOINT


def _one_joint(joint_kind: str, trace: Trace) -> Between:
    """Return the milliohm of one sound joint; of a wire only the most is known, so nothing less is called likely."""
    stated = trace.cite(joint_rule(joint_kind))
    if joint_kind == OF_RACEWAY:
        rows = {row["impedance"]: row["joint_milliohm"] for row in stated.rows}
        return Between(rows["low"], rows["likely"], rows["high"])
    return Between(0, stated.value, stated.value)


def one_strand_left(conductor: str, metal: str, celsius: float, trace: Trace) -> float:
    """Return the milliohm that a wire gains when nearly all its strands are cut over a short length (see the rule)."""
    row = trace.cite(STRANDS).rows[0]
    return trace.compute(
        message(
            "If all strands but {left} of {strands} were cut over {inches} in, the resistance would rise by only this.",
            **row,
        ),
        "per_foot * inches / inches_in_a_foot * (strands / left - whole)",
        "milliohm",
        cites=(STRANDS,),
        per_foot=MILLI * dc_resistance(conductor, metal, celsius),
        inches=row["inches"],
        inches_in_a_foot=INCHES,
        strands=row["strands"],
        left=row["left"],
        whole=1,
    )
