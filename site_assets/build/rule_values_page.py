"""The generated tables of the method pages: every figure, its sources and marks; every change."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from itertools import groupby
from operator import itemgetter
from typing import Any

from calc.editions import EDITIONS
from calc.messages import Message, message
from calc.registry import CALCULATORS
from calc.rulebook import Rule, aliases, changes, file_of, rule, rule_keys, sources
from site_assets.build.by_edition import section
from site_assets.render.marks import mark_html
from site_assets.render.text import text

ROOM_WORDS = {
    "communications": message("Communications systems and antennas"),
    "conductors": message("Conductors: sizes, areas, ampacities"),
    "constants": message("What no edition states: physics, soil, the body, trade practice"),
    "definitions": message("Definitions"),
    "devices": message("Overcurrent devices: what their standards say"),
    "dock": message("Docks, marinas and floating buildings"),
    "electrodes": message("Grounding electrodes"),
    "fault": message("Fault currents and voltages to ground"),
    "generators": message("Generators"),
    "grounding": message("Grounding conductors, pipes and steel"),
    "hazardous": message("Hazardous locations"),
    "jumpers": message("Bonding jumpers"),
    "livestock": message("Farms and livestock"),
    "measure": message("Readings on bonds, and current on metal"),
    "naming": message("Names, and what is not covered"),
    "patient_care": message("Patient care spaces"),
    "places": message("Other places and equipment"),
    "pool": message("Pools, spas, fountains and tubs"),
    "raceways": message("Raceways, elbows and knockouts"),
    "receptacles": message("Boxes, receptacles and switches"),
    "services": message("Services"),
    "solar": message("Solar arrays"),
}


def figures_table() -> str:
    """Return every rule, folded and by room, with its figures and for each edition its place, mark and sources."""
    rooms = {room: list(keys) for room, keys in groupby(sorted(rule_keys(), key=_room_and_key), _room)}
    listed = "".join(
        f'<li><a href="#room-{room}">{text(message("{room} ({count})", room=room_name(room), count=len(keys)))}</a>'
        '</li>'
        for room, keys in rooms.items()
    )
    folded = "".join(
        f'<h3 id="room-{room}">{text(room_name(room))}</h3>{"".join(map(_rule, keys))}' for room, keys in rooms.items()
    )
    emptied = sorted({key.split("/")[0] for key in rule_keys()} - set(rooms))
    old_anchors = "".join(f'<span id="room-{room}"></span>' for room in emptied)
    return f'{old_anchors}<ul class="rooms">{listed}</ul>{folded}'


def sources_table() -> str:
    """Return every text that a rule names, and what was read in it."""
    head = _row("th", message("Text"), message("Kind"), message("What we saw in it"))
    rows = "".join(_row("td", each["title"], each["kind"], each["seen"]) for each in sources().values())
    return f'<table class="facts"><thead>{head}</thead><tbody>{rows}</tbody></table>'


def changes_list() -> str:
    """Return every published answer that changed, newest version first, by calculator."""
    record = changes()
    if not record["change"]:
        none = message(
            "Version {version} of the rules. No published answer has changed yet.", version=record["version"]
        )
        return f"<p>{text(none)}</p>"
    versions = sorted({row["rules"] for row in record["change"]}, reverse=True)
    return "".join(_changes_of(version, record["change"]) for version in versions)


def _changes_of(version: int, rows: Iterable[Mapping[str, Any]]) -> str:
    new = sorted((row for row in rows if row["rules"] == version), key=itemgetter("calculator"))
    groups = "".join(
        f'<h3>{text(CALCULATORS[slug].name)}</h3><ul class="changes">{"".join(map(_change, of_one))}</ul>'
        for slug, of_one in groupby(new, itemgetter("calculator"))
    )
    title = message("Version {version} of the rules, {date}", version=version, date=max(row["date"] for row in new))
    return f'<h2 id="version-{version}">{text(title)}</h2>{groups}'


def _change(row: Mapping[str, Any]) -> str:
    editions = message("All editions") if row["editions"] == list(EDITIONS) else ", ".join(row["editions"])
    before = text(message("{editions}. Before: {was}", editions=editions, was=row["was"]))
    return (
        f'<li id="change-{row["id"]}"><p>{before}<br>'
        f"{text(message('Now: {now}', now=row['now']))}<br>{text(message('Why: {why}', why=row['why']))}</p></li>"
    )


def _room(key: str) -> str:
    return file_of(key).split("/")[0]


def _room_and_key(key: str) -> tuple[str, str]:
    return _room(key), key


def room_name(room: str) -> Message:
    """Return the words for a room of the rules."""
    return ROOM_WORDS.get(room) or message("{room}", room=room.capitalize())


def _rule(key: str) -> str:
    stated = rule(key, EDITIONS[-1])
    head = _row("th", message("Edition"), message("Where"), message("How it was checked"), message("Texts seen"))
    body = "".join(_edition(key, edition) for edition in EDITIONS)
    return (
        f'<details class="rule"><summary>{_old_anchors(key)}<h4 id="{anchor(key)}">{text(stated.title)}</h4>'
        f"<small>{section(key)}</small></summary>"
        f"<div data-search-exclude><p>{text(message('Applies to: {applies}.', applies=stated.applies))}</p>"
        f'{_figures(key)}<table class="facts"><thead>{head}</thead><tbody>{body}</tbody></table></div></details>'
    )


def anchor(key: str) -> str:
    """Return the anchor of a rule on the page of figures."""
    return key.replace("/", "-")


def _old_anchors(key: str) -> str:
    return "".join(f'<span id="{anchor(old)}"></span>' for old, now in aliases().items() if now == key)


def _edition(key: str, edition: str) -> str:
    stated = rule(key, edition)
    seen = "; ".join(sources()[each]["title"] for each in stated.sources)
    note = str(stated.note)
    cells = (text(edition), text(stated.section), mark_html(stated.mark), text(". ".join(filter(None, [seen, note]))))
    return "<tr>" + "".join(f"<td>{cell}</td>" for cell in cells) + "</tr>"


def _figures(key: str) -> str:
    """Return the figures of a rule: once where all editions agree, else for each edition."""
    by_figures: dict[str, list[str]] = {}
    for edition in EDITIONS:
        by_figures.setdefault(figures_of_rule(rule(key, edition)), []).append(edition)
    return "".join(
        f"<p>{text(_figures_of(editions, rule(key, editions[0]).unit))}</p>{shown}"
        for shown, editions in by_figures.items()
        if shown
    )


def _figures_of(editions: list[str], unit: str) -> Message:
    if unit:
        return message("{editions} ({unit}):", editions=", ".join(editions), unit=unit)
    return message("{editions}:", editions=", ".join(editions))


def figures_of_rule(stated: Rule) -> str:
    """Return the figures of a rule in one edition as a list; nothing when it only names a section."""
    if stated.value is not None:
        return f"<ul><li>{_figure(stated.value)}</li></ul>"
    rows = "".join(
        f"<li>{', '.join(f'{text(name.replace("_", " "))} {_figure(value)}' for name, value in row.items())}</li>"
        for row in stated.rows
    )
    return f"<ul>{rows}</ul>" if rows else ""


def _figure(value: object) -> str:
    shown = str(value).replace("kcmil", " kcmil")
    return text(shown.replace("-", " ") if re.fullmatch(r"[a-z]+(-[a-z]+)+", shown) else shown)


def _row(cell: str, *words: object) -> str:
    return "<tr>" + "".join(f"<{cell}>{text(str(each))}</{cell}>" for each in words) + "</tr>"
