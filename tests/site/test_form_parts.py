"""What a form asks first: the kind, then what it takes; at most five fields, and none that decides is hidden chosen."""

import re
from html.parser import HTMLParser

import pytest

from calc import CALCULATORS
from calc.unknown.safe_side import offers_unknown, safe_side
from calc.unknown.states import WORD
from site_assets.build.form import form_html
from site_assets.build.form_parts import MAX_FIRST, asked_first, begins_unchosen, is_needed, most_shown

RUNTIME = {"folder": "", "library": "", "total": 0, "lock": ""}
DRAWN = "take-a-bond-away"


class Fields(HTMLParser):
    """The fields of a form as they stand before anyone touches it."""

    def __init__(self, html):
        super().__init__()
        self.first, self.second, self.chosen = {}, {}, {}
        self._in_second = False
        self.feed(html)

    def handle_starttag(self, tag, attributes):
        found = dict(attributes)
        if tag == "details" and found.get("class") == "more-fields":
            self._in_second = True
        if "data-field" in found:
            (self.second if self._in_second else self.first)[found["data-field"]] = found
        if tag == "input" and found.get("type") == "radio" and "checked" in found:
            self.chosen[found["name"]] = found["value"]

    def handle_endtag(self, tag):
        if tag == "form":
            self._in_second = True  # the part for tables has no fields


@pytest.mark.parametrize("slug", CALCULATORS)
def test_at_most_five_fields_are_shown_before_the_first_answer_whatever_kind_is_chosen(slug):
    calculator = CALCULATORS[slug]
    fields = Fields(form_html(calculator, RUNTIME))
    assert tuple(fields.first) == asked_first(calculator)
    assert 1 <= most_shown(calculator, tuple(fields.first)) <= MAX_FIRST == 5
    assert set(fields.first) | set(fields.second) == set(calculator.fields)


@pytest.mark.parametrize("slug", CALCULATORS)
def test_nothing_without_which_there_is_no_answer_stands_in_the_second_part(slug):
    calculator = CALCULATORS[slug]
    fields = Fields(form_html(calculator, RUNTIME))
    assert {name for name in calculator.fields if name not in calculator.defaults} <= set(fields.first)
    assert not any("data-needed" in each for each in fields.second.values())


@pytest.mark.parametrize("slug", CALCULATORS)
def test_what_kind_of_case_it_is_comes_before_what_depends_on_it(slug):
    calculator = CALCULATORS[slug]
    first = asked_first(calculator)
    for name in first:
        kinds = [other for other in calculator.fields[name].relevant_when if other in first]
        assert all(first.index(kind) < first.index(name) for kind in kinds), name


@pytest.mark.parametrize("slug", [slug for slug in CALCULATORS if slug != DRAWN])
def test_no_choice_and_no_count_of_the_first_part_is_chosen_for_the_reader(slug):
    calculator = CALCULATORS[slug]
    html = form_html(calculator, RUNTIME)
    first = asked_first(calculator)
    for name in first:
        field, default = calculator.fields[name], calculator.defaults.get(name)
        if not (field.kind == "choice" or field.whole_numbers) or default in (None, WORD, "not-given", "not-sure"):
            continue
        assert begins_unchosen(calculator, name, first)
        assert name not in Fields(html).chosen
        part = html[html.index(f'data-field="{name}"') :]
        part = part[: part.index("field-error")]
        assert f'data-default="{default}"' in part, "a link that leaves it out has this"
        assert not re.search(r"<option (?!value=\"\")[^>]*selected", part) and f'value="{default}" p' not in part


@pytest.mark.parametrize("slug", CALCULATORS)
def test_a_choice_that_nobody_made_is_sent_as_unknown_or_is_asked_for(slug):
    calculator = CALCULATORS[slug]
    fields = Fields(form_html(calculator, RUNTIME)).first
    for name in asked_first(calculator):
        if not begins_unchosen(calculator, name, tuple(fields)):
            continue
        unknown = offers_unknown(calculator.slug, name, calculator.fields[name])
        choice = calculator.fields[name].kind == "choice"
        assert (fields[name].get("data-unsettled") == WORD) == (choice and unknown)
        assert is_needed(calculator, name, tuple(fields)) == ("data-needed" in fields[name])
        assert ("data-needed" in fields[name]) != ("data-unsettled" in fields[name])


@pytest.mark.parametrize("slug", CALCULATORS)
def test_an_answer_follows_each_change_where_a_run_is_cheap_and_nowhere_else(slug):
    assert (" data-live " in form_html(CALCULATORS[slug], RUNTIME)) == (not safe_side(slug).heavy)


def test_what_is_hidden_until_a_kind_is_chosen_says_with_which():
    html = form_html(CALCULATORS["electrode-resistance"], RUNTIME)
    part = html[html.index('data-field="pin_ohm"') :]
    assert "data-counts-with=\"{&quot;soil&quot;: [&quot;four-pin&quot;]}\"" in part[: part.index(">")]
