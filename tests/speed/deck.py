"""The voltage on a pool deck, fine, in a worker that runs: the part for the chosen deck, and the whole."""

import statistics

from site_assets.build.serve import Server
from site_assets.setup.paths import SITE
from tests.speed.browser import started_browser
from tests.speed.row import Row

ROUNDS = 3
PAGE = "calculators/deck-voltage.html"
# The pool is never the same, for what was solved once is kept.
ASK = """async ([chosen, length]) => {
  const { ask } = await import(document.querySelector("script[data-page-parts]").src.replace("page.js", "runtime.js"));
  const query = `edition=2023&detail=fine&rise=120V&arrangement=${chosen}&pool_length=${length}ft&pool_width=16ft`;
  const started = performance.now();
  let first;
  await ask("deck-voltage", query, { onPart: () => { first ??= performance.now() - started; } });
  return [first, performance.now() - started];
}"""


def rows():
    """Yield the first part and the whole, for one wire, as in the example, and for a mesh, the most to solve."""
    seen = {"ring": [], "mesh": []}
    with Server(SITE, base="/sub/") as server, started_browser() as browser:
        page = browser.new_context(service_workers="block").new_page()
        page.goto(f"{server.address}{PAGE}?edition=2023&rise=120V")
        page.locator("[data-result] .answer").wait_for(timeout=60_000)
        for turn in range(ROUNDS):
            for chosen, times in seen.items():
                times.append(page.evaluate(ASK, [chosen, 30 + 2 * turn + (chosen == "mesh")]))
    for chosen, words in (("ring", "one wire"), ("mesh", "mesh")):
        first, whole = (statistics.median(each) for each in zip(*seen[chosen], strict=True))
        yield Row(f"deck-voltage, fine, {words} chosen: its part", first, "ms", 300, f"{first / whole:.2f} of all four")
        yield Row(f"deck-voltage, fine, {words} chosen: all four decks", whole, "ms", 1000)
