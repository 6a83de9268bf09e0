"""A whole table in the page: pasted, chosen or dropped; told how far it is; stopped; equal to what CPython writes."""

import re
import subprocess
import sys
from pathlib import Path

import pytest
from playwright.sync_api import expect

from calc import CALCULATORS
from calc.batch import example_table
from tests.browser.conftest import PHONE, choose_edition, fill_jumper_form
from tests.browser.test_accessibility import AXE

ROOT = Path(__file__).parents[2]
SLUG = "main-bonding-jumper"
START = 60_000  # ms for the runtime on a loaded machine
SLICES = 8
MARK = b"\xef\xbb\xbf"
HOSTILE = (
    'label;edition;conductor;sets;metal\r\n"Panel\r\n""LP-1""; east";2023;500 kcmil;2;\r\n=1+1;2026;5/0;;\r\n'
    "Ñandú;;3/0;;aluminum\r\n;;3/0\r\n<b>bold</b>;2020;3/0;1;copper\r\n\r\nlast;1776;3/0;one;copper\r\n"
)

ROWS = """(count) => ["label,conductor,sets",
  ...Array.from({ length: count }, (_, at) => `Panel ${at},${["3/0", "500kcmil", "4"][at % 3]},${at % 9 + 1}`)
].join("\\n")"""
PASTE_ROWS = f"""async (count) => {{
  const clipboardData = new DataTransfer();
  clipboardData.setData("text/plain", ({ROWS})(count));
  await new Promise((resolve) => setTimeout(resolve, 100)); // making them is no part of pasting them
  globalThis.longTasks?.splice(0);
  document.querySelector("#many-text").focus();
  const paste = new ClipboardEvent("paste", {{ clipboardData, bubbles: true, cancelable: true }});
  document.activeElement.dispatchEvent(paste);
}}"""
SHOW_ROWS = f"""async (count) => {{
  const field = document.body.appendChild(document.createElement("textarea"));
  const before = performance.now();
  field.value = ({ROWS})(count);
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  return performance.now() - before;
}}"""
AT_ONCE = 50
# What the worker hands over of a table, what the page makes a file of, and how many rows are shown then.
WATCH_PIECES = """(() => {
  window.pieces = { bytes: [], rows: [], texts: 0, together: 0 };
  const Own = Blob;
  window.Blob = class extends Own {
    constructor(parts = [], ...more) {
      super(parts, ...more);
      pieces.together = Math.max(pieces.together, parts.length);
    }
  };
  const { set } = Object.getOwnPropertyDescriptor(Worker.prototype, "onmessage");
  Object.defineProperty(Worker.prototype, "onmessage", { set(listener) {
    set.call(this, (event) => {
      const { text } = event.data.part ?? {};
      if (typeof text === "string") pieces.texts += 1;
      else if (text) pieces.bytes.push(text.size);
      listener(event);
      pieces.rows.push(document.querySelectorAll("[data-many-result] :is(tr, li)").length);
    });
  } });
})()"""
LONGEST_TASK = """async () => {
  await new Promise((resolve) => setTimeout(resolve, 100));
  return Math.max(0, ...longTasks.splice(0));
}"""
WATCH_LONG_TASKS = """() => {
  globalThis.longTasks = [];
  const add = (list) => longTasks.push(...list.getEntries().map(({ duration }) => duration));
  new PerformanceObserver(add).observe({ entryTypes: ["longtask"] });
}"""


def open_part(page, site, slug=SLUG):
    page.goto(f"{site}calculators/{slug}.html")
    page.click("[data-many] > summary")


def paste(page, text):
    page.focus("#many-text")
    taken = page.evaluate(
        """text => {
             const clipboardData = new DataTransfer();
             clipboardData.setData("text/plain", text);
             const paste = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
             return !document.activeElement.dispatchEvent(paste);
           }""",
        text,
    )
    if not taken:
        page.fill("#many-text", text)
    page.click("[data-many-run]")


def kept(page) -> bytes:
    link = page.locator("[data-many-keep]")
    expect(link).to_be_visible(timeout=START)
    with page.expect_download() as download:
        link.click()
    assert download.value.suggested_filename.endswith("-answers.csv")
    return Path(download.value.path()).read_bytes()


def command_line(slug: str, table: bytes, *given: str) -> bytes:
    command = [sys.executable, "-m", "calc", slug, "--table", "-", *given]
    return subprocess.run(command, cwd=ROOT, input=table, capture_output=True, check=False).stdout


def rows(count: int) -> str:
    lines = [f"Panel {number},{('3/0', '500kcmil', '4')[number % 3]},{number % 9 + 1}" for number in range(count)]
    return "\n".join(["label,conductor,sets", *lines])


def test_a_pasted_table_comes_back_as_the_command_line_writes_it_to_the_byte(page, site):
    open_part(page, site)
    paste(page, HOSTILE)
    # What is pasted counts as a file that a spreadsheet saved, with the mark of UTF-8.
    assert kept(page) == command_line(SLUG, MARK + HOSTILE.replace("\r\n", "\n").encode())
    result = page.locator("[data-many-result]")
    expect(result).to_contain_text("Answered: 3. To fix: 3. Not covered: 0.")
    expect(result).to_contain_text("Line 4, '=1+1 conductor: “5/0” does not fit here.")
    assert result.locator("td b", has_text="bold").count() == 0


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16"])
def test_a_chosen_file_comes_back_as_the_command_line_writes_it_to_the_byte(page, site, encoding):
    open_part(page, site)
    table = HOSTILE.encode(encoding)
    page.set_input_files("#many-file", {"name": "schedule.csv", "mimeType": "text/csv", "buffer": table})
    assert kept(page) == command_line(SLUG, table)


def test_a_dropped_file_is_answered_and_opens_the_part(page, site):
    page.goto(f"{site}calculators/{SLUG}.html")
    table = rows(3)
    dropped = page.evaluate_handle(
        "text => { const data = new DataTransfer(); data.items.add(new File([text], 'schedule.csv')); return data; }",
        table,
    )
    page.dispatch_event("[data-many]", "drop", {"dataTransfer": dropped})
    assert kept(page) == command_line(SLUG, table.encode())


@pytest.mark.slices(SLICES)
def test_the_example_of_every_calculator_is_a_table_that_is_answered(page, site, slice_number):
    for slug in list(CALCULATORS)[slice_number::SLICES]:
        open_part(page, site, slug)
        page.click("[data-many-example]")
        expect(page.locator("#many-text")).to_have_value(example_table(CALCULATORS[slug]))
        page.click("[data-many-run]")
        assert kept(page) == command_line(slug, MARK + example_table(CALCULATORS[slug]).encode()), slug
        expect(page.locator("[data-many-result]")).to_contain_text("Answered: 1. To fix: 0. Not covered: 0.")


def test_the_edition_chosen_on_the_page_counts_for_rows_that_name_none(page, site):
    open_part(page, site)
    choose_edition(page, "2017")
    paste(page, "conductor,edition\n3/0,\n3/0,2026\n")
    written = kept(page)
    assert written == command_line(SLUG, MARK + b"conductor,edition\n3/0,\n3/0,2026\n", "edition=2017")
    assert b"edition=2017" in written and b"edition=2026" in written


def test_a_first_row_that_cannot_be_used_names_the_column_and_offers_no_file(page, site):
    open_part(page, site)
    paste(page, "label,conductor,colour\nA,3/0,green\n")
    expect(page.locator("[data-many-result] .fix")).to_contain_text("colour: There is no column", timeout=START)
    expect(page.locator("[data-many-keep]")).to_be_hidden()
    expect(page.locator("#many-text")).to_have_value("label,conductor,colour\nA,3/0,green\n")


def test_the_form_is_answered_while_a_table_runs_and_what_is_typed_stays(page, site):
    open_part(page, site)
    paste(page, rows(20_000))
    expect(page.locator(".many-progress span")).to_contain_text("Rows done", timeout=START)
    fill_jumper_form(page, "500 kcmil")
    page.click("form.calculator button[type=submit]")
    expect(page.locator("[data-result] .size")).to_have_text("1/0 AWG", timeout=START)
    expect(page.locator(".many-progress")).to_be_visible()
    expect(page.locator("[name=conductor]")).to_have_value("500 kcmil")


def test_progress_grows_and_stopping_keeps_the_rows_that_are_done(page, site):
    open_part(page, site)
    paste(page, rows(50_000))
    progress = page.locator(".many-progress progress")
    expect(page.locator(".many-progress span")).to_have_text(re.compile("Rows done: [1-9]"), timeout=START)
    before = progress.evaluate("each => each.value")
    page.wait_for_timeout(500)
    assert 0 < before < progress.evaluate("each => each.value") < 1
    page.click("[data-many-stop]")
    expect(page.locator(".many-state")).to_have_text("Stopped. The finished rows are below.")
    expect(page.locator(".many-progress")).to_be_hidden()
    written = kept(page)
    done = written.count(b"\r\n") - 1
    assert 0 < done < 50_000
    assert written == command_line(SLUG, MARK + "\n".join(rows(50_000).split("\n")[: done + 1]).encode())


def test_a_very_large_paste_is_kept_unseen_and_gives_back_what_was_typed(page, site):
    open_part(page, site)
    page.fill("#many-text", "typed before\n")
    page.evaluate(PASTE_ROWS, 60_000)
    # The line that was typed, the names of the columns and 60,000 rows.
    expect(page.locator("[data-many-kept]")).to_contain_text("60,002 lines pasted and kept.")
    expect(page.locator("#many-text")).to_be_hidden()
    page.click("[data-many-drop]")
    expect(page.locator("#many-text")).to_have_value("typed before\n")


def test_rows_kept_unseen_can_be_saved_as_a_file_and_are_there_again_after_a_reload(page, site):
    open_part(page, site)
    page.evaluate(PASTE_ROWS, 2_000)
    with page.expect_download() as download:
        page.click("[data-many-save]")
    assert Path(download.value.path()).read_text(encoding="utf-8-sig") == rows(2_000)
    assert download.value.suggested_filename == f"{SLUG}-rows.txt"
    page.reload()
    expect(page.locator("[data-many-kept]")).to_contain_text("2,001 lines pasted")
    page.click("[data-many-drop]")
    page.reload()
    expect(page.locator("[data-many-kept]")).to_be_hidden()


def test_a_very_large_table_never_stops_the_page(page, site):
    open_part(page, site)
    page.evaluate(WATCH_LONG_TASKS)
    pastes = []
    for _ in range(3):
        page.evaluate(PASTE_ROWS, 60_000)
        expect(page.locator("[data-many-kept]")).to_contain_text("60,001 lines pasted")
        pastes.append(page.evaluate(LONGEST_TASK))
        page.click("[data-many-drop]")
    page.evaluate(PASTE_ROWS, 60_000)
    page.evaluate(LONGEST_TASK)
    page.click("[data-many-run]")
    expect(page.locator(".many-progress span")).to_have_text(re.compile("Rows done: [1-9]"), timeout=START)
    page.click("[data-many-stop]")
    expect(page.locator(".many-state")).to_contain_text("Stopped.")
    assert page.locator("[data-many-result] tr").count() <= 11
    longest = max(min(pastes), page.evaluate(LONGEST_TASK))
    # On a busy machine all takes longer: there a field that shows a sixth of the rows is the measure.
    assert longest < 200 or longest < page.evaluate(SHOW_ROWS, 10_000) / 5


def test_a_long_table_passes_the_page_in_pieces_that_it_never_reads(page, site):
    page.add_init_script(WATCH_PIECES)
    open_part(page, site)
    page.evaluate(PASTE_ROWS, 1_200)
    page.click("[data-many-run]")
    written = kept(page)
    assert written.count(b"\r\n") == 1_201
    seen = page.evaluate("pieces")
    # Each is a turn of its own, and holds no more rows than are answered at once.
    assert len(seen["bytes"]) >= 1_200 / AT_ONCE and sum(seen["bytes"]) == len(written)
    assert max(seen["bytes"]) <= 2 * AT_ONCE * len(written) / 1_200
    assert seen["together"] <= 20 < len(seen["bytes"])
    assert seen["texts"] == 0  # a text, however long, would be read and copied while the page waits
    assert max(seen["rows"]) <= 2 * (10 + 1)  # first rows and rows to fix, with the names of the columns


def test_a_paste_that_a_field_shows_well_is_shown(page, site):
    open_part(page, site)
    page.evaluate(PASTE_ROWS, 300)
    assert page.input_value("#many-text") == rows(300)
    expect(page.locator("[data-many-kept]")).to_be_hidden()


def test_a_runtime_that_cannot_be_fetched_is_told_and_trying_again_answers_the_same_table(browser, site):
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.route("**/library.zip*", lambda route: route.fulfill(status=404, body="gone"))
    open_part(page, site)
    paste(page, rows(2))
    state = page.locator(".many-state")
    expect(state).to_contain_text("Nothing you entered is lost", timeout=START)
    page.unroute("**/library.zip*")
    state.locator("button").click()
    expect(page.locator("[data-many-result]")).to_contain_text("Answered: 2.", timeout=START)
    context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [360, 1280])
def test_the_open_part_fits_the_screen_and_a_glove_and_reads_for_everyone(browser, site, width, scheme):
    context = browser.new_context(
        viewport=PHONE | {"width": width}, color_scheme=scheme, service_workers="block", bypass_csp=True
    )
    page = context.new_page()
    open_part(page, site)
    page.click("[data-many] .columns > summary")
    paste(page, HOSTILE)
    expect(page.locator("[data-many-keep]")).to_be_visible(timeout=START)
    assert not page.evaluate("document.documentElement.scrollWidth > innerWidth")
    small = page.evaluate(
        """() => [...document.querySelectorAll("[data-many] :is(summary, button, textarea, input, a.button)")]
             .filter((each) => each.offsetParent && each.getBoundingClientRect().height < 48)
             .map((each) => each.outerHTML.slice(0, 80))"""
    )
    page.add_script_tag(path=AXE)
    report = page.evaluate("axe.run(document, { resultTypes: ['violations'] })")
    context.close()
    assert small == []
    assert [(each["id"], node["target"]) for each in report["violations"] for node in each["nodes"]] == []
