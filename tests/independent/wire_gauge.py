"""Conductor areas by a route of their own: the definition of the American wire gauge, ASTM B258.

36 AWG is 0.005 in across, 4/0 AWG 0.46 in, with 38 sizes between in equal ratios; so a diameter
is 5 mil times 92 to the power of (36 - n) / 39. Diameters are rounded to 0.1 mil before squaring.
The printed areas have four figures and are never finer than 10 cmil.
"""

from math import floor, log10

NUMBERS = {"4/0": -3, "3/0": -2, "2/0": -1, "1/0": 0} | {str(n): n for n in (1, 2, 3, 4, 6, 8, 10, 12, 14, 16, 18)}
# The kcmil sizes that the conductor properties table lists: NFPA 70-2017, Chapter 9, Table 8.
KCMIL = (250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000, 1250, 1500, 1750, 2000)


def gauge_area(size: str) -> int:
    """Return the printed area, cmil, of an AWG size."""
    diameter = round(5 * 92 ** ((36 - NUMBERS[size]) / 39), 1)
    exact = diameter**2
    figures = max(10, 10 ** (floor(log10(exact)) - 3))
    return round(exact / figures) * figures


def listed_areas() -> dict[str, int]:
    """Return every listed size with its area, cmil, from the smallest up."""
    gauge = sorted(NUMBERS, key=NUMBERS.get, reverse=True)
    return {size: gauge_area(size) for size in gauge} | {f"{kcmil}kcmil": kcmil * 1000 for kcmil in KCMIL}
