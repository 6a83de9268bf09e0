"""What a main or system bonding jumper is, a wire, bus, strap or screw, and what that implies."""

from __future__ import annotations

from calc.conductors.size import shown_size
from calc.declare import Choice
from calc.jumpers.bus_area import bus_of_equal_area
from calc.vocabulary import METAL_WORDS, one_of
from calc.words import Sentence, say
from calc.working import Working

LANDING = "grounding/electrode_conductor_landing"

_FORMS = (
    Choice("wire", say("Wire")),
    Choice("busbar", say("Busbar")),
    Choice("strap", say("Strap")),
    Choice("screw", say("Green screw")),
)
FORM = one_of(
    say("What the jumper is"),
    say("A wire, a busbar, a strap, the green screw, or the jumper that came with listed equipment."),
    (*_FORMS, Choice("supplied", say("Supplied with the listed equipment"))),
)
FORM_OF_SYSTEM_JUMPER = one_of(
    say("What the jumper is"),
    say("A wire, a busbar, a strap or a green screw."),
    _FORMS,
)


def jumper_form(
    form: str, size: str, metal: str, working: Working, landing: str = LANDING
) -> tuple[Sentence, Sentence]:
    """Note what `form` implies on site and give the headline of the answer and the words beside it.

    form: a value of `FORM`; size: the label of the smallest wire; metal: of that wire.
    landing: the rule that says where the grounding electrode conductor lands.
    """
    wire = say("{size} {metal}", size=shown_size(size), metal=METAL_WORDS[metal])
    if form in ("busbar", "strap"):
        return say("{size}", size=shown_size(size)), _bus_or_strap(form, size, metal, working, landing)
    if form == "screw":
        working.note(
            say(
                "Use only the screw made for this enclosure. It is green, and the green shows with the screw "
                "in place ({section}).",
                section=working.section("jumpers/screw_identification"),
            )
        )
        working.note(
            say(
                "With a screw, the grounding electrode conductor lands on the neutral bar, not on the "
                "equipment grounding bar ({section}).",
                section=working.section(landing),
            )
        )
        return say("Green screw"), say("made for this enclosure. A wire in its place: {wire} or larger", wire=wire)
    if form == "supplied":
        working.note(
            say(
                "Use the jumper that came with the listed equipment, as its instructions say. Its listing "
                "covers its size ({section}).",
                section=working.section("jumpers/supplied_with_listed_equipment"),
            )
        )
        working.note(
            say(
                "If it is a screw, the grounding electrode conductor lands on the neutral bar. If it is a "
                "wire or busbar between the two bars, the equipment grounding bar will do too ({section}).",
                section=working.section(landing),
            )
        )
        return say("As supplied"), say("with the listed equipment. A wire in its place: {wire} or larger", wire=wire)
    _note_metal_and_attachment(metal, working)
    working.note(
        say(
            "If the wire runs from the neutral bar to the equipment grounding bar, the grounding electrode "
            "conductor may land on either bar ({section}).",
            section=working.section(landing),
        )
    )
    return say("{size}", size=shown_size(size)), say("{metal} wire or larger", metal=METAL_WORDS[metal])


def _note_metal_and_attachment(metal: str, working: Working) -> None:
    named = working.cite("jumpers/main_bonding_jumper_material")
    if metal not in [row["metal"] for row in named.rows]:
        working.warn(
            say(
                "The {edition} edition names copper or another metal that resists corrosion ({section}), not "
                "{metal}. Ask the authority before you use it.",
                edition=working.edition,
                section=named.section,
                metal=METAL_WORDS[metal],
            )
        )
    working.note(
        say(
            "Fasten it with pressure connectors, lugs or other means the code lists ({section}).",
            section=working.section("jumpers/main_bonding_jumper_attachment"),
        )
    )


_FORM_WORDS = {"busbar": say("busbar"), "strap": say("strap")}


def _bus_or_strap(form: str, size: str, metal: str, working: Working, landing: str) -> Sentence:
    square_inch, square_millimetre = bus_of_equal_area(size, "jumpers/bus_of_equal_area", working)
    _note_metal_and_attachment(metal, working)
    if form == "busbar":
        working.note(
            say(
                "If the busbar runs from the neutral bar to the equipment grounding bar, the grounding "
                "electrode conductor may land on either bar ({section}).",
                section=working.section(landing),
            )
        )
    else:
        working.note(
            say(
                "The landing rule names a wire or a busbar ({section}). With a strap, land the grounding "
                "electrode conductor on the neutral bar unless the authority takes the strap for a busbar.",
                section=working.section(landing),
            )
        )
    return say(
        "{metal} wire, or a {form} of the same area: {square_inch:.3f} in² ({square_millimetre:.0f} mm²)",
        metal=METAL_WORDS[metal],
        form=_FORM_WORDS[form],
        square_inch=square_inch,
        square_millimetre=square_millimetre,
    )
