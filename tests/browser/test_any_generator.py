"""The handbook does not hang on its generator: another one makes the same pages of what the first stage gives."""

import os
import shutil
import subprocess

import pytest
from playwright.sync_api import expect

from site_assets.build.expand import EXPANDED
from site_assets.build.finish import finish
from site_assets.build.serve import Server
from site_assets.setup.paths import ROOT
from tests.browser.conftest import fill_jumper_form, watch
from tests.browser.two_sites import differences
from tests.site.pages import SITE, article, html_files

START = 60_000  # ms for the runtime on a loaded machine
PAGE = '<h1 id="rod">Rod</h1><h2 id="test">Test it</h2><p>Lift no wire.</p>'


@pytest.fixture(scope="module")
def successor_site(tmp_path_factory):
    """Return the folder of the handbook as the successor makes it, from the Markdown that `site` was made of."""
    root = tmp_path_factory.mktemp("successor")
    for name in ("mkdocs.yml", "site_assets/templates", EXPANDED):
        whole = ROOT / name
        (shutil.copytree if whole.is_dir() else shutil.copyfile)(whole, root / name)
    python = os.environ["SUCCESSOR"]
    made = subprocess.run(
        [python, "-m", "zensical", "build", "--strict"],
        cwd=root / EXPANDED,
        capture_output=True,
        text=True,
        check=False,
    )
    assert made.returncode == 0, made.stdout + made.stderr
    site = root / EXPANDED / "site"
    finish(site, root)
    return site


@pytest.mark.parametrize(
    ("theirs", "told"),
    [
        (PAGE.replace("Lift no wire", "Lift a wire"), ["text: -no", "text: +a"]),
        (PAGE.replace('id="test"', 'id="check"'), ["headings: -h2 #test Test it", "anchors: -test", "anchors: +check"]),
        (PAGE.replace("h2", "h3"), ["headings: -h2 #test Test it", "headings: +h3 #test Test it"]),
        (PAGE.replace("<p>", '<p id="__skip"><script>words</script>'), []),
    ],
)
def test_a_changed_word_a_lost_anchor_and_a_lower_heading_are_told(theirs, told):
    found = differences(PAGE, theirs)
    assert set(told) <= set(found) and bool(told) == bool(found)


@pytest.mark.long
def test_the_successor_makes_the_same_pages_with_the_same_text_headings_and_anchors(successor_site):
    paths = {path.relative_to(SITE).as_posix() for path in html_files()}
    assert {path.relative_to(successor_site).as_posix() for path in successor_site.rglob("*.html")} == paths
    made_of = [{kit.name for kit in (site / "kit").iterdir()} for site in (SITE, successor_site)]
    assert made_of[0] == made_of[1], "the folder site is older than .expanded: build again"
    told = {}
    for path in sorted(paths):
        ours, theirs = ((site / path).read_text(encoding="utf-8") for site in (SITE, successor_site))
        if found := differences(article(ours), article(theirs)) + differences(frame(ours), frame(theirs)):
            told[path] = found[:20]
    assert told == {}


@pytest.mark.long
def test_a_calculator_of_the_successors_site_answers(browser, successor_site):
    with Server(successor_site, base="/handbook/here/") as server:
        context = browser.new_context(service_workers="block")
        page = context.new_page()
        faults = watch(page)
        page.goto(f"{server.address}calculators/main-bonding-jumper.html?edition=2023")
        fill_jumper_form(page, "500 kcmil", "2")
        page.click("form.calculator button[type=submit]")
        shown = page.locator("[data-result] [data-outcome=answer]")
        expect(shown.locator(".answer-size")).to_have_text("2/0 AWG copper wire or larger", timeout=START)
        expect(shown.locator(".answer-basis")).to_contain_text("Table 250.102(C)(1)")
        context.close()
    # Its theme's own search writes styles into elements, which the content policy blocks: nothing of ours is lost.
    assert [fault for fault in faults if "Applying inline style" not in fault] == []


def frame(html: str) -> str:
    """Return the foot of a page: safety, what is saved, what stands on paper."""
    return html[html.index('<footer class="page-foot"') : html.index("</footer>")]
