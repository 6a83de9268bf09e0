"""Hostile inputs, seeded: what someone could put into a link, a form, a table, the storage or a message of a page."""

from __future__ import annotations

import json
import random
from dataclasses import dataclass
from urllib.parse import quote, urlencode

from calc.calculator import Calculator
from site_assets.build.theme import SCHEME_MEMORY

RUNS = "self.ran=(self.ran||0)+1"  # nothing may ever do this
ELSEWHERE = "http://elsewhere.invalid/taken"

# Words that become code where a page takes text for HTML, an address, a style or a script.
CODE = (
    f"<script>{RUNS}</script>",
    f"<img src=x onerror={RUNS}>",
    f'"><img src=x onerror="{RUNS}">',
    f"'><svg/onload={RUNS}>",
    f"<svg><script>{RUNS}</script></svg>",
    f"<math><mtext></form><form><mglyph><style></math><img src onerror={RUNS}>",
    f"<noscript><p title=\"</noscript><img src=x onerror={RUNS}>\">",
    f'<iframe srcdoc="<script>parent.{RUNS}</script>"></iframe>',
    f'<iframe src="javascript:parent.{RUNS}"></iframe>',
    f'<a href="javascript:{RUNS}" id=x>press</a>',
    f'<form action="{ELSEWHERE}"><button>press</button></form>',
    f'<button formaction="javascript:{RUNS}">press</button>',
    f'<base href="{ELSEWHERE}/">',
    f'<meta http-equiv="refresh" content="0;url={ELSEWHERE}">',
    f'<link rel=stylesheet href="{ELSEWHERE}.css">',
    f"<style>@import url({ELSEWHERE});</style>",
    f'<p style="background:url({ELSEWHERE})">',
    f'<img src="{ELSEWHERE}">',
    f'<object data="{ELSEWHERE}"></object><embed src="{ELSEWHERE}">',
    f"<details open ontoggle={RUNS}>",
    f"<input autofocus onfocus={RUNS}>",
    f"</textarea><script>{RUNS}</script>",
    f"</script><script>{RUNS}</script>",
    f"</title><script>{RUNS}</script><!--",
    f"<template><script>{RUNS}</script></template>",
    f"&lt;img src=x onerror={RUNS}&gt;",
    f"%3Cscript%3E{RUNS}%3C/script%3E",
    f"javascript:{RUNS}//",
    f"data:text/html,<script>{RUNS}</script>",
    f"${{{RUNS}}}",
    f"{{{{constructor.constructor('{RUNS}')()}}}}",
    f"{{answer}}{{percent}}{{lines}}<b>{RUNS}</b>",
    "$& $' $` $1 $<x>",
    f'<div id="error-conductor" data-runtime="{ELSEWHERE}">',
    f'<form class="calculator" data-calculator="x" data-runtime=\'{{"folder":"{ELSEWHERE}/"}}\'>',
    f"={RUNS}",
    f'=HYPERLINK("{ELSEWHERE}","press")',
    "__import__('os').system('true')",
    "().__class__.__base__.__subclasses__()",
)
# Words that are long, odd or costly to read.
ODD = (
    "", " ", "\u0000", "\u202e500", "\ufeff3/0", "\u2028", "\ud83d\ude00" * 50, "A\u0301" * 500, "\u200d" * 100,
    "１２", "٣", "Ⅻ", "½", "-0", "+1", "1e309", "-1e309", "1e-400", "NaN", "Infinity", "0x10", "1_000", "1,2,3",
    "9" * 400, "0." + "0" * 400 + "1", "1/0", "0/0", "3//0", "/" * 300, "1 ft " * 40, "10**10**10 m", "1e9**9 ohm",
    "m**99999999", "(" * 190, "((" * 90 + "))" * 90, "x" * 6000, " " * 20_000, "1 " * 5000, "a," * 3000,
    "kcmil" * 1000, "500kcmil" + "!" * 5000, "../../../etc/passwd", "C:\\con", "__proto__", "constructor", "toString",
    "hasOwnProperty", "null", "undefined", "true", "[object Object]", "unknown", "unknown..unknown", "1..2..3", "1..",
    "..1", "5..1 ft", "1 ft..1 A", "%", "%%%", "%00", "%u0041", "%F0%28%8C%28", "+" * 100, "&" * 100, "#" * 100,
)
NAMES = (
    "__proto__", "constructor", "toString", "edition", "said", "assumed", "found", "h", "q", "lost", "wanted", "",
    '"><img src=x>', "conductor[]", "conductor.x", "valueOf", "elements", "action", "submit", "data-field",
)  # fmt: skip


@dataclass(frozen=True)
class Hostile:
    """One input: `kind` is one of link, form, table, stored, message, address; `what` is what that kind needs."""

    kind: str
    name: str
    what: object


def words(chance: random.Random) -> str:
    """Return one hostile text: code, something odd, or the two in one another."""
    text = chance.choice(CODE if chance.random() < 0.6 else ODD)
    if chance.random() < 0.25:
        text = chance.choice(("3/0", "500 kcmil ", "200 A", "1 ft", " ")) + text
    if chance.random() < 0.15:
        text += chance.choice(CODE)
    return text


def link(chance: random.Random, calculator: Calculator) -> str:
    """Return the query of a link: the example with hostile values, names, repetitions and broken escapes."""
    query = [(name, str(value)) for name, value in calculator.example.items()]
    for _ in range(chance.randint(1, 4)):
        query.insert(chance.randint(0, len(query)), (chance.choice([*calculator.fields, *NAMES]), words(chance)))
    written = urlencode(query, errors="replace", quote_via=quote)
    if chance.random() < 0.2:
        written += chance.choice(("&%", "&%E0%A4%A", "&=&=&", "&" * 2000, "&a" * 500, "?" * 50, "&edition=2017" * 20))
    return f"?{written}"


def table(chance: random.Random, calculator: Calculator) -> str:
    """Return a pasted table whose heads and cells are hostile."""
    names = list(calculator.fields)
    chance.shuffle(names)
    heads = names[: chance.randint(1, 5)]
    if chance.random() < 0.3:
        heads.insert(0, words(chance))
    gap = chance.choice((",", ";", "\t"))
    quoted = chance.random() < 0.7

    def cell() -> str:
        text = words(chance) if chance.random() < 0.7 else str(chance.choice(list(calculator.example.values()) or [1]))
        return '"' + text.replace('"', '""') + '"' if quoted else text

    rows = [gap.join(cell() for _ in range(len(heads) + chance.choice((0, 0, 0, 1, -1)))) for _ in range(4)]
    return "\n".join([gap.join(heads), *rows])


def stored(chance: random.Random, calculator: Calculator) -> dict[str, dict[str, str]]:
    """Return what stands in the storage of a page before it is loaded again."""
    page = f"/calculators/{calculator.slug}.html"
    scheme = {"index": chance.randint(0, 3), "color": {"scheme": words(chance), "onload": RUNS}}
    session = {f"inputs BASE{page}": link(chance, calculator).removeprefix("?"), "__proto__": words(chance)}
    if chance.random() < 0.5:
        session[f"rows BASE{page}"] = table(chance, calculator)
    return {
        "local": {"edition": words(chance), f"BASE/{SCHEME_MEMORY}": json.dumps(scheme)},
        "session": session,
        "cache": {f"BASE/?hash={quote(words(chance), errors='replace')}&type=html": f"<script>{RUNS}</script>"},
        "database": {chance.choice(("snapshot", "handbook", "offline")): words(chance)},
    }


def message(chance: random.Random) -> object:
    """Return a message that another window sends."""
    text = words(chance)
    return chance.choice((
        text,
        {"kind": chance.choice(("reset", "saved", "failed", "mended", "saving", text)), "file": text, "why": text},
        {"ready": True, "reply": {"html": text, "fix": {}}, "id": 1},
        {"id": 1, "failed": text, "missing": ELSEWHERE},
        {"start": {"folder": f"{ELSEWHERE}/", "library": text, "total": -1, "lock": {}}},
        [text] * 50,
        None,
    ))  # fmt: skip


def address(chance: random.Random) -> str:
    """Return an address of a page that reads its own address: the one for lost pages, the search, the first page."""
    text = quote(words(chance), errors="replace")
    return chance.choice((
        f"404.html?lost={text}", f"404.html?wanted={text}", "404.html?lost=http%3A%2F%2Felsewhere.invalid%2Ftaken",
        f"404.html?lost=../../{text}", "404.html?lost=//elsewhere.invalid/", f"search.html?q={text}",
        f"index.html?h={text}#{text}", f"index.html#{text}", f"checks.html#{text}", f"glossary.html?edition={text}",
    ))  # fmt: skip


# How many of each kind a slice has; the first link opens the page.
KINDS = {"link": 13, "form": 10, "table": 5, "stored": 3, "message": 6, "address": 4}


def slice_of(number: int, calculator: Calculator) -> list[Hostile]:
    """Return the inputs of one slice, the same each time."""
    chance = random.Random(f"hostile {number}")
    fields = [name for name, field in calculator.fields.items() if not field.choices]
    made = {
        "link": lambda: link(chance, calculator),
        "form": lambda: {name: words(chance) for name in chance.sample(fields, min(len(fields), chance.randint(1, 3)))},
        "table": lambda: table(chance, calculator),
        "stored": lambda: stored(chance, calculator),
        "message": lambda: message(chance),
        "address": lambda: address(chance),
    }
    return [
        Hostile(kind, f"{number}-{kind}-{each}", made[kind]()) for kind, count in KINDS.items() for each in range(count)
    ]
