"""What people type for an amount is read as they mean it, or they are asked; never a thousand times more or less."""

import math

import pytest

from calc import permalink
from calc.field import UnclearError, read_field
from calc.registry import CALCULATORS
from calc.written import DECIMALS, plain_number, read_list, read_quantity, read_within
from tests.calc.strategies import reads, texts

OHM, MICRO, MU, OMEGA = "\N{OHM SIGN}", "\N{MICRO SIGN}", "\N{GREEK SMALL LETTER MU}", "\N{GREEK CAPITAL LETTER OMEGA}"
THIN, NARROW, UNBROKEN = "\N{THIN SPACE}", "\N{NARROW NO-BREAK SPACE}", "\N{NO-BREAK SPACE}"


@pytest.mark.parametrize(
    ("written", "unit", "value"),
    [
        ("150ft", "ft", 150),
        ("46 m", "ft", 46 / 0.3048),
        ("200A", "A", 200),
        ("200", "A", 200),
        (" 1,000 ft ", "ft", 1000),
        ("12,000,000 ohm", "ohm", 12_000_000),
        ("1,234.5", "A", 1234.5),
        (".5 in", "in", 0.5),
        ("1e-07", "ft", 0.0000001),
        ("25 mohm", "ohm", 0.025),
        ("25 m ohm", "ohm", 0.025),
        ("25 mOhm", "ohm", 0.025),
        ("9.4 MOhm", "ohm", 9_400_000),
        ("9.4 Mohm", "ohm", 9_400_000),
        ("9.4 M" + OMEGA, "ohm", 9_400_000),
        ("9.4 m" + OHM, "ohm", 0.0094),
        ("2 megohms", "ohm", 2_000_000),
        ("2 MEGOHM", "ohm", 2_000_000),
        ("2 meg", "ohm", 2_000_000),
        ("2 MILLIOHM", "ohm", 0.002),
        ("12 kilohm", "ohm", 12_000),
        ("12 KOHM", "ohm", 12_000),
        (f"30 {MICRO}{OMEGA}", "ohm", 30e-6),
        (f"30 {MU}{OHM}", "ohm", 30e-6),
        (f"30 {MICRO}ohm", "ohm", 30e-6),
        ("30 microhm", "ohm", 30e-6),
        ("5" + OMEGA, "ohm", 5),
        ("9.4 OHM", "ohm", 9.4),
        ("200 AMPS", "A", 200),
        ("200 Amp", "A", 200),
        ("5 KA", "A", 5000),
        ("5 ka", "A", 5000),
        ("2 mA", "A", 0.002),
        ("2 ma", "A", 0.002),
        ("2 milliamps", "A", 0.002),
        (f"30 {MU}A", "A", 30e-6),
        (f"200{UNBROKEN}A", "A", 200),
        (f"12{NARROW}000{THIN}{OMEGA}", "ohm", 12_000),
        ("6 FT", "ft", 6),
        ("6 ft.", "ft", 6),
        ("46 M", "ft", 46 / 0.3048),
        ("460 MM", "in", 460 / 25.4),
        ("1 ft 8 in", "in", 20),
        ("1' 8\"", "in", 20),
        ("1’ 8”", "ft", 20 / 12),
        ("1′8″", "in", 20),
        ("1'8", "in", 20),
        ("6'-0\"", "ft", 6),
        ("5 feet, 6 1/2 inches", "in", 66.5),
        ("1 ft 8 in", "m", 0.508),
        ("5 ft. 6 in.", "ft", 5.5),
        ("1' 08\"", "in", 20),
        ("20 inches", "in", 20),
        ('20"', "in", 20),
        ("20''", "in", 20),
        ("½", "in", 0.5),
        ("1½ in", "in", 1.5),
        ("1 1/2 in", "in", 1.5),
        ("1-1/2 in", "in", 1.5),
        ("1–1/2″", "in", 1.5),
        ("5/8 in", "in", 0.625),
        ("9 sq. in.", "in2", 9),
        ("0.7 in²", "in2", 0.7),
        ("100 ohm·m", "ohmm", 100),
        (f"7662 {OMEGA}-cm", "ohmm", 76.62),
        ("50000 A²s", "A2s", 50_000),
        ("12 cycles", "s", 0.2),
        ("20 MS", "s", 0.02),
        ("120 VAC", "V", 120),
        ("20 mV", "V", 0.02),
        ("75 KVA", "kVA", 75),
        ("100 mva", "kVA", 100_000),
        ("5 %", "%", 5),
        ("10x", "x", 10),
        ("10 ×", "x", 10),
        ("20 °C", "°C", 20),
        ("68 °F", "°C", 20),
        ("-40 F", "°C", -40),
        ("−4 degrees Fahrenheit", "°C", -20),
    ],
)
def test_written_quantities_are_read_in_the_unit_wanted(written, unit, value):
    assert read_quantity(written, unit) == pytest.approx(value, rel=1e-10)


@pytest.mark.parametrize(
    ("written", "unit"),
    [
        ("", "ft"), ("ft", "ft"), ("-5 ft", "ft"), ("5 A", "ft"), ("1e3 ft", "ft"), ("five ft", "ft"),
        ("5 parsec", "ft"), ("0x10", "ft"), ("5 ft; import os", "ft"), ("5 ft 14 in", "ft"), ("5 ft 6 ft", "ft"),
        ("5-10 ft", "ft"), ("1 2 ft", "ft"), ("12/2 ft", "ft"), ("5/4 in", "in"), ("1/0 in", "in"), ("1_000", "A"),
        ("120/240 V", "V"), ("480/277", "V"), ("120 VDC", "V"), ("75 kW", "kVA"), ("75 %", "kVA"), ("8 %", ""),
        ("293 K", "°C"), ("68°", "°C"), ("5°", "ohm"), ("²", "A"), ("٢", "A"), ("２", "A"), ("--4 F", "°C"),
        ("10x", "A"), ("10 W", "A"), ("1'000", "ft"), ("1’000", "ft"), ("5 ft 100 in", "ft"), ("5 ft .5 in", "ft"),
        ("5'.5", "ft"), ("5 ft²", "ft"),
    ],
)  # fmt: skip
def test_what_is_no_such_quantity_is_refused(written, unit):
    with pytest.raises(ValueError):
        read_quantity(written, unit)


@pytest.mark.parametrize(
    ("written", "unit", "says"),
    [
        ("9.4 MOHM", "ohm", "milliohm or megohm"),
        ("9.4 MOHMS", "ohm", "milliohm or megohm"),
        ("5 MA", "A", "milliampere or megaampere"),
        ("5 Ma", "A", "milliampere or megaampere"),
        ("5 MAMPS", "A", "milliampere or megaampere"),
        ("20 MV", "V", "millivolt or megavolt"),
        ("2,4 m", "ft", "Use a point for decimals"),
        ("1,2 kA", "A", "Use a point for decimals"),
        ("12,34", "A", "Use a point for decimals"),
        ("0,125 ohm", "ohm", "Use a point for decimals"),
        ("1,2345", "A", "Use a point for decimals"),
        ("1,23,456", "A", "Use a point for decimals"),
        ("3 kA2s", "A2s", "Enter the number in A²s"),
    ],
)
def test_what_can_mean_two_things_is_asked(written, unit, says):
    with pytest.raises(UnclearError, match=says):
        read_quantity(written, unit)


def test_a_milliohm_in_small_letters_is_asked_only_where_megohms_are_possible():
    assert read_within("0.8 mohm", "ohm", 0, 1000) == 0.0008
    assert read_within("2 mΩ", "ohm", 0, 10_000_000) == 0.002
    with pytest.raises(UnclearError, match="megohm"):
        read_within("2 mohm", "ohm", 0, 10_000_000)
    with pytest.raises(ValueError):
        read_within("2 MOhm", "ohm", 0, 1000)


def test_a_unit_at_the_end_of_a_list_counts_for_all_and_a_mixture_is_asked():
    assert read_list("12.192, 15.24, 17.6784 m", "ft") == pytest.approx([40, 50, 58])
    assert read_list("40 ft, 50, 58", "ft") == [40, 50, 58]
    assert read_list("40 ft, 15.24 m, 58'", "ft") == pytest.approx([40, 50, 58])
    for mixed in ("40, 15.24 m, 58", "12 m, 15, 18", "40, 50, 5 ft 10 in"):
        with pytest.raises(ValueError):
            read_list(mixed, "ft")
    with pytest.raises(UnclearError, match="point for decimals"):
        read_list("2,4; 2,5; 2,6", "ohm")


def test_an_open_bond_read_in_megohms_does_not_pass():
    bond = CALCULATORS["bond-measurement"]
    typed = dict(method="bond-tester", dead="yes", conductor="6", length="20", current="10", meter_percent="1")
    for reading in ("9.4 MOhm", "9.4 MΩ", "9.4 MOHM", "9.4 megohm"):
        (told,) = bond(**typed, reading=reading).fix
        assert told.field == "reading"
    assert bond(**typed, reading="9.4 mΩ").inputs["reading"] == 0.0094
    assert bond(**typed, reading="9.4 mohm").outcome == "answer"


def test_a_leak_of_megohms_is_no_bolted_fault():
    between = CALCULATORS["voltage-between"]
    assert between(leak_ohm="2 MOhm", two_earth_ohm="100").inputs["leak_ohm"] == 2_000_000
    (told,) = between(leak_ohm="2 mohm", two_earth_ohm="100").fix
    assert told.field == "leak_ohm" and "megohm" in str(told.words)


# Unit to other spellings of it or of its parts and multiples, each with its factor, from the definitions of the SI
# and of the foot and the pound (0.3048 m; 60 hertz). Small letters after M or m are asked elsewhere.
SPELLINGS = {
    "ft": {"ft": 1, "FEET": 1, "'": 1, "in": 1 / 12, '"': 1 / 12, "m": 1 / 0.3048, "mm": 1 / 304.8, "CM": 1 / 30.48},
    "in": {"in": 1, "INCHES": 1, "”": 1, "ft": 12, "’": 12, "mm": 1 / 25.4, "m": 1 / 0.0254},
    "ohm": {"ohm": 1, "OHMS": 1, OHM: 1, "mΩ": 1e-3, "milliohm": 1e-3, "kohm": 1e3, "KΩ": 1e3, "MΩ": 1e6, "MOhm": 1e6,
            "megohm": 1e6, "µΩ": 1e-6, "μohm": 1e-6},
    "A": {"A": 1, "amps": 1, "AMPERES": 1, "mA": 1e-3, "ma": 1e-3, "kA": 1e3, "KA": 1e3, "µA": 1e-6},
    "V": {"V": 1, "volts": 1, "mV": 1e-3, "kV": 1e3, "KV": 1e3},
    "kVA": {"kVA": 1, "KVA": 1, "kva": 1, "VA": 1e-3, "MVA": 1e3, "mva": 1e3},
    "s": {"s": 1, "sec": 1, "ms": 1e-3, "cycles": 1 / 60, "min": 60},
    "in2": {"in2": 1, "in²": 1, "sq in": 1, "mm2": 1 / 645.16},
    "ohmm": {"ohm·m": 1, "ohm-m": 1, "Ωm": 1, "ohm cm": 0.01, "Ω·cm": 0.01},
    "A2s": {"A2s": 1, "A²s": 1},
    "%": {"%": 1, "percent": 1},
    "x": {"x": 1, "×": 1},
    "°C": {"°C": 1, "C": 1},
}  # fmt: skip
UNCLEAR = {"ohm": ("MOHM", "MOHMS"), "A": ("MA", "MAMPS"), "V": ("MV", "MVOLTS"), "A2s": ("kA2s",)}


def unit_of(slug, name):
    """Return the unit of an amount, "" for a ratio or what is no amount."""
    asked = CALCULATORS[slug].fields[name]
    return asked.unit if asked.kind == "quantity" else ""


AMOUNTS = [
    (slug, name, unit_of(slug, name))
    for slug, calculator in CALCULATORS.items()
    for name in calculator.fields
    if unit_of(slug, name)
]


def test_every_kind_of_amount_is_among_the_fields():
    assert {unit for _, _, unit in AMOUNTS} == set(SPELLINGS)
    bare = [
        (slug, name)
        for slug, calculator in CALCULATORS.items()
        for name in calculator.fields
        if calculator.fields[name].kind == "quantity" and not unit_of(slug, name)
    ]
    assert {slug for slug, _ in bare} == {"available-fault-current", "jumper-withstand"}, "a ratio, without unit"


@pytest.mark.parametrize("unit", SPELLINGS)
def test_every_spelling_gives_the_same_value_in_every_field_of_its_unit(unit):
    checked = 0
    for slug, name, shown in AMOUNTS:
        asked = CALCULATORS[slug].fields[name]
        if shown != unit:
            continue
        several = texts(slug, name)
        for text in {several[0], several[len(several) // 2], several[-1]}:
            value = read_field(asked, text)
            for spelled, factor in SPELLINGS[unit].items():
                written = plain_number(round(value / factor, DECIMALS))
                same = math.isclose(float(written) * factor, value, rel_tol=1e-6)
                if same and spelled not in ("'", "’"):  # 0.5' is no way to write six inches, but it is read as that
                    again = read_field(asked, f"{written} {spelled}")
                    assert math.isclose(again, value, rel_tol=1e-5, abs_tol=1e-9), (slug, name, text, spelled)
                    checked += 1
                other = f"{plain_number(value)} {spelled}"
                if reads(asked, other):  # the same digits in another unit are another amount, or refused
                    assert math.isclose(read_field(asked, other), value * factor, rel_tol=1e-5, abs_tol=1e-9), other
            for spelled in UNCLEAR.get(unit, ()):
                assert not reads(asked, f"{plain_number(value)} {spelled}"), (slug, name, spelled)
            for comma in ("2,4", "1,25", "0,125", "1,2345", "12,34"):
                assert not reads(asked, f"{comma} {unit}"), (slug, name, comma)
    assert checked > 5


def test_a_small_amount_is_never_shown_as_none():
    loop = CALCULATORS["ground-fault-loop"].fields["joint"]
    assert loop.show(read_field(loop, "30 µΩ")) == "0.00003 ohm"
    assert loop.show(read_field(loop, "0.25")) == "0.25 ohm" and loop.show(read_field(loop, "0")) == "0 ohm"


def test_a_number_in_a_link_is_written_plainly_whatever_its_size():
    assert [plain_number(value) for value in (1e-5, 0.000000001, 30.0, 2.4, 10**12, 0, 123456.789)] == [
        "0.00001", "0.000000001", "30", "2.4", "1000000000000", "0", "123456.789",
    ]  # fmt: skip


NUMBERS = [f"12345{'0' * zeros}" for zeros in range(0, 9, 2)]
NUMBERS += [f"0.{'0' * zeros}{digits}" for digits in ("1", "12345") for zeros in (0, 2, 3, 4, 5, 7, 8)]


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_value_a_field_reads_is_read_back_equal_from_the_link_that_carries_it(slug):
    """Small, large and at the ends of each field, in units that give long decimals."""
    for name, asked in CALCULATORS[slug].fields.items():
        unit = unit_of(slug, name)
        spelled = ("", *list(SPELLINGS.get(unit, ()))[-1:])
        ends = [plain_number(end) for end in (asked.minimum, asked.maximum) if end is not None]
        typed = [f"{number} {each}".strip() for number in (*NUMBERS, *ends) for each in spelled]
        for text in (each for each in (*typed, *(texts(slug, name))) if reads(asked, each)):
            value = read_field(asked, text)
            ((_, written),) = permalink.read_case(permalink.case_of(slug, [(name, value)]))[1]
            assert read_field(asked, written) == value, (name, text, written)
            assert not (unit and "e" in written), (name, text, written)
