"""The form never changes a name; some forms will not do for it, and then the reader is warned."""

from __future__ import annotations

from calc.identify import classify as name
from calc.identify.supply_or_load_side import DERIVED, JOINED_GENERATOR, Side
from calc.messages import message
from calc.trace import Trace

_NEUTRAL_BONDS = (name.MAIN, name.SYSTEM)
_SHORT_JUMPERS = (*_NEUTRAL_BONDS, name.SUPPLY_SIDE, name.EQUIPMENT_JUMPER)


def check_form(name_key: str, form: str, side: Side, trace: Trace) -> None:
    """Note what a form means for a name, or warn that this form will not do."""
    if name_key == name.NO_CONDUCTOR:
        return
    if form == "raceway":
        _metal_raceway(name_key, side, trace)
    elif form == "screw" and name_key not in _SHORT_JUMPERS:
        trace.warn(message("A screw bonds only parts that touch. Check again what this one connects."))
    elif name_key in _NEUTRAL_BONDS:
        trace.note(
            message(
                "A wire, busbar, strap or screw has the same name: the location decides ({section}).",
                section=trace.section("jumpers/main_bonding_jumper_material"),
            )
        )
        if form == "screw":
            trace.note(
                message(
                    "A screw that is the entire jumper must be green, with the green visible ({section}).",
                    section=trace.section("jumpers/screw_identification"),
                )
            )


def _metal_raceway(name_key: str, side: Side, trace: Trace) -> None:
    section = trace.section
    if name_key in (name.EQUIPMENT_CONDUCTOR, name.EQUIPMENT_JUMPER):
        trace.note(
            message(
                "The metal raceway itself may be the path if its type, length and fittings qualify ({section}). Check "
                "it under raceway as grounding path.",
                section=section("naming/equipment_conductor_types"),
            )
        )
    elif name_key == name.SUPPLY_SIDE and side.place == DERIVED:
        trace.note(
            message(
                "At a separately derived system, a nonflexible metal raceway may be this jumper. A flexible one may "
                "not ({section}).",
                section=section("jumpers/derived_supply_side_jumper"),
            )
        )
    elif name_key == name.SUPPLY_SIDE and side.place == JOINED_GENERATOR:
        trace.warn(
            message(
                "The rule for this generator sizes a jumper from its conductors ({section}). Ask the authority having "
                "jurisdiction before you rely on the raceway alone.",
                section=section("jumpers/generator_supply_side_jumper"),
            )
        )
    elif name_key == name.SUPPLY_SIDE:
        trace.note(
            message(
                "A metal service raceway provides the bonding through listed or tight fittings. Standard locknuts "
                "alone are not enough ({section}).",
                section=section("naming/service_metal_bonded"),
            )
        )
    elif name_key == name.ELECTRODE_CONDUCTOR:
        trace.warn(
            message(
                "A metal raceway is not this conductor ({section}). It only protects it.",
                section=section("naming/electrode_conductor_material"),
            )
        )
    elif name_key == name.GROUNDED:
        trace.warn(
            message(
                "A metal raceway is never the neutral: the neutral is a circuit conductor ({section}).",
                section=section("naming/defined_grounded_conductor"),
            )
        )
    elif name_key in _NEUTRAL_BONDS:
        trace.warn(
            message(
                "A raceway is not one of the permitted forms: a wire, busbar, screw or similar conductor ({section}).",
                section=section("jumpers/main_bonding_jumper_material"),
            )
        )
    else:
        trace.warn(
            message(
                "A raceway is not one of the permitted forms of a bonding jumper: a wire, busbar, screw or similar "
                "conductor ({section}).",
                section=section("naming/jumper_forms"),
            )
        )
