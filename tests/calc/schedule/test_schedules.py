"""Every row of every schedule is what its own calculator answers."""

import random

import pytest

from calc import permalink
from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS

SLUGS = ("service-schedule", "transformer-schedule", "generator-schedule", "separate-building-schedule")


def sizes(result):
    return result.answer.values["sizes"]


def single(link):
    slug, pairs = permalink.read_case(link)
    edition = dict(permalink.read(link.partition("?")[2]))["edition"]
    return CALCULATORS[slug].run([*pairs, ("edition", edition)])


def jobs(slug, seed, count):
    """Give `count` random inputs of a schedule, every choice among them."""
    chance = random.Random(seed)
    declared = CALCULATORS[slug]
    texts = {"kva": ["9", "75", "112.5"], "device": ["15", "100", "225", "800", "4000"],
             "conductor": ["14", "8", "2", "3/0", "500kcmil", "1000kcmil"], "piping_device": ["15", "100"],
             "primary_device": ["70", "400"], "ring": ["2", "3/0"], "disconnects": ["3/0,1/0", "2x250kcmil,2,2"]}  # fmt: skip
    for _ in range(count):
        inputs = {"edition": chance.choice(EDITIONS)}
        for name, asked in declared.fields.items():
            if name in declared.defaults and name != "ring" and chance.random() < 0.3:
                continue
            if asked.several:
                values = [choice.value for choice in asked.choices]
                inputs[name] = ",".join(chance.sample(values, chance.randint(1, len(values))))
            elif asked.choices:
                inputs[name] = chance.choice(asked.choices).value
            elif asked.whole_numbers:
                inputs[name] = str(chance.choice((1, 2, 3, 6)))
            else:
                inputs[name] = chance.choice(texts[name])
        yield inputs


@pytest.mark.parametrize("slug", SLUGS)
def test_every_row_is_what_its_own_calculator_answers(slug):
    compared = 0
    for inputs in jobs(slug, seed=7, count=150):
        result = CALCULATORS[slug](**inputs)
        if result.outcome != "answer":
            continue
        for row, said in zip(result.answer.table.rows, sizes(result).values(), strict=True):
            if not row.link:
                assert said == "none"
                continue
            alone = single(row.link)
            assert alone.said == said
            if alone.answer and "size" not in alone.answer.values:
                assert str(row.cells["size"]) == str(alone.answer.headline)
                assert str(row.cells["why"]) == str(alone.answer.detail)
            elif alone.answer:
                assert str(row.cells["size"]) == f"{alone.answer.headline} {alone.answer.detail}"
            else:
                assert str(row.cells["size"]) == "Not covered here"
                assert str(alone.not_covered.why) in str(row.cells["why"])
            compared += 1
    assert compared > 300


@pytest.mark.parametrize("slug", SLUGS)
def test_a_part_says_where_it_starts_and_lands_why_and_by_which_section(slug):
    for inputs in jobs(slug, seed=11, count=60):
        result = CALCULATORS[slug](**inputs)
        for row in result.answer.table.rows if result.answer else ():
            assert all(str(words).strip() for words in row.cells.values())


@pytest.mark.parametrize("slug", SLUGS)
def test_no_part_is_named_twice_in_the_values(slug):
    for inputs in jobs(slug, seed=13, count=60):
        result = CALCULATORS[slug](**inputs)
        if result.answer:
            assert result.answer.values["parts"] == len(sizes(result)) == len(result.answer.table.rows)


@pytest.mark.parametrize("slug", SLUGS)
def test_the_headline_counts_what_is_to_be_installed_and_not_what_is_left_out(slug):
    spared = ("None: leave it out", "No bond needed", "No wire needed")
    left_out = 0
    for inputs in jobs(slug, seed=17, count=60):
        result = CALCULATORS[slug](**inputs)
        if result.answer:
            shown = [str(row.cells["size"]) for row in result.answer.table.rows]
            installed = [size for size in shown if not size.startswith(spared)]
            left_out += len(shown) - len(installed)
            assert str(result.answer.headline).split()[0] == str(len(installed))
    assert left_out or slug == "service-schedule"
