"""The two ways in which an input can be open: unknown, or known only to lie between two values."""

from __future__ import annotations

import re
from typing import Any, Self

from calc.field import Field, UnclearError, read_field
from calc.messages import Message, message

WORD = "unknown"
BETWEEN = ".."
# Left out, each says of itself that it is not known, and the answer is worded for that: in any calculator, and in one.
_ANSWERED_WITHOUT = ("installed_conductor", "minimum_conductor", "raceways")
_NOT_MEASURED = {
    "bond-measurement": ("meter_percent",),
    "clamp-reading": ("empty", "off_ampere", "appliances"),
    "livestock-equipotential-plane": ("volt",),
    "pool-bonding-plan": ("pool_length", "pool_width"),
    "waterside-equipotential-plane": ("depth",),
}
_RANGE_LENGTH = 80
_BARE = re.compile(r"[\d.,]+")
_WITH_UNIT = re.compile(r"[\d.,]+\s*([^\d\s]\S*)")


class Open(str):
    """The text of an input that is not settled; it stands in links and JSON as it was written."""

    __slots__ = ()

    @property
    def words(self) -> Message:
        """Return how the state is read out."""
        return message("unknown")


UNKNOWN = Open(WORD)


class Range(Open):
    """An input that lies between two values, both included: `low` and `high` as the field reads them."""

    __slots__ = ("high", "low")

    def __new__(cls, text: str, low: Any, high: Any) -> Self:
        """Return the range that `text` wrote."""
        made = super().__new__(cls, text)
        made.low, made.high = low, high
        return made

    @property
    def words(self) -> Message:
        """Return the range as it is read out, "50 ft to 100 ft"."""
        return message("{range}", range=self.replace(BETWEEN, " to "))


def takes_unknown(field: Field) -> bool:
    """Tell whether `unknown` means an open input here: some fields read it as a value of theirs."""
    return not field.reads_unknown and WORD not in {choice.value for choice in field.choices}


def read_open(field: Field, text: str) -> Open | None:
    """Return the open state that `text` writes, None where it writes a value.

    Raises: ValueError for a range whose ends the field cannot read; UnclearError for one that is the wrong way round.

    >>> from calc.shared_fields import SETS, device_rating
    >>> read_open(SETS, "unknown"), read_open(SETS, "2")
    ('unknown', None)
    >>> amps = read_open(device_rating(message(""), message("")), "50..100 A")
    >>> amps.low, amps.high
    (50, 100)
    """
    if text.strip().lower() == WORD and takes_unknown(field):
        return UNKNOWN
    in_order = field.kind in ("whole number", "quantity") or (field.domain and field.kind in ("size", "choice"))
    if BETWEEN not in text or not in_order:
        return None
    if len(text) > _RANGE_LENGTH:
        raise ValueError(text)
    below, _, above = (part.strip() for part in text.partition(BETWEEN))
    high = read_field(field, above)
    low = _low_end(field, below, above)
    if place(field, low) > place(field, high):
        raise UnclearError(message("The first end of a range is the smaller one."))
    return Range(f"{below}{BETWEEN}{above}", low, high)


def _low_end(field: Field, below: str, above: str) -> Any:
    """Return the low end; a bare number has the unit of the high end: "50..100 ft"."""
    if field.domain or not _BARE.fullmatch(below) or _BARE.fullmatch(above):
        return read_field(field, below)
    unit = _WITH_UNIT.fullmatch(above)
    if not unit:
        raise UnclearError(message("Write the unit after both ends of the range."))
    return read_field(field, f"{below} {unit[1]}")


def is_left_out(slug: str, name: str, field: Field, value: object) -> bool:
    """Tell whether an unknown input is one that the calculator answers without, as when nobody enters it."""
    sizes = field.kind == "list" and bool(field.domain)  # of other conductors, where there are any
    return value is UNKNOWN and (answers_without(slug, name) or sizes or field.kind in ("several", "text"))


def answers_without(slug: str, name: str) -> bool:
    """Tell whether a calculator answers without an input, in words for one that is not known."""
    return name in _ANSWERED_WITHOUT or name in _NOT_MEASURED.get(slug, ())


def place(field: Field, value: str | float) -> float:
    """Return where a value stands among the others of its field: a size in the order of all, a number as it is.

    Raises: UnclearError for a choice that is no size, ValueError for a size that the field does not go to.
    """
    if not isinstance(value, str):
        return value
    if value not in field.domain and field.kind == "size":
        raise ValueError(value)
    if value not in field.domain:
        raise UnclearError(message("Between two ends stand sizes."))
    return field.domain.index(value)
