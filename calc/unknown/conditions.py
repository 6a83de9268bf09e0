"""The shortest condition that leads to an answer: which values of which open inputs, and these in words."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import combinations
from typing import Any

from calc.field import Field
from calc.messages import Message, message
from calc.unknown.stretches import Stretch

MAX_TERMS = 2
MAX_NAMED = 4

Term = Mapping[str, frozenset[Any]]  # every named input has one of its values
Case = Mapping[str, Any]
Values = Mapping[str, Sequence[Any]]


def shortest_condition(
    inside: Sequence[Case], outside: Sequence[Case], domains: Values | None = None
) -> tuple[Term, ...]:
    """Return the condition that holds in the settled cases `inside` and in none `outside`, as terms with or between.

    It names as few inputs as can be, of those the ones that count there (by their `domains`), and as few terms.
    """
    names = tuple(inside[0])
    for count in range(len(names) + 1):
        found = [
            terms
            for chosen in combinations(names, count)
            if (terms := _terms(chosen, inside, outside)) is not None
        ]
        if found:
            return min(found, key=lambda terms: (_beside_the_point(terms, domains or {}), *_length(terms)))
    raise ValueError("two cases with the same inputs have two outcomes")


def _beside_the_point(terms: Sequence[Term], domains: Values) -> int:
    """Return how many inputs are named where they do not count: there they stand at what is none of their domain."""
    return sum(not values <= set(domains[name]) for term in terms for name, values in term.items() if name in domains)


def _length(terms: Sequence[Term]) -> tuple[int, int]:
    """Return how long a condition is: its terms, then the values in them."""
    return len(terms), sum(len(values) for term in terms for values in term.values())


def holds(condition: Sequence[Term], settled: Case) -> bool:
    """Tell whether a condition holds in a case."""
    return any(all(settled[name] in values for name, values in term.items()) for term in condition)


def _terms(names: Sequence[str], inside: Sequence[Case], outside: Sequence[Case]) -> tuple[Term, ...] | None:
    """Return the terms over `names` that tell inside from outside, None where these inputs do not tell them apart."""
    wanted = {tuple(case[name] for name in names) for case in inside}
    if wanted & {tuple(case[name] for name in names) for case in outside}:
        return None
    return tuple(_boxes(names, wanted))


def _boxes(names: Sequence[str], wanted: set[tuple[Any, ...]]) -> Iterator[Term]:
    """Yield boxes, one set of values for each name, that together hold exactly the tuples wanted."""
    columns = [frozenset(values) for values in zip(*wanted, strict=True)]
    size = 1
    for values in columns:
        size *= len(values)
    if size == len(wanted):
        yield dict(zip(names, columns, strict=True))
        return
    rests: dict[Any, set[tuple[Any, ...]]] = {}
    for first, *rest in wanted:
        rests.setdefault(first, set()).add(tuple(rest))
    alike: dict[frozenset[tuple[Any, ...]], set[Any]] = {}
    for first, rest in rests.items():
        alike.setdefault(frozenset(rest), set()).add(first)
    for rest, firsts in alike.items():
        for box in _boxes(names[1:], set(rest)):
            yield {names[0]: frozenset(firsts), **box}


def condition_words(condition: Sequence[Term], fields: Mapping[str, Field], domains: Values) -> Message:
    """Return a condition in words, "Parallel sets: 2 or more"."""
    shown = [_term_words(term, fields, domains) for term in condition[:MAX_TERMS]]
    words = "; or ".join(map(str, shown))
    if len(condition) > MAX_TERMS:
        return message("{first}; or in {count} other ways", first=words, count=len(condition) - MAX_TERMS)
    return message("{first}", first=words)


def _term_words(term: Term, fields: Mapping[str, Field], domains: Values) -> Message:
    parts = [
        message(
            "{label}: {values}", label=fields[name].label, values=_values_words(values, fields[name], domains[name])
        )
        for name, values in term.items()
        if not values >= set(domains[name])
    ]
    return message("{parts}", parts=", and ".join(map(str, parts)))


def _values_words(values: frozenset[Any], field: Field, domain: Sequence[object]) -> Message:
    """Return some of the values of an input in words: runs of a number, or what it is not where that is shorter.

    Beside other inputs it may not count; there it stands at its default, which is none of its domain.
    """
    if not values <= set(domain):
        counted = values & set(domain)
        if not counted:
            return message("does not apply")
        return message("{values}, or does not apply", values=_values_words(frozenset(counted), field, domain))
    if field.choices:
        others = [value for value in domain if value not in values]
        if len(others) == 1 and len(values) > 1:
            return message("not {value}", value=lower(field.shown(others[0])))
        return _joined([lower(field.shown(value)) for value in domain if value in values])
    return _joined([_run_words(run, field, domain) for run in _runs(values, domain)])


def _joined(parts: Sequence[object]) -> Message:
    """Return words with "or" between; of many the first few."""
    named = list(map(str, parts[:MAX_NAMED]))
    comma = "; " if any("," in each for each in named) else ", "
    if len(parts) > MAX_NAMED:
        return message("{named} or {count} more", named=comma.join(named), count=len(parts) - MAX_NAMED)
    return message("{named}", named=" or ".join(filter(None, [comma.join(named[:-1]), named[-1]])))


def lower(words: object) -> str:
    """Return the words of a choice as they stand inside a sentence; a name in capitals stays."""
    text = str(words)
    return text[:1].lower() + text[1:] if text[1:2].islower() or text[1:2] == " " else text


def _runs(values: frozenset[Any], domain: Sequence[object]) -> list[list[object]]:
    runs: list[list[object]] = []
    for before, value in zip([None, *domain], domain, strict=False):
        if value in values:
            if runs and runs[-1][-1] == before:
                runs[-1].append(value)
            else:
                runs.append([value])
    return runs


def _run_words(run: Sequence[object], field: Field, domain: Sequence[object]) -> Message:
    """Return values that follow each other as from where to where they go."""
    low, high = field.shown(_end(run[0], "low")), field.shown(_end(run[-1], "high"))
    if low == high:
        return message("{low}", low=low)
    if run[-1] == domain[-1]:
        return message("{low} or more", low=low)
    if run[0] == domain[0]:
        return message("up to {high}", high=high)
    return message("{low} to {high}", low=low, high=high)


def _end(value: object, end: str) -> object:
    return getattr(value, end) if isinstance(value, Stretch) else value
