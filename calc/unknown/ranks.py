"""What an answer asks for, as pairs (family, amount): the orders by which `safe_side` tells which answer is safe."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from calc.answer import Answer

Rank = tuple[tuple[str, float], ...]
Order = Callable[[Answer], Rank]

OPENS = ("assured", "likely", "slow", "not-assured", "does-not-open", "beyond-rating")
# What a plan says of a part: nothing to do, something to look at, something to do. What must not be done is no more
# and no less than these.
_DECISIONS = {
    **dict.fromkeys(("need-not", "listing"), 0.0),
    **dict.fromkeys(("in-order", "below"), 1.0),
    **dict.fromkeys(("wise", "look", "ask"), 2.0),
    **dict.fromkeys(("bond", "change", "build", "act"), 3.0),
}


def size(answer: Answer) -> Rank:
    """Return the area of a wire in its metal, and how many of them; nothing where no bond is needed."""
    values = answer.values
    if not values.get("area_cmil"):
        return (("", 1.0 if values.get("bond") else 0.0), ("", 0.0))
    return ((str(values["metal"]), float(values["area_cmil"])), ("", float(values.get("count") or 1)))


def verdict(*least_first: str) -> Order:
    """Return the order of answers whose code begins with one of these words, least demanding first."""

    def rank(answer: Answer) -> Rank:
        word = next(
            (each for each in least_first if answer.answer_code == each or answer.answer_code.startswith(f"{each}-")),
            None,
        )
        if word is None:
            return (("another answer", 0.0),)
        values = answer.values
        wire = (str(values["metal"]), float(values["area_cmil"])) if values.get("area_cmil") else ("", 0.0)
        return (("", float(least_first.index(word))), wire)

    return rank


def parts(answer: Answer) -> Rank:
    """Return what a list of parts asks for, row by row: the size of each wire, by its metal."""
    from calc.conductors.area import undated_area

    def one(key: str, said: object) -> tuple[str, float]:
        size, _, metal = str(said).partition("-")
        try:
            return f"{key} {metal}", float(undated_area(size))
        except (KeyError, ValueError):
            return f"{key} {said}", 0.0

    sizes: Mapping[str, object] | None = answer.values["sizes"]
    return tuple(one(key, said) for key, said in sizes.items()) if sizes else ()


def decisions(*amounts: str) -> Order:
    """Return the order of plans by what they say of each part, then by these values of theirs; None counts as 0."""

    def one(key: str, decision: str) -> tuple[str, float]:
        return (key, _DECISIONS[decision]) if decision in _DECISIONS else (f"{key} {decision}", 0.0)

    def rank(answer: Answer) -> Rank:
        rows = tuple(one(key, decision) for key, decision in answer.values["decisions"].items())
        return (*rows, *(("", float(answer.values[name] or 0)) for name in amounts))

    return rank


def amount(*names: str, sign: int = 1) -> Order:
    """Return the order of answers by some of their values: the larger counts as safe, with -1 the smaller."""
    return lambda answer: tuple(("", sign * float(answer.values[name] or 0)) for name in names)


def both(first: Order, second: Order) -> Order:
    """Return the order by two orders together: an answer is on the safe side in both."""
    return lambda answer: (*first(answer), *second(answer))


def clamp(answer: Answer) -> Rank:
    """Return the order of clamp readings: a real current before one that may be none, and how much; by its cause."""
    values = answer.values
    return ((str(values["causes"][0]), float(values["verdict"] == "real")), ("", float(values["ampere_high"])))
