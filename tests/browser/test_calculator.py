"""The calculator in the browser gives what CPython gives, keeps what is typed, and links restore it."""

import re

import pytest
from playwright.sync_api import expect

from calc import EDITIONS, main_bonding_jumper, permalink
from calc.json_output import result_to_dict
from calc.registry import CALCULATORS
from site_assets.render.answer import result_html
from site_assets.render.note import note
from tests.browser.conftest import choose_edition, fill_jumper_form
from tests.cases.read import cases

SLUG = "main-bonding-jumper"
PAGE = f"calculators/{SLUG}.html"
START = 60_000  # ms for the runtime on a loaded machine

# As browsers do when a page is loaded again: before its scripts run.
PUTS_BACK = """document.addEventListener("readystatechange", () => {
  const input = document.querySelector("[name=metal][value=aluminum]");
  if (document.readyState === "interactive") input.checked = true;
})"""
PRESS_AND_LOOK = """(button) => {
  document.querySelector(button).click();
  return document.querySelector("[data-result]").dataset.outdated;
}"""


def open_form(page, site, query=""):
    page.goto(f"{site}{PAGE}{query}")


def enter(page, **inputs):
    for name, text in inputs.items():
        page.fill(f"[name={name}]", text)


def submit(page):
    page.click(f"form[data-calculator={SLUG}] button[type=submit]")


def answer(page, outcome="answer"):
    shown = page.locator(f"[data-result] [data-outcome={outcome}]")
    expect(shown).to_be_visible(timeout=START)
    return shown


def test_typing_conductors_gives_the_jumper_with_its_section(page, site):
    open_form(page, site)
    fill_jumper_form(page, conductor="500 kcmil", sets="2")
    submit(page)
    shown = answer(page)
    expect(shown.locator(".answer-size")).to_have_text("2/0 AWG copper wire or larger")
    expect(shown.locator(".answer-basis")).to_contain_text("Table 250.102(C)(1)")


def test_a_link_under_the_names_a_form_once_had_fills_it_under_those_it_has(page, site):
    """As if `sets` had been called `runs` and "aluminum" "aluminium"; what is submitted next must not lose them."""

    def renamed(route):
        html = route.fetch().text()
        html = html.replace("data-field=sets ", "data-field=sets data-formerly=runs ")
        html = html.replace('data-field="sets"', 'data-field="sets" data-formerly="runs"')
        for value in ("value=aluminum ", "value=aluminum>", 'value="aluminum"'):
            html = html.replace(value, f"data-formerly=aluminium {value}")
        route.fulfill(body=html, content_type="text/html; charset=utf-8")

    page.route(re.compile(re.escape(PAGE)), renamed)
    open_form(page, site, "?conductor=500kcmil&runs=2&conductor_metal=aluminium")
    expect(page.locator("[name=sets]")).to_have_value("2")
    expect(page.locator("[name=conductor_metal][value=aluminum]")).to_be_checked()
    expect(page.locator("[name=metal][value=copper]")).to_be_checked()


def test_every_worked_case_in_every_edition_reads_in_the_page_as_in_cpython(page, site):
    open_form(page, site)
    fill_jumper_form(page, conductor="3/0")
    submit(page)
    answer(page)
    kit = page.evaluate("document.querySelector('script[src*=\"scripts/page.js\"]').src.replace('page.js', '')")
    asked = [
        "&".join(f"{name}={text}" for name, text in ({"edition": edition} | case["inputs"]).items())
        for edition, case in cases("jumpers/main_bonding_jumper")
    ]
    replies = page.evaluate(
        """async ([scripts, slug, queries]) => {
             const { ask } = await import(`${scripts}runtime.js`);
             const replies = [];
             for (const query of queries) replies.push(await ask(slug, query));
             return replies;
           }""",
        [kit, SLUG, asked],
    )
    for query, reply in zip(asked, replies, strict=True):
        here = main_bonding_jumper.run(permalink.read(query))
        assert reply["outcome"] == here.outcome, query
        assert reply["html"] == result_html(here), query
    assert len(replies) == len(asked) > 100


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_link_restores_inputs_and_answer_in_its_edition(page, site, edition):
    here = main_bonding_jumper(edition=edition, conductor="600kcmil", sets=3, conductor_metal="aluminum", form="screw")
    open_form(page, site, "?" + permalink.write(here).partition("?")[2])
    shown = answer(page)
    expect(shown.locator(".size")).to_have_text("Green screw")
    expect(shown.locator(".metal")).to_contain_text("For a wire instead: 4/0 AWG copper or larger")
    expect(page.locator("[name=conductor]")).to_have_value("600kcmil")
    expect(page.locator("[name=sets]")).to_have_value("3")
    expect(page.locator("[name=conductor_metal][value=aluminum]")).to_be_checked()
    expect(page.locator("[name=form]")).to_have_value("screw")
    expect(page.locator("html")).to_have_attribute("data-edition", edition)
    expect(page.locator(".said-earlier")).to_have_count(0)


def test_the_address_becomes_the_link_of_the_answer(page, site):
    open_form(page, site)
    fill_jumper_form(page, conductor="500 MCM", sets="2")
    submit(page)
    answer(page)
    expect(page).to_have_url(re.compile(r"\?edition=2023&conductor=500kcmil&sets=2&.*&said=2/0-copper$"))


def test_a_link_with_another_answer_shows_both(page, site):
    open_form(page, site, "?edition=2023&conductor=500kcmil&sets=2&said=1/0-copper")
    answer(page)
    earlier = page.locator(".said-earlier")
    expect(earlier).to_contain_text("The link was made with: 1/0 AWG copper")
    expect(earlier).to_contain_text("The answer now: 2/0 AWG copper wire or larger")
    entered = page.locator(".at-a-glance tr[aria-current]")
    expect(entered).to_have_count(1)
    expect(entered).to_contain_text("2 sets of 500 kcmil copper")


def test_changing_the_edition_answers_anew(page, site):
    open_form(page, site)
    fill_jumper_form(page, conductor="3/0")
    submit(page)
    expect(answer(page)).to_contain_text("250.24(C)")
    outdated = page.evaluate(PRESS_AND_LOOK, "[data-choose-edition='2017']")
    assert outdated == "", "until the other edition is answered, the answer steps back"
    expect(page.locator("[data-result]")).to_contain_text("250.24(B)")
    expect(page).to_have_url(re.compile("edition=2017"))


def test_the_edition_is_remembered_and_a_link_wins_only_for_its_visit(page, site):
    open_form(page, site)
    choose_edition(page, "2020")
    open_form(page, site, "?edition=2026")
    expect(page.locator("html")).to_have_attribute("data-edition", "2026")
    open_form(page, site)
    expect(page.locator("html")).to_have_attribute("data-edition", "2026")
    another_visit = page.context.new_page()
    open_form(another_visit, site)
    expect(another_visit.locator("html")).to_have_attribute("data-edition", "2020")


def test_changing_a_field_after_an_answer_answers_anew(page, site):
    open_form(page, site)
    fill_jumper_form(page, conductor="3/0")
    submit(page)
    expect(answer(page).locator(".size")).to_have_text("4 AWG")
    page.click("[data-field=sets] [data-step='1']")
    expect(page.locator("[data-result] .size")).to_have_text("2 AWG")


@pytest.mark.parametrize(
    ("inputs", "field"),
    [
        ({"conductor": ""}, "conductor"),
        ({"conductor": "5/0"}, "conductor"),
        ({"conductor": "9" * 10_000}, "conductor"),
        ({"conductor": "<script>document.title='taken'</script>"}, "conductor"),
        ({"conductor": "3/0", "sets": "0"}, "sets"),
        ({"conductor": "3/0", "sets": "100"}, "sets"),
        ({"conductor": "3/0", "sets": "-1"}, "sets"),
        ({"conductor": "3/0", "sets": "two"}, "sets"),
    ],
)
def test_bad_input_names_the_field_and_keeps_what_was_typed(page, site, inputs, field):
    open_form(page, site)
    enter(page, **inputs)
    submit(page)
    summary = answer(page, "fix")
    expect(summary).to_be_focused()
    expect(summary.locator("a").first).to_have_attribute("href", f"#field-{field}")
    expect(page.locator(f"#error-{field}")).to_contain_text("Enter a")
    for name, text in inputs.items():
        expect(page.locator(f"[name={name}]")).to_have_value(text)
    assert page.title() != "taken"


@pytest.mark.parametrize(
    ("query", "says"),
    [
        ("conductor=%3Cscript%3Edocument.title%3D'taken'%3C/script%3E", "Largest ungrounded (hot) conductor"),
        ("conductor=3/0&edition=1776", "Edition"),
        ("edition=1776", "Edition"),
        ("conductor=3/0&colour=green", "There is no field with this name"),
        ("conductor=3/0&conductor=4/0", "This is entered twice"),
        ("conductor=3/0&metal=coper", "Choose one of copper"),
        (
            "conductor=3/0&%3Cimg%20src%3Dx%20onerror%3Ddocument.title%3D'taken'%3E=1",
            "There is no field with this name",
        ),
        ("conductor=3/0&said=%3Cb%3E", "Answer when the link was made"),
    ],
)
def test_a_bad_link_says_what_to_mend_and_runs_nothing(page, site, query, says):
    open_form(page, site, f"?{query}")
    expect(answer(page, "fix")).to_contain_text(says)
    assert page.title() != "taken"
    assert page.locator("[data-result] script, [data-result] img, [data-result] b").count() == 0


def test_a_misspelt_choice_in_a_link_is_never_taken_for_the_default(page, site):
    open_form(page, site, "?conductor=3/0&metal=coper")
    answer(page, "fix")
    assert page.locator("[name=metal]:checked").count() == 0
    submit(page)
    expect(answer(page, "depends").locator(".one-question a")).to_have_text("Jumper material")


def test_a_feeder_panel_is_not_covered_and_names_where_to_look(page, site):
    open_form(page, site)
    fill_jumper_form(page, conductor="3/0")
    page.click(".more-fields > summary")
    page.select_option("[name=place]", "feeder-panel")
    submit(page)
    expect(answer(page, "not_covered")).to_contain_text("equipment grounding conductor (250.122)")


def test_clearing_brings_back_an_empty_form_and_an_address_with_the_edition_alone(page, site):
    open_form(page, site, "?conductor=3/0&sets=2")
    answer(page)
    page.click("form.calculator button[type=reset]")
    expect(page.locator("[data-result] section")).to_have_count(0)
    expect(page.locator("[name=conductor]")).to_have_value("")
    expect(page).to_have_url(re.compile(r"\.html\?edition=2023&assumed=edition$"))


def test_typing_while_python_starts_loses_nothing_and_the_last_request_is_answered(page, site):
    open_form(page, site)
    fill_jumper_form(page, conductor="3/0")
    submit(page)
    fill_jumper_form(page, conductor="500 kcmil", sets="2")
    submit(page)
    expect(answer(page).locator(".size")).to_have_text("2/0 AWG", timeout=START)
    expect(page.locator("[name=conductor]")).to_have_value("500 kcmil")


def test_what_was_typed_is_there_again_after_a_reload_and_not_on_a_page_opened_anew(page, site):
    open_form(page, site)
    enter(page, conductor="500 kcmil")
    page.reload()
    expect(page.locator("[name=conductor]")).to_have_value("500 kcmil")
    expect(page.locator("[data-result]")).to_be_empty()
    page.goto(f"{site}404.html")
    open_form(page, site)
    expect(page.locator("[name=conductor]")).to_have_value("")


def test_a_link_stands_beside_its_own_inputs_whatever_the_browser_puts_back(page, site):
    page.add_init_script(PUTS_BACK)
    open_form(page, site, "?edition=2023&conductor=3/0")
    expect(page.locator("[name=metal][value=copper]")).to_be_checked()


def test_what_is_changed_while_python_starts_counts(page, site):
    """A reader submits, then picks another metal and another edition before the first answer is there."""
    open_form(page, site)
    fill_jumper_form(page, conductor="500 kcmil", sets="2")
    submit(page)
    page.locator("[name=metal][value=aluminum]").check(force=True)
    choose_edition(page, "2020")
    shown = answer(page)
    expect(shown.locator(".answer-size")).to_have_text("4/0 AWG aluminum wire or larger", timeout=START)
    expect(shown.locator(".answer-edition")).to_have_text("NEC 2020")
    expect(page).to_have_url(re.compile("edition=2020.*metal=aluminum"))


def test_an_answer_steps_back_while_the_form_says_something_else(page, site):
    open_form(page, site, "?edition=2023&conductor=500kcmil")
    answer(page)
    page.locator("[name=conductor]").press_sequentially("x")
    expect(page.locator("[data-result]")).to_have_attribute("data-outdated", "")


def test_a_changed_answer_is_told_again_after_a_reload(page, site):
    open_form(page, site, "?edition=2023&conductor=500kcmil&sets=2&said=1/0-copper")
    answer(page)
    page.reload()
    answer(page)
    expect(page.locator(".said-earlier")).to_contain_text("1/0 AWG copper")


def test_when_the_runtime_cannot_be_fetched_the_page_says_so_and_trying_again_works(browser, site):
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.route("**/library.zip*", lambda route: route.fulfill(status=404, body="gone"))
    open_form(page, site)
    fill_jumper_form(page, conductor="3/0")
    submit(page)
    state = page.locator(".runtime-state")
    expect(state).to_contain_text("Nothing you entered is lost", timeout=START)
    expect(page.locator("[name=conductor]")).to_have_value("3/0")
    page.unroute("**/library.zip*")
    state.locator("button").click()
    expect(answer(page).locator(".size")).to_have_text("4 AWG")
    context.close()


def test_a_start_that_hangs_ends_in_a_clear_message(browser, site):
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.clock.install()
    page.route("**/pyodide.asm.wasm", lambda route: None)
    open_form(page, site)
    fill_jumper_form(page, conductor="3/0")
    submit(page)
    expect(page.locator(".runtime-state")).to_contain_text("is starting")
    page.clock.run_for(46_000)
    expect(page.locator(".runtime-state")).to_contain_text("has not started", timeout=START)
    context.close()


def test_copying_the_link_copies_the_address(browser, site):
    context = browser.new_context(permissions=["clipboard-read", "clipboard-write"], service_workers="block")
    page = context.new_page()
    open_form(page, site, "?edition=2020&conductor=3/0")
    answer(page)
    page.click("[data-action=copy-link]")
    assert page.evaluate("navigator.clipboard.readText()") == page.url
    context.close()


def test_the_worked_example_is_what_the_command_line_gives(page, site):
    """The example stands in the page before any Python starts."""
    open_form(page, site)
    for edition in EDITIONS:
        given = result_to_dict(main_bonding_jumper(**(dict(main_bonding_jumper.example) | {"edition": edition})))
        shown = page.locator(f".example [data-edition~='{edition}'] .answer-size").first.text_content()
        assert shown == given["answer"]["headline"]


def test_the_worked_example_makes_room_for_an_answer_and_comes_back_when_the_form_is_cleared(page, site):
    open_form(page, site)
    example, heading = page.locator(".example"), page.locator("#worked-example")
    expect(example).to_be_visible()
    submit(page)
    answer(page, "fix")
    expect(example).to_be_hidden()
    expect(heading).to_be_hidden()
    page.click("form.calculator button[type=reset]")
    expect(example).to_be_visible()
    expect(heading).to_be_visible()


def test_a_link_says_at_once_that_its_answer_is_being_worked_out(browser, site):
    context = browser.new_context(service_workers="block", viewport={"width": 390, "height": 844})
    page = context.new_page()
    waiting = []
    page.route("**/library.zip", lambda route: waiting.append(route))
    open_form(page, site, "?edition=2023&conductor=500kcmil&sets=2&said=1/0-copper")
    told = page.locator("[data-result] .awaiting")
    expect(told).to_contain_text("Calculating the answer for this link")
    expect(told).not_to_contain_text("copper")  # the code of an answer is for programs
    expect(told).to_be_in_viewport()
    expect(page.locator(".runtime-state")).to_be_in_viewport()
    while not waiting:
        page.wait_for_timeout(100)
    for route in waiting:
        route.continue_()
    expect(answer(page).locator(".size")).to_have_text("2/0 AWG")
    expect(told).to_have_count(0)
    context.close()


def test_what_a_link_said_is_not_shown_and_the_place_of_its_answer_goes_when_python_cannot_start(browser, site):
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    waiting = []
    page.route("**/library.zip", lambda route: waiting.append(route))
    open_form(page, site, "?conductor=3/0&said=%3Cb%3Ebold%3C/b%3E$%26")
    told = page.locator("[data-result] .awaiting")
    expect(told).to_contain_text("Calculating the answer for this link")
    expect(told).not_to_contain_text("bold")
    while not waiting:
        page.wait_for_timeout(100)
    page.route("**/library.zip", lambda route: route.fulfill(status=404, body="gone"))
    for route in waiting:
        route.fulfill(status=404, body="gone")
    expect(page.locator(".runtime-state")).to_contain_text("Nothing you entered is lost", timeout=START)
    expect(told).to_have_count(0)
    context.close()


WORDS_IN_PIECES = """size => {
  const text = document.createTreeWalker(size, NodeFilter.SHOW_TEXT);
  const broken = [];
  while (text.nextNode()) {
    for (const word of text.currentNode.data.matchAll(/[a-z]+/gi)) {
      const range = document.createRange();
      range.setStart(text.currentNode, word.index);
      range.setEnd(text.currentNode, word.index + word[0].length);
      if (new Set([...range.getClientRects()].map((box) => box.top)).size > 1) broken.push(word[0]);
    }
  }
  return broken;
}"""


@pytest.mark.parametrize("width", [360, 390, 412])
def test_no_word_of_an_answer_breaks_on_a_phone(page, site, width):
    page.set_viewport_size({"width": width, "height": 844})
    open_form(page, site)
    named = CALCULATORS["conductor-name"]
    results = [each(**each.example) for each in CALCULATORS.values()]
    results += [named(**({"edition": edition} | case["inputs"])) for edition, case in cases("identify/conductor_name")]
    shown = {str(each.answer.headline): result_html(each) for each in results if each.answer}
    assert len(shown) > 30
    for headline, html in shown.items():
        page.evaluate("html => { document.querySelector('[data-result]').innerHTML = html; }", html)
        assert page.locator("[data-result] .size").evaluate(WORDS_IN_PIECES) == [], headline
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), headline


def test_copying_the_note_copies_it_with_the_address(browser, site):
    context = browser.new_context(permissions=["clipboard-read", "clipboard-write"], service_workers="block")
    page = context.new_page()
    open_form(page, site, "?edition=2020&conductor=3/0")
    answer(page)
    expect(page).to_have_url(re.compile("said="))
    page.click("[data-action=copy-note]")
    expect(page.locator("[data-action=copy-note]")).to_have_text("Note copied")
    here = note(main_bonding_jumper(edition="2020", conductor="3/0"))
    assert page.evaluate("navigator.clipboard.readText()") == f"{here}\n{page.url}"
    context.close()


def test_a_slider_writes_into_its_field_and_the_answer_follows(page, site):
    page.goto(site + "calculators/surface-voltage.html?cover=18in&soil=resistivity&resistivity=100")
    size = page.locator("[data-result] .answer-size")
    expect(size).to_be_visible(timeout=60_000)
    before = size.inner_text()
    page.locator("[data-slides=cover]").fill("60")
    expect(page.locator("[name=cover]")).to_have_value("60 in")
    expect(size).not_to_have_text(before)
    expect(page).to_have_url(re.compile("cover=60"))


def test_a_choice_nobody_knows_shows_the_safe_answer_and_one_question_that_leads_to_its_field(page, site):
    open_form(page, site, "?edition=2023&conductor=500kcmil&conductor_metal=unknown")
    shown = answer(page, "depends")
    expect(shown.locator(".answer-size")).to_have_text("1/0 AWG copper wire or larger")
    expect(page.locator("[name=conductor_metal][value=unknown]")).to_be_checked()
    shown.locator(".one-question a").click()
    expect(page.locator("#field-conductor_metal")).to_be_in_viewport()
    page.check("[name=conductor_metal][value=aluminum]")
    expect(answer(page).locator(".answer-size")).to_have_text("2 AWG copper wire or larger")


def test_dont_know_beside_a_number_leaves_it_open_and_typing_over_it_settles_it(page, site):
    """250.102(C)(1): 3/0 copper 4 AWG, two sets 2 AWG; up to 30 sets more."""
    open_form(page, site, "?edition=2023&conductor=3/0&sets=1")
    expect(answer(page).locator(".answer-size")).to_have_text("4 AWG copper wire or larger")
    page.click("[data-leaves-open=sets]")
    expect(page.locator("[name=sets]")).to_have_value("unknown")
    expect(answer(page, "depends").locator(".one-question a")).to_have_text("Sets in parallel")
    expect(page).to_have_url(re.compile("sets=unknown"))
    page.fill("[name=sets]", "2")
    page.keyboard.press("Tab")
    expect(answer(page).locator(".answer-size")).to_have_text("2 AWG copper wire or larger")


def test_what_a_link_leaves_out_is_assumed_and_what_was_pressed_is_given(page, site):
    open_form(page, site, "?conductor=3/0")
    assumed = "Sets in parallel: 1. If 2: 2 AWG copper wire or larger."
    expect(answer(page).locator(".assumed")).to_contain_text(assumed)
    expect(page).to_have_url(re.compile("assumed=edition,sets,"))
    page.click("[data-field=sets] [data-step='1']")
    expect(page).to_have_url(re.compile("sets=2&.*assumed=edition,conductor_metal,"))
    page.click("[data-field=sets] [data-step='-1']")
    expect(page).to_have_url(re.compile("sets=1&.*assumed=edition,conductor_metal,"))
    expect(page.locator(".assumed")).not_to_contain_text("Sets in parallel")


def test_a_link_made_without_an_edition_leaves_the_edition_open_for_who_opens_it(page, site):
    open_form(page, site, "?edition=2023&conductor=3/0&assumed=edition,sets&said=4-copper")
    expect(answer(page).locator(".answer-editions")).to_contain_text("the same in all editions since 2017")
    assert page.evaluate("document.documentElement.dataset.editionChosen") == "no"
