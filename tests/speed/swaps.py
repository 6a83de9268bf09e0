"""A second visit and a second calculator, once the handbook is saved."""

import statistics
import time

from site_assets.build.serve import Server
from site_assets.setup.paths import SITE
from tests.speed.browser import started_browser
from tests.speed.row import Row

ROUNDS = 3
CASE = "?edition=2023&conductor=500kcmil&sets=2"
SLUGS = ("system-bonding-jumper", "supply-side-bonding-jumper", "main-bonding-jumper")
NO_SNAPSHOT = "Object.defineProperty(Navigator.prototype, 'locks', { value: undefined })"
LEAD = """([slug, query]) => {
  const links = [...document.querySelectorAll("nav a[href]")];
  const link = links.find(({ href }) => href.endsWith(`calculators/${slug}.html`));
  link.search = query;
  link.click();
}"""


def rows():
    """Yield what the server is asked for, and the time from a link's press to the answer, swapped / loaded anew."""
    with Server(SITE, base="/sub/") as server, started_browser() as browser:
        page = browser.new_context().new_page()
        page.add_init_script(NO_SNAPSHOT)

        def seconds(slug: str, go) -> float:
            started = time.perf_counter()
            go(slug)
            page.locator(f"form[data-calculator={slug}] ~ .result .answer").wait_for(timeout=60_000)
            return time.perf_counter() - started

        def load(slug: str):
            page.goto(f"{server.address}calculators/{slug}.html{CASE}")

        def swap(slug: str):
            page.evaluate(LEAD, [slug, CASE])

        seconds("main-bonding-jumper", load)
        page.locator("[data-offline][data-offline-state=ready]").wait_for(timeout=300_000)
        server.requested.clear()
        page.reload()
        page.locator("[data-result] .answer").wait_for(timeout=60_000)
        yield Row("requests of a second visit, saved", len(asked(server)), "", 0)
        swapped, loaded = [], []
        requests = 0
        for _ in range(ROUNDS):
            server.requested.clear()
            swapped += [seconds(slug, swap) for slug in SLUGS]
            requests += len(asked(server))
            loaded += [seconds(slug, load) for slug in SLUGS]
    one, other = statistics.median(swapped), statistics.median(loaded)
    told = f"{1000 * one:.0f}/{1000 * other:.0f} ms"
    yield Row("second calculator, saved, in the same page / page loaded anew", one / other, "", 0.08, told)
    yield Row("requests of a second calculator, saved", requests, "", 0)


def asked(server) -> list[str]:
    """Return what the server was asked for; the browser's look at the service worker is no content."""
    return [path for path in server.requested if not path.endswith("service-worker.js")]
