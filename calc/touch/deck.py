"""A pool deck as it was entered, with the metal of each arrangement, once it is inside what the solution holds for."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.conductors.area import area
from calc.declare import Mend, NotCovered
from calc.touch.deck_fields import ARRANGEMENTS, GRID, MESH, RING, SHELL
from calc.touch.deck_metal import Fineness, Wire, loop, mesh
from calc.touch.surface_potential import Bundle
from calc.units import convert
from calc.words import Sentence, say
from calc.working import Working, shown_number

METAL = "places/deck_metal"
LIMITS = "places/deck_model_limits"
STEEL_WIRE = "places/deck_steel_wire"
COPPER_WIRE = "places/pool_bonding_conductor"
DECK_WIDTH = "places/pool_perimeter_width"
FINENESS = {"quick": Fineness(0.5, 2.5, 1), "fine": Fineness(0.5, 1.5, 2)}
ROUNDING = 1e-9
KIND_WORDS = {RING: say("One wire"), GRID: say("Copper grid"), MESH: say("Steel mesh")}


@dataclass(frozen=True)
class Deck:
    """The pool and its metal: pool, width, strip, shell and pieces in feet; wire, depth and spacing in inches.

    width: how far mesh or grid reaches. strip: how far from the wall the highest voltages are sought.
    """

    half_width: float
    half_length: float
    width: float
    strip: float
    out: float
    depth: float | None
    spacing: float | None
    conductor: str | None
    shell_depth: float
    shell_too: bool
    fine: Fineness


@dataclass(frozen=True)
class Metal:
    """One arrangement: which, its words with its figures, its wires, and how far off it may be, percent of the rise."""

    arrangement: str
    words: Sentence
    bundles: tuple[Bundle, ...]
    off: float


def compared_metals(deck: Deck, chosen: str, working: Working) -> dict[str, Metal]:
    """Give the metal of every arrangement; one that was not chosen is left out where the solution does not hold.

    Raises: as `metal_of`, for the chosen one.
    """
    metals = {chosen: metal_of(chosen, deck, True, working)}
    for each in ARRANGEMENTS:
        if each != chosen:
            try:
                metals[each] = metal_of(each, deck, False, working)
            except (Mend, NotCovered):
                working.note(say("Not compared, past what is solved here: {what}.", what=KIND_WORDS[each]))
    return {each: metals[each] for each in ARRANGEMENTS if each in metals}


def metal_of(arrangement: str, deck: Deck, chosen: bool, working: Working) -> Metal:
    """Give the metal of an arrangement; depth, spacing and size entered are those of the chosen one.

    Raises: Mend for what cannot be, NotCovered past a limit of the solution.
    """
    copper = _radius((chosen and deck.conductor) or working.cite(COPPER_WIRE).value, working)
    off = _limit("percent-of-rise", working)
    around = loop(deck.half_width, deck.half_length, Wire(deck.shell_depth, copper, deck.fine))
    if arrangement == SHELL:
        words = say("Nothing in the deck, shell {ft} ft down", ft=shown_number(deck.shell_depth))
        return Metal(SHELL, words, tuple(around), off)
    usual = next(row for row in working.cite(METAL).rows if row["metal"] == arrangement)
    inches = deck.depth if chosen and deck.depth is not None else usual["depth"]
    radius = _steel_radius(deck, chosen, working) if arrangement == MESH else copper
    _stay_buried(inches / 12, radius, working)
    wire = Wire(inches / 12, radius, deck.fine)
    if arrangement == RING:
        bundles = loop(deck.half_width + deck.out / 12, deck.half_length + deck.out / 12, wire)
        words = say("One wire, {out} in out, {depth} in deep", out=shown_number(deck.out), depth=shown_number(inches))
    else:
        spacing = deck.spacing if chosen and deck.spacing is not None else usual["spacing"]
        openings = _openings(deck.width, spacing / 12, radius, working)
        opening = deck.width / openings
        if 12 * opening > _limit("fine-spacing-inches", working) * (1 + ROUNDING):
            off = _limit("percent-of-rise-wider", working)
        bundles = mesh(deck.half_width, deck.half_length, openings, opening, wire)
        words = say(
            "{what}, {spacing} in apart, {depth} in deep, {width} ft wide",
            what=KIND_WORDS[arrangement],
            spacing=shown_number(round(12 * opening, 1)),
            depth=shown_number(inches),
            width=shown_number(deck.width),
        )
    return Metal(arrangement, words, (*bundles, *around) if deck.shell_too else tuple(bundles), off)


def _steel_radius(deck: Deck, chosen: bool, working: Working) -> float:
    if chosen and deck.conductor:
        raise Mend("conductor", say("Leave it empty for steel mesh: its wire is taken as the lightest usual one."))
    return math.sqrt(working.cite(STEEL_WIRE).value / math.pi) / 12


def _radius(conductor: str, working: Working) -> float:
    return convert(math.sqrt(area(conductor, working.edition)), "mil", "ft") / 2


def _openings(width: float, spacing: float, radius: float, working: Working) -> int:
    """Give how many whole openings lie side by side. They are never smaller than entered."""
    openings = int(width / spacing + ROUNDING)
    widest = _limit("widest-spacing-inches", working) / 12
    if openings < 1 or width / openings > widest * (1 + ROUNDING):
        raise Mend("mesh_width", say("Enter a reach that holds a whole number of openings, such as 3 ft for 12 in."))
    most = _limit("openings", working)
    if openings > most:
        raise _past_limit(say("a mesh or grid of more than {most} openings from the wall out", most=most))
    least = _limit("spacing-by-diameter", working)
    if spacing < least * 2 * radius * (1 - ROUNDING):
        raise _past_limit(say("wires closer than {least} of their diameters", least=least))
    return openings


def _stay_buried(depth: float, radius: float, working: Working) -> None:
    least = _limit("depth-by-radius", working)
    if depth < least * radius * (1 - ROUNDING):
        raise _past_limit(say("metal at the surface or nearer to it than {least} of its radii", least=least))


def _limit(limit: str, working: Working) -> float:
    return next(row["figure"] for row in working.cite(LIMITS).rows if row["limit"] == limit)


def _past_limit(what: Sentence) -> NotCovered:
    return NotCovered(
        say("The solution used here does not hold for {what}.", what=what),
        say("Have it solved by a field program or measured on site by a qualified person."),
    )
