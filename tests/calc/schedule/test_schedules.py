"""Whole jobs: the worked cases, and every row equal to what its own calculator answers."""

import itertools
import random

import pytest

from calc import permalink
from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS
from tests.cases.read import cases, named

SLUGS = ("service-schedule", "transformer-schedule", "generator-schedule", "separate-building-schedule")
WORKED = [(slug, pair) for slug in SLUGS for pair in cases(f"schedule/{slug.replace('-', '_')}")]


def sizes(result):
    return result.answer.values["sizes"]


@pytest.mark.parametrize(("slug", "pair"), WORKED, ids=[f"{slug}-{named(pair)}" for slug, pair in WORKED])
def test_a_worked_case_has_the_sizes_of_its_source(slug, pair):
    edition, case = pair
    result = CALCULATORS[slug](edition=edition, **case["inputs"])
    assert {part: sizes(result).get(part) for part in case["sizes"]} == case["sizes"]
    assert not set(case.get("absent", ())) & set(sizes(result))
    if "current" in case:
        first = result.working.steps[0]
        assert first.unit == "A" and round(first.value, 1) == case["current"]
    if "conductor" in case:
        assert any(f"conductor={case['conductor']}&" in row.link for row in result.answer.table.rows)
    if "taps" in case:
        link = next(row.link for row in result.answer.table.rows if "grounding-electrode" in row.link)
        assert single(link).answer.values["taps"] == case["taps"]


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
            if name in declared.defaults and chance.random() < 0.3:
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
            if alone.answer:
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


@pytest.mark.parametrize(
    ("slug", "inputs", "field"),
    [
        ("service-schedule", dict(conductor="3/0"), "electrodes"),
        ("service-schedule", dict(conductor="3/0", electrodes="rod", metal_parts="other-metal"), "piping_device"),
        ("service-schedule", dict(conductor="3/0", electrodes="rod,rod"), "electrodes"),
        ("service-schedule", dict(conductor="3/0", electrodes="fence"), "electrodes"),
        ("service-schedule", dict(conductor="3/0", electrodes="rod", disconnects="3/0,x"), "disconnects"),
        ("transformer-schedule", dict(device="100"), "kva"),
        ("transformer-schedule", dict(kva="0", device="100"), "kva"),
        ("transformer-schedule", dict(kva="75 A", device="100"), "kva"),
        ("transformer-schedule", dict(kva="75"), "device"),
        ("generator-schedule", dict(neutral="joined", breaker="yes", conductor="3/0"), "device"),
        ("generator-schedule", dict(neutral="switched", breaker="no", conductor="3/0"), "electrodes"),
        ("generator-schedule", dict(breaker="no", conductor="3/0"), "neutral"),
        ("separate-building-schedule", dict(device="100", conductor="3"), "electrodes"),
    ],
)
def test_what_is_missing_or_unreadable_is_asked_for_by_name(slug, inputs, field):
    result = CALCULATORS[slug](edition="2023", **inputs)
    assert result.outcome == "fix" and [each.field for each in result.fix] == [field]


def warnings(slug, **inputs):
    return [str(words) for words in CALCULATORS[slug](edition="2023", **inputs).working.warnings]


def test_a_secondary_conductor_just_under_its_device_is_warned_of_and_at_it_is_not():
    """Table 310.16: 4/0 copper carries 230 A at 75 °C. The next larger device is not allowed."""
    for device, warned in (("229", False), ("230", False), ("231", True)):
        said = warnings("transformer-schedule", kva="75", device=device, conductor="4/0")
        assert any("240.21(C)" in words and "230 A" in words for words in said) is warned


def test_without_a_conductor_the_smallest_that_carries_the_device_is_taken():
    for device, size in (("230", "4/0"), ("231", "250kcmil"), ("255", "250kcmil"), ("256", "300kcmil")):
        result = CALCULATORS["transformer-schedule"](edition="2023", kva="75", device=device)
        assert any(f"conductor={size}&" in row.link for row in result.answer.table.rows)


def test_parallel_secondary_conductors_are_never_smaller_than_1_0():
    result = CALCULATORS["transformer-schedule"](edition="2023", kva="30", device="100", sets="2")
    assert any("conductor=1/0&" in row.link for row in result.answer.table.rows)


def test_a_secondary_device_past_the_next_rating_over_125_percent_is_warned_of():
    """75 kVA at 208 V: 208.2 A, 125 % is 260.2 A, the next standard rating 300 A."""
    for device, warned in (("300", False), ("350", True)):
        said = warnings("transformer-schedule", kva="75", device=device, conductor="500kcmil")
        assert any("450.3(B)" in words for words in said) is warned


@pytest.mark.parametrize(("system", "section"), [("over-1000", "250.180"), ("direct-current", "250.160")])
def test_what_is_outside_the_rules_says_where_to_look(system, section):
    for edition in ("2017", "2020", "2023"):
        result = CALCULATORS["transformer-schedule"](edition=edition, kva="75", system=system, device="100")
        assert result.outcome == "not_covered" and section in str(result.not_covered.look_in)


def test_one_rod_alone_is_warned_of():
    """250.53(A)(2): a second electrode unless one measures 25 ohm or less."""
    for electrodes, warned in (("rod", True), ("water-pipe,rod", False)):
        said = warnings("service-schedule", conductor="2/0", electrodes=electrodes)
        assert any("25 ohm" in words and "250.53(A)(2)" in words for words in said) is warned


def test_a_warning_of_several_parts_names_them_once():
    said = warnings("service-schedule", conductor="10", electrodes="rod", raceway="metal")
    assert len(said) == len(set(said))


def test_each_disconnect_has_its_own_jumper_by_its_own_conductors():
    result = CALCULATORS["service-schedule"](
        edition="2023", conductor="500kcmil", electrodes="rod", disconnects="3/0,2x250kcmil,2"
    )
    found = [sizes(result)[f"main-bonding-jumper-{number}"] for number in (1, 2, 3)]
    assert found == ["4-copper", "1/0-copper", "8-copper"]  # 167,800, 500,000 and 66,360 cmil


def test_a_neutral_bond_past_the_first_is_always_listed_as_to_be_left_out():
    for slug, inputs in itertools.product(
        ("transformer-schedule",), (dict(place="source"), dict(place="first-disconnect"))
    ):
        result = CALCULATORS[slug](edition="2023", kva="75", device="225", **inputs)
        assert sizes(result)["second-neutral-bond"] == "none"
