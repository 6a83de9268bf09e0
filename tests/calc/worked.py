"""Every worked case of a calculator, run once in a process."""

from functools import cache

from calc import CALCULATORS
from tests.cases.read import FOLDER, cases


@cache
def results(slug: str) -> tuple:
    """Return the result of every worked case of a calculator in every edition that it speaks for."""
    path = next(FOLDER.glob(f"**/{slug.replace('-', '_')}.toml"))
    asked = cases(path.relative_to(FOLDER).with_suffix("").as_posix())
    return tuple(
        CALCULATORS[slug].run([("edition", edition), *((name, str(value)) for name, value in case["inputs"].items())])
        for edition, case in asked
    )
