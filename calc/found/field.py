"""What was found on site, as people write it: a size and its metal, a listed part, or nothing that could be seen."""

from __future__ import annotations

import re

from calc.conductors.size import read_size, shown_size
from calc.field import Field, UnclearError
from calc.messages import Message, message
from calc.shared_fields import METAL_WORDS

LISTED, UNSEEN = "listed", "unknown"
_METALS = {
    "copper-clad-aluminum": r"COPPER[- ]CLAD(?:[- ]ALUMINI?UM)?|CCA",
    "copper": r"COPPER|CU",
    "aluminum": r"ALUMINI?UM|ALUM|AL",
}
_METAL_LAST = tuple((metal, re.compile(rf"(.*\d.*?)[ ,-]*(?:{names})\.?")) for metal, names in _METALS.items())


def read_found(text: str) -> str:
    """Return what was found as one spelling: "6-copper", "listed" or "unknown".

    Raises: ValueError when no size is written so, UnclearError when its metal is left out or several are named.

    >>> read_found("6 AWG Copper"), read_found("1/0 cu"), read_found("350 kcmil AL"), read_found("Listed")
    ('6-copper', '1/0-copper', '350kcmil-aluminum', 'listed')
    """
    written = " ".join(text.split())
    if written.lower() in (LISTED, UNSEEN):
        return written.lower()
    for metal, pattern in _METAL_LAST:
        if match := pattern.fullmatch(written.upper()):
            return f"{_size(match[1])}-{metal}"
    _size(written)
    raise UnclearError(message("Enter the material too: aluminum is sized larger than copper."))


def _size(text: str) -> str:
    try:
        return read_size(text)
    except UnclearError:
        raise UnclearError(
            message("Check one conductor at a time. Several small ones in parallel do not count as one large one here.")
        ) from None


def size_and_metal(found: str) -> tuple[str, str] | None:
    """Return the size label and the metal of what was found, None where no size was seen.

    >>> size_and_metal("1/0-copper-clad-aluminum"), size_and_metal("listed")
    (('1/0', 'copper-clad-aluminum'), None)
    """
    if found in (LISTED, UNSEEN):
        return None
    size, _, metal = found.partition("-")
    return size, metal


def shown_found(found: str) -> Message:
    """Return what was found as it is read out.

    >>> str(shown_found("6-copper")), str(shown_found("listed"))
    ('6 AWG copper', 'Listed part supplied with the equipment')
    """
    if found == LISTED:
        return message("Listed part supplied with the equipment")
    seen = size_and_metal(found)
    if seen is None:
        return message("Not seen")
    size, metal = seen
    return message("{size} {metal}", size=shown_size(size), metal=METAL_WORDS[metal])


FOUND = Field(
    label=message("Size found on site"),
    hint=message(
        "To check an installed wire, enter its size and material. Leave it empty to get only the required size."
    ),
    enter=message(
        "Enter one size and its material, for example 6 copper or 1/0 aluminum. Enter listed for a part that came with "
        "listed equipment, unknown for one that could not be seen."
    ),
    read=read_found,
    show=shown_found,
    reads_unknown=True,
)
