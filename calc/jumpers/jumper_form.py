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
    message("What the jumper is"),
    message("A wire, a busbar, a strap, the green screw, or the jumper that came with listed equipment."),
    (*_FORMS, Choice("supplied", message("Supplied with the listed equipment"))),
)
FORM_OF_SYSTEM_JUMPER = one_of(
    message("What the jumper is"),
    message("A wire, a busbar, a strap or a green screw."),
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
                "Use only the screw made for this enclosure. It is green, and the green shows with the screw "
                "in place ({section}).",
                section=trace.section("jumpers/screw_identification"),
            )
        )
        trace.note(
            message(
                "With a screw, the grounding electrode conductor lands on the neutral bar, not on the "
                "equipment grounding bar ({section}).",
                section=trace.section(landing),
            )
        )
        return message("Green screw"), message(
            "made for this enclosure. A wire in its place: {wire} or larger", wire=wire
        )
    if form == "supplied":
        trace.note(
            message(
                "Use the jumper that came with the listed equipment, as its instructions say. Its listing "
                "covers its size ({section}).",
                section=trace.section("jumpers/supplied_with_listed_equipment"),
            )
        )
        trace.note(
            message(
                "If it is a screw, the grounding electrode conductor lands on the neutral bar. If it is a "
                "wire or busbar between the two bars, the equipment grounding bar will do too ({section}).",
                section=trace.section(landing),
            )
        )
        return message("As supplied"), message(
            "with the listed equipment. A wire in its place: {wire} or larger", wire=wire
        )
    _note_metal_and_attachment(metal, trace)
    trace.note(
        message(
            "If the wire runs from the neutral bar to the equipment grounding bar, the grounding electrode "
            "conductor may land on either bar ({section}).",
            section=trace.section(landing),
        )
    )
    return message("{size}", size=shown_size(size)), message("{metal} wire or larger", metal=METAL_WORDS[metal])


def _note_metal_and_attachment(metal: str, trace: Trace) -> None:
    named = trace.cite("jumpers/main_bonding_jumper_material")
    if metal not in [row["metal"] for row in named.rows]:
        trace.warn(
            message(
                "The {edition} edition names copper or another metal that resists corrosion ({section}), not "
                "{metal}. Ask the authority before you use it.",
                edition=trace.edition,
                section=named.section,
                metal=METAL_WORDS[metal],
            )
        )
    trace.note(
        message(
            "Fasten it with pressure connectors, lugs or other means the code lists ({section}).",
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
                "If the busbar runs from the neutral bar to the equipment grounding bar, the grounding "
                "electrode conductor may land on either bar ({section}).",
                section=trace.section(landing),
            )
        )
    else:
        trace.note(
            message(
                "The landing rule names a wire or a busbar ({section}). With a strap, land the grounding "
                "electrode conductor on the neutral bar unless the authority takes the strap for a busbar.",
                section=trace.section(landing),
            )
        )
    return message(
        "{metal} wire, or a {form} of the same area: {square_inch:.3f} in² ({square_millimetre:.0f} mm²)",
        metal=METAL_WORDS[metal],
        form=_FORM_WORDS[form],
        square_inch=square_inch,
        square_millimetre=square_millimetre,
    )
