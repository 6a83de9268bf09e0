"""What a main or system bonding jumper is, a wire, bus, strap or screw, and what that implies."""

from __future__ import annotations

from calc.calculator import Choice
from calc.conductors.size import shown_size
from calc.jumpers.bus_area import bus_of_equal_area
from calc.messages import Message, message
from calc.shared_fields import METAL_WORDS, one_of
from calc.trace import Trace

LANDING = "grounding/electrode_conductor_landing"

_FORMS = (
    Choice("wire", message("Wire")),
    Choice("busbar", message("Busbar")),
    Choice("strap", message("Strap")),
    Choice("screw", message("Green screw")),
)
FORM = one_of(
    message("Type of jumper"),
    message("A wire, busbar, strap, the green screw, or the jumper that came with listed equipment."),
    (*_FORMS, Choice("supplied", message("Supplied with the listed equipment"))),
)
FORM_OF_SYSTEM_JUMPER = one_of(
    message("Type of jumper"),
    message("A wire, busbar, strap or the green screw."),
    _FORMS,
)


def jumper_form(
    form: str, size: str, metal: str, trace: Trace, landing: str = LANDING
) -> tuple[Message, Message]:
    """Note what `form` implies on site and give the headline of the answer and the words beside it.

    form: a value of `FORM`; size: the label of the smallest wire; metal: of that wire.
    landing: the rule that says where the grounding electrode conductor lands.
    """
    wire = message("{size} {metal}", size=shown_size(size), metal=METAL_WORDS[metal])
    if form in ("busbar", "strap"):
        return message("{size}", size=shown_size(size)), _bus_or_strap(form, size, metal, trace, landing)
    if form == "screw":
        trace.note(
            message(
                "Use only the screw made for this enclosure. It must be green, and the green must be visible with the "
                "screw installed ({section}).",
                section=trace.section("jumpers/screw_identification"),
            ),
            grave=True,
        )
        trace.note(
            message(
                "With a screw, connect the grounding electrode conductor to the neutral bar, not to the equipment "
                "grounding bar ({section}).",
                section=trace.section(landing),
            )
        )
        return message("Green screw"), message(
            "made for this enclosure. For a wire instead: {wire} or larger", wire=wire
        )
    if form == "supplied":
        trace.note(
            message(
                "Use the jumper that came with the listed equipment and follow its instructions. Its listing covers "
                "the size ({section}).",
                section=trace.section("jumpers/supplied_with_listed_equipment"),
            )
        )
        trace.note(
            message(
                "If it is a screw, connect the grounding electrode conductor to the neutral bar. If it is a wire or "
                "busbar between the two bars, the equipment grounding bar is permitted too ({section}).",
                section=trace.section(landing),
            )
        )
        return message("As supplied"), message(
            "with the listed equipment. For a wire instead: {wire} or larger", wire=wire
        )
    _note_metal_and_attachment(metal, trace)
    trace.note(
        message(
            "If the wire runs from the neutral bar to the equipment grounding bar, the grounding electrode conductor "
            "may connect to either bar ({section}).",
            section=trace.section(landing),
        )
    )
    return message("{size}", size=shown_size(size)), message("{metal} wire or larger", metal=METAL_WORDS[metal])


def _note_metal_and_attachment(metal: str, trace: Trace) -> None:
    material = trace.cite("jumpers/main_bonding_jumper_material")
    if metal not in [row["metal"] for row in material.rows]:
        trace.warn(
            message(
                "The {edition} edition names copper or another corrosion-resistant material ({section}), not {metal}. "
                "Ask the authority having jurisdiction before you use it.",
                edition=trace.edition,
                section=material.section,
                metal=METAL_WORDS[metal],
            )
        )
    trace.note(
        message(
            "Connect it with pressure connectors, lugs or other means listed in the code ({section}).",
            section=trace.section("jumpers/main_bonding_jumper_attachment"),
        )
    )


_FORM_WORDS = {"busbar": message("busbar"), "strap": message("strap")}


def _bus_or_strap(form: str, size: str, metal: str, trace: Trace, landing: str) -> Message:
    square_inch, square_millimetre = bus_of_equal_area(size, "jumpers/bus_of_equal_area", trace)
    _note_metal_and_attachment(metal, trace)
    if form == "busbar":
        trace.note(
            message(
                "If the busbar runs from the neutral bar to the equipment grounding bar, the grounding electrode "
                "conductor may connect to either bar ({section}).",
                section=trace.section(landing),
            )
        )
    else:
        trace.note(
            message(
                "The rule for that connection names a wire or a busbar ({section}). With a strap, connect the "
                "grounding electrode conductor to the neutral bar unless the authority having jurisdiction accepts the "
                "strap as a busbar.",
                section=trace.section(landing),
            )
        )
    return message(
        "{metal} wire, or a {form} with the same cross-section: {square_inch:.3f} in² ({square_millimetre:.0f} mm²)",
        metal=METAL_WORDS[metal],
        form=_FORM_WORDS[form],
        square_inch=square_inch,
        square_millimetre=square_millimetre,
    )
