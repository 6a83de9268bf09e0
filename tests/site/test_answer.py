"""An answer as HTML: links to other calculators, numbers with their units, each source once, a note to copy."""

import ast
import re
from pathlib import Path

import pytest

from calc.linked_words import words_of_code
from calc.registry import CALCULATORS
from calc.trace import MARK_WORDS
from site_assets.render.answer import result_html
from site_assets.render.note import note

ROOT = Path(__file__).parents[2]


def html_of(slug, edition="2023", **inputs):
    return result_html(CALCULATORS[slug](edition=edition, **inputs))


@pytest.mark.parametrize(
    ("slug", "inputs", "named"),
    [
        (
            "conductor-name",
            {"where": "past-device", "from_part": "enclosure", "to_part": "equipment"},
            "equipment-grounding-conductor",
        ),
        (
            "knockouts-over-250-volts",
            {"system": "480Y/277", "raceway": "rigid-metal-conduit", "fitting": "two-locknuts"},
            "equipment-bonding-jumper",
        ),
        ("equipment-bonding-jumper", {"device": "60", "joins": "flexible-raceway"}, "raceway-as-grounding-path"),
        ("jumper-withstand", {"fault_current": "1000", "device": "1000"}, "device-clearing"),
    ],
)
def test_a_calculator_that_an_answer_names_is_a_link(slug, inputs, named):
    links = re.findall(r'<a href="([a-z-]+)\.html">', html_of(slug, **inputs))
    assert links == [named]
    assert named in CALCULATORS


def not_covered() -> list[tuple[ast.expr, list[ast.expr]]]:
    """Return, of every case that the code leaves out, where to look and the calculators it declares."""
    found = []
    for path in sorted(set((ROOT / "calc").rglob("*.py")) - {ROOT / "calc" / "scope.py"}):
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            kind = ast.unparse(call.func) if isinstance(call, ast.Call) else ""
            if kind == "NotCovered":
                found.append((call.args[1], call.args[2:]))
            elif kind == "OutOfScope":
                found.append((call.args[3], [slug for each in call.args[4:] for slug in each.elts]))
    return found


def test_a_case_not_covered_leads_to_the_calculators_it_declares_and_to_no_other():
    """The words "ungrounded conductors" name no calculator; "supply-side bonding jumper" in them names one."""
    elsewhere = html_of("main-bonding-jumper", conductor="1750kcmil", metal="aluminum")
    assert "as the ungrounded conductors" in elsewhere and 'href="grounded-conductor.html"' not in elsewhere
    wireway = html_of("main-bonding-jumper", conductor="3/0", place="ahead-of-service-disconnects")
    assert re.findall(r'href="([a-z-]+)\.html">', wireway) == ["supply-side-bonding-jumper"]


def test_what_a_case_not_covered_declares_is_a_calculator_and_where_to_look_leads_there():
    cases = not_covered()
    assert len(cases) > 60
    for where, slugs in cases:
        declared = [slug.value for slug in slugs]
        assert set(declared) <= set(CALCULATORS), declared
        look_in = " ".join(str(each.value) for each in ast.walk(where) if isinstance(each, ast.Constant))
        for slug in CALCULATORS:
            if re.search(rf"under {slug.replace('-', '[ -]')} \(", look_in.lower()):
                assert slug in declared, look_in


def test_a_number_in_an_answer_stays_with_its_unit():
    html = html_of("earth-only-return", device="20", voltage_to_ground="277", electrode_ohm="6")
    assert 'Nothing assures that <span class="whole">46.2 A</span> opens' in html
    assert 'the metal is at <span class="whole">277 V</span>' in html


@pytest.mark.parametrize("slug", list(CALCULATORS))
def test_a_step_names_no_source_twice(slug):
    html = result_html(CALCULATORS[slug](**CALCULATORS[slug].example))
    for step in re.findall(r'<li class="step">.*?</li>', html):
        cites = re.findall(r'<p class="step-cite">.*?</p>', step)
        assert len(cites) == len(set(cites)), step


def note_of(slug, edition="2023", **inputs):
    return note(CALCULATORS[slug](edition=edition, **inputs)).splitlines()


def test_a_note_holds_what_was_entered_the_answer_and_where_the_edition_states_it():
    assert note_of("main-bonding-jumper", conductor="500kcmil", sets="2") == [
        "Main bonding jumper: 2/0 AWG copper wire or larger",
        "Entered: Largest ungrounded (hot) conductor: 500 kcmil; Sets in parallel: 2.",
        "Assumed: Jumper material: copper. If you choose “aluminum” instead: 4/0 AWG aluminum wire or larger.",
        (
            "Assumed: Location of the jumper: In a service disconnect enclosure. If you choose “In a meter enclosure "
            "or wireway ahead of several service disconnects” instead: not covered here."
        ),
        (
            "Assumed: How the system is grounded: Solidly grounded. If you choose “Ungrounded: no system conductor "
            "grounded” instead: not covered here."
        ),
        "Assumed: One more decides: Type of jumper.",
        "Table 250.102(C)(1), 2023 edition.",
    ]


def test_a_note_says_when_its_section_is_unverified_and_when_no_edition_was_chosen(marked):
    marked("jumpers/supply_side_size", "2026", "memory")
    unverified = note_of("main-bonding-jumper", edition="2026", conductor="3/0")
    assert "Table 250.102(C)(1), 2026 edition (unverified: read the book)." in unverified
    assert any(line.startswith("Not verified for the 2026 edition") for line in unverified)
    pipe = note(CALCULATORS["water-pipe-bonding"](conductor="500kcmil", sets="4"))
    assert "No edition picked. Showing 2023. The edition decides. 2017: 250 kcmil copper wire or larger." in pipe
    jumper = note(CALCULATORS["main-bonding-jumper"](conductor="3/0"))
    assert "No edition picked" not in jumper and "The answer is the same in all editions since 2017." in jumper


def test_a_note_of_a_case_not_covered_says_where_to_look():
    told = note_of("main-bonding-jumper", conductor="3/0", place="feeder-panel")
    assert told[0].startswith("Main bonding jumper: not covered.")
    assert "equipment grounding conductor (250.122)" in told[0]


def test_a_note_of_a_schedule_lists_each_part_with_its_size_and_section():
    schedule = CALCULATORS["service-schedule"]
    told = note(schedule(**schedule.example)).splitlines()
    assert sum(line.startswith("- ") for line in told) == len(schedule(**schedule.example).answer.table.rows)
    assert any(line.startswith("- Main bonding jumper; ") and "Table 250.102(C)(1)" in line for line in told)


def test_every_answer_to_press_has_its_note_and_no_example_has():
    for calculator in CALCULATORS.values():
        result = calculator(**calculator.example)
        assert "data-answer-note" in result_html(result)
        assert "data-answer-note" not in result_html(result, actions=False)


def test_a_link_that_must_be_mended_shows_what_it_was_answered_before_what_to_mend():
    html = html_of("main-bonding-jumper", conductor="12-2", said="4-copper")
    assert "The link was made with: 4 AWG copper" in html and "There is no answer until" in html
    assert html.index("said-earlier") < html.index('data-outcome="fix"')
    assert "said-earlier" not in html_of("main-bonding-jumper", conductor="12-2")
    assert "said-earlier" not in html_of("main-bonding-jumper", conductor="3/0", said="4-copper")


def test_no_reader_is_shown_the_code_of_an_answer():
    html = html_of("main-bonding-jumper", conductor="500kcmil", said="2-copper")
    assert "The link was made with: 2 AWG copper" in html and "The answer now: 1/0 AWG copper" in html
    assert "2-copper" not in html and "1/0-copper" not in html
    barn = CALCULATORS["livestock-equipotential-plane"]
    plan = result_html(barn(**barn.example, said="needed,x.y"))
    assert "The link was made with another answer." in plan and "x.y" not in plan
    assert words_of_code("conductor-name") and words_of_code("yes-no") is None and words_of_code("9/0-copper") is None


def test_a_link_of_the_handbook_itself_carries_no_earlier_answer():
    schedule = CALCULATORS["service-schedule"]
    links = re.findall(r'href="(\.\./calculators/[^"]+)"', result_html(schedule(**schedule.example)))
    assert len(links) > 4 and not any("said=" in link for link in links)


def test_the_gravest_warning_comes_first_and_what_is_not_verified_last():
    html = html_of("pool-bonding-plan", edition="2026", kind="in-ground-conductive", parts="rebar,pump")
    told = re.findall(r'<p class="warning">(.*?)</p>', html)
    assert len(told) > 1 and html.count('<div class="warnings">') == 1
    assert told[0].startswith("If anyone feels a tingle") and told[-1].startswith("Not verified for the 2026 edition")
    result = CALCULATORS["clamp-reading"](**CALCULATORS["clamp-reading"].example)
    grave = [words in result.trace.grave for words in result.gravest_warnings]
    assert any(grave) and grave == sorted(grave, reverse=True)
    assert sorted(map(str, result.gravest_warnings)) == sorted(map(str, result.warnings)), "none is lost"


def test_a_life_that_hangs_on_it_stands_above_a_list_and_the_rest_below():
    html = html_of("pool-bonding-plan", edition="2020", kind="in-ground-conductive", parts="rebar,pump")
    assert html.index('<div class="warnings">') < html.index("<table")
    schedule = html_of("service-schedule", conductor="500kcmil", electrodes="rod")
    assert schedule.index("<table") < schedule.index('<div class="warnings">')


def test_three_notes_are_read_at_once_and_none_is_lost():
    result = CALCULATORS["system-bonding-jumper"](**CALCULATORS["system-bonding-jumper"].example)
    html, notes = result_html(result), len(result.trace.notes)
    assert notes > 3
    folded = html[html.index('<details class="more-notes">') : html.index("</details>", html.index("more-notes"))]
    assert folded.count("<li>") == notes - 3
    few = html_of("main-bonding-jumper", conductor="3/0")
    assert "more-notes" not in few and '<ul class="answer-notes"><li>' in few


@pytest.mark.parametrize("mark", MARK_WORDS)
def test_a_ring_never_stands_without_its_words(mark, marked):
    marked("jumpers/supply_side_size", "2023", mark)
    html = html_of("main-bonding-jumper", conductor="3/0")
    basis = re.search(r'<p class="answer-basis">.*?</p>', html)[0]
    assert f'data-mark="{mark}"' in basis and str(MARK_WORDS[mark]) in basis
    for ring in re.finditer(r'<span class="mark" data-mark="(\w+)">(.*?)</span>(.{0,90})', html):
        assert str(MARK_WORDS[ring[1]]) in ring[0] or (ring[1] == "memory" and "not verified" in ring[0]), ring[0]
    key = re.search(r'<p class="marks-key">.*?</p>', html)[0]
    told = "not verified: read the book" if mark == "memory" else str(MARK_WORDS[mark])
    assert f'data-mark="{mark}"></span> {told}' in key


def test_the_edition_stands_in_the_head_of_the_card_and_whether_it_was_picked():
    assert '<p class="answer-edition">NEC 2020</p>' in html_of("main-bonding-jumper", edition="2020", conductor="3/0")
    assert "NEC 2023, not picked" in result_html(CALCULATORS["main-bonding-jumper"](conductor="3/0"))


def test_a_list_of_parts_has_part_from_and_to_and_size_first_and_its_inputs_in_one_line():
    schedule = CALCULATORS["service-schedule"]
    html = result_html(schedule(**schedule.example))
    assert re.findall(r'<th scope="col">([^<]+)</th>', html)[:3] == ["Part", "From, to", "Size"]
    assert html.index("parts-list") < html.index('<details class="answer-inputs">')
    rows = schedule(**schedule.example).answer.table.rows
    assert html.count('class="part-size"') == html.count('class="part-why"') == len(rows)
    plan = html_of("pool-bonding-plan", edition="2026", kind="in-ground-conductive", parts="rebar,pump")
    assert re.findall(r'<th scope="col">([^<]+)</th>', plan)[:2] == ["Part", "What to do"]
    plan = re.sub("<pre.*?</pre>", "", plan, flags=re.DOTALL)  # a note to copy has no rings, and says it in words
    assert "(unverified: read the book)" not in plan and 'data-mark="memory"' in plan
