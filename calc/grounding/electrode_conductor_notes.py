"""What the size of a grounding electrode conductor implies on site: splices, protection, aluminum near earth."""

from __future__ import annotations

from calc.conductors.ampacity import TABLE_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.messages import Message, message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace

UNPROTECTED = "grounding/electrode_conductor_unprotected"
CONTACT = "grounding/electrode_conductor_aluminum_contact"
HEIGHT = "grounding/electrode_conductor_aluminum_height"
CONTACT_WORDS = {"masonry": message("masonry"), "earth": message("earth"), "concrete": message("concrete")}


def words_of_run(size: str, metal: str, trace: Trace) -> Message:
    """Return the words beside a size: the metal, and that a thin conductor is protected wherever it runs."""
    words = {"metal": METAL_WORDS[metal]}
    if area(size, trace.edition) < area(trace.cite(UNPROTECTED).value, trace.edition):
        return message("{metal} wire or larger, in a raceway or cable armor", **words)
    return message("{metal} wire or larger", **words)


def note_the_installation(size: str, taps: list[str], metal: str, trace: Trace) -> None:
    """Note how the conductor and its taps are run; warn of aluminum near earth, masonry and corrosion."""
    trace.note(
        message(
            "Run it in one continuous length without a splice. A wire may be spliced only with a listed irreversible "
            "compression connector or exothermic welding ({section}).",
            section=trace.section("grounding/electrode_conductor_unspliced"),
        )
    )
    smallest = trace.cite(UNPROTECTED).value
    if any(area(each, trace.edition) < area(smallest, trace.edition) for each in (size, *taps)):
        trace.note(
            message(
                "Smaller than {smallest}: run it in a raceway or cable armor ({section}).",
                smallest=shown_size(smallest),
                section=trace.section(UNPROTECTED),
            )
        )
    if TABLE_COLUMN[metal] == "copper":
        return
    contacts = [CONTACT_WORDS[row["contact"]] for row in trace.cite(CONTACT).rows]
    section = trace.section(CONTACT)
    if len(contacts) > 1:
        trace.warn(
            message(
                "Bare aluminum must not touch {one} or {other}, or be installed where it corrodes ({section}).",
                one=contacts[0],
                other=contacts[1],
                section=section,
            )
        )
    else:
        trace.warn(
            message(
                "Aluminum without an extruded plastic covering must not touch {one}, or be installed where it corrodes "
                "({section}).",
                one=contacts[0],
                section=section,
            )
        )
    trace.warn(
        message(
            "Outdoors, do not terminate aluminum within {inches} inches of the earth ({section}). Use copper at buried "
            "electrodes.",
            inches=trace.cite(HEIGHT).value,
            section=trace.section(HEIGHT),
        )
    )
