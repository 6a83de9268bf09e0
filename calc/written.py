"""How people write an amount: "150ft", "1 ft 8 in", "1 1/2 in", "½ in", "1,200 A", "5 KA", "30 µA", "68 °F".

A spelling has one meaning or it is refused; what is unclear ends in a question (`calc.field.Unclear`).
"""

from __future__ import annotations

import re

from calc.field import UnclearError
from calc.messages import message
from calc.unit_names import meanings, unclear_prefix
from calc.units import convert

DECIMALS = 9  # decimals kept, so that 72 in is 6 ft and 30 mA is 0.03 A
_THIN = "\N{NO-BREAK SPACE}\N{THIN SPACE}\N{NARROW NO-BREAK SPACE}"
_ALIKE = str.maketrans(
    dict.fromkeys(_THIN + "\N{FIGURE SPACE}\N{EN SPACE}\N{EM SPACE}\N{HAIR SPACE}", " ")
    | dict.fromkeys("\N{MICRO SIGN}\N{GREEK SMALL LETTER MU}", "u")
    | dict.fromkeys("\N{GREEK CAPITAL LETTER OMEGA}\N{OHM SIGN}", "Ohm")
    | dict.fromkeys("\N{MINUS SIGN}\N{EN DASH}\N{NON-BREAKING HYPHEN}\N{HYPHEN}", "-")
    | dict.fromkeys("“”″\"", "in")
    | dict.fromkeys("\N{FRACTION SLASH}\N{DIVISION SLASH}", "/")
    | dict.fromkeys("°\N{MASCULINE ORDINAL INDICATOR}", "deg")
    | {"×": "x"}
    | {"½": " 1/2", "¼": " 1/4", "¾": " 3/4", "⅛": " 1/8", "⅜": " 3/8", "⅝": " 5/8", "⅞": " 7/8", "⅓": " 1/3"}
    | {"⅔": " 2/3"}
)
_FEET = re.compile("[’‘′']")
_RULER = ("2", "3", "4", "8", "16", "32", "64")  # 120/240 is no number
_NUMBER = re.compile(
    r"(?P<thousands>[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?)(?![\d,.])|"
    r"(?:(?P<whole>\d{1,4})[ -])?(?P<above>\d{1,2})/(?P<below>\d{1,2})(?!\d)|"
    r"(?P<plain>(?:\d+(?:\.\d+)?|\.\d+)(?:[eE]-\d+)?)(?![\d,.])",
    re.ASCII,
)
_PARTED = re.compile(rf"(?<=\d)[{_THIN}](?=\d{{3}}(?!\d))", re.ASCII)
_SQUARED = re.compile(r"(?<=[A-Za-z])²")
_COMMA = re.compile(r"\d,\d", re.ASCII)
_BETWEEN = re.compile(r"[\s.^*·⋅-]+")
_UNIT = re.compile(r"[A-Za-z%][A-Za-z0-9%]*", re.ASCII)
# Three figures after the feet are thousands (1'000), and a point before them parts decimals.
_FEET_AND_INCHES = re.compile(
    r"(\d{1,5})\s*(?:ft|foot|feet)(?![a-z])[\s.,-]*(?<!\.)(\d{1,2}(?!\d).*)", re.IGNORECASE | re.ASCII
)


def read_quantity(text: str, unit: str) -> float:
    r"""Return a written quantity ("150ft", "46 m", "200A", "200") as a bare number in `unit`, "" for a plain number.

    A number without a unit counts in `unit`. Twelve digits are kept, so that 72 in is 6 ft.
    Raises: ValueError when the text is no number with a unit of the same kind, UnclearError when it can mean two.

    >>> read_quantity("150 ft", "ft"), read_quantity("1,200", "A"), read_quantity("1' 8\"", "in")
    (150.0, 1200.0, 20.0)
    """
    return readings(text, unit)[0]


def read_within(text: str, unit: str, low: float, high: float) -> float:
    """Return a written quantity from `low` to `high` in `unit`, to nine decimals; a whole number as an integer.

    Raises: ValueError as `read_quantity` does, also beyond the ends; UnclearError where both meanings lie between them.

    >>> read_within("0.8 mohm", "ohm", 0, 1000)
    0.0008
    """
    value, *others = (round(each, DECIMALS) for each in readings(text, unit))
    if any(low <= other <= high for other in others):
        raise unclear_prefix(unit)
    if not low <= value <= high:
        raise ValueError(text)
    return whole(value)


def readings(text: str, unit: str) -> tuple[float, ...]:
    """Return every value in `unit` that a written quantity can have, the one it says first. Raises: ValueError."""
    plain = _plain(text)
    if both := _FEET_AND_INCHES.fullmatch(plain):
        return (_feet_and_inches(both, unit),)
    below_zero = unit == "°C" and plain.startswith("-")
    number, rest = _number(plain.removeprefix("-").lstrip() if below_zero else plain)
    number = -number if below_zero else number
    called = _BETWEEN.sub("", rest)
    if not called and not rest.strip(" ."):
        return (number,)
    if not _UNIT.fullmatch(called):
        raise ValueError(text)
    return tuple(_in_unit(number, meant, unit) for meant in meanings(called))


def read_list(text: str, unit: str) -> list[float]:
    """Return written quantities, with commas or semicolons between, in `unit`; a unit at the end counts for all.

    Raises: ValueError as `read_quantity` does, UnclearError where some have another unit and some none.

    >>> read_list("40, 50, 58 ft", "ft"), read_list("20; 20.6; 21 kohm", "ohm")
    ([40.0, 50.0, 58.0], [20000.0, 20600.0, 21000.0])
    """
    parts = [_plain(each) for each in text.split(";" if ";" in text else ",")]
    *units, last = [_BETWEEN.sub("", _number(each)[1]) for each in parts]
    if last and not any(units) and not _FEET_AND_INCHES.fullmatch(parts[-1]):
        parts = [f"{each} {last}" for each in parts[:-1]] + parts[-1:]
    elif not (last and all(units)) and any(meanings(each) != (unit,) for each in (*units, last) if each):
        raise UnclearError(message("Enter the unit once, at the end, or after every value."))
    return [round(read_quantity(each, unit), DECIMALS) for each in parts]


def whole(value: float) -> float:
    """Return a whole number as an integer, so that links say 30, not 30.0."""
    return int(value) if value == int(value) else value


def plain_number(value: float) -> str:
    """Return a number as links carry it, never as 1e-05.

    >>> plain_number(0.00001), plain_number(30.0), plain_number(2.4)
    ('0.00001', '30', '2.4')
    """
    shown = str(whole(value))
    return f"{value:.{DECIMALS}f}".rstrip("0").rstrip(".") if "e" in shown else shown


def _plain(text: str) -> str:
    """Return a text in which what is written in several ways is written in one."""
    marked = _SQUARED.sub("^2", _PARTED.sub(",", text))
    for twice in ("''", "’’", "‘‘", "′′"):
        marked = marked.replace(twice, "in")
    return " ".join(_FEET.sub("ft", marked).translate(_ALIKE).split())


def _number(plain: str) -> tuple[float, str]:
    """Return the number that a text begins with, and what follows it."""
    written = _NUMBER.match(plain)
    if not written:
        if _COMMA.search(plain):
            raise UnclearError(
                message("Use a comma only for thousands, as in 1,200. Use a point for decimals, as in 2.4.")
            )
        raise ValueError(plain)
    rest = plain[written.end() :]
    if written["above"] is None:
        return float((written["thousands"] or written["plain"]).replace(",", "")), rest
    if written["below"] not in _RULER or int(written["above"]) >= int(written["below"]):
        raise ValueError(plain)
    return int(written["whole"] or 0) + int(written["above"]) / int(written["below"]), rest


def _in_unit(number: float, meant: str, unit: str) -> float:
    if meant == unit:
        return number
    if (meant, unit) == ("°F", "°C"):
        return float(f"{(number - 32) / 1.8:.12g}")
    if not unit or {meant[:1], unit[:1]} & {"%", "°", "x"}:
        raise ValueError(meant)
    try:
        return float(f"{convert(number, meant, unit):.12g}")
    except TypeError:  # what pint's wrong dimension is
        raise ValueError(meant) from None


def _feet_and_inches(both: re.Match[str], unit: str) -> float:
    inches, rest = _number(both[2])
    if inches >= 12 or _BETWEEN.sub("", rest).lower() not in ("", "in", "inch", "inches"):
        raise ValueError(both[0])
    return _in_unit(12 * int(both[1]) + inches, "in", unit)
