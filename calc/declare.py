"""How a calculator is declared: once, by the annotated signature of one function.

From the declaration come the Python call, the command line, the form, the link and
the tests. Three ends only: an answer, fields to fix, or not covered.
"""

from __future__ import annotations

import inspect
import typing
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from calc.answer import Answer, steady
from calc.editions import EDITIONS, SHOWN_UNTIL_CHOSEN
from calc.field import Choice, Field, echo, mend, read_field
from calc.found.declared import FOUND, SiteCheck
from calc.margin.declared import Margin
from calc.words import Sentence, say
from calc.working import Working

if TYPE_CHECKING:
    from calc.found.verdict import Verdict
    from calc.margin.search import Turn

LONGEST_SAID = 2000
MOST_UNKNOWN = 5


@dataclass(frozen=True)
class Fix:
    """A field to mend, and what to enter."""

    field: str
    label: Sentence | str
    words: Sentence


class NotCovered(Exception):
    """The case is outside the rules here: why, and under which name to look."""

    def __init__(self, why: Sentence, look_in: Sentence):
        super().__init__(str(why))
        self.why = why
        self.look_in = look_in


class Mend(Exception):
    """A field that this case cannot use as it is: its name, and what to enter where that is not its usual words."""

    def __init__(self, field: str, words: Sentence | None = None):
        super().__init__(field)
        self.field = field
        self.words = words


def needed(value: object, field: str):
    """Give the value of an optional field that this case needs. Raises: Mend when it was left out."""
    if value is None:
        raise Mend(field)
    return value


@dataclass(frozen=True)
class Result:
    """One run of a calculator. `outcome` is answer, fix or not_covered."""

    calculator: Calculator
    edition: str
    edition_chosen: bool
    inputs: Mapping[str, object]
    outcome: str
    working: Working
    answer: Answer | None = None
    fix: tuple[Fix, ...] = ()
    not_covered: NotCovered | None = None
    said_before: str = ""
    found: Verdict | None = None

    @property
    def margin(self) -> tuple[Turn, ...]:
        """The smallest change of each input that turns the answer; the calculator runs again for it."""
        from calc.margin.search import turns_of  # it needs what stands here

        return turns_of(self)

    @property
    def said(self) -> str:
        """The answer as a link carries it; "fix" where there is none until a field is mended."""
        if self.outcome == "fix":
            return "fix"
        return self.answer.said if self.answer else "not-covered"

    @property
    def entered(self) -> str:
        """What was entered and is not the default, in the words of the form."""
        fields, defaults = self.calculator.fields, self.calculator.defaults
        given = [name for name, value in self.inputs.items() if name not in defaults or value != defaults[name]]
        shown = [
            say("{label}: {value}", label=fields[name].label, value=fields[name].shown(self.inputs[name]))
            for name in given
        ]
        return "; ".join(map(str, shown))


@dataclass(frozen=True)
class Calculator:
    """A declared calculator. Call it with keyword inputs, typed or written, None for one left out."""

    slug: str
    name: Sentence
    purpose: Sentence
    submit: Sentence
    example: Mapping[str, str]
    fields: Mapping[str, Field]
    defaults: Mapping[str, object]
    function: Callable[..., Answer] = field(repr=False)
    site_check: SiteCheck | None = None
    margin: Margin | None = None

    def __call__(self, **inputs: object) -> Result:
        return self.run([(name, str(value)) for name, value in inputs.items() if value is not None])

    def run(self, pairs: Iterable[tuple[str, str]]) -> Result:
        """Run on written inputs, as a link or the command line gives them."""
        result = self.work(pairs)
        if not result.edition_chosen:
            result.working.warnings.insert(
                0,
                say(
                    "Edition not chosen: {edition} shown. Choose the edition enforced where the work is.",
                    edition=result.edition,
                ),
            )
        result.working.warnings.extend(unverified(result.working))
        return result

    def work(self, pairs: Iterable[tuple[str, str]]) -> Result:
        """Run as `run` does, for another calculator: without its warnings of the edition."""
        edition, chosen, said, inputs, fix = self._read(list(pairs))
        working = Working(edition)
        result = dict(
            calculator=self, edition=edition, edition_chosen=chosen, inputs=inputs, working=working, said_before=said
        )
        if fix:
            return Result(outcome="fix", fix=tuple(fix), **result)
        try:
            answer = self.function(working=working, **self._of_the_case(inputs))
            answered = Result(outcome="answer", answer=replace(answer, values=steady(answer.values)), **result)
            return self._with_what_was_found(answered)
        except Mend as mending:
            asked = self.fields[mending.field]
            fix = Fix(mending.field, asked.label, mending.words or asked.enter)
            return Result(outcome="fix", fix=(fix,), **result)
        except NotCovered as outside:
            return Result(outcome="not_covered", not_covered=outside, **result)

    def _of_the_case(self, inputs: Mapping[str, object]) -> Mapping[str, object]:
        """Return the inputs that decide the answer: all but what was found on site."""
        return {name: value for name, value in inputs.items() if name != FOUND or not self.site_check}

    def _with_what_was_found(self, answered: Result) -> Result:
        if self.site_check is None or answered.inputs[FOUND] is None:
            return answered
        return replace(answered, found=self.site_check.judge(answered))

    def _read(self, pairs: list[tuple[str, str]]):
        readable = {"edition": EDITION_FIELD, "said": SAID_FIELD} | dict(self.fields)
        values: dict[str, object] = {}
        fix: dict[str, Fix] = {}
        for name, text in pairs:
            if name not in readable:
                fix[name] = Fix(
                    echo(name),
                    echo(name),
                    say(
                        "There is no field of this name. The fields are {names}.",
                        names=", ".join(["edition", *self.fields]),
                    ),
                )
            elif name in values or name in fix:
                fix[name] = Fix(name, readable[name].label, say("This is given twice. Give it once."))
            elif not text.strip() and self.defaults.get(name, "") is None:
                values[name] = None  # a form sends its empty fields too
            else:
                try:
                    values[name] = read_field(readable[name], text)
                except ValueError as fault:
                    fix[name] = Fix(name, readable[name].label, mend(readable[name], text, fault))
        for name, asked in self.fields.items():
            if name not in values and name not in fix:
                if name in self.defaults:
                    values[name] = self.defaults[name]
                else:
                    fix[name] = Fix(name, asked.label, asked.enter)
        fix = _few_unknown(fix, readable)
        order = list(readable)
        mended = sorted(fix.values(), key=lambda each: order.index(each.field) if each.field in order else len(order))
        edition = values.pop("edition", SHOWN_UNTIL_CHOSEN)
        return edition, any(name == "edition" for name, _ in pairs), values.pop("said", ""), values, mended


def calculator(
    slug: str,
    *,
    name: Sentence,
    purpose: Sentence,
    submit: Sentence,
    example: Mapping[str, str],
    site_check: SiteCheck | None = None,
    margin: Margin | None = None,
):
    """Declare the decorated function as the calculator `slug`.

    Every parameter but `working` is annotated `Annotated[type, Field]`; a default makes it
    optional; the default None stands for a field left out. The function gives an `Answer`
    or raises `NotCovered`, or `Mend` for a field that only this case needs. `site_check` adds the
    field `found`, which the function does not see; `margin` says which inputs may turn the answer.
    """

    def declare(function: Callable[..., Answer]) -> Calculator:
        hints = typing.get_type_hints(function, include_extras=True)
        parameters = {key: each for key, each in inspect.signature(function).parameters.items() if key != "working"}
        fields = {key: hints[key].__metadata__[0] for key in parameters}
        defaults = {key: each.default for key, each in parameters.items() if each.default is not each.empty}
        if site_check:
            fields, defaults = fields | {FOUND: site_check.field}, defaults | {FOUND: None}
        declared = Calculator(
            slug=slug,
            name=name,
            purpose=purpose,
            submit=submit,
            example=example,
            function=function,
            fields=fields,
            defaults=defaults,
            site_check=site_check,
            margin=margin,
        )
        object.__setattr__(declared, "__doc__", function.__doc__)
        return declared

    return declare


def _few_unknown(fix: dict[str, Fix], readable: Mapping[str, Field]) -> dict[str, Fix]:
    """Keep the first unknown names; thousands of them would bury the rest."""
    buried = set([name for name in fix if name not in readable][MOST_UNKNOWN:])
    return {name: each for name, each in fix.items() if name not in buried}


def unverified(working: Working) -> list[Sentence]:
    """Give the warning that sections cited are not verified in this edition, if any are not."""
    sections = working.unverified()
    if not sections:
        return []
    return [
        say(
            "Not verified for the {edition} edition: {sections}. Read the book before you rely on it.",
            edition=working.edition,
            sections="; ".join(dict.fromkeys(sections)),
        )
    ]


def _said(text: str) -> str:
    if not all(letter.isascii() and (letter.isalnum() or letter in "/.,_-") for letter in text):
        raise ValueError(text)
    return text


EDITION_FIELD = Field(
    label=say("Edition"),
    hint=say("The edition of the code that is enforced where the work is."),
    enter=say("Enter one of {editions}.", editions=", ".join(EDITIONS)),
    read=str,
    choices=tuple(Choice(edition, say("{edition}", edition=edition)) for edition in EDITIONS),
)
SAID_FIELD = Field(
    label=say("Answer the link was made with"),
    hint=say("Links carry it, so that a changed answer is seen."),
    enter=say("Leave it as the link had it, for example 2/0-copper, or take it away."),
    read=_said,
    longest=LONGEST_SAID,
)
