"""Tables of wire sizes typed from texts other than the code books: a second road to the same numbers.

The texts, none of them a copy of the code:

- GW: Goodheart-Willcox, "Modern Residential Wiring" (2011), figure 10-23: grounding electrode conductor sizes,
  every row, copper and aluminum on both sides.
- DOF: Secretaría de Energía, draft of NOM-001-SEDE-2012, Diario Oficial de la Federación, 27 July 2012: the same
  table in square millimetres and in AWG, every row. It settles the first aluminum row (1/0).
- BRU: Bruns Engineering, web article on equipment grounding conductor sizes: every row to 6000 A, both metals.
- NTC: a shop's sheet of NTC 2050, first update (Colombia): every row to 6000 A, both metals. It keeps the old
  aluminum sizes above 3000 A (800, 1200 and 1200 kcmil), so it is a second text for the other rows only.
- TRN: a trade trainer's newsletter on 250.122: the copper column from 15 A to 1200 A.
- JAD: JADE Learning, "Sizing Equipment Grounding Conductors" (2 March 2021): aluminum was 1200 kcmil at 6000 A in
  every edition before 2020.
- THE: Thelen, "Ampacities of Copper Wire" (undated web page): 75 C column, both metals, 14 AWG to 1500 kcmil.
- SHOP: an unsigned shop sheet of conductor ampacities: the same columns to 2000 kcmil.
- SOU: Southwire, cut sheet of AlumaFlex RHH/RHW-2/USE-2 cable (9 February 2010): aluminum at 75 C, 6 AWG to
  1000 kcmil, from the 2008 edition.
- CMC: a wire maker's page, "Stranded Wire Properties": the gauge series, 0.0050 in at 36 AWG, 0.4600 in at 4/0 and
  39 equal steps between.
- DIG: "NEC Digest" on main and system bonding jumpers, quoted in a trade forum: 12.5 percent above 1100 kcmil copper
  and 1750 kcmil aluminum, with 4 x 500 kcmil copper giving 250 kcmil.
- EXP: electrical forum threads that print the notes of the supply-side table: the jumper need not be larger than the
  ungrounded conductor or set, and unlike metals are compared through equal ampacity.

No text prints the rows of the supply-side table 250.102(C)(1) one by one. EXP gives the points 250 -> 2, 2 x 3/0 -> 2
copper or 1/0 aluminum, and 750 -> 2/0; the older texts size these jumpers from the electrode table up to its limit.
So its rows are taken as those of the electrode table (GW, DOF) and its last row as 12.5 percent (DIG).
"""

AWG_NUMBERS = {"18": 18, "16": 16, "14": 14, "12": 12, "10": 10, "8": 8, "6": 6, "4": 4, "3": 3, "2": 2, "1": 1}
AWG_NUMBERS |= {"1/0": 0, "2/0": -1, "3/0": -2, "4/0": -3}

KCMIL = (250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000, 1250, 1500, 1750, 2000)


def diameter_in_tenths_of_a_mil(number):
    """The diameter of a gauge number, to the nearest tenth of a mil, in whole numbers only.

    CMC: 50 tenths at number 36, and 92 to the power 1/39 for each step up. The nearest whole tenth d satisfies
    (2d - 1) <= 100 x 92^(steps/39) < (2d + 1); both sides are raised to the 39th power.
    """
    target = 100**39 * 92 ** (36 - number)
    d = 50
    while (2 * d + 1) ** 39 <= target:
        d += 1
    return d


def area_of_gauge(number):
    """Circular mils of a gauge number as tables print it: four figures, and never finer than tens.

    The area is the square of the rounded diameter: that is why 1/0 is printed 105 600 and not 105 500.
    """
    hundredths = diameter_in_tenths_of_a_mil(number) ** 2
    step = 10 if hundredths < 100_000 * 100 else 100
    return (hundredths + 50 * step) // (100 * step) * step


AREA = {size: area_of_gauge(number) for size, number in AWG_NUMBERS.items()}
AREA |= {str(kcmil): kcmil * 1000 for kcmil in KCMIL}

SIZES = tuple(AREA)

# GW, DOF. Largest hot copper, largest hot aluminum, electrode conductor of copper, of aluminum.
# kcmil figures that are no stock size (1100) are why the limits are kept as circular mils.
ELECTRODE_ROWS = (
    (AREA["2"], AREA["1/0"], "8", "6"),
    (AREA["1/0"], AREA["3/0"], "6", "4"),
    (AREA["3/0"], AREA["250"], "4", "2"),
    (350_000, 500_000, "2", "1/0"),
    (600_000, 900_000, "1/0", "3/0"),
    (1_100_000, 1_750_000, "2/0", "4/0"),
)
ELECTRODE_LARGEST = ("3/0", "250")

# DIG, EXP, and the electrode rows (see the docstring).
SUPPLY_ROWS = ELECTRODE_ROWS

# BRU for all of it; NTC again for every row up to 3000 A and for all of copper; TRN again for copper to 1200 A.
DEVICE_ROWS = (
    (15, "14", "12"),
    (20, "12", "10"),
    (60, "10", "8"),
    (100, "8", "6"),
    (200, "6", "4"),
    (300, "4", "2"),
    (400, "3", "1"),
    (500, "2", "1/0"),
    (600, "1", "2/0"),
    (800, "1/0", "3/0"),
    (1000, "2/0", "4/0"),
    (1200, "3/0", "250"),
    (1600, "4/0", "350"),
    (2000, "250", "400"),
    (2500, "350", "600"),
    (3000, "400", "600"),
    (4000, "500", "750"),
    # JAD: 1200 kcmil aluminum before 2020. That is no stock size; the next one up is 1250 kcmil, as in BRU.
    (5000, "700", "1250"),
    (6000, "800", "1250"),
)

# THE to 1500 kcmil, SHOP for all of it; SOU again for aluminum from 6 AWG to 1000 kcmil.
AMPACITY_75_COPPER = {
    "14": 20, "12": 25, "10": 35, "8": 50, "6": 65, "4": 85, "3": 100, "2": 115, "1": 130,
    "1/0": 150, "2/0": 175, "3/0": 200, "4/0": 230, "250": 255, "300": 285, "350": 310, "400": 335, "500": 380,
    "600": 420, "700": 460, "750": 475, "800": 490, "900": 520, "1000": 545, "1250": 590, "1500": 625, "1750": 650,
    "2000": 665,
}  # fmt: skip
AMPACITY_75_ALUMINUM = {
    "12": 20, "10": 30, "8": 40, "6": 50, "4": 65, "3": 75, "2": 90, "1": 100,
    "1/0": 120, "2/0": 135, "3/0": 155, "4/0": 180, "250": 205, "300": 230, "350": 250, "400": 270, "500": 310,
    "600": 340, "700": 375, "750": 385, "800": 395, "900": 425, "1000": 445, "1250": 485, "1500": 520, "1750": 545,
    "2000": 560,
}  # fmt: skip

# Standard ratings of fuses. Only the fact sheet behind this work lists them in full; 601 A is a fuse rating only.
FUSES = (
    1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350,
    400, 450, 500, 600, 601, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
)  # fmt: skip
