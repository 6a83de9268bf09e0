"""Inputs of any calculator, drawn from its declaration: what it can read, other ways to write it, and what it cannot.

A field is known by what it reads: one that reads "6 ft" asks for a length. So a new field is drawn without a change
here, or `kind_of` says that it cannot be.
"""

from functools import cache

from hypothesis import strategies as st

from calc import permalink
from calc.calculator import Calculator
from calc.conductors.area import listed_sizes
from calc.conductors.size import read_size
from calc.editions import DEFAULT_EDITION, EDITIONS
from calc.field import Field, read_field
from calc.registry import CALCULATORS

SIZES = tuple(listed_sizes(DEFAULT_EDITION))
AMPERE = ("15", "20", "30", "40", "60", "70", "100", "110", "150", "200", "225", "300", "400", "500", "600", "601",
          "800", "1000", "1200", "1600", "2000", "2500", "3000", "4000", "5000", "6000", "6001", "10000")  # fmt: skip
FEET = ("0.5", "1", "2", "4", "5", "6", "6.5", "10", "100", "1000")
PROBES = {
    "found": (
        "4 copper",
        ("14 copper", "8-aluminum", "6 AWG Copper", "4 cu", "1/0 al", "350 kcmil CCA", "listed", "unknown"),
    ),
    "parts": (
        "main bonding jumper: 4 copper",
        ("main bonding jumper: 4 copper", "system-bonding-jumper=6-copper;neutral-bond=listed",
         "Equipment grounding conductor: 4 cu; Grounding electrode conductor: Ground rod: unknown", "foo: 1/0 al"),
    ),
    "devices": ("100A,225A", ("100", "15,20", "100A,225A", " 60 A , 400 A ", "1200,30", ",".join(["30"] * 20))),
    "length": ("6 ft", tuple(f"{feet} ft" for feet in FEET)),
    "ampere": ("30 A", AMPERE),
    "volt": ("277 V", ("1", "50", "120", "208", "250", "251", "277", "480 V", "1 kV", "1000", "1001", "100,000")),
    "drop": ("20 mV", ("0", "0.001", "5 mV", "20 mV", "0.1", "1 V")),
    "kva": ("75 kVA", ("0.05", "3", "9", "15 kVA", "45", "75", "112.5", "300", "1,000 kva", "2500", "10000")),
    "area": ("0.7 in2", ("0", "0.2", "0.4", "0.7 in2", "1", "1.5", "2", "2.0001", "500 mm2", "100")),
    "conductors": ("2x250kcmil", ("4", "3/0,1/0", "2x250kcmil", "2 X 250 MCM , #2", "1/0,2,2,14,30x2000", "18")),
    "case": ("main-bonding-jumper?conductor=3/0", ()),
    "energy": ("50000 A2s", ("1", "50000 A2s", "3000000", "1e9")),
    "ohm": ("5 ohm", ("0", "0.001", "0.05", "0.5", "1", "5 ohm", "10", "25", "100", "1000", "10000")),
    "person": ("1000 ohm", ("100", "500 ohm", "1000", "2,500", "100000 ohm")),
    "resistivity": ("100 ohm*m", ("0.1", "10", "50", "100 ohm*m", "158", "940", "10000")),
    "second": ("0.2 s", ("0.02", "0.1", "0.2 s", "12 cycles", "1", "5", "10")),
    "inch": ("5/8 in", ("1/2 in", "5/8 in", "0.75", "1", "2 in")),
    "readings": ("20,40,50", ("20,40,50", "20,40,45,50,55,70", "1, 2, 3, 4")),
    "number": ("5", ("0", "0.9", "1", "1.05", "1.5", "2.3", "5", "7.5", "10", "20", "30", "50", "90", "100")),
    "factor": ("1.05", ("0.9", "1", "1.05", "1.15")),
}
HOSTILE = (
    "\0", "3/0\0", "3/0\0copper", "\u202e0/3", "\u202e", "\u200b", "👷", "1️⃣", "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>", "'; drop table sizes; --", "{size}", "{", "}", "{0.__class__}", "%s", "%00",
    "%zz", "../../rules", "-1", "-0", "+5", "1e400", "9e9", "1e-7", "nan", "inf", "-inf", "0x10", "1_000", "٢",
    "２", "½", "0.0000001 ft", "0.00001", "6.00001 ft", "²", "1" * 199, "9" * 201, "x" * 10_000, "3/0 " * 3_000,
    "5/0", "-4", "17", "2001", "4 5", "4;5", "4,,5", ",", ",,,", "3//0", "1 ft 6 in", "6 parsecs", "6 s",
    "6 ft ft", "6 in in2", "6 lambda", "6 None", "6 __import__", "6 μA", "6 Ω", "0", "0.0", "00000", "True",
    "None", "null", "undefined", "[]", "{}", "\ud800", "\ufeff3/0", "a\nb", "\t\r\n\v", "　",
    "compare-editions?case=compare-editions", "main-bonding-jumper", "main-bonding-jumper?", "?", "#",
    "?conductor=3/0", "main-bonding-jumper?conductor=3/0&conductor=3/0", "main-bonding-jumper?conductor=%00",
    "a?b&c=d&&=&e", "main-bonding-jumper?conductor=%ud800&metal={metal}",
    "main-bonding-jumper?conductor%3D4%26metal=copper", "9.4 MOHM", "2 mohm", "5 MA", "2,4 m", "1,2 kA", "0,125",
    "3/0 AL", "2-3/0", "1 0", "1,500 kcmil", "3 kA2s", "120/240 V", "75 kW", "1' 8\"", "68 °F", "40, 50, 58 m", "1,2;3",
)  # fmt: skip


@cache
def kind_of(calculator: str, name: str) -> str:
    """Return what a field asks for: several, choice, whole, size, or a key of `PROBES`."""
    asked = CALCULATORS[calculator].fields[name]
    if asked.several or asked.choices:
        return "several" if asked.several else "choice"
    if asked.whole_numbers:
        return "whole"
    if asked.read is read_size:
        return "size"
    kind = next((kind for kind, (probe, _) in PROBES.items() if reads(asked, probe)), None)
    assert kind, f"{calculator}: add a probe and texts for {name}"
    return kind


def reads(asked: Field, text: str) -> bool:
    """Tell whether a field takes a text."""
    try:
        read_field(asked, text)
    except ValueError:
        return False
    return True


@cache
def texts(calculator: str, name: str) -> tuple[str, ...]:
    """Return texts that a field takes, from the smallest value to the largest where its values have an order."""
    asked, kind = CALCULATORS[calculator].fields[name], kind_of(calculator, name)
    if kind in ("several", "choice"):
        values = [choice.value for choice in asked.choices]
        if kind == "choice":
            return tuple(values)
        return (*values, ",".join(values), ", ".join(reversed(values)), ",".join(values[:2]), ",".join(values[1:]))
    if kind == "whole":
        low, high = asked.whole_numbers
        wanted = (1, 2, 3, 4, 5, 6, 8, 10, 12, 20, 30, 100)
        return tuple(str(number) for number in wanted if low <= number <= high)
    if kind == "size":
        return SIZES
    if kind == "case":
        return tuple(permalink.case(single(**single.example)) for single in others())
    return tuple(text for text in PROBES[kind][1] if reads(asked, text))


def others() -> list[Calculator]:
    """Return every calculator that runs no other one's link."""
    return [each for each in CALCULATORS.values() if each.slug != "compare-editions"]


def spellings(kind: str, text: str) -> tuple[str, ...]:
    """Return other ways to write a size, a rating in ampere, a length in feet, a number or a list of them."""
    if kind == "size":
        return size_spellings(text)
    if kind == "ampere":
        number = text.removesuffix("A")
        return (number, f"{number}A", f"{number} A", f" {number}  A ", f"{int(number):,} A", f"{number}.0",
                f"{number}amp", f"{int(number) / 1000} kA")  # fmt: skip
    if kind == "length":
        feet = float(text.split(maxsplit=1)[0])
        return (f"{feet}ft", f" {feet}  ft ", f"{feet * 12} in", f'{feet * 12:g}"', f"{feet}'", f"{feet:g} feet",
                f"{feet:g}′", f"{feet * 12:g}”", f"{feet:g}\u00a0FT.", f"{int(feet)} ft {feet % 1 * 12:g} in",
                f"{feet * 0.3048:.6f} m", f"{feet * 304.8:.4f}mm")  # fmt: skip
    if kind == "whole":
        return (text, f" {text} ", f"0{text}")
    if kind == "devices":
        bare = text.replace("A", "").replace(" ", "")
        return (bare, bare.replace(",", " , "), "A,".join(bare.split(",")) + " A")
    if kind == "conductors":
        return (text, text.replace(",", " , "), text.lower().replace("x", " X "), text.replace("kcmil", " MCM"))
    if kind == "several":
        return (text, ",".join(reversed([each.strip() for each in text.split(",")])), text.replace(",", " , "))
    return (text, text)


def size_spellings(label: str) -> tuple[str, ...]:
    """Return the usual spellings of a size label."""
    if label.endswith("kcmil"):
        number = label.removesuffix("kcmil")
        return (number, label, f"{number} kcmil", f" {number}MCM", f"{number} Kcmil ", f"#{number}")
    ways = (label, f"{label} AWG", f" {label}awg ", f"#{label}", f"No. {label}", f"NO{label}")
    if "/" in label:
        zeros = "0" * int(label[0])
        return (*ways, zeros, f"{zeros} AWG", label.replace("/", "\N{FRACTION SLASH}"), f"{label[0]} / 0")
    return ways


def values(calculator: str, name: str) -> st.SearchStrategy[str]:
    """Return texts that a field takes, in any of their spellings."""
    kind = kind_of(calculator, name)
    if kind == "case":
        return st.sampled_from(others()).flatmap(
            lambda single: inputs(single.slug).map(lambda typed: permalink.case_of(single.slug, list(typed.items())))
        )
    return st.sampled_from(texts(calculator, name)).flatmap(
        lambda text: st.sampled_from((text, *spellings(kind, text)))
    )


@cache
def inputs(calculator: str) -> st.SearchStrategy[dict[str, str]]:
    """Return inputs of a calculator: half of them its example with a few fields changed, half all fields freely."""
    declared = CALCULATORS[calculator]
    fields = {name: values(calculator, name) for name in declared.fields}
    edition = st.sampled_from(EDITIONS)
    required = {name: drawn for name, drawn in fields.items() if name not in declared.defaults}
    optional = {name: drawn for name, drawn in fields.items() if name in declared.defaults}
    free = st.fixed_dictionaries({"edition": edition} | required, optional=optional)
    changed = st.lists(st.sampled_from(sorted(fields)), max_size=4, unique=True).flatmap(
        lambda names: st.fixed_dictionaries({"edition": edition} | {name: fields[name] for name in names})
    )
    return free | changed.map(lambda drawn: dict(declared.example) | drawn)
