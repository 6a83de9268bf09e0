"""What is not verified in an edition, in the few words that stand beside it where an edition is picked."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from functools import cache

from calc.editions import EDITIONS
from calc.messages import Message, message
from calc.rulebook import document, file_of, rule, rule_keys
from site_assets.build.rule_values_page import room_name

MOST_NAMED = 2  # subjects; more do not fit below an edition on a phone


@dataclass(frozen=True)
class Unverified:
    """How many rules of an edition nobody has held against a published text, and where most of them are."""

    count: Message
    rooms: Message


@cache
def unverified() -> dict[str, Unverified]:
    """Return what is not verified in each edition."""
    return {edition: _unverified(edition) for edition in EDITIONS}


def _unverified(edition: str) -> Unverified:
    dated = [key for key in rule_keys() if "editions" in document(key)]
    open_keys = [key for key in dated if rule(key, edition).mark == "memory"]
    if not open_keys:
        return Unverified(message("all verified"), message("Each rule was held against a published text."))
    rooms = Counter(file_of(key).partition("/")[0] for key in open_keys)
    named = "; ".join(str(room_name(room)) for room, _ in rooms.most_common(MOST_NAMED))
    told = message("Most in: {rooms}", rooms=named) if len(rooms) > MOST_NAMED else message("In: {rooms}", rooms=named)
    return Unverified(message("{open} of {all} not verified", open=len(open_keys), all=len(dated)), told)
