"""What nobody knew, as HTML: an answer that depends, the defaults that decide, “don't know” in the forms."""

import re

import pytest

from calc import CALCULATORS, main_bonding_jumper
from calc.unknown.safe_side import offers_unknown, safe_side
from calc.unknown.states import UNKNOWN, read_open, takes_unknown
from site_assets.build.form import form_html
from site_assets.render.answer import result_html
from site_assets.render.note import note

RUNTIME = {"folder": "", "library": "", "total": 0, "lock": ""}


def test_an_answer_that_depends_shows_the_safe_one_first_then_the_question_then_the_others():
    html = result_html(main_bonding_jumper(edition="2023", conductor="500kcmil", conductor_metal="unknown"))
    assert 'data-outcome="depends"' in html and "Main bonding jumper: it depends" in html
    places = [
        html.index("On the safe side in every case:"),
        html.index("1/0 AWG copper wire or larger"),
        html.index('<a class="button" href="#field-conductor_metal">Hot conductor material</a>'),
        html.index("<b>Hot conductor material: not copper.</b> 2 AWG copper wire or larger"),
        html.index("Working, notes and sections below are those of the safe answer."),
    ]
    assert places == sorted(places)
    assert "compare-editions.html" not in html, "a case with something open is not compared"


def test_where_none_is_safe_it_says_so_and_shows_no_working_of_one_case():
    html = result_html(main_bonding_jumper(edition="2023", conductor="3/0", system_grounding="unknown"))
    assert "No one answer is on the safe side in every case." in html
    assert "On the safe side in every case:" not in html and '<section class="working">' not in html


def test_a_note_of_an_answer_that_depends_holds_each_condition_and_the_question():
    told = note(main_bonding_jumper(edition="2023", conductor="500kcmil", conductor_metal="unknown")).splitlines()
    assert told[:3] == [
        "Main bonding jumper: it depends. On the safe side: 1/0 AWG copper wire or larger",
        "- Hot conductor material: copper. Then: 1/0 AWG copper wire or larger",
        "- Hot conductor material: not copper. Then: 2 AWG copper wire or larger",
    ]
    assert told[3].startswith("To settle: Hot conductor material. It settles the answer.")
    assert any("Hot conductor material: unknown" in line for line in told)


def test_a_default_that_decides_stands_in_the_answer_and_is_no_warning():
    html = result_html(main_bonding_jumper(edition="2023", conductor="3/0"))
    assumed = html[html.index('<div class="assumed">') :]
    one = '<li><a href="#field-sets">Sets in parallel: 1</a>. If 2: 2 AWG copper wire or larger.</li>'
    assert one in assumed
    assumed = assumed[: assumed.index("</div>")]
    deciding = [each for each in main_bonding_jumper(edition="2023", conductor="3/0").assumed if each.decides]
    assert len(deciding) > 3 and assumed.count("</a>. If ") == len(deciding), "each with its other outcome"
    assert 'class="warning"' not in html


def test_the_same_in_all_editions_is_said_where_none_was_chosen_and_not_where_one_was():
    assert "The answer is the same in all editions since 2017." in result_html(main_bonding_jumper(conductor="3/0"))
    assert "in all editions" not in result_html(main_bonding_jumper(edition="2023", conductor="3/0"))


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_choice_can_be_left_open_in_the_form_once_and_nothing_stands_at_it_at_first(slug):
    html = form_html(CALCULATORS[slug], RUNTIME)
    for name, field in CALCULATORS[slug].fields.items():
        if not field.choices or field.several:
            continue
        part = html[html.index(f'data-field="{name}"') :]
        part = part[: part.find('data-field="', 12)] if part.find('data-field="', 12) > 0 else part
        found = re.findall(r'<(?:input|option)[^>]*value="unknown"[^>]*>', part)
        offered = not takes_unknown(field) or not (safe_side(slug).heavy or slug == "compare-editions")
        assert len(found) == int(offered), name
        if takes_unknown(field):
            assert not any("checked" in each or "selected" in each for each in found)


@pytest.mark.parametrize("slug", CALCULATORS)
def test_dont_know_stands_beside_each_number_and_size_that_may_be_open_and_writes_what_the_field_reads(slug):
    calculator = CALCULATORS[slug]
    html = form_html(calculator, RUNTIME)
    beside = dict(re.findall(r'data-leaves-open="([^"]+)" data-value="([^"]+)"', html))
    numbers = {name for name, field in calculator.fields.items() if field.kind in ("quantity", "whole number", "size")}
    assert set(beside) <= numbers and set(beside.values()) <= {"unknown"}
    for name, value in beside.items():
        assert read_open(calculator.fields[name], value) is UNKNOWN
        assert not safe_side(slug).enter.get(name) or name in safe_side(slug).only_with, "it would be asked for"


@pytest.mark.slices(8)
def test_what_the_form_offers_to_leave_open_ends_in_an_answer_and_not_in_asking_for_it(slice_number):
    """The example of each calculator, with one input left open after the other; a heavy one runs where it is asked."""
    offered = [
        (slug, name)
        for slug, calculator in CALCULATORS.items()
        for name, field in calculator.fields.items()
        if field.kind in ("quantity", "whole number", "size") and offers_unknown(slug, name, field)
        and not safe_side(slug).heavy and name in calculator.example
    ]  # fmt: skip
    assert len(offered) > 50
    for slug, name in offered[slice_number::8]:
        result = CALCULATORS[slug](**{**CALCULATORS[slug].example, name: "unknown"})
        assert not any(fix.field == name for fix in result.fix), (slug, name, str(result.fix[0].words))
