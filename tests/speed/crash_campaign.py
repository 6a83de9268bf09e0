"""Runs every calculator on random inputs, half of them hostile, and counts how each run ends.

`python -m tests.speed.crash_campaign [COUNT]`: COUNT inputs a calculator, 100,000 unless told. Ends with 1 where
anything crashed, and prints the inputs that did.
"""

import json
import random
import sys
from concurrent.futures import ProcessPoolExecutor

from calc import permalink
from calc.catalogue import CALCULATORS
from calc.declare import Calculator
from calc.editions import EDITIONS
from calc.plain import plain_result
from tests.calc.strategies import HOSTILE, kind_of, others, spellings, texts

COUNT = 100_000
SHOWN = 3
OUTCOMES = ("answer", "fix", "not_covered")
LETTERS = "0123456789/.,-+ xXaAftinkcmilMWG\0\u202e'\"<>{}%&?=;#²½٣"


def main(count: int) -> int:
    """Run the campaign; give the number of crashes."""
    print(f"{'calculator':<30}{'answers':>10}{'fix':>10}{'not covered':>13}{'crashes':>10}")
    crashes = 0
    with ProcessPoolExecutor() as pool:
        for slug, ends in zip(CALCULATORS, pool.map(ends_of, CALCULATORS, [count] * len(CALCULATORS)), strict=True):
            answers, fix, outside, crashed = (ends[end] for end in (*OUTCOMES, "crash"))
            print(f"{slug:<30}{answers:>10,}{fix:>10,}{outside:>13,}{crashed:>10,}", flush=True)
            crashes += crashed
    return crashes


def ends_of(slug: str, count: int) -> dict[str, int]:
    """Give how many of `count` runs of a calculator ended in each way; print the first inputs that crashed."""
    ends = dict.fromkeys((*OUTCOMES, "crash"), 0)
    chance = random.Random(slug)
    for number in range(count):
        pairs = random_pairs(CALCULATORS[slug], chance, hostile=number % 2 == 0)
        try:
            ends[run(CALCULATORS[slug], pairs)] += 1
        except Exception as crash:  # noqa: BLE001 (any exception at all is what is looked for)
            ends["crash"] += 1
            if ends["crash"] <= SHOWN:
                print(f"{slug} {pairs!a:.2000}: {type(crash).__name__}: {crash!a:.200}", file=sys.stderr)
    return ends


def run(calculator: Calculator, pairs: list[tuple[str, str]]) -> str:
    """Give the outcome of one run, shown as JSON and as the link that restores it, as a page shows it."""
    result = calculator.run(pairs)
    assert result.outcome in OUTCOMES
    shown = json.dumps(plain_result(result), allow_nan=False)
    assert len(shown) < 100_000, "the result grows with what was typed"
    if result.outcome != "fix":
        again = calculator.run(permalink.read(permalink.write(result).partition("?")[2]))
        assert (again.outcome, again.said, again.inputs) == (result.outcome, result.said, result.inputs)
    return result.outcome


def random_pairs(calculator: Calculator, chance: random.Random, *, hostile: bool) -> list[tuple[str, str]]:
    """Give names and texts: valid ones, in hostile runs with one or more of them spoilt, doubled or unknown."""
    pairs = [("edition", chance.choice(EDITIONS))]
    if chance.random() < 0.5:
        changed = chance.sample(sorted(calculator.fields), min(len(calculator.fields), chance.randint(0, 4)))
        start = dict(calculator.example) | {name: valid_text(calculator, name, chance) for name in changed}
        pairs += [(name, text) for name, text in start.items() if name != "edition"]
    else:
        left_out = chance.random()
        names = [name for name in calculator.fields if name not in calculator.defaults or chance.random() > left_out]
        pairs += [(name, valid_text(calculator, name, chance)) for name in names]
    if hostile:
        for _ in range(chance.choice((1, 1, 1, 2, 3, 8))):
            spoil(pairs, calculator, chance)
    return pairs


def valid_text(calculator: Calculator, name: str, chance: random.Random) -> str:
    """Give a text that the field takes, in any of its spellings."""
    if kind_of(calculator.slug, name) == "case":
        single = chance.choice(others())
        pairs = random_pairs(single, chance, hostile=chance.random() < 0.1)
        return permalink.case_of(single.slug, [pair for pair in pairs if "\ud800" not in "".join(pair)])
    text = chance.choice(texts(calculator.slug, name))
    return chance.choice((text, *spellings(kind_of(calculator.slug, name), text)))


def spoil(pairs: list[tuple[str, str]], calculator: Calculator, chance: random.Random) -> None:
    """Make one of the pairs hostile, or add one."""
    if not pairs:
        return
    spot, kind = chance.randrange(len(pairs)), chance.random()
    name, text = pairs[spot]
    if kind < 0.4:
        pairs[spot] = (name, chance.choice(HOSTILE))
    elif kind < 0.6:
        pairs[spot] = (name, "".join(chance.choices(LETTERS, k=chance.randint(0, 12))))
    elif kind < 0.7:
        pairs[spot] = (name, mangled(text, chance))
    elif kind < 0.75:
        pairs[spot] = (chance.choice(HOSTILE), text)
    elif kind < 0.8:
        pairs.append((name, text))
    elif kind < 0.85:
        pairs.append((chance.choice(("said", "h", "q", "edition", "working")), chance.choice((*HOSTILE, "2/0-copper"))))
    elif kind < 0.9:
        del pairs[spot]
    else:
        other = chance.choice(sorted(calculator.fields))
        pairs[spot] = (name, valid_text(calculator, other, chance))  # what another field would take


def mangled(text: str, chance: random.Random) -> str:
    """Give a text with one letter put in, taken out or written anew."""
    spot = chance.randrange(len(text) + 1)
    return text[:spot] + chance.choice(("", chance.choice(LETTERS))) + text[spot + chance.randint(0, 1) :]


if __name__ == "__main__":
    sys.exit(1 if main(int(sys.argv[1]) if len(sys.argv) > 1 else COUNT) else 0)
