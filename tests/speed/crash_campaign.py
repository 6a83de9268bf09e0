"""Runs every calculator on random inputs, half of them hostile, and looks at how each run ends and what it shows.

`python -m tests.speed.crash_campaign [--from 0] [--to 20] [SLUG ...]`: chunks of 5,000 inputs a calculator, each
with a seed of its own, so that a part can be run again alone; all are 100,000. Prints a line a chunk. Ends with 1 where
anything crashed or showed what no reader should see, and prints the inputs that did.
"""

import argparse
import json
import random
import re
import sys
import time
from collections import Counter
from concurrent.futures import ProcessPoolExecutor

from calc import permalink
from calc.calculator import Calculator, Result
from calc.editions import EDITIONS
from calc.json_output import result_to_dict
from calc.registry import CALCULATORS
from tests.calc.strategies import HOSTILE, kind_of, others, spellings, texts

CHUNK, CHUNKS = 5_000, 20
SHOWN = 3
OUTCOMES = ("answer", "fix", "not_covered")
LETTERS = "0123456789/.,-+ xXaAftinkcmilMWGµΩ°½″\0\u202e'\"<>{}%&?=;#²½٣"
BROKEN = re.compile(r"[{}]|\bNone\b(?! of)(?!: leave it out)|\bnan\b|\binf\b|\bTrue\b|\bFalse\b|\de[+-]?\d|  ")
MODELS = ("electrodes", "fault", "measure", "touch")
# Amperes up to the next ten and whole feet down, toward the safe side: three figures would give a worse bound.
FINER = ("available-fault-current", "longest-return-path")
NUMBER = re.compile(r"(?<![\w/.,-])\d[\d,]*(?:\.\d+)?(?![\w/(])")


def main(first: int, last: int, slugs: list[str]) -> int:
    """Run the chunks from `first` up to `last`; give the number of crashes."""
    began, total = time.monotonic(), Counter()
    ends = {slug: Counter() for slug in slugs}
    with ProcessPoolExecutor() as pool:
        for chunk in range(first, last):
            jobs = [pool.submit(ends_of, slug, chunk, CHUNK) for slug in slugs]
            for slug, job in zip(slugs, jobs, strict=True):
                ends[slug] += job.result()
            total = sum(ends.values(), Counter())
            second = round(time.monotonic() - began)
            print(f"chunk {chunk}: {total.total():,} inputs, {total['crash']:,} crashes, {second} s", flush=True)
    print(f"{'calculator':<32}{'answers':>10}{'fix':>10}{'not covered':>13}{'crashes':>10}")
    for slug, counts in ends.items():
        answers, fix, outside, crashed = (counts[end] for end in (*OUTCOMES, "crash"))
        print(f"{slug:<32}{answers:>10,}{fix:>10,}{outside:>13,}{crashed:>10,}")
    return total["crash"]


def ends_of(slug: str, chunk: int, count: int) -> Counter:
    """Return how many of `count` runs of a calculator ended in each way; print the first inputs that crashed."""
    ends = Counter()
    chance = random.Random(f"{slug} {chunk}")
    for number in range(count):
        pairs = random_pairs(CALCULATORS[slug], chance, hostile=number % 2 == 0)
        try:
            ends[run(CALCULATORS[slug], pairs)] += 1
        except Exception as crash:  # noqa: BLE001 (any exception at all is what is looked for)
            ends["crash"] += 1
            if ends["crash"] <= SHOWN:
                print(f"{slug} {pairs!a:.2000}: {type(crash).__name__}: {crash!a:.400}", file=sys.stderr, flush=True)
    return ends


def run(calculator: Calculator, pairs: list[tuple[str, str]]) -> str:
    """Return the outcome of one run, shown as JSON and as the link that restores it, as a page shows it."""
    result = calculator.run(pairs)
    assert result.outcome in OUTCOMES
    document = result_to_dict(result)
    shown = json.dumps(document, allow_nan=False)
    assert len(shown) < 100_000, "the result grows with what was typed"
    if result.outcome != "fix":
        again = calculator.run(permalink.read(permalink.write(result).partition("?")[2]))
        assert (again.outcome, again.answer_code, again.inputs) == (result.outcome, result.answer_code, result.inputs)
        for words in words_of(document | {"said": None}):  # what a link said is shown as it came
            assert not BROKEN.search(words), f"no reader should see: {words}"
    if result.answer:
        too_fine = figures_too_many(result)
        assert not too_fine, f"more figures than a model has: {too_fine} in {result.answer.headline}"
    return result.outcome


def words_of(document: object) -> list[str]:
    """Return every sentence and number that a result shows, in whatever part of it; no keys, no links, no inputs."""
    if isinstance(document, dict):
        hidden = ("inputs", "permalink", "formula")
        return [each for key, part in document.items() if key not in hidden for each in words_of(part)]
    if isinstance(document, list):
        return [each for part in document for each in words_of(part)]
    return [document] if isinstance(document, str) else []


def figures_too_many(result: Result) -> list[str]:
    """Return the numbers of a model's headline with more than three figures that nobody entered."""
    room = result.calculator.function.__module__.split(".")[1]
    if room not in MODELS or result.calculator.slug in FINER:
        return []
    entered = {str(value) for value in result.inputs.values()}
    numbers = [each.replace(",", "") for each in NUMBER.findall(str(result.answer.headline))]
    return [each for each in numbers if figures(each) > 3 and each not in entered]


def figures(number: str) -> int:
    """Return how many figures a written number has: 3 in 0.0125, in 12,500 and in 1.25."""
    if "." not in number:
        return len(number.strip("0"))
    return len(number.replace(".", "").lstrip("0"))


def random_pairs(calculator: Calculator, chance: random.Random, *, hostile: bool) -> list[tuple[str, str]]:
    """Return names and texts: valid ones, in hostile runs with one or more of them spoilt, doubled or unknown."""
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
    """Return a text that the field takes, in any of its spellings."""
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
    """Return a text with one letter put in, taken out or written anew."""
    spot = chance.randrange(len(text) + 1)
    return text[:spot] + chance.choice(("", chance.choice(LETTERS))) + text[spot + chance.randint(0, 1) :]


if __name__ == "__main__":
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--from", type=int, default=0, dest="first", help="the first chunk")
    asked.add_argument("--to", type=int, default=CHUNKS, dest="last", help="the chunk before which it ends")
    asked.add_argument("slugs", nargs="*", metavar="SLUG")
    chosen = asked.parse_args()
    sys.exit(1 if main(chosen.first, chosen.last, chosen.slugs or list(CALCULATORS)) else 0)
