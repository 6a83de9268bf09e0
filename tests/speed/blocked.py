"""How long a table of 60,000 rows keeps the page from answering a press: the longest task, step by step.

By itself: `.venv/bin/python -m tests.speed.blocked`. The main thread is measured as it is and slowed four times.
"""

import sys
import time

from site_assets.build.serve import Server
from site_assets.setup.paths import SITE
from tests.browser.test_table import PASTE_ROWS, WATCH_LONG_TASKS
from tests.browser.test_table import ROWS as MADE_ROWS
from tests.speed.browser import started_browser
from tests.speed.row import Row

COUNT = 60_000
BUDGET = 200  # ms
LONGEST = """async () => {
  await new Promise((resolve) => setTimeout(resolve, 300));
  return Math.max(0, ...longTasks.splice(0));
}"""
CHOOSE_ROWS = f"""(count) => {{
  const files = new DataTransfer();
  files.items.add(new File([({MADE_ROWS})(count)], "rows.csv"));
  globalThis.longTasks?.splice(0);
  const field = document.querySelector("#many-file");
  field.files = files.files;
  field.dispatchEvent(new Event("change"));
}}"""
LEAVE = "[...document.links].find(({ href }) => href.endsWith('calculators/system-bonding-jumper.html')).click()"
DONE = "[data-many-keep]:not([hidden])"


def rows(count: int = COUNT):
    """Yield the longest task of each step, as it is and slowed."""
    with Server(SITE, base="/sub/") as server, started_browser() as browser:
        for rate in (1, 4):
            context = browser.new_context(service_workers="block")
            page = context.new_page()
            page.goto(f"{server.address}calculators/main-bonding-jumper.html")
            page.click("[data-many] > summary")
            page.evaluate(WATCH_LONG_TASKS)
            context.new_cdp_session(page).send("Emulation.setCPUThrottlingRate", {"rate": rate})
            slowed = f", CPU {rate}x slower" if rate > 1 else ""
            for step, longest in steps(page, count):
                yield Row(f"page blocked by a table of {count:,} rows, {step}{slowed}", longest, "ms", BUDGET)
            context.close()


def steps(page, count: int):
    """Yield each step with its longest task, milliseconds; those below 50 ms are not told by the browser."""
    page.evaluate(LONGEST)
    page.evaluate(PASTE_ROWS, count)
    yield "pasted", page.evaluate(LONGEST)
    page.click("[data-many-run]")
    page.locator(".many-progress span:not(:empty)").wait_for(timeout=120_000)
    yield "started", page.evaluate(LONGEST)
    started = time.perf_counter()
    page.locator(DONE).wait_for(timeout=1_200_000)
    rows = count / (time.perf_counter() - started)
    yield f"answered and shown ({rows:,.0f} rows/s)", page.evaluate(LONGEST)
    with page.expect_download() as download:
        page.click(DONE)
    download.value.path()
    yield "downloaded", page.evaluate(LONGEST)
    page.evaluate(LEAVE)
    page.locator("form[data-calculator=system-bonding-jumper]").wait_for(timeout=60_000)
    yield "left", page.evaluate(LONGEST)
    page.go_back()
    page.locator("[data-many-kept]:not([hidden])").wait_for(timeout=60_000)
    yield "there again on coming back", page.evaluate(LONGEST)
    page.evaluate(CHOOSE_ROWS, count)
    page.locator(".many-progress span:not(:empty)").wait_for(timeout=120_000)
    page.click("[data-many-stop]")
    page.locator(DONE).wait_for(timeout=60_000)
    yield "chosen as a file and stopped", page.evaluate(LONGEST)


if __name__ == "__main__":
    for row in rows(int(sys.argv[1]) if len(sys.argv) > 1 else COUNT):
        print(*row.cells, sep="  ", flush=True)
