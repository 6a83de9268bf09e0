"""How a calculator is declared: once, by the annotated signature of one function.

From the declaration come the Python call, the command line, the form, the link and
the tests. How a run may end stands in `calc.result`.
"""

from __future__ import annotations

import inspect
import typing
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property, partial
from typing import Any, TypedDict

from calc.answer import Answer, round_to_12_digits
from calc.conductors.written_beside import parted
from calc.editions import DEFAULT_EDITION, EDITIONS, is_default_edition
from calc.field import Choice, Field, read_field, truncate, what_to_enter
from calc.found.declared import FOUND, SiteCheck
from calc.link_fields import ANSWER_CODE_FIELD, ASSUMED_FIELD, EDITION_FIELD
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output
from calc.relevance import RELEVANT_WHEN
from calc.result import Correction, FieldError, NotCovered, Result, require
from calc.trace import Trace
from calc.unknown.states import WORD, Open, is_left_out, read_open
from calc.unknown_name import no_such_field

MAX_UNKNOWN = 5

__all__ = [
    "Answer", "Calculator", "Choice", "Correction", "Field", "FieldError", "NotCovered", "Result",
    "calculator", "require", "truncate", "unverified", "what_to_enter",
]  # fmt: skip


class Entered(TypedDict):
    """What a result keeps of what was read."""

    edition: str
    edition_chosen: bool
    inputs: Mapping[str, Any]
    linked_answer: str
    left_out: tuple[str, ...]


@dataclass(frozen=True)
class Calculator:
    """A declared calculator. Call it with keyword inputs, typed or written, None for one left out."""

    slug: str
    name: Message
    purpose: Message
    submit: Message
    example: Mapping[str, str]
    fields: Mapping[str, Field]
    defaults: Mapping[str, Any]
    outputs: tuple[Output, ...]
    function: Callable[..., Answer | Iterator[Answer]] = field(repr=False)
    site_check: SiteCheck | None = None
    margin: Margin | None = None

    @cached_property
    def names(self) -> Mapping[str, str]:
        """The name of each input as it is now, by every name it has or had."""
        former = {old: name for name, field in self.fields.items() for old in field.formerly}
        return former | {name: name for name in ("edition", *self.fields)}

    def name_now(self, name: str) -> str:
        """Return what an input written as `name` is called now; a name that no input ever had stays as it is."""
        return self.names.get(name, name)

    def __call__(self, **inputs: object) -> Result:
        return self.run([(name, str(value)) for name, value in inputs.items() if value is not None])

    def run(self, pairs: Iterable[tuple[str, str]]) -> Result:
        """Run on written inputs, as a link or the command line gives them."""
        return whole(self.run_in_parts(pairs))

    def run_in_parts(self, pairs: Iterable[tuple[str, str]]) -> Iterator[Result]:
        """Yield the run as far as it is each time its answer grows; the last is whole, and what `run` returns."""
        for result in self._work_in_parts(pairs):
            result.trace.warnings.extend(unverified(result.trace))
            yield result

    def to_fix(self, pairs: Iterable[tuple[str, str]]) -> list[Correction]:
        """Return what is to fix in written inputs before the function is asked at all."""
        return self._read(list(pairs))[1]

    def work(self, pairs: Iterable[tuple[str, str]]) -> Result:
        """Run as `run` does, for another calculator: without its warning of sections not verified."""
        return whole(self._work_in_parts(pairs))

    def _work_in_parts(self, pairs: Iterable[tuple[str, str]]) -> Iterator[Result]:
        entered, fix = self._read(list(pairs))
        edition, inputs = entered["edition"], entered["inputs"]
        if fix:
            yield Result(self, outcome="fix", fix=tuple(fix), trace=Trace(edition), **entered)
        elif any(isinstance(value, Open) for value in inputs.values()):
            from calc.unknown.outcomes import resolved

            yield replace(resolved(self, edition, inputs), **entered)
        else:
            for result in self._settled_in_parts(edition, inputs):
                yield replace(result, **entered)

    def settled(self, edition: str, inputs: Mapping[str, Any]) -> Result:
        """Return what the function gives for values that are read and settled, every field among them."""
        return whole(self._settled_in_parts(edition, inputs))

    def _settled_in_parts(self, edition: str, inputs: Mapping[str, Any]) -> Iterator[Result]:
        trace = Trace(edition)
        result = partial(Result, self, edition, inputs, trace=trace)
        try:
            for answer in self.answer_in_parts(trace, self._of_the_case(inputs)):
                answered = result(outcome="answer", answer=replace(answer, values=_steady(answer.values)))
                if answer.unfinished:
                    answered = replace(answered, trace=trace.so_far())
                yield self._with_what_was_found(answered)
        except FieldError as error:
            field = self.fields[error.field]
            fix = Correction(error.field, field.label, error.words or field.enter)
            yield result(outcome="fix", fix=(fix,))
        except NotCovered as outside:
            yield result(outcome="not_covered", not_covered=outside)

    def answer(self, trace: Trace, inputs: Mapping[str, Any]) -> Answer:
        """Return the whole answer of the function. Raises: FieldError, NotCovered."""
        return whole(self.answer_in_parts(trace, inputs))

    def answer_in_parts(self, trace: Trace, inputs: Mapping[str, Any]) -> Iterator[Answer]:
        """Yield the answer of the function each time it grows; most are whole at once. Raises: as `answer`."""
        answer = self.function(trace=trace, **inputs)
        if isinstance(answer, Answer):
            yield answer
        else:
            yield from answer

    def _of_the_case(self, inputs: Mapping[str, Any]) -> Mapping[str, Any]:
        """Return the inputs that decide the answer: all but what was found on site."""
        return {name: value for name, value in inputs.items() if name != FOUND or not self.site_check}

    def _with_what_was_found(self, answered: Result) -> Result:
        if self.site_check is None or answered.inputs[FOUND] is None:
            return answered
        return replace(answered, found=self.site_check.judge(answered))

    def _read(self, pairs: list[tuple[str, str]]) -> tuple[Entered, list[Correction]]:
        readable = {"edition": EDITION_FIELD, "said": ANSWER_CODE_FIELD, "assumed": ASSUMED_FIELD} | dict(self.fields)
        values: dict[str, Any] = {}
        unknown: dict[str, None] = {}
        written, conflicts = parted(self.fields, [(self.name_now(name), text) for name, text in pairs])
        fix = {name: Correction(name, self.fields[name].label, words) for name, words in conflicts.items()}
        for name, text in written:
            if name not in readable:
                unknown.setdefault(name)
                if len(unknown) <= MAX_UNKNOWN:  # thousands of them would bury the rest
                    fix[name] = no_such_field(name, self.fields)
            elif name in values or name in fix:
                fix[name] = Correction(name, readable[name].label, message("This is entered twice. Enter it once."))
            elif not text.strip() and self.defaults.get(name, "") is None:
                values[name] = None  # a form sends its empty fields too
            else:
                try:
                    values[name] = self._value(name, readable[name], text)
                except ValueError as fault:
                    fix[name] = Correction(name, readable[name].label, what_to_enter(readable[name], text, fault))
        for name, required in self.fields.items():
            if name not in values and name not in fix:
                if name in self.defaults:
                    values[name] = self.defaults[name]
                else:
                    fix[name] = Correction(name, required.label, required.enter)
        order = list(readable)
        corrections = sorted(
            fix.values(), key=lambda each: order.index(each.field) if each.field in order else len(order)
        )
        return self._entered(values, {name for name, _ in written}), corrections

    def _value(self, name: str, field: Field, text: str) -> Any:
        """Return the value or the open state that a text means. Raises: ValueError."""
        state = read_open(field, text)
        if state is not None and name in self.defaults and is_left_out(self.slug, name, field, state):
            return self.defaults[name]
        return read_field(field, text) if state is None else state

    def _entered(self, values: dict[str, Any], given: set[str]) -> Entered:
        """Return what a result keeps of what was read: its edition, inputs, and which of them nobody gave."""
        edition = values.pop("edition", WORD)
        chosen = edition in EDITIONS
        assumed = values.pop("assumed", "").split(",")
        linked_answer = values.pop("said", "")
        at_default = [name for name, value in self.defaults.items() if value is not None and values.get(name) == value]
        return {
            "edition": edition if chosen else DEFAULT_EDITION,
            "edition_chosen": chosen and not ("edition" in assumed and is_default_edition(edition)),
            "inputs": values,
            "linked_answer": linked_answer,
            "left_out": tuple(name for name in at_default if name not in given or name in assumed),
        }


def calculator(
    slug: str,
    *,
    name: Message,
    purpose: Message,
    submit: Message,
    example: Mapping[str, str],
    outputs: tuple[Output, ...],
    site_check: SiteCheck | None = None,
    margin: Margin | None = None,
) -> Callable[[Callable[..., Answer | Iterator[Answer]]], Calculator]:
    """Declare the decorated function as the calculator `slug`.

    outputs: the values of its answers, in the order of a table's columns; every value it gives is one of them.

    Every parameter but `trace` is annotated `Annotated[type, Field]`; a default makes it
    optional; the default None stands for a field left out. The function gives an `Answer`
    or raises `NotCovered`, or `FieldError` for a field that only this case needs. One that takes long may be a
    generator: it yields first what it was asked for, `unfinished`, and last the whole; what is noted, warned and cited
    by the first stays so. `site_check` adds the field `found`, which the function does not see; `margin` says which
    inputs may turn the answer.
    """

    def declare(function: Callable[..., Answer | Iterator[Answer]]) -> Calculator:
        hints = typing.get_type_hints(function, include_extras=True)
        parameters = {key: each for key, each in inspect.signature(function).parameters.items() if key != "trace"}
        relevant_when = RELEVANT_WHEN.get(slug, {})
        fields = {
            key: replace(hints[key].__metadata__[0], relevant_when=relevant_when.get(key, {})) for key in parameters
        }
        defaults: dict[str, Any] = {
            key: each.default for key, each in parameters.items() if each.default is not each.empty
        }
        if site_check:
            fields, defaults = fields | {FOUND: site_check.field}, defaults | {FOUND: None}
        declared = Calculator(
            slug=slug,
            name=name,
            purpose=purpose,
            submit=submit,
            example=example,
            outputs=outputs,
            function=function,
            fields=fields,
            defaults=defaults,
            site_check=site_check,
            margin=margin,
        )
        object.__setattr__(declared, "__doc__", function.__doc__)
        return declared

    return declare


def whole[T](parts: Iterator[T]) -> T:
    """Return the last of the parts, which is whole."""
    *_, last = parts
    return last


def _steady(values: Mapping[str, Any]) -> dict[str, Any]:
    return {name: round_to_12_digits(value) for name, value in values.items()}


def unverified(trace: Trace) -> list[Message]:
    """Return the warning that sections cited are not verified in this edition, if any are not."""
    sections = trace.unverified()
    if not sections:
        return []
    return [
        message(
            "Not verified for the {edition} edition: {sections}. Read the book before you rely on it.",
            edition=trace.edition,
            sections="; ".join(dict.fromkeys(sections)),
        )
    ]
