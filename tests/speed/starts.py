"""From nothing to the first answer: stock Pyodide, ours from its files, ours from a snapshot; and a later answer."""

import os
import shutil
import statistics
import tempfile
import time
from contextlib import contextmanager
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from importlib.metadata import distribution
from pathlib import Path
from threading import Thread

from site_assets.setup.paths import NODE_MODULES, SITE
from tests.speed.browser import started_browser
from tests.speed.row import Row

HERE = Path(__file__).parent
ROUNDS = 3
KINDS = ("stock", "ours", "snapshot")
COLD, WARM, SLOWED = "worker cold", "worker warm", "main thread, CPU 4x slower"
QUIET_STOCK = 2335  # ms, worker warm, on two idle cores
PACKAGES = ("pint", "flexcache", "flexparser", "platformdirs", "typing_extensions")


def rows():
    """Yield the starts as ratios to stock, later answers, memory, and the making of the registry."""
    with tempfile.TemporaryDirectory() as scratch:
        seen = measured(make_bench(Path(scratch)))
    stock, plain, restored = ({name: median(seen, kind, name) for name in seen[kind][0]} for kind in KINDS)
    slower = stock[WARM] / QUIET_STOCK
    load = f"{stock[WARM]:.0f} ms; load {os.getloadavg()[0]:.1f}"
    yield Row("stock Pyodide's start, worker warm, times that of a quiet machine", slower, "x", beside=load)
    for name, budget in ((COLD, 0.40), (WARM, 0.35), (SLOWED, 0.28)):
        told = f"{plain[name]:.0f}/{stock[name]:.0f} ms"
        yield Row(f"first answer, {name}, ours / stock", plain[name] / stock[name], "", budget, told)
    for name, budget in ((WARM, 0.16), (SLOWED, 0.15)):
        told, ratio = f"{restored[name]:.0f}/{stock[name]:.0f} ms", restored[name] / stock[name]
        yield Row(f"first answer from a snapshot, hash checked, {name} / stock", ratio, "", budget, told)
    yield Row("recalculate", plain["again"], "ms", 16, "one frame")
    yield Row("recalculate, CPU 4x slower", plain["again slowed"], "ms", 50)
    for kind, of_kind in (("from its files", plain), ("from a snapshot", restored), ("of stock Pyodide", stock)):
        yield Row(f"memory of Python after the first answer, {kind}", of_kind["heap"] / 2**20, "MiB")
    yield from registries()


def median(seen: dict, kind: str, name: str) -> float:
    """Return the median of what was measured so often."""
    return statistics.median(each[name] for each in seen[kind])


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


def measured(bench: Path) -> dict[str, list[dict[str, float]]]:
    """Time every kind of start in turns, so that a load that comes and goes slows all of them."""
    seen = {kind: [] for kind in KINDS}
    with cacheable(bench) as address, started_browser() as browser:
        for _ in range(ROUNDS):
            for kind in KINDS:
                seen[kind].append(run(browser, address, kind))
    return seen


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
    for name in (COLD, WARM):
        page = context.new_page()
        page.goto(f"{address}bench.html")
        timed[name], timed["again"], timed["heap"] = page.evaluate("kind => timeInWorker(kind)", kind)
        page.close()
    page = context.new_page()
    page.goto(f"{address}bench.html")
    context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": 4})
    timed[SLOWED], timed["again slowed"], _ = page.evaluate("kind => timeHere(kind)", kind)
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
    yield Row("registry, ours / pint's default", ours / default, "", 0.05)
