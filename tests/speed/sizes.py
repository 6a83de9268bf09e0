"""What goes over the wire: the runtime for a first answer, and a page."""

import gzip

import brotli

from site_assets.build.runtime import LATER, TWIN
from site_assets.setup.paths import SITE
from tests.speed.row import Row


def rows():
    """Yield the bytes of a first visit."""
    files = [file for file in (SITE / "runtime").rglob("*.*") if file.name not in LATER and file.suffix != TWIN]
    wire = sum(len(brotli.compress(file.read_bytes(), quality=11)) for file in files)
    yield Row("runtime for the first answer, brotli 11", wire / 1e6, "MB", 3.2)
    twins = (file.with_name(f"{file.name}{TWIN}") for file in files)
    plain = sum((twin if twin.exists() else file).stat().st_size for file, twin in zip(files, twins, strict=True))
    yield Row("the same from a host that compresses nothing", plain / 1e6, "MB", 5.5)
    loaded = [
        SITE / "calculators" / "main-bonding-jumper.html",
        *SITE.glob("kit/*/scripts/*.js"),
        *SITE.glob("kit/*/styles/*.css"),
        *SITE.glob("assets/stylesheets/*.css"),
        *SITE.glob("assets/javascripts/bundle*.js"),
    ]
    weight = sum(len(gzip.compress(file.read_bytes(), 9)) for file in loaded)
    yield Row("page with its form, scripts and styles, gzip 9", weight / 1e3, "kB", 150)
