"""Pictures and table of the voltage on the ground: over the distance, over the cover, and at three usual covers."""

from __future__ import annotations

from collections.abc import Iterable

from calc.answer import Chart, Line, Row, Table
from calc.electrodes.entered import shown
from calc.messages import Message, message
from calc.touch.surface.buried_metal import Buried
from calc.touch.surface.buried_shape import LEVEL, ONLY_WAY, UPRIGHT, BuriedMetal, ways_in_the_ground
from calc.units import convert

STEPS_ACROSS = (0, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15)  # ft
COVERS = (0, 2, 4, 6, 9, 12, 18, 24, 36, 48, 60, 72)  # in; at 0 the metal lies bare
COMPARED = (2, 18, 60)  # in
COMPARED_VOLTS = (120, 277)
DRAWN = 2  # decimals of a volt that a picture keeps
WAY_WORDS = {ONLY_WAY: message("This metal"), LEVEL: message("Flat"), UPRIGHT: message("One end turned up")}


def beside(buried: Buried, feet: float) -> float:
    """Return the share of the voltage at a distance, ft, from the place with the most, on the side that has more.

    >>> from calc.touch.surface.buried_metal import ball
    >>> round(beside(ball(0.1, 0.6), 0), 4), beside(ball(0.1, 0.6), 3) < 0.1
    (0.3077, False)
    """
    away = convert(feet, "ft", "m") if feet else 0.0
    return max(buried.share(buried.highest + away), buried.share(buried.highest - away))


def distance_chart(ways: dict[str, Buried], volt: float) -> Chart:
    """Return the voltage of the ground over the distance, one line for each way the metal may lie."""
    lines = tuple(
        Line(WAY_WORDS[way], tuple((feet, round(volt * beside(buried, feet), DRAWN)) for feet in STEPS_ACROSS))
        for way, buried in ways.items()
    )
    return Chart(
        "voltage-by-distance",
        "straight",
        message("Voltage of the soil beside it"),
        message("Distance, ft"),
        message("Voltage, V"),
        message("{across} ft, {up} V", across="{across}", up="{up}"),
        lines,
    )


def cover_chart(metal: BuriedMetal, volt: float) -> Chart:
    """Return the highest voltage of the ground over the metal against the cover, 0 to 6 ft."""
    found: dict[str, list[tuple[float, float]]] = {way: [(0, volt)] for way in metal.ways}
    for inches in COVERS[1:]:
        for way, buried in ways_in_the_ground(metal, convert(inches, "in", "m")).items():
            found[way].append((round(inches / 12, 3), round(volt * buried.share(buried.highest), DRAWN)))
    return Chart(
        "voltage-by-cover",
        "straight",
        message("Voltage of the soil over it, by its cover"),
        message("Cover, ft"),
        message("Voltage, V"),
        message("{across} ft, {up} V", across="{across}", up="{up}"),
        tuple(Line(WAY_WORDS[way], tuple(points)) for way, points in found.items()),
    )


def comparison(metal: BuriedMetal, soil: float) -> Table:
    """Return the table of three covers: the voltage over the metal, and the leak in a soil, ohm·m, at two voltages."""
    headings = {"cover": message("Cover")}
    for volt in COMPARED_VOLTS:
        headings[f"over_{volt}"] = message("Over it at {volt} V", volt=volt)
        headings[f"leak_{volt}"] = message("Leakage at {volt} V", volt=volt)
    return Table(headings, tuple(_row(metal, inches, soil) for inches in COMPARED))


def _row(metal: BuriedMetal, inches: float, soil: float) -> Row:
    ways = ways_in_the_ground(metal, convert(inches, "in", "m"))
    cells: dict[str, Message] = {"cover": message("{inches} in", inches=inches)}
    for volt in COMPARED_VOLTS:
        if not ways:
            cells[f"over_{volt}"] = message("up to {volt} V", volt=volt)
            cells[f"leak_{volt}"] = message("not computed")
            continue
        over = [volt * buried.share(buried.highest) for buried in ways.values()]
        leak = [volt / (soil * buried.shape) for buried in ways.values()]
        cells[f"over_{volt}"] = message("{range} V", range=spread(over))
        cells[f"leak_{volt}"] = message("{range} A", range=spread(leak))
    return Row(cells)


def spread(values: Iterable[float]) -> Message | str:
    """Return the least and the greatest of values as words; one number where both look alike.

    >>> str(spread([1.2, 3])), str(spread([1.001, 1.0]))
    ('1.2 to 3', '1')
    """
    values = list(values)
    low, high = shown(min(values)), shown(max(values))
    return low if low == high else message("{low} to {high}", low=low, high=high)
