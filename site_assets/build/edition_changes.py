"""What changed between two editions, from the rules themselves."""

from __future__ import annotations

from itertools import groupby

from calc.rulebook import Rule, rule, rule_keys
from calc.words import say
from site_assets.build.figures import figures_of_rule, room_name
from site_assets.render.answer import mark_html, text


def edition_changes_html(older: str, newer: str) -> str:
    """Give every rule whose place or figures differ between two editions, by room, and how many do not differ."""
    keys = rule_keys()
    changed = [key for key in keys if _differs(rule(key, older), rule(key, newer))]
    rooms = "".join(
        f"<h2 id={room}>{text(room_name(room))}</h2>{''.join(_change(key, older, newer) for key in listed)}"
        for room, listed in groupby(changed, lambda key: key.split("/")[0])
    )
    words = say(
        "{changed} of {all} rules of this handbook moved or changed from {older} to {newer}. The others stand where they "
        "stood, with the same figures.",
        changed=len(changed),
        all=len(keys),
        older=older,
        newer=newer,
    )
    return f"<p>{text(words)}</p>{_unread(keys, newer)}{rooms}"


def _unread(keys: list[str], newer: str) -> str:
    unread = sum(rule(key, newer).mark == "memory" for key in keys)
    if not unread:
        return ""
    words = say(
        "{unread} of them are unverified for {newer}: its text was not seen. Read the book before you rely on one.",
        unread=unread,
        newer=newer,
    )
    return f'<p class="warning">{text(words)}</p>'


def _differs(before: Rule, after: Rule) -> bool:
    return (before.section, str(before.value), str(before.rows)) != (after.section, str(after.value), str(after.rows))


def _change(key: str, older: str, newer: str) -> str:
    before, after = rule(key, older), rule(key, newer)
    rows = ""
    if before.section != after.section:
        rows += _row(say("Where"), before.section, after.section)
    was, now = figures_of_rule(before), figures_of_rule(after)
    if was != now:
        rows += f"<tr><th>{text(say('Figures'))}</th><td>{was}</td><td>{now}</td></tr>"
    notes = "".join(f"<p>{text(each.edition)}: {text(each.note)}</p>" for each in (before, after) if str(each.note))
    head = f"<tr><th></th><th>{text(older)} {_mark(before)}</th><th>{text(newer)} {_mark(after)}</th></tr>"
    return (
        f'<h3 id="{key.replace("/", "-")}">{text(after.title)}</h3>'
        f'<table class="facts"><thead>{head}</thead><tbody>{rows}</tbody></table>{notes}'
    )


def _row(words, before: str, after: str) -> str:
    return f"<tr><th>{text(words)}</th><td>{text(before)}</td><td>{text(after)}</td></tr>"


def _mark(stated: Rule) -> str:
    return mark_html(stated.mark) if stated.mark != "confirmed" else ""
