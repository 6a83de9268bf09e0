"""One input of a calculator: how it is asked for, read, and mended."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from calc.words import Sentence, say

LONGEST_TEXT = 200
LONGEST_ECHO = 40
MANY_CHOICES = 6


class Unclear(ValueError):
    """What was typed can mean two things, or says what this field does not ask: what to write instead."""

    def __init__(self, words: Sentence):
        super().__init__(str(words))
        self.words = words


@dataclass(frozen=True)
class Choice:
    """One option of a field: the value in links, the words beside it, and values it had in earlier links."""

    value: str
    label: Sentence
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

    label: Sentence
    hint: Sentence
    enter: Sentence
    read: Callable[[str], object]
    show: Callable[[object], object] = str
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
    relevant_when: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    reads_unknown: bool = False
    formerly: tuple[str, ...] = ()

    def value_now(self, text: str) -> str:
        """Return what the choice written as `text` is called now; what no choice was ever called stays as it is."""
        return next((choice.value for choice in self.choices if text in choice.formerly), text)

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
        """Give `value` as the form shows it: the words of a choice, a number with its unit."""
        if words := getattr(value, "words", None):  # it is open: calc.unknown.states
            return words
        if self.several:
            return self.show(value)
        return next((choice.label for choice in self.choices if choice.value == value), self.show(value))


def read_field(asked: Field, text: str) -> object:
    """Give what `text` means for a field. Raises: ValueError."""
    if not text.strip() or len(text) > asked.longest:
        raise ValueError(echo(text))
    if asked.several:
        return asked.read(_in_order(asked, text))
    text = asked.value_now(text)
    if asked.choices and text not in {choice.value for choice in asked.choices}:
        raise ValueError(echo(text))
    return asked.read(text)


def _in_order(asked: Field, text: str) -> str:
    named = [asked.value_now(each.strip()) for each in text.split(",")]
    chosen = [choice.value for choice in asked.choices if choice.value in named]
    if len(chosen) != len(named):  # one that is no choice, or the same twice
        raise ValueError(echo(text))
    return ",".join(chosen)


def mend(asked: Field, text: str, fault: ValueError | None = None) -> Sentence:
    """Give the sentence that tells what to enter instead of `text`, which ended in `fault`."""
    if not text.strip():
        return say("Choose one of those listed.") if _many(asked) else asked.enter
    if isinstance(fault, Unclear):
        return say("“{typed}” does not fit here. {why} {enter}", typed=echo(text), why=fault.words, enter=asked.enter)
    return say("“{typed}” does not fit here. {enter}", typed=echo(text), enter=asked.enter)


def _many(asked: Field) -> bool:
    """Whether the values of a choice are too many to read out to someone who chose none."""
    return len(asked.choices) > MANY_CHOICES and not asked.several


def echo(text: str) -> str:
    """Give the beginning of what was typed, short enough to stand in a sentence."""
    return text if len(text) <= LONGEST_ECHO else text[:LONGEST_ECHO] + "…"
