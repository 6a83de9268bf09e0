"""The answers of each engine are CPython's to the byte, started from the files and from a memory snapshot."""

from __future__ import annotations

import json
from urllib.parse import urlencode

import pytest

from calc.editions import EDITIONS
from calc.registry import CALCULATORS
from site_assets.render.page_response import answer_request
from tests.browser.engines.conftest import ENGINES
from tests.browser.engines.test_core import ANSWER, CASE, SHOWN, open_form
from tests.browser.engines.window import CHOOSE_REST

PARTS = 24
RESTORE = {"chromium", "firefox"}  # engines that keep the snapshot they made and start from it
SLICES = PARTS * len(ENGINES)

# The page's own worker, asked without the page.
ASK = """
  const [questions, fromFiles] = arguments;
  const address = (path) => new URL(path, location.href).href;
  const runtime = JSON.parse(document.querySelector("form.calculator").dataset.runtime);
  const { worker: saving } = document.querySelector("[data-offline]").dataset;
  const scope = new URL("./", address(saving)).href;
  const script = document.querySelector("script[src*='scripts/page.js']").src;
  const worker = new Worker(script.replace("page.js", "calculator-worker.js"), { type: "module" });
  const replies = [];
  let restored;
  await new Promise((resolve, reject) => {
    worker.onerror = () => reject(new Error("no worker"));
    worker.onmessage = ({ data }) => {
      if (data.restoring !== undefined) restored = data.restoring;
      if (data.failed || data.missing || data.gone) reject(new Error(JSON.stringify(data)));
      if (data.reply) replies[data.id] = data.reply;
      if (replies.filter(Boolean).length === questions.length) resolve();
    };
    const page = { ...runtime, list: address(runtime.list), saved: false };
    worker.postMessage({ start: { page, scope, fromFiles } });
    questions.forEach(([slug, query], id) => worker.postMessage({ id, slug, query }));
  });
  worker.terminate();
  return [restored, replies];
"""
# Nobody works on the page meanwhile, so it need not be quiet for 5 s first.
AT_ONCE = """
  const set = setTimeout;
  window.setTimeout = (run, wait, ...more) => set(run, wait === 5_000 ? 0 : wait, ...more);
"""
CHECKED = """
  for (const name of await caches.keys()) {
    if (!name.startsWith("snapshot ")) continue;
    for (const { url } of await (await caches.open(name)).keys()) if (url.includes("?checked=")) return true;
  }
"""

MADE = "return (await caches.keys()).some((name) => name.startsWith('snapshot '))"
GIVEN_UP = """
  const { count } = JSON.parse(localStorage.getItem("snapshot-failures"));
  return count === 1 && !(await caches.keys()).some((name) => name.startsWith("snapshot "));
"""


def questions(part: int, parts: int) -> list[list[str]]:
    """Return a part of what is asked: every example in every edition, and what nobody can answer."""
    asked = []
    for slug, calculator in CALCULATORS.items():
        asked += [[slug, urlencode({**calculator.example, "edition": edition})] for edition in EDITIONS]
        asked += [[slug, ""], [slug, "edition=never"], [slug, "no-field=%E2%98%83"]]
    return asked[part::parts]


def replies_here(asked: list[list[str]]) -> list[object]:
    """Return what CPython answers."""
    return [json.loads(answer_request(slug, query)) for slug, query in asked]


@pytest.mark.slices(SLICES)
def test_started_from_the_files_a_worker_answers_as_cpython(reader, slice_number):
    open_form(reader)
    asked = questions(slice_number // len(ENGINES), PARTS)
    restored, replies = reader.window.run(ASK, asked, True)
    assert not restored
    assert replies == replies_here(asked)


@pytest.mark.long
@pytest.mark.slices(len(ENGINES))
def test_a_snapshot_is_made_and_what_is_started_from_it_answers_as_cpython(reader):
    """WebKitGTK makes one, and its cache does not keep so large an entry: the check finds out, the files answer."""
    window = reader.window
    open_form(reader)
    window.run(AT_ONCE)
    window.run(CHOOSE_REST, "1")
    window.type("[name=conductor]", "3/0")
    window.click("form.calculator button[type=submit]")
    window.text(SHOWN)
    restores = window.name in RESTORE
    window.wait(CHECKED if restores else MADE)
    if not restores:
        window.wait(GIVEN_UP)
    for part in range(PARTS):
        asked = questions(part, PARTS)
        restored, replies = window.run(ASK, asked, False)
        assert restored == restores
        assert replies == replies_here(asked)
    open_form(reader, CASE)
    assert window.text(SHOWN) == ANSWER
