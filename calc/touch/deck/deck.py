"""A pool deck as it was entered, with the metal of each arrangement, once it is inside what the solution holds for."""

from __future__ import annotations

import math
from dataclasses import dataclass

from calc.calculator import FieldError, NotCovered
from calc.conductors.area import area
from calc.messages import Message, message
from calc.touch.deck.deck_fields import ARRANGEMENTS, GRID, MESH, RING, SHELL
from calc.touch.deck.deck_metal import Fineness, Wire, loop, mesh
from calc.touch.surface.surface_potential import Bundle
from calc.trace import Trace, shown_number
from calc.units import convert

METAL = "places/deck_metal"
LIMITS = "places/deck_model_limits"
STEEL_WIRE = "places/deck_steel_wire"
COPPER_WIRE = "places/pool_bonding_conductor"
DECK_WIDTH = "places/pool_perimeter_width"
FINENESS = {"quick": Fineness(0.5, 2.5, 1), "fine": Fineness(0.5, 1.5, 2)}
ROUNDING = 1e-9
KIND_WORDS = {RING: message("One wire"), GRID: message("Copper grid"), MESH: message("Steel mesh")}


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
    words: Message
    bundles: tuple[Bundle, ...]
    off: float


def compared_metals(deck: Deck, chosen: str, trace: Trace) -> dict[str, Metal]:
    """Return the metal of every arrangement; one that was not chosen is left out where the solution does not hold.

    Raises: as `metal_of`, for the chosen one.
    """
    metals = {chosen: metal_of(chosen, deck, True, trace)}
    for each in ARRANGEMENTS:
        if each != chosen:
            try:
                metals[each] = metal_of(each, deck, False, trace)
            except (FieldError, NotCovered):
                trace.note(message("Not compared, outside what is solved here: {what}.", what=KIND_WORDS[each]))
    return {each: metals[each] for each in ARRANGEMENTS if each in metals}


def metal_of(arrangement: str, deck: Deck, chosen: bool, trace: Trace) -> Metal:
    """Return the metal of an arrangement; depth, spacing and size entered are those of the chosen one.

    Raises: FieldError for what cannot be, NotCovered past a limit of the solution.
    """
    copper = _radius((chosen and deck.conductor) or trace.cite(COPPER_WIRE).value, trace)
    off = _limit("percent-of-rise", trace)
    around = loop(deck.half_width, deck.half_length, Wire(deck.shell_depth, copper, deck.fine))
    if arrangement == SHELL:
        words = message("Nothing in the deck, shell {ft} ft down", ft=shown_number(deck.shell_depth))
        return Metal(SHELL, words, tuple(around), off)
    usual = next(row for row in trace.cite(METAL).rows if row["metal"] == arrangement)
    inches = deck.depth if chosen and deck.depth is not None else usual["depth"]
    radius = _steel_radius(deck, chosen, trace) if arrangement == MESH else copper
    _stay_buried(inches / 12, radius, trace)
    wire = Wire(inches / 12, radius, deck.fine)
    if arrangement == RING:
        bundles = loop(deck.half_width + deck.out / 12, deck.half_length + deck.out / 12, wire)
        words = message(
            "One wire, {out} in out, {depth} in deep", out=shown_number(deck.out), depth=shown_number(inches)
        )
    else:
        spacing = deck.spacing if chosen and deck.spacing is not None else usual["spacing"]
        openings = _openings(deck.width, spacing / 12, radius, trace)
        opening = deck.width / openings
        if 12 * opening > _limit("fine-spacing-inches", trace) * (1 + ROUNDING):
            off = _limit("percent-of-rise-wider", trace)
        bundles = mesh(deck.half_width, deck.half_length, openings, opening, wire)
        words = message(
            "{what}, {spacing} in apart, {depth} in deep, {width} ft wide",
            what=KIND_WORDS[arrangement],
            spacing=shown_number(round(12 * opening, 1)),
            depth=shown_number(inches),
            width=shown_number(deck.width),
        )
    return Metal(arrangement, words, (*bundles, *around) if deck.shell_too else tuple(bundles), off)


def _steel_radius(deck: Deck, chosen: bool, trace: Trace) -> float:
    if chosen and deck.conductor:
        raise FieldError(
            "conductor", message("Leave it empty for steel mesh: its wire is taken as the lightest usual one.")
        )
    return math.sqrt(trace.cite(STEEL_WIRE).value / math.pi) / 12


def _radius(conductor: str, trace: Trace) -> float:
    return convert(math.sqrt(area(conductor, trace.edition)), "mil", "ft") / 2


def _openings(width: float, spacing: float, radius: float, trace: Trace) -> int:
    """Return how many whole openings lie side by side. They are never smaller than entered."""
    openings = int(width / spacing + ROUNDING)
    widest = _limit("widest-spacing-inches", trace) / 12
    if openings < 1 or width / openings > widest * (1 + ROUNDING):
        raise FieldError(
            "mesh_width", message("Enter a reach that holds a whole number of openings, such as 3 ft for 12 in.")
        )
    most = _limit("openings", trace)
    if openings > most:
        raise _past_limit(message("a mesh or grid of more than {most} openings from the wall out", most=most))
    least = _limit("spacing-by-diameter", trace)
    if spacing < least * 2 * radius * (1 - ROUNDING):
        raise _past_limit(message("wires closer than {least} of their diameters", least=least))
    return openings


def _stay_buried(depth: float, radius: float, trace: Trace) -> None:
    least = _limit("depth-by-radius", trace)
    if depth < least * radius * (1 - ROUNDING):
        raise _past_limit(message("metal at the surface or nearer to it than {least} of its radii", least=least))


def _limit(limit: str, trace: Trace) -> float:
    return next(row["figure"] for row in trace.cite(LIMITS).rows if row["limit"] == limit)


def _past_limit(what: Message) -> NotCovered:
    return NotCovered(
        message("The method used here does not hold for {what}.", what=what),
        message("Have it solved with field-analysis software or measured on site by a qualified person."),
    )
