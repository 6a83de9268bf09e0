"""Every sentence a reader can meet passes through `message`.

A sentence is its English template and the values that fill it. It turns into
text only when shown, in the language spoken at that moment, so labels declared
at import time and steps recorded during a calculation are translated alike.
"""

from __future__ import annotations

from collections.abc import Generator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from types import MappingProxyType

_catalogue: ContextVar[Mapping[str, str]] = ContextVar("catalogue", default=MappingProxyType({}))


@dataclass(frozen=True)
class Message:
    """One sentence: an English template with named placeholders, and their values."""

    template: str
    values: Mapping[str, object]

    def __str__(self) -> str:
        return _catalogue.get().get(self.template, self.template).format(**self.values)


@dataclass(frozen=True)
class CalculatorName:
    """Words in a sentence that name a calculator of the handbook, and its slug: a page makes a link of them."""

    slug: str
    words: Message

    def __str__(self) -> str:
        return str(self.words)


def message(template: str, **values: object) -> Message:
    """Return the sentence of `template`; numbers, units and sections enter only as `values`.

    Parameters: template (English, `str.format` placeholders by name), values (anything
    that shows as text). Returns: `Message`; `str()` of it is the text in the language
    spoken. Raises: KeyError when shown with a placeholder left empty.
    """
    return Message(template, values)


@contextmanager
def use_language(catalogue: Mapping[str, str]) -> Generator[None]:
    """Speak another language: `catalogue` gives the translated template of each English one."""
    token = _catalogue.set(catalogue)
    try:
        yield
    finally:
        _catalogue.reset(token)
