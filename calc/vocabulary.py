"""The fields that calculators share: one name, one meaning, one way of reading each."""

from __future__ import annotations

from calc.conductors.area import listed_sizes
from calc.conductors.size import read_size, shown_size
from calc.declare import Choice, Field
from calc.editions import SHOWN_UNTIL_CHOSEN
from calc.field import LONGEST_TEXT
from calc.units import read_quantity
from calc.words import Sentence, say
from calc.working import shown_number

METAL_WORDS = {
    "copper": say("copper"),
    "aluminum": say("aluminum"),
    "copper-clad-aluminum": say("copper-clad aluminum"),
}
MOST_AMPERE = 10_000
FINEST = 9  # decimals kept, so that 72 in is 6 ft and 30 mA is 0.03 A
_METAL_CHOICES = tuple(Choice(value, words) for value, words in METAL_WORDS.items())


def conductor_size(label: Sentence, hint: Sentence, *, rare: bool = False) -> Field:
    """Give a field for a listed conductor size, in any usual spelling."""
    return Field(
        label,
        hint,
        read=read_size,
        show=shown_size,
        enter=say("Enter a size from 18 AWG to 2000 kcmil, for example 4, 3/0 or 500 kcmil."),
        suggestions=tuple(shown_size(size) for size in listed_sizes(SHOWN_UNTIL_CHOSEN)),
        rare=rare,
    )


def whole_number(label: Sentence, hint: Sentence, low: int, high: int, *, rare: bool = False) -> Field:
    """Give a field for a whole number from `low` to `high`."""

    def read(text: str) -> int:
        if not (text.strip().isascii() and text.strip().isdigit() and low <= int(text) <= high):
            raise ValueError(text)
        return int(text)

    enter = say("Enter a whole number from {low} to {high}.", low=low, high=high)
    return Field(label, hint, enter, read, whole_numbers=(low, high), rare=rare)


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
        value = round(read_quantity(text, unit), FINEST)
        if not low <= value <= high or (value == 0 and not zero):
            raise ValueError(text)
        return whole(value)

    return Field(label, hint, enter, read, show=lambda value: f"{shown_number(value)} {unit}", rare=rare, number=number)


def device_rating(label: Sentence, hint: Sentence, *, rare: bool = False) -> Field:
    """Give a field for the rating of an overcurrent device, ampere: "200A", "200"."""

    def read(text: str) -> float:
        ampere = read_quantity(text, "A")
        if not 1 <= ampere <= MOST_AMPERE:
            raise ValueError(text)
        return whole(ampere)

    enter = say("Enter a rating from 1 to {most} A, for example 200.", most=MOST_AMPERE)
    return Field(label, hint, enter, read, show=lambda ampere: f"{shown_number(ampere)} A", rare=rare, number=True)


def whole(value: float) -> float:
    """Give a whole number as an integer, so that links say 30, not 30.0."""
    return int(value) if value == int(value) else value


def metal_of(label: Sentence) -> Field:
    """Give a field for a conductor metal: copper, aluminum or copper-clad aluminum."""
    return one_of(label, say(""), _METAL_CHOICES)


MOST_SETS = 30
SETS = whole_number(say("Parallel sets"), say("Conductors side by side in each phase."), 1, MOST_SETS)
