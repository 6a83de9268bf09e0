"""The disk edition, unpacked: where it stands, and what asks its calculators; for tests in every browser."""

from __future__ import annotations

import base64
import gzip
import re
import zipfile
from pathlib import Path
from urllib.parse import urlencode

from calc.registry import CALCULATORS
from site_assets.build.disk import UNPACKED
from site_assets.build.settings import DISK_EDITION

HANDED_OVER = re.compile(r'handbookFile\("([A-Za-z0-9+/=]+)"\);\n')
# Asks a worker of the page's own kind: as many questions as are given, one answer each, in their order.
ASK_ALL = """(questions) => new Promise((resolve, reject) => {
  const { list, ...page } = JSON.parse(document.querySelector("form.calculator").dataset.runtime);
  const { src } = document.querySelector("script[src*='scripts/page.js']");
  const worker = new Worker(src.replace("page.js", "calculator-worker.js"));
  const replies = [];
  worker.onerror = reject;
  worker.onmessage = ({ data }) => {
    if (data.failed || data.missing || data.gone) reject(new Error(JSON.stringify(data)));
    if (!data.reply) return;
    replies.push([data.id, data.reply]);
    if (replies.length < questions.length) return;
    worker.terminate();
    resolve(replies.sort(([one], [other]) => one - other).map(([, reply]) => reply));
  };
  const scope = new URL("./", location).href;
  worker.postMessage({ start: { page: { list: new URL(list, location).href, ...page }, scope } });
  questions.forEach(([slug, query], id) => worker.postMessage({ id, slug, query }));
})"""


def unpacked(site: Path, folder: Path) -> Path:
    """Unpack the archive of a built site and return the folder that a reader then sees."""
    with zipfile.ZipFile(site / DISK_EDITION) as archive:
        archive.extractall(folder)
    return folder / UNPACKED


def bytes_of(script: Path) -> bytes:
    """Return the bytes of the file that a script hands over."""
    return gzip.decompress(base64.b64decode(HANDED_OVER.fullmatch(script.read_text(encoding="utf-8"))[1]))


def examples(slugs: list[str]) -> list[list[str]]:
    """Return what to ask each calculator: its example, and an entry to fix."""
    return [[slug, query] for slug in slugs for query in (urlencode(CALCULATORS[slug].example), "edition=never")]
