"""The drawing in the browser: presses by touch and keyboard, cases without a reload, words as in CPython, charts."""

import json
import re

import pytest
from playwright.sync_api import expect

from calc import permalink, take_a_bond_away
from site_assets.build.scene_svg import PRESETS
from site_assets.render.answer import result_html
from site_assets.render.scene import scene_parts
from site_assets.render.scene_range_parts import scene_range_parts

SLUG = "take-a-bond-away"
PAGE = f"calculators/{SLUG}.html"
START = 60_000  # ms for the runtime on a loaded machine
LEAST = 44  # pixels that a finger needs


def open_page(page, site, query=""):
    page.goto(f"{site}{PAGE}{query}")
    page.locator("figure.scene").scroll_into_view_if_needed()


def drawn(page, name):
    return page.locator(f"[id='{SLUG}-drawing-{name}']")


def to_press(page, name):
    return page.locator(f"[data-name='{name}']")


def marked(page, name, mark, value):
    expect(drawn(page, name)).to_have_attribute(f"data-{mark}", value, timeout=START)


def in_cpython(inputs):
    """Ask as the form does: all its fields in their order."""
    whole = {name: take_a_bond_away.defaults[name] for name in take_a_bond_away.fields} | inputs
    given = [(name, "" if value is None else str(value)) for name, value in whole.items()]
    return take_a_bond_away.run([("edition", "2023"), *given])


def test_every_case_is_shown_without_a_reload_and_reads_as_in_cpython(page, site):
    open_page(page, site, "?edition=2023&fault=panel")
    expect(page.locator("[data-result] .answer")).to_be_visible(timeout=START)
    page.evaluate("window.stayed = true")
    links = page.locator("[data-presets] a.button")
    assert links.count() == len(PRESETS) == 10
    for number, preset in enumerate(PRESETS):
        links.nth(number).click()
        here = in_cpython(preset.inputs)
        expect(page).to_have_url(re.compile(f"said={re.escape(here.answer_code)}$"))
        parts = scene_parts(here)
        page.locator("figure.scene:not([data-outdated])").wait_for()
        assert page.evaluate(
            """([twin, html]) => {
                 const same = (place, html) => {
                   const other = document.createElement("div");
                   other.innerHTML = html;
                   const shown = document.querySelector(place).cloneNode(true);
                   for (const each of shown.querySelectorAll(".chart-canvas")) each.replaceChildren();
                   return shown.innerHTML === other.innerHTML;
                 };
                 return [same("[data-scene-twin]", twin), same("[data-result]", html)];
               }""",
            [parts["twin"], result_html(take_a_bond_away.run(permalink.read(page.url.partition("?")[2])))],
        ) == [True, True], preset.name
        for name, words in parts["words"].items():
            assert drawn(page, name).text_content() == words
        for name, marks in parts["marks"].items():
            for mark, value in marks.items():
                assert drawn(page, name).get_attribute(f"data-{mark}") == value, (name, mark)
        for name, words in parts["names"].items():
            assert to_press(page, name).get_attribute("aria-label") == words
        assert page.locator("[data-scene-look]").text_content() == str(preset.look)
    assert page.evaluate("window.stayed")


def test_pressing_a_bond_takes_it_away_then_loosens_it_then_mends_it(page, site):
    open_page(page, site)
    for state, verdict in (("missing", "No breaker opens"), ("loose", "The 20 A"), ("present", "probably opens")):
        to_press(page, "main-bonding-jumper").click()
        marked(page, "main-bonding-jumper", "state", state)
        expect(drawn(page, "verdict")).to_contain_text(verdict)
    expect(page.locator("[data-result] .answer")).to_be_visible()


def test_the_keyboard_does_all_that_a_finger_does(page, site):
    open_page(page, site)
    for key, state in (("Enter", "missing"), (" ", "loose"), ("Enter", "present")):
        to_press(page, "feeder-return").focus()
        page.keyboard.press(key)
        marked(page, "feeder-grounding-conductor", "state", state)
        expect(to_press(page, "feeder-return")).to_be_focused()


def test_pressing_a_part_moves_the_fault_there_and_pressing_it_again_takes_it_away(page, site):
    open_page(page, site)
    to_press(page, "panel").click(position={"x": 8, "y": 100})
    marked(page, "fault-panel", "state", "present")
    marked(page, "fault-machine", "state", "absent")
    expect(page.locator("[name=fault]")).to_have_value("panel")
    to_press(page, "panel").click(position={"x": 8, "y": 100})
    marked(page, "fault-panel", "state", "absent")
    expect(drawn(page, "verdict")).to_have_text("No fault")


def test_pressing_what_should_not_be_there_adds_it_and_takes_it_away(page, site):
    open_page(page, site)
    for state in ("added", "offered"):
        to_press(page, "machine-electrode").click()
        marked(page, "machine-electrode", "state", state)
    expect(page.locator("[name=added]:checked")).to_have_count(0)


def test_the_form_changes_the_drawing_too_and_the_link_brings_it_back(page, site):
    open_page(page, site)
    to_press(page, "main-bonding-jumper").click()
    marked(page, "main-bonding-jumper", "state", "missing")
    page.select_option("[name=touched]", "machine")
    marked(page, "person-machine", "state", "present")
    expect(drawn(page, "person-machine-current")).to_have_text("119 mA")
    expect(page).to_have_url(re.compile("touched=machine"))
    page.reload()
    marked(page, "person-machine", "state", "present")
    marked(page, "main-bonding-jumper", "state", "missing")


def test_what_cannot_be_read_leaves_the_drawing_faded_and_names_the_field(page, site):
    open_page(page, site)
    page.locator(".more-fields summary").first.click()
    page.fill("[name=loose_ohm]", "none")
    to_press(page, "main-bonding-jumper").click()
    expect(page.locator("[data-result] [data-outcome=fix]")).to_be_visible(timeout=START)
    expect(page.locator("figure.scene")).to_have_attribute("data-outdated", "")
    expect(page.locator("#error-loose_ohm")).to_contain_text("Enter a value")


@pytest.mark.parametrize("width", [360, 390])
def test_everything_to_press_is_large_enough_for_a_finger(page, site, width):
    page.set_viewport_size({"width": width, "height": 800})
    open_page(page, site)
    small = page.evaluate(
        """(least) => [...document.querySelectorAll(".press, [data-presets] a.button")]
             .map((each) => [each.dataset.name ?? each.textContent, each.getBoundingClientRect()])
             .filter(([, box]) => box.width < least || box.height < least).map(([name]) => name)""",
        LEAST,
    )
    assert small == []


def test_the_charts_of_an_answer_are_drawn_and_each_has_its_list(page, site):
    open_page(page, site, "?edition=2023&missing=branch-return&added=machine-electrode")
    charts = page.locator("[data-result] figure.chart")
    expect(charts).to_have_count(2, timeout=START)
    expect(page.locator("[data-result] figure.chart canvas")).to_have_count(2)
    for number in range(2):
        inked = charts.nth(number).evaluate(
            """(figure) => {
                 const canvas = figure.querySelector("canvas");
                 const { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
                 let inked = 0;
                 for (let at = 3; at < data.length; at += 4) inked += data[at] > 0;
                 return inked;
               }"""
        )
        assert inked > 1000
        assert charts.nth(number).locator(".chart-twin li").count() >= 3
    expect(charts.first).to_contain_text("machine: 92.9 V")


def test_without_scripts_the_drawing_its_list_and_what_to_look_at_stand_there(browser, site):
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(site + PAGE)
    expect(page.locator("figure.scene svg")).to_be_visible()
    expect(page.locator("[data-scene-twin]")).to_contain_text("A hot conductor touches the machine: 373 A.")
    expect(page.get_by_text("Look at the elbow")).to_be_visible()
    context.close()


def test_ranges_follow_the_answer_as_in_cpython_and_are_taken_back_at_the_next_press(page, site):
    open_page(page, site, "?edition=2023&fault=machine")
    ranges = page.locator("[data-scene-ranges]")
    expect(ranges).to_be_visible(timeout=START)
    *_, last = scene_range_parts(SLUG, "edition=2023&fault=machine", 8)
    shown = page.locator("[data-scene-ranges] li").all_inner_texts()
    assert f"<ul>{''.join(f'<li>{words}</li>' for words in shown)}</ul>" == json.loads(last)["html"]
    to_press(page, "main-bonding-jumper").click()
    expect(ranges).to_be_hidden()
    expect(ranges).to_be_visible(timeout=START)
    expect(ranges).to_contain_text("114 to 120 V")
