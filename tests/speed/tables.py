"""A row of a table in long tables against a row in a short one, in CPython and in the page."""

import statistics
import time
from contextlib import contextmanager
from io import BytesIO

from site_assets.build.serve import Server
from site_assets.setup.paths import SITE
from tests.speed.browser import started_browser
from tests.speed.row import Row

ROUNDS = 3
SAME = 1.25  # about 1: nothing grows with the table


def rows():
    """Yield the time of a row in long tables as a ratio to that in one of 1,000."""
    yield from growth("CPython", seconds_here, (10_000, 100_000))
    with page_for_tables() as seconds_in_page:
        yield from growth("the page", seconds_in_page, (10_000,))


def growth(where: str, seconds, counts: tuple[int, ...]):
    """Yield the ratios; the short table is timed before and after each long one."""
    seconds(1_000)
    for count in counts:
        short = [seconds(1_000) for _ in range(ROUNDS)]
        row = seconds(count) / count
        short += [seconds(1_000) for _ in range(ROUNDS)]
        ratio = row / (statistics.median(short) / 1_000)
        name = f"a row of a table in {where}, {count:,} rows / 1,000 rows"
        yield Row(name, ratio, "", SAME, f"{1 / row:,.0f} rows/s")


def table_of(count: int) -> str:
    """Return a table in which no row is the same as the one before."""
    sizes = ("4", "3/0", "500 kcmil", "250kcmil", "2000kcmil")
    metals = ("copper", "aluminum")
    lines = (f"Panel {each},{sizes[each % 5]},{each % 7 + 1},{metals[each % 2]}" for each in range(count))
    return "\n".join(["label,conductor,sets,metal", *lines])


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

    with Server(SITE, base="/sub/") as server, started_browser() as browser:
        page = browser.new_context(service_workers="block").new_page()
        page.goto(f"{server.address}calculators/main-bonding-jumper.html")
        page.click("[data-many] > summary")
        yield seconds
