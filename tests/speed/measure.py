"""Measures the runtime and the pages, beside stock Pyodide, and prints one table of budgets: pass or OVER.

Run after a build: `.venv/bin/python -m tests.speed.measure`, or with the names of some sections, `… starts deck`.
Stock means Pyodide as shipped, its whole library, the same packages as sources, pint's default registry. What is
compared is measured in turns, in one run, and medians are told. Milliseconds and seconds hold for a quiet machine: the
load is told, and how much slower than quiet stock Pyodide started.
"""

import os
import sys
import time

from tests.speed import blocked, deck, ladder, sizes, slow_link, starts, swaps, tables, updates
from tests.speed.row import printed

SECTIONS = {
    "starts": starts.rows,
    "swaps": swaps.rows,
    "deck": deck.rows,
    "sizes": sizes.rows,
    "tables": tables.rows,
    "blocked": blocked.rows,
    "link": slow_link.rows,
    "updates": updates.rows,
    "ladders": ladder.rows,
}


def main(wanted: list[str]) -> int:
    """Measure the sections named, or all, and print their table; return 2 for a section that does not exist."""
    if unknown := [name for name in wanted if name not in SECTIONS]:
        print(f"There is no section {', '.join(unknown)}. The sections are {', '.join(SECTIONS)}.")
        return 2
    rows = []
    loads = [os.getloadavg()[0]]
    for name in wanted or SECTIONS:
        started = time.perf_counter()
        rows += SECTIONS[name]()
        loads.append(os.getloadavg()[0])
        print(f"{name}: {time.perf_counter() - started:.0f} s", file=sys.stderr, flush=True)
    print(printed(rows))
    over = sum(row.verdict == "OVER" for row in rows)
    print(f"\n{over} over budget. Load on {os.cpu_count()} cores: {min(loads):.1f} to {max(loads):.1f}.")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
