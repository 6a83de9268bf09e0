"""One input of a calculator: how it is asked for, read, and mended."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from math import inf
from typing import Any

from calc.messages import Message, message

LONGEST_TEXT = 200
LONGEST_ECHO = 40


class UnclearError(ValueError):
    """What was typed can mean two things, or says what this field does not ask: what to write instead."""

    def __init__(self, words: Message):
        super().__init__(str(words))
        self.words = words


@dataclass(frozen=True)
class Choice:
    """One option of a field: the value in links, the words beside it, and values it had in earlier links."""

    value: str
    label: Message
    formerly: tuple[str, ...] = ()


@dataclass(frozen=True)
class Field:
    """One input: how it is asked for, and how what was typed is read.

    `read` gives the value or raises ValueError; then the reader is told `enter`. `show` gives
    the value as it is read out.
    `rare` fields stand behind "less common cases". `several`: any of the choices together, with commas
    between; `read` gets them in the order of the choices. `longest`: characters that may be typed.
    `number`: a bare number will do, so a phone shows its number keys. `slider`: from, to, and the unit of both, for
    an amount to be slid through as well; what is typed may go further.
    `unit` is that of the value read, "" for a ratio or what is no amount; `minimum` and `maximum` are the ends of what
    is read, None where it is no number, for a list those of each of its values. `items`: the fewest and the most
    values of a list. `domain`: the sizes that are read, as links carry them, from the smallest to the largest.
    `relevant_when`: other fields with the values of theirs for which this one counts at all; empty: always.
    `formerly`: names the field had in links and tables made before; read for ever. `reads_unknown`: "unknown" is a
    value like others here, and `read` takes it.
    """

    label: Message
    hint: Message
    enter: Message
    read: Callable[[str], Any]
    show: Callable[[Any], object] = str
    choices: tuple[Choice, ...] = ()
    suggestions: tuple[str, ...] = ()
    whole_numbers: tuple[int, int] | None = None
    rare: bool = False
    several: bool = False
    longest: int = LONGEST_TEXT
    number: bool = False
    slider: tuple[int, int, str] | None = None
    unit: str = ""
    minimum: float | None = None
    maximum: float | None = None
    items: tuple[int, int] | None = None
    domain: tuple[str, ...] = ()
    relevant_when: Mapping[str, tuple[str, ...]] = field(default_factory=dict[str, tuple[str, ...]])
    reads_unknown: bool = False
    formerly: tuple[str, ...] = ()

    def value_now(self, text: str) -> str:
        """Return what the choice written as `text` is called now; what no choice was ever called stays as it is."""
        return next((choice.value for choice in self.choices if text in choice.formerly), text)

    @property
    def ends(self) -> tuple[float, float]:
        """The least and the greatest number that is read; without end where the field is of no number."""
        low, high = self.minimum, self.maximum
        return -inf if low is None else low, inf if high is None else high

    @property
    def kind(self) -> str:
        """What is read: "several", "choice", "list", "whole number", "quantity", "size" or "text"."""
        if self.choices:
            return "several" if self.several else "choice"
        if self.items:
            return "list"
        if self.whole_numbers:
            return "whole number"
        if self.minimum is not None:
            return "quantity"
        return "size" if self.domain else "text"

    def shown(self, value: object) -> object:
        """Return `value` as the form shows it: the words of a choice, a number with its unit."""
        if words := getattr(value, "words", None):  # it is open: calc.unknown.states
            return words
        if self.several:
            return self.show(value)
        return next((choice.label for choice in self.choices if choice.value == value), self.show(value))


def read_field(field: Field, text: str) -> Any:
    """Return what `text` means for a field. Raises: ValueError."""
    if not text.strip() or len(text) > field.longest:
        raise ValueError(truncate(text))
    if field.several:
        return field.read(_in_order(field, text))
    text = field.value_now(text)
    if field.choices and text not in {choice.value for choice in field.choices}:
        raise ValueError(truncate(text))
    return field.read(text)


def _in_order(field: Field, text: str) -> str:
    named = [field.value_now(each.strip()) for each in text.split(",")]
    chosen = [choice.value for choice in field.choices if choice.value in named]
    if len(chosen) != len(named):  # one that is no choice, or the same twice
        raise ValueError(truncate(text))
    return ",".join(chosen)


def what_to_enter(field: Field, text: str, fault: ValueError | None = None) -> Message:
    """Return the sentence that tells what to enter instead of `text`, which ended in `fault`."""
    if not text.strip():
        return message("Choose one of those listed.") if _coded(field) and not field.several else field.enter
    if isinstance(fault, UnclearError):
        return message(
            "“{typed}” does not fit here. {why} {enter}", typed=truncate(text), why=fault.words, enter=field.enter
        )
    return message("“{typed}” does not fit here. {enter}", typed=truncate(text), enter=field.enter)


def _coded(field: Field) -> bool:
    """Tell whether the values of a choice are codes, which nobody who chose none is to read."""
    return any(choice.value != str(choice.label) for choice in field.choices)


def truncate(text: str) -> str:
    """Return the beginning of what was typed, short enough to stand in a sentence."""
    return text if len(text) <= LONGEST_ECHO else text[:LONGEST_ECHO] + "…"
