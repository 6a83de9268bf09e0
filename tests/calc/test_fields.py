"""Every field of every calculator says what it reads: a choice, an amount with its unit and ends, sizes in order."""

import re
from fractions import Fraction

import pytest

from calc.conductors.area import area
from calc.editions import EDITIONS
from calc.field import read_field
from calc.found.declared import FOUND
from calc.registry import CALCULATORS
from calc.unit_names import meanings
from calc.written import DECIMALS, plain_number
from tests.calc.strategies import reads

FIELDS = [(slug, name, asked) for slug, each in CALCULATORS.items() for name, asked in each.fields.items()]
KINDS = {"choice", "several", "list", "whole number", "quantity", "size", "text"}
SITE_CHECKS = {(slug, FOUND) for slug, each in CALCULATORS.items() if each.site_check}  # a size and its metal
FREE_TEXT = {("compare-editions", "case"), *SITE_CHECKS}
RATIOS = {"x_over_r", "utility_x_over_r", "voltage_factor"}


def of_kind(*kinds):
    return [each for each in FIELDS if each[2].kind in kinds]


def test_every_field_is_of_a_known_kind_and_only_links_of_cases_and_what_was_found_are_free_text():
    assert {asked.kind for _, _, asked in FIELDS} == KINDS
    assert {(slug, name) for slug, name, _ in of_kind("text")} == FREE_TEXT


def test_a_choice_names_each_of_its_values_once():
    for slug, name, asked in of_kind("choice", "several"):
        values = [choice.value for choice in asked.choices]
        labels = [str(choice.label) for choice in asked.choices]
        assert len(values) >= 2 and len(set(values)) == len(values), (slug, name)
        assert len(set(labels)) == len(labels) and all(labels), (slug, name)


def test_every_amount_has_a_unit_unless_it_is_a_ratio():
    for slug, name, asked in of_kind("quantity"):
        assert (asked.unit == "") == (name in RATIOS), (slug, name)
        assert not asked.unit or meanings(asked.unit.replace("°", "deg")) == (asked.unit,), (slug, name)


def typed(value):
    return plain_number(round(value, DECIMALS))


@pytest.mark.parametrize("kind", ["quantity", "whole number"])
def test_a_field_takes_its_ends_and_nothing_beyond_them(kind):
    for slug, name, asked in of_kind(kind):
        step = 1 if kind == "whole number" else 10**-DECIMALS
        assert asked.minimum < asked.maximum, (slug, name)
        for end in (asked.minimum, asked.maximum):
            assert read_field(asked, typed(end)) == end, (slug, name)
        assert not reads(asked, typed(asked.maximum + max(step, asked.maximum * 1e-6))), (slug, name)
        assert not reads(asked, typed(asked.minimum - step)), (slug, name)


def test_a_list_takes_its_fewest_and_its_most_values_with_their_ends_and_nothing_beyond():
    for slug, name, asked in of_kind("list"):
        fewest, most = asked.items
        ends = asked.domain[:1] + asked.domain[-1:] or (typed(asked.minimum), typed(asked.maximum))
        assert all(reads(asked, ",".join([end] * many)) for end in ends for many in (fewest, most)), (slug, name)
        assert not reads(asked, ",".join([ends[0]] * (most + 1))), (slug, name)
        assert fewest == 1 or not reads(asked, ",".join([ends[0]] * (fewest - 1))), (slug, name)
        if not asked.domain:
            assert not reads(asked, ",".join([typed(asked.maximum + 1)] * fewest)), (slug, name)
            assert not reads(asked, ",".join([typed(asked.minimum / 2)] * fewest)), (slug, name)


@pytest.mark.parametrize("edition", EDITIONS)
def test_sizes_are_listed_from_the_smallest_to_the_largest_as_links_carry_them(edition):
    for slug, name, asked in of_kind("size"):
        areas = [area(size, edition) for size in asked.domain]
        assert areas == sorted(set(areas)) and len(areas) > 20, (slug, name)
        assert all(read_field(asked, size) == size for size in asked.domain), (slug, name)


def test_trade_sizes_are_listed_from_the_smallest_to_the_largest():
    sized = [(slug, name, asked) for slug, name, asked in of_kind("choice") if asked.domain]
    assert {name for _, name, _ in sized} == {"trade_size"} and len(sized) >= 4
    assert {(slug, name) for slug, name, _ in FIELDS if name == "trade_size"} == {each[:2] for each in sized}
    for slug, name, asked in sized:
        inches = [sum(map(Fraction, size.split("-"))) for size in asked.domain]
        assert inches == sorted(set(inches)), (slug, name)
        assert set(asked.domain) <= {choice.value for choice in asked.choices}, (slug, name)


def test_what_to_enter_names_the_ends_and_an_example_that_is_taken():
    for slug, name, asked in of_kind("quantity"):
        words = str(asked.enter)
        given = re.search(r"for example (.+?)\.(?: |$)", words)[1]
        for each in given.split(" or "):
            assert reads(asked, each), (slug, name, each)
            assert not asked.number or re.fullmatch(r"[\d.]+", each), (slug, name, each)
        assert f"{asked.maximum:,}" in words, (slug, name)
        assert asked.minimum < 1e-6 or f"{asked.minimum:,}" in words, (slug, name)


def test_what_to_enter_for_a_size_names_the_smallest_and_the_largest():
    for _, name, asked in of_kind("size"):
        assert str(asked.suggestions[0]) in str(asked.enter) and str(asked.suggestions[-1]) in str(asked.enter), name
