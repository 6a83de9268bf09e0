"""The generated tables of the method pages: every figure, its sources and marks; every change."""

from __future__ import annotations

from calc.editions import EDITIONS
from calc.rulebook import changes, rule, rule_keys, sources
from calc.words import say
from site_assets.render.answer import mark_html, text


def figures_table() -> str:
    """Give every rule with its figures, and for each edition its place, mark and sources."""
    return "".join(_rule(key) for key in rule_keys())


def sources_table() -> str:
    """Give every text that a rule names, and what was read in it."""
    head = _row("th", say("Text"), say("Kind"), say("What was seen in it"))
    rows = "".join(_row("td", each["title"], each["kind"], each["seen"]) for each in sources().values())
    return f'<table class="facts"><thead>{head}</thead><tbody>{rows}</tbody></table>'


def changes_list() -> str:
    """Give every published answer that changed, newest first."""
    record = changes()
    if not record["change"]:
        return f"<p>{text(say('Version {version} of the rules. No published answer has changed yet.', version=record['version']))}</p>"
    rows = "".join(
        f'<li id="change-{each["rules"]}">{text(say("{date}, version {rules}, {calculator}, editions {editions}: {was} became {now}. {why}", **each))}</li>'
        for each in reversed(record["change"])
    )
    return f"<ul>{rows}</ul>"


def _rule(key: str) -> str:
    stated = rule(key, EDITIONS[-1])
    head = _row("th", say("Edition"), say("Where"), say("How it was checked"), say("Texts seen"))
    body = "".join(_edition(key, edition) for edition in EDITIONS)
    return (
        f'<h3 id="{key.replace("/", "-")}">{text(stated.title)}</h3>'
        f"<p>{text(say('Applies to: {applies}.', applies=stated.applies))}</p>"
        f'{_figures(key)}<table class="facts"><thead>{head}</thead><tbody>{body}</tbody></table>'
    )


def _edition(key: str, edition: str) -> str:
    stated = rule(key, edition)
    seen = "; ".join(sources()[each]["title"] for each in stated.sources)
    note = str(stated.note)
    cells = (text(edition), text(stated.section), mark_html(stated.mark), text(". ".join(filter(None, [seen, note]))))
    return "<tr>" + "".join(f"<td>{cell}</td>" for cell in cells) + "</tr>"


def _figures(key: str) -> str:
    """Give the figures of a rule: once where all editions agree, else for each edition."""
    by_figures: dict[str, list[str]] = {}
    for edition in EDITIONS:
        by_figures.setdefault(_shown_figures(rule(key, edition)), []).append(edition)
    return "".join(
        f"<p>{text(say('Editions {editions}, {unit}: ', editions=', '.join(editions), unit=rule(key, editions[0]).unit or '-'))}{shown}</p>"
        for shown, editions in by_figures.items()
        if shown
    )


def _shown_figures(stated) -> str:
    if stated.value is not None:
        return text(str(stated.value))
    return "; ".join(
        text(", ".join(f"{name.replace('_', ' ')} {value}" for name, value in row.items())) for row in stated.rows
    )


def _row(cell: str, *words: object) -> str:
    return "<tr>" + "".join(f"<{cell}>{text(str(each))}</{cell}>" for each in words) + "</tr>"
