"""A plane of one voltage under livestock: whether it is needed, how it is bonded, and what a reading there means."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.equipotential import bond_wire
from calc.equipotential import livestock_fields as ask
from calc.equipotential.animal_contact import WITH_RESISTOR, Contact, add_contact, contact
from calc.equipotential.plan import ACT, BOND, BUILD, CHANGE, IN_ORDER, LOOK, NEED_NOT, WISE, Plan
from calc.equipotential.plan_outputs import LIVESTOCK
from calc.known import known
from calc.messages import Message, message
from calc.rounded import at_most, three_figures
from calc.trace import Trace

NAME = message("Equipotential plane for livestock")
PLACES, PLANE, CONDUCTOR = "planes/livestock_places", "places/livestock_plane", "places/livestock_plane_conductor"
POULTRY, SLATTED = "planes/livestock_poultry", "planes/livestock_slatted"
METAL = "places/equipotential_plane_definition"
CONSTRUCTION, GRADIENT = "planes/livestock_construction", "planes/livestock_gradient"


@calculator(
    "livestock-equipotential-plane",
    name=NAME,
    purpose=message(
        "Whether a floor needs an equipotential plane, how to bond it, and what a reading at an animal means."
    ),
    submit=message("Check the floor"),
    example={
        "edition": "2023",
        "area": "indoor-concrete",
        "metal": "yes",
        "plane": "steel",
        "bond_conductor": "8",
        "tied": "no",
        "way_out": "plain",
        "volt": "0.8V",
    },
    outputs=LIVESTOCK,
)
def livestock_equipotential_plane(
    *,
    trace: Trace,
    area: Annotated[str, ask.AREA],
    animals: Annotated[str, ask.ANIMALS] = "livestock",
    metal: Annotated[str, ask.METAL] = "yes",
    plane: Annotated[str, ask.PLANE] = ask.UNKNOWN,
    bond_conductor: Annotated[str | None, bond_wire.SIZE] = None,
    bond_kind: Annotated[str, bond_wire.KIND] = bond_wire.SOLID_COPPER,
    tied: Annotated[str, ask.TIED] = ask.UNKNOWN,
    way_out: Annotated[str, ask.WAY_OUT] = ask.NONE,
    volt: Annotated[float | None, ask.VOLT] = None,
    meter: Annotated[str, ask.METER] = WITH_RESISTOR,
    resistor: Annotated[float, ask.RESISTOR] = 500,
) -> Answer:
    """Tell whether a floor where animals stand needs a plane, what of it is in order, and what a reading means.

    When: livestock on concrete, indoors or outdoors, at up to 1000 V. The reading is AC, steady, between two points
    that one animal touches at once. Not for direct current, electric fences or fish.

    Parameters:
        area: "indoor-concrete", "outdoor-slab", "slatted" or "dirt". animals: "livestock" or "poultry".
        metal: "yes" or "no", metal in reach that may become live. plane: "steel", "none" or "unknown".
        bond_conductor: size label, "18" to "2000kcmil". bond_kind: "solid-copper", "stranded-copper", "aluminum".
        tied: "yes", "no" or "unknown". way_out: "gradient", "plain" or "none".
        volt: V, 0 to 1000. meter: "with-resistor" or "open". resistor: ohm, 100 to 10,000.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold plane_needed ("yes" or "no"), verdict of the reading ("act",
        "below", "look" or "none"), milliampere (through a resistor of about 500 ohm, None across anything else),
        mean_cow_milliampere and lowest_cow_milliampere (at most), and decisions (by part).
    Raises: nothing; bad or missing input ends as `fix`.
    Source: 547.10, from 2023 on 547.44; rules planes/animal_contact_level, cow_resistance, cow_response; Ohm's law.

    Example:
    >>> result = livestock_equipotential_plane(edition="2017", area="indoor-concrete", volt=1)
    >>> result.answer.values["plane_needed"], result.answer.values["milliampere"], result.answer.values["verdict"]
    ('yes', 2.0, 'act')
    """
    trace.warn(
        message(
            "If anyone feels a tingle, or animals shy from metal or water: keep away, and have a qualified person shut "
            "the power off from a dry place. Call the utility too."
        ),
        grave=True,
    )
    plan = Plan(trace)
    needed = _add_plane(area, animals, metal, plane, plan)
    if needed:
        bond_wire.add_bond(bond_conductor, bond_kind, trace.cite(CONDUCTOR).value, CONDUCTOR, plan)
        _add_metal(tied, plan)
        _add_way_out(way_out, plan)
    if area == ask.SLATTED and needed:
        why = message("If their supports are part of the plane, the slats need no separate bond.")
        plan.add("slats", message("Slats"), NEED_NOT, why, SLATTED)
    found = None if volt is None else contact(volt, meter, resistor, trace)
    if found:
        add_contact(found, plan)
    _note(needed, trace)
    headline, detail = _words(_asked(needed, plan), found)
    return Answer(
        name=NAME,
        headline=headline,
        detail=detail,
        basis=PLANE,
        answer_code=f"{'needed' if needed else 'not-needed'},{plan.answer_code}",
        values={
            "plane_needed": "yes" if needed else "no",
            "verdict": found.verdict if found else "none",
            "milliampere": found.milliampere if found else None,
            "mean_cow_milliampere": found.mean_cow if found else None,
            "lowest_cow_milliampere": found.lowest_cow if found else None,
            "decisions": plan.decisions,
        },
        table=plan.table,
    )


def _add_plane(area: str, animals: str, metal: str, plane: str, plan: Plan) -> bool:
    """Add the plane and tell whether it is needed. Slats are of concrete: they count as a concrete floor."""
    part = message("Plane in the floor")
    named = {row["place"] for row in plan.trace.cite(PLACES).rows}
    if animals == ask.POULTRY:
        plan.add("plane", part, NEED_NOT, message("The rule does not count poultry as livestock."), POULTRY)
        return False
    if metal == "no":
        plan.add("plane", part, NEED_NOT, message("No metal within their reach can become live."), PLACES)
        return False
    if area not in named and area != ask.SLATTED:
        plan.add("plane", part, NEED_NOT, message("The rule is for concrete. Put a GFCI here."), PLACES)
        return False
    if plane == ask.STEEL:
        why = message("Metal in the floor, all tied together, out to where they stand.")
        plan.add("plane", part, IN_ORDER, why, PLACES)
    elif plane == ask.UNKNOWN:
        why = message("It is required. Measure from the floor to the metal, or look where the concrete is open.")
        plan.add("plane", part, LOOK, why, PLACES)
    else:
        why = message("They stand on concrete within reach of metal that may become live.")
        plan.add("plane", part, BUILD, why, PLACES)
    return True


def _add_metal(tied: str, plan: Plan) -> None:
    part = message("Metal above the floor")
    if tied == "yes":
        plan.add("metal", part, IN_ORDER, message("Floor and metal are one."), METAL)
    elif tied == "no":
        plan.add("metal", part, BOND, message("A plane not bonded to the metal can make it worse."), METAL)
    else:
        plan.add("metal", part, LOOK, message("Look for a bond to the plane at each piece."), METAL)


def _add_way_out(way_out: str, plan: Plan) -> None:
    part, rods = message("Step off the plane"), plan.trace.cite(GRADIENT).rows[0]
    if way_out == "gradient":
        plan.add("way-out", part, IN_ORDER, message("The step is gentle."), GRADIENT)
    elif way_out == "plain":
        why = message("One way: rods along the edge, {feet} ft apart, driven outward at {degrees} degrees.", **rods)
        plan.add("way-out", part, WISE, why, GRADIENT)


def _note(needed: bool, trace: Trace) -> None:
    if needed:
        ways = "; ".join(row["way"] for row in trace.cite(CONSTRUCTION).rows)
        words = {"ways": ways, "section": trace.section(CONSTRUCTION)}
        trace.note(message("How it is built: {ways} ({section}).", **words))
        trace.note(
            message(
                "Connect the wire to the plane with brass or copper clamps or pressure connectors ({section}).",
                section=trace.section("planes/livestock_means"),
            )
        )
    trace.note(
        message(
            "A plane clears no fault. The equipment grounding conductor does, insulated where it is buried "
            "({section}).",
            section=trace.section("places/farm_equipment_grounding"),
        ),
        grave=True,
    )
    trace.note(message("Voltage may come in on the utility's neutral. Only the utility may change that."))


def _asked(needed: bool, plan: Plan) -> Message:
    """Return whether a plane is asked, and what is wrong with the one there: metal known to be apart from it too."""
    if not needed:
        return message("No equipotential plane is required here")
    decided = {key: plan.decisions[key] for key in ("plane", "bond", "metal")}
    if all(each == IN_ORDER for each in decided.values()):
        return message("The plane required here is OK as entered, if its wire is solid copper")
    wrong = [key for key, each in decided.items() if each == CHANGE or (key, each) == ("metal", BOND)]
    if wrong:
        return message("A plane is required here: fix {parts}", parts=plan.names(*wrong))
    return message("A plane is required here")


def _words(asked: Message, found: Contact | None) -> tuple[Message, Message]:
    if found is None:
        return asked, message("see each part below")
    cow = at_most(found.lowest_cow)
    if found.like_a_fault:
        volt = three_figures(found.volt)
        return message("{volt} V, have the power shut off", volt=volt), message(
            "{asked}. A wet cow may get up to {cow} mA.", asked=asked, cow=cow
        )
    if not found.volt:
        return message("The meter shows nothing"), message(
            "{asked}. There may be less than its last digit.", asked=asked
        )
    if found.verdict == LOOK:
        return message("Measure again"), message("{asked}. A wet cow may get up to {cow} mA.", asked=asked, cow=cow)
    words = {"asked": asked, "cow": cow}
    ohm = three_figures(known(found.resistor))
    if found.verdict == ACT and found.milliampere is None:
        act = message("{volt} V across {ohm} ohm, take action", volt=three_figures(found.volt), ohm=ohm)
        return act, message("{asked}. A wet cow may get up to {cow} mA.", **words)
    through = three_figures(known(found.milliampere))
    if found.verdict == ACT:
        act = message("{through} mA through {ohm} ohm, take action", through=through, ohm=ohm)
        return act, message("{asked}. A wet cow may get up to {cow} mA.", **words)
    below = message("{through} mA through {ohm} ohm, below the limit", through=through, ohm=ohm)
    return below, message("{asked}. A wet cow may still get up to {cow} mA.", **words)
