"""Measures the runtime and the pages; prints ratios beside their budgets, judges nothing.

Run after a build: `.venv/bin/python -m tests.speed.measure`. Stock means Pyodide as shipped, its whole
library, the same packages as sources, pint's default registry. All numbers come from one run.
"""

import gzip
import os
import shutil
import statistics
import sys
import tempfile
import time
from contextlib import contextmanager
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from importlib.metadata import distribution
from io import BytesIO
from pathlib import Path
from threading import Thread

import brotli
from playwright.sync_api import sync_playwright

from site_assets.build.runtime import LATER, TWIN
from site_assets.build.serve import Server
from site_assets.setup.browser import chromium
from site_assets.setup.paths import NODE_MODULES, SITE
from tests.speed.ladder import ladders

HERE = Path(__file__).parent
ROUNDS = 3
PACKAGES = ("pint", "flexcache", "flexparser", "platformdirs", "typing_extensions")


def main() -> None:
    """Measure and print the table."""
    with tempfile.TemporaryDirectory() as scratch:
        bench = make_bench(Path(scratch))
        rows = [*starts(bench), *registries(), *sizes(), *visits(), *swaps(), *tables(), *ladders()]
    width = max(len(name) for name, *_ in rows)
    for name, value, budget in rows:
        print(f"{name:<{width}}  {value:>18}  {budget}")


def make_bench(folder: Path) -> Path:
    """Lay out both runtimes and the pages that time them."""
    (scripts,) = SITE.glob("kit/*/scripts")
    shutil.copytree(SITE / "runtime", folder / "ours")
    shutil.copytree(scripts, folder / "scripts")
    shutil.copytree(NODE_MODULES / "pyodide", folder / "stock")
    packed = folder / "packages"
    for name in PACKAGES:
        for file in distribution(name).files:
            if file.suffix in (".py", ".txt") and file.parts[0] != ".." and "testsuite" not in file.parts:
                target = packed / file
                target.parent.mkdir(parents=True, exist_ok=True)
                shutil.copyfile(file.locate(), target)
    shutil.make_archive(folder / "stock" / "packages", "zip", packed)
    for name in ("bench.html", "bench.mjs"):
        shutil.copyfile(HERE / name, folder / name)
    return folder


def starts(bench: Path):
    """Time from nothing to the first result: worker cold and warm, main thread slowed, and a later one."""
    seconds = {}
    with cacheable(bench) as address, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=browser_arguments())
        for kind in ("stock", "ours", "snapshot"):
            runs = [run(browser, address, kind) for _ in range(ROUNDS)]
            seconds[kind] = {name: statistics.median(each[name] for each in runs) for name in runs[0]}
        browser.close()
    for name, budget in (
        ("worker cold", "-"),
        ("worker warm", "at most 0.35"),
        ("main thread, CPU 4x slower", "at most 0.28"),
    ):
        stock, ours = seconds["stock"][name], seconds["ours"][name]
        yield f"first answer, {name}, ours / stock", f"{ours / stock:.2f} ({ours:.0f}/{stock:.0f} ms)", budget
    plain = seconds["ours"]
    for name, budget in (("worker warm", "at most 0.16"), ("main thread, CPU 4x slower", "at most 0.15")):
        restored, stock = seconds["snapshot"][name], seconds["stock"][name]
        told = f"{restored / stock:.2f} ({restored:.0f} ms)"
        yield f"first answer from a snapshot, hash checked, {name} / stock", told, budget
        yield f"first answer from a snapshot, hash checked, {name} / ours without", f"{restored / plain[name]:.2f}", "-"
    yield "recalculate", f"{seconds['ours']['again']:.1f} ms", "at most 16 ms"
    yield "recalculate, CPU 4x slower", f"{seconds['ours']['again slowed']:.1f} ms", "at most 50 ms"


@contextmanager
def cacheable(folder: Path):
    """Serve a folder as ordinary hosts do, with dates that let a browser keep files; gives the address."""
    handler = partial(Quiet, directory=folder)
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        Thread(target=server.serve_forever, daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()


class Quiet(SimpleHTTPRequestHandler):
    """A plain file server that logs nothing."""

    protocol_version = "HTTP/1.1"

    def log_message(self, *ignored):
        """Say nothing."""


def run(browser, address: str, kind: str) -> dict[str, float]:
    """Time one browser profile: the first visit is cold, the second warm."""
    context = browser.new_context()
    timed = {}
    if kind == "snapshot":
        page = context.new_page()
        page.goto(f"{address}bench.html")
        page.evaluate("makeSnapshot()")
        page.close()
    for name in ("worker cold", "worker warm"):
        page = context.new_page()
        page.goto(f"{address}bench.html")
        timed[name], timed["again"] = page.evaluate("kind => timeInWorker(kind)", kind)
        page.close()
    page = context.new_page()
    page.goto(f"{address}bench.html")
    context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 4})
    timed["main thread, CPU 4x slower"], timed["again slowed"] = page.evaluate("kind => timeHere(kind)", kind)
    context.close()
    return timed


def registries():
    """Compare our registry with pint's own, in CPython."""
    import pint

    from calc.units import registry

    def seconds(make) -> float:
        started = time.perf_counter()
        make()
        return time.perf_counter() - started

    registry()
    ours = statistics.median(seconds(registry.__wrapped__) for _ in range(20))
    default = statistics.median(seconds(lambda: pint.UnitRegistry(cache_folder=None)) for _ in range(5))
    yield "registry, ours / pint's default", f"{ours / default:.3f}", "at most 0.05"


def sizes():
    """Weigh what goes over the wire."""
    files = [
        file for file in (SITE / "runtime").rglob("*.*") if file.name not in LATER and file.suffix != TWIN
    ]
    wire = sum(len(brotli.compress(file.read_bytes(), quality=11)) for file in files)
    yield "runtime for the first answer, brotli 11", f"{wire / 1e6:.2f} MB", "at most 3.2 MB"
    twins = (file.with_name(f"{file.name}{TWIN}") for file in files)
    plain = sum((twin if twin.exists() else file).stat().st_size for file, twin in zip(files, twins, strict=True))
    yield "the same from a host that compresses nothing", f"{plain / 1e6:.2f} MB", "at most 5.5 MB"
    page = SITE / "calculators" / "main-bonding-jumper.html"
    loaded = [
        page,
        *SITE.glob("kit/*/scripts/*.js"),
        *SITE.glob("kit/*/styles/*.css"),
        *SITE.glob("assets/stylesheets/*.css"),
        *SITE.glob("assets/javascripts/bundle*.js"),
    ]
    weight = sum(len(gzip.compress(file.read_bytes(), 9)) for file in loaded)
    yield "page with its form, scripts and styles, gzip 9", f"{weight / 1e3:.0f} kB", "at most 150 kB"


def visits():
    """Count what a second visit asks the server for, once the handbook is saved."""
    with Server(SITE, base="/sub/") as server, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=browser_arguments())
        page = browser.new_context().new_page()
        page.goto(f"{server.address}calculators/main-bonding-jumper.html?edition=2023&conductor=3/0")
        page.locator("[data-result] .answer").wait_for(timeout=60_000)
        page.locator("[data-offline][data-offline-state=ready]").wait_for(timeout=120_000)
        server.requested.clear()
        page.reload()
        page.locator("[data-result] .answer").wait_for(timeout=60_000)
        asked = [path for path in server.requested if not path.endswith("service-worker.js")]
        browser.close()
    yield "requests of a second visit", str(len(asked)), "0"


def swaps():
    """Time a second calculator, from the press of a link to its answer: in the same page, and in a page loaded anew."""
    case = "?edition=2023&conductor=500kcmil&sets=2"
    lead = """([slug, query]) => {
      const links = [...document.querySelectorAll("nav a[href]")];
      const link = links.find(({ href }) => href.endsWith(`calculators/${slug}.html`));
      link.search = query;
      link.click();
    }"""

    def seconds(slug: str, go) -> float:
        started = time.perf_counter()
        go(slug)
        page.locator(f"form[data-calculator={slug}] ~ .result .answer").wait_for(timeout=60_000)
        return time.perf_counter() - started

    with Server(SITE, base="/sub/") as server, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=browser_arguments())
        page = browser.new_context().new_page()
        page.add_init_script("Object.defineProperty(Navigator.prototype, 'locks', { value: undefined })")  # no snapshot
        seconds("main-bonding-jumper", lambda slug: page.goto(f"{server.address}calculators/{slug}.html{case}"))
        page.locator("[data-offline][data-offline-state=ready]").wait_for(timeout=120_000)
        server.requested.clear()
        slugs = ("system-bonding-jumper", "supply-side-bonding-jumper", "main-bonding-jumper") * ROUNDS
        swapped = statistics.median(seconds(slug, lambda slug: page.evaluate(lead, [slug, case])) for slug in slugs)
        asked = [path for path in server.requested if not path.endswith("service-worker.js")]
        loaded = statistics.median(
            seconds(slug, lambda slug: page.goto(f"{server.address}calculators/{slug}.html{case}")) for slug in slugs
        )
        browser.close()
    told = f"{swapped / loaded:.2f} ({1000 * swapped:.0f}/{1000 * loaded:.0f} ms)"
    yield "second calculator, saved, in the same page / page loaded anew", told, "at most 0.08"
    yield "requests of a second calculator, saved", str(len(asked)), "0"


def tables():
    """Time a row of a table in long tables against a row in a short one, in CPython and in the page."""
    yield from growth("CPython", seconds_here, (10_000, 100_000))
    with page_for_tables() as seconds_in_page:
        yield from growth("the page", seconds_in_page, (10_000,))


def growth(where: str, seconds, counts: tuple[int, ...]):
    """Yield the time of a row in tables of so many rows as a ratio to its time in one of 1,000."""
    seconds(1_000)
    short = statistics.median(seconds(1_000) for _ in range(ROUNDS)) / 1_000
    for count in counts:
        row = seconds(count) / count
        name = f"a row of a table in {where}, {count:,} rows / 1,000 rows"
        yield name, f"{row / short:.2f} ({1 / row:,.0f} rows/s)", "about 1"


def table_of(count: int) -> str:
    """Return a table in which no row is the same as the one before."""
    sizes = ("4", "3/0", "500 kcmil", "250kcmil", "2000kcmil")
    metals = ("copper", "aluminum")
    rows = (f"Panel {each},{sizes[each % 5]},{each % 7 + 1},{metals[each % 2]}" for each in range(count))
    return "\n".join(["label,conductor,sets,metal", *rows])


def seconds_here(count: int) -> float:
    """Time a whole table in CPython, from its bytes to its written rows."""
    from calc import main_bonding_jumper
    from calc.batch import answer_table

    stream = BytesIO(table_of(count).encode())
    started = time.perf_counter()
    table = answer_table(main_bonding_jumper, stream)
    for row in table.rows:
        table.line(row.values())
    return time.perf_counter() - started


@contextmanager
def page_for_tables():
    """Open a page and give the function that times a whole table in it, from the click to the file that can be kept."""

    def seconds(count: int) -> float:
        page.locator("#many-text").evaluate("(typed, text) => { typed.value = text; }", table_of(count))
        started = time.perf_counter()
        page.click("[data-many-run]")
        page.locator("[data-many-keep]:not([hidden])").wait_for(timeout=600_000)
        return time.perf_counter() - started

    with Server(SITE, base="/sub/") as server, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=chromium(), args=browser_arguments())
        page = browser.new_context(service_workers="block").new_page()
        page.goto(f"{server.address}calculators/main-bonding-jumper.html")
        page.click("[data-many] > summary")
        yield seconds
        browser.close()


def browser_arguments() -> list[str]:
    """Return what the browser must be started with."""
    return ["--no-sandbox"] if hasattr(os, "geteuid") and os.geteuid() == 0 else []


if __name__ == "__main__":
    sys.exit(main())
