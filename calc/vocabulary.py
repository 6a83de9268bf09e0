"""The fields that calculators share: one name, one meaning, one way of reading each."""

from __future__ import annotations

from calc.conductors.area import sizes_of_any_edition
from calc.conductors.size import read_size, shown_size
from calc.declare import Choice, Field
from calc.field import LONGEST_TEXT
from calc.unit_names import SHOWN
from calc.words import Sentence, say
from calc.working import shown_number
from calc.written import plain_number, read_within

METAL_WORDS = {
    "copper": say("copper"),
    "aluminum": say("aluminum"),
    "copper-clad-aluminum": say("copper-clad aluminum"),
}
MOST_AMPERE = 10_000
SMALL = 0.001  # below it four decimals do not tell an amount
_METAL_CHOICES = tuple(Choice(value, words) for value, words in METAL_WORDS.items())


def conductor_size(label: Sentence, hint: Sentence, *, rare: bool = False) -> Field:
    """Give a field for a listed conductor size, in any usual spelling."""
    return Field(
        label,
        hint,
        read=read_size,
        show=shown_size,
        enter=say("Enter a size from 18 AWG to 2000 kcmil, for example 4, 3/0 or 500 kcmil."),
        suggestions=tuple(shown_size(size) for size in sizes_of_any_edition()),
        rare=rare,
    )


def whole_number(label: Sentence, hint: Sentence, low: int, high: int, *, rare: bool = False) -> Field:
    """Give a field for a whole number from `low` to `high`."""

    def read(text: str) -> int:
        if not (text.strip().isascii() and text.strip().isdigit() and low <= int(text) <= high):
            raise ValueError(text)
        return int(text)

    enter = say("Enter a whole number from {low} to {high}.", low=low, high=high)
    return Field(label, hint, enter, read, whole_numbers=(low, high), rare=rare, minimum=low, maximum=high)


def one_of(label: Sentence, hint: Sentence, choices: tuple[Choice, ...], *, rare: bool = False) -> Field:
    """Give a field for one of several values."""
    enter = say("Choose one of {values}.", values=_values(choices))
    return Field(label, hint, enter, str, choices=choices, rare=rare)


def several_of(label: Sentence, hint: Sentence, choices: tuple[Choice, ...], *, rare: bool = False) -> Field:
    """Give a field for any of several values; it is read as their list, in the order of the choices."""
    enter = say("Choose at least one. In a link or table: {values}; commas between.", values=_values(choices))
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


def yes_or_no(label: Sentence, hint: Sentence, *, rare: bool = True) -> Field:
    """Give a field that is answered "yes" or "no"."""
    return one_of(label, hint, (Choice("yes", say("Yes")), Choice("no", say("No"))), rare=rare)


def amount(
    label: Sentence,
    hint: Sentence,
    enter: Sentence,
    unit: str,
    low: float,
    high: float,
    *,
    zero: bool = True,
    number: bool = True,
    rare: bool = False,
) -> Field:
    """Give a field for an amount from `low` to `high` in `unit`; other units of its kind are converted.

    zero: whether 0 is taken; number: whether a phone shows its number keys.
    """

    def read(text: str) -> float:
        value = read_within(text, unit, low, high)
        if value == 0 and not zero:
            raise ValueError(text)
        return value

    def show(value: float) -> str:
        number = shown_number(value) if value == 0 or abs(value) >= SMALL else plain_number(float(f"{value:.3g}"))
        return f"{number} {SHOWN.get(unit, unit)}"

    return Field(
        label, hint, enter, read, show=show, rare=rare, number=number, unit=unit, minimum=low, maximum=high
    )


def device_rating(label: Sentence, hint: Sentence, *, rare: bool = False) -> Field:
    """Give a field for the rating of an overcurrent device, ampere: "200A", "200"."""
    enter = say("Enter a rating from 1 to {most} A, for example 200.", most=MOST_AMPERE)
    return amount(label, hint, enter, "A", 1, MOST_AMPERE, rare=rare)


def temperature(
    label: Sentence, hint: Sentence, enter: Sentence, low: float, high: float, *, rare: bool = False
) -> Field:
    """Give a field for a temperature from `low` to `high`, °C; °F is converted where it is written."""
    return amount(label, hint, enter, "°C", low, high, number=False, rare=rare)


def metal_of(label: Sentence) -> Field:
    """Give a field for a conductor metal: copper, aluminum or copper-clad aluminum."""
    return one_of(label, say(""), _METAL_CHOICES)


MOST_SETS = 30
SETS = whole_number(say("Parallel sets"), say("Conductors side by side in each phase."), 1, MOST_SETS)
