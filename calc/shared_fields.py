"""The fields that calculators share: one name, one meaning, one way of reading each."""

from __future__ import annotations

import re
from dataclasses import replace

from calc.calculator import Choice, Field
from calc.conductors.area import sizes_of_any_edition
from calc.conductors.size import read_size, shown_size
from calc.field import LONGEST_TEXT
from calc.messages import Message, message
from calc.trace import shown_number
from calc.unit_names import SHOWN
from calc.written import DECIMALS, plain_number, read_within

METAL_WORDS = {
    "copper": message("copper"),
    "aluminum": message("aluminum"),
    "copper-clad-aluminum": message("copper-clad aluminum"),
}
TABLE_METALS = ("copper", "aluminum")  # tables of impedance and withstand have no other
MAX_AMPERE = 10_000
FIGURES = 4  # of an amount below 1 that was entered
SMALLEST = 1e-4  # above 0; no length, voltage or resistance is measured finer
UNKNOWN = "unknown"
SIZES = tuple(sizes_of_any_edition())
_UNIT_IN_WORDS = SHOWN | {"x": ""}
_NUMBER_KEYS = re.compile(r"[\d.]+")
_YES_NO = (Choice("yes", message("Yes")), Choice("no", message("No")))


def conductor_size(
    label: Message,
    hint: Message,
    *,
    sizes: tuple[str, ...] = SIZES,
    also: Message | None = None,
    rare: bool = False,
) -> Field:
    """Return a field for a listed conductor size, in any usual spelling.

    sizes: those that the calculator has figures for, from the smallest to the largest; it refuses the others itself.
    also: what else the reader must know about them.
    """
    enter = message(
        "Enter a size from {low} to {high}, for example 4, 3/0 or 500 kcmil.",
        low=shown_size(sizes[0]),
        high=shown_size(sizes[-1]),
    )
    return Field(
        label,
        hint,
        enter if also is None else message("{enter} {also}", enter=enter, also=also),
        read_size,
        show=shown_size,
        suggestions=tuple(map(shown_size, sizes)),
        rare=rare,
        domain=sizes,
    )


def whole_number(label: Message, hint: Message, low: int, high: int, *, rare: bool = False) -> Field:
    """Return a field for a whole number from `low` to `high`."""

    def read(text: str) -> int:
        if not (text.strip().isascii() and text.strip().isdigit() and low <= int(text) <= high):
            raise ValueError(text)
        return int(text)

    enter = message("Enter a whole number from {low} to {high}.", low=low, high=high)
    return Field(label, hint, enter, read, whole_numbers=(low, high), rare=rare, minimum=low, maximum=high)


def one_of(label: Message, hint: Message, choices: tuple[Choice, ...], *, rare: bool = False) -> Field:
    """Return a field for one of several values."""
    enter = message("Choose one of {values}.", values=_values(choices))
    return Field(label, hint, enter, str, choices=choices, rare=rare)


def several_of(label: Message, hint: Message, choices: tuple[Choice, ...], *, rare: bool = False) -> Field:
    """Return a field for any of several values; it is read as their list, in the order of the choices."""
    enter = message("Choose at least one. In a link or table: {values}, separated by commas.", values=_values(choices))
    words = {choice.value: choice.label for choice in choices}
    return Field(
        label,
        hint,
        enter,
        str,
        show=lambda text: ", ".join(str(words[value]) for value in text.split(",")),
        choices=choices,
        rare=rare,
        several=True,
        longest=max(LONGEST_TEXT, 2 * len(_values(choices))),  # all of them, with blanks around the commas
    )


def _values(choices: tuple[Choice, ...]) -> str:
    return ", ".join(choice.value for choice in choices)


def yes_or_no(label: Message, hint: Message, *, rare: bool = True) -> Field:
    """Return a field that is answered "yes" or "no"."""
    return one_of(label, hint, _YES_NO, rare=rare)


def yes_no_or_unknown(label: Message, hint: Message) -> Field:
    """Return a field that is answered "yes", "no" or "unknown"."""
    return one_of(label, hint, (*_YES_NO, Choice(UNKNOWN, message("Not known"))))


def quantity(
    label: Message,
    hint: Message,
    unit: str,
    minimum: float,
    maximum: float,
    *,
    example: Message | str,
    zero: bool = True,
    finest: float = 0.0,
    also: Message | None = None,
    rare: bool = False,
) -> Field:
    """Return a field for an amount from `minimum` to `maximum` in `unit`; other units of its kind are converted.

    unit: one of units.txt, "%", "°C", "x" for a multiple or "" for a ratio. example: what may be typed; a phone shows
    its number keys where these can type it. zero: False refuses 0 although the minimum is 0. finest: amounts between 0
    and this one are refused. also: what else can be done about the field, after the ends and the example.
    """
    least = minimum if zero else max(minimum, 10.0**-DECIMALS)

    def read(text: str) -> float:
        value = read_within(text, unit, least, maximum)
        if 0 < value < finest:
            raise ValueError(text)
        return value

    ends = {"low": shown_number(minimum), "high": shown_number(maximum), "unit": _UNIT_IN_WORDS.get(unit, unit)}
    enter = message("Enter a value from {low} to {high} {unit}, for example {example}.", example=example, **ends)
    if not ends["unit"]:
        enter = message("Enter a value from {low} to {high}, for example {example}.", example=example, **ends)
    if not zero:
        enter = message("Enter a value above 0, at most {high} {unit}, for example {example}.", example=example, **ends)
    return Field(
        label,
        hint,
        enter if also is None else message("{enter} {also}", enter=enter, also=also),
        read,
        show=lambda value: shown_quantity(value, unit),
        rare=rare,
        number=_NUMBER_KEYS.fullmatch(str(example)) is not None,
        unit=unit,
        minimum=least,
        maximum=maximum,
    )


def shown_quantity(value: float, unit: str) -> str:
    """Return an amount that was entered as it is read out: no small one is shown as none.

    >>> shown_quantity(1200.0, "A"), shown_quantity(0.00003, "ohm"), shown_quantity(1.05, "")
    ('1,200 A', '0.00003 ohm', '1.05')
    """
    small = 0 < abs(value) < 1
    number = plain_number(float(f"{value:.{FIGURES}g}")) if small else shown_number(value)
    return f"{number} {SHOWN.get(unit, unit)}".strip()


def device_rating(label: Message, hint: Message, *, rare: bool = False) -> Field:
    """Return a field for the rating of an overcurrent device, ampere: "200A", "200"."""
    return quantity(label, hint, "A", 1, MAX_AMPERE, example="200", rare=rare)


def trade_size(label: Message, hint: Message, sizes: tuple[str, ...], *before: Choice) -> Field:
    """Return a field for one of several trade sizes, from the smallest to the largest, after the choices `before`."""
    listed = tuple(Choice(size, message("{size}", size=size)) for size in sizes)
    return replace(one_of(label, hint, (*before, *listed)), domain=sizes)


def metal_of(label: Message, metals: tuple[str, ...] = tuple(METAL_WORDS)) -> Field:
    """Return a field for a conductor metal: copper, aluminum or copper-clad aluminum, or those of them in `metals`."""
    return one_of(label, message(""), tuple(Choice(metal, METAL_WORDS[metal]) for metal in metals))


MAX_SETS = 30
SETS = whole_number(message("Sets in parallel"), message("Number of conductors in parallel per phase."), 1, MAX_SETS)
