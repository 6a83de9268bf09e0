"""The verdict sees what is broken: states planted in what is seen, on a host, and in the service worker itself."""

import json
import shutil

import pytest

from site_assets.build.precache import WORKER
from site_assets.build.runtime_list import FILE, FOLDER
from tests.browser.faults import acts
from tests.browser.faults.cases import Case, run
from tests.browser.faults.faulty_server import Fault, spoil
from tests.browser.faults.verdict import BROKEN, PENDING, TOLD, WHOLE, judge
from tests.browser.faults.versions import Version, replace, replace_list

ANSWERS = {"first": "4 AWG", "second": "3 AWG"}
GOOD = {
    "address": "http://host/calculators/main-bonding-jumper.html?conductor=3/0",
    "loaded": True,
    "handbook": True,
    "whole": True,
    "page": "first",
    "scripts": {"page.js": "first", "unanswered.js": "first"},
    "styles": {"form": "first", "frame": "first"},
    "started": True,
    "answer": "4 AWG",
    "state": "ready",
    "panel": "ready",
    "words": {"unanswered": [], "line": ["The calculator is ready."], "lost": [], "none": [], "panel": ["Ready"]},
    "text": "Main bonding jumper",
}
WORDS = GOOD["words"]


def verdict(*, asked=True, elsewhere=False, **change):
    return judge(GOOD | change, ANSWERS, asked=asked, elsewhere=elsewhere)


def test_a_page_of_one_version_with_its_answer_is_whole():
    assert verdict().kind == WHOLE
    assert verdict(asked=False, answer=None, state=None).kind == WHOLE
    second = {"page": "second", "scripts": {"page.js": "second"}, "styles": {"form": "second"}}
    assert verdict(**second, answer="3 AWG").kind == WHOLE


@pytest.mark.parametrize(
    "change",
    [
        {"page": "second"},
        {"scripts": {"page.js": "first", "chart.js": "second"}},
        {"styles": {"form": "first", "frame": "second"}},
        {"answer": "3 AWG"},
        {"answer": "6 AWG"},
        {"handbook": False, "text": "Welcome. Sign in to use this network."},
        {"handbook": False, "text": ""},
    ],
)
def test_mixed_versions_a_wrong_answer_and_another_page_are_broken(change):
    assert verdict(**change).kind == BROKEN


@pytest.mark.parametrize(
    "change",
    [
        {"answer": None, "state": "loading"},
        {"answer": None, "state": None},
        {"answer": None, "state": "loading", "panel": "failed", "words": WORDS | {"panel": ["Saving failed."]}},
        {"page": None},
        {"styles": {"form": "first", "frame": None}},
        {"handbook": False, "text": "", "loaded": False},
    ],
)
def test_what_tells_nothing_is_waited_for_and_never_passes(change):
    assert verdict(**change).kind == PENDING


@pytest.mark.parametrize(
    "change",
    [
        {"answer": None, "state": "failed", "words": WORDS | {"line": ["The calculator could not start."]}},
        {"answer": None, "words": WORDS | {"unanswered": ["The calculators on this page did not start."]}},
        {"page": None, "words": WORDS | {"unanswered": ["This page did not load completely."]}},
        {"styles": {"form": None}, "panel": "incomplete", "words": WORDS | {"panel": ["Missing: 1 of 67 files."]}},
    ],
)
def test_words_for_what_is_lacking_are_told(change):
    assert verdict(**change).kind == TOLD


def test_the_browsers_own_page_is_told_only_while_nothing_is_saved():
    own = {"handbook": False, "text": "This site can't be reached"}
    assert verdict(**own, elsewhere=True).kind == TOLD
    assert verdict(**own).kind == BROKEN


def version_with(stage, versions, tmp_path, change):
    """Publish the first version with a change that nothing tells of."""
    folder = tmp_path / "planted"
    shutil.copytree(versions["first"].folder, folder)
    change(folder)
    stage.versions["planted"] = Version("planted", folder, ANSWERS["first"])


def look_at(stage, name):
    stage.new_reader()
    stage.publish(name)
    return stage.opened()


def test_a_page_that_answers_by_the_rules_of_another_version_is_seen(stage, versions, tmp_path):
    def mix(folder):
        ours = json.loads((folder / FOLDER / FILE).read_text())
        theirs = json.loads((versions["second"].folder / FOLDER / FILE).read_text())
        shutil.copytree(versions["second"].folder / FOLDER, folder / FOLDER, dirs_exist_ok=True)
        replace_list(folder, theirs | {"pages": ours["pages"]})

    version_with(stage, versions, tmp_path, mix)
    seen = look_at(stage, "planted")
    assert seen.kind == BROKEN
    assert "3 AWG" in seen.why


def test_a_page_with_a_script_of_another_version_is_seen(stage, versions, tmp_path):
    def mix(folder):
        ours, theirs = (next((each / "kit").iterdir()) for each in (folder, versions["second"].folder))
        replace(ours / "scripts" / "notes.js", (theirs / "scripts" / "notes.js").read_bytes())

    version_with(stage, versions, tmp_path, mix)
    seen = look_at(stage, "planted")
    assert seen.kind == BROKEN
    assert "mixed" in seen.why


CHECKS = "if (await integrityOf(bytes) !== file.integrity) throw new Error('other bytes');"


def test_a_service_worker_that_takes_any_bytes_fails_its_case(stage, versions, tmp_path):
    """The same case passes with the worker as it is: it is one of the campaign's."""

    def blind(folder):
        script = (folder / WORKER).read_text()
        assert script.count(CHECKS) == 1
        kept = "if (await integrityOf(await copy.arrayBuffer()) === file.integrity) return await find();"
        assert script.count(kept) == 1
        replace(folder / WORKER, script.replace(CHECKS, "").replace(kept, "return await find();").encode())

    version_with(stage, versions, tmp_path, blind)
    good = stage.versions["first"]
    stage.versions["first"] = stage.versions["planted"]
    case = Case("planted", "a bit", acts.save(Fault(spoil, lambda path, count: path.endswith("notes.js"))))
    try:
        outcome = run(stage, case)
    finally:
        stage.versions["first"] = good
        stage.leave()
    assert outcome.broken or outcome.recovered
