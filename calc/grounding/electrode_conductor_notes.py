"""What the size of a grounding electrode conductor implies on site: splices, protection, aluminum near earth."""

from __future__ import annotations

from calc.conductors.ampacity import ALUMINUM_COLUMN
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.vocabulary import METAL_WORDS
from calc.words import Sentence, say
from calc.working import Working

UNPROTECTED = "grounding/electrode_conductor_unprotected"
CONTACT = "grounding/electrode_conductor_aluminum_contact"
HEIGHT = "grounding/electrode_conductor_aluminum_height"
CONTACT_WORDS = {"masonry": say("masonry"), "earth": say("earth"), "concrete": say("concrete")}


def words_of_run(size: str, metal: str, working: Working) -> Sentence:
    """Give the words beside a size: the metal, and that a thin conductor is protected wherever it runs."""
    words = {"metal": METAL_WORDS[metal]}
    if area(size, working.edition) < area(working.cite(UNPROTECTED).value, working.edition):
        return say("{metal} wire or larger, in a raceway or armor", **words)
    return say("{metal} wire or larger", **words)


def note_the_installation(size: str, taps: list[str], metal: str, working: Working) -> None:
    """Note how the conductor and its taps are run; warn of aluminum near earth, masonry and corrosion."""
    working.note(
        say(
            "One length without a splice; join a wire only by listed irreversible compression or exothermic welding "
            "({section}).",
            section=working.section("grounding/electrode_conductor_unspliced"),
        )
    )
    smallest = working.cite(UNPROTECTED).value
    if any(area(each, working.edition) < area(smallest, working.edition) for each in (size, *taps)):
        working.note(
            say(
                "Smaller than {smallest}: run it in a raceway or armor ({section}).",
                smallest=shown_size(smallest),
                section=working.section(UNPROTECTED),
            )
        )
    if ALUMINUM_COLUMN[metal] == "copper":
        return
    named = [CONTACT_WORDS[row["contact"]] for row in working.cite(CONTACT).rows]
    section = working.section(CONTACT)
    if len(named) > 1:
        working.warn(
            say(
                "Bare aluminum must not touch {one} or {other}, nor stand where it corrodes ({section}).",
                one=named[0],
                other=named[1],
                section=section,
            )
        )
    else:
        working.warn(
            say(
                "Aluminum without an extruded plastic covering must not touch {one}, nor stand where it corrodes "
                "({section}).",
                one=named[0],
                section=section,
            )
        )
    working.warn(
        say(
            "Outdoors aluminum must not end within {inches} inches of the earth ({section}). Use copper at buried "
            "electrodes.",
            inches=working.cite(HEIGHT).value,
            section=working.section(HEIGHT),
        )
    )
