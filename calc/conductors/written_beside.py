"""A size box takes "2-3/0" and "3/0 AL": what was written beside the size goes to the fields that ask for it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping

from calc.conductors.size import WrittenConductors, read_conductors
from calc.field import Field
from calc.messages import Message, message

_OPEN = ("", "unknown")  # as a form sends what nobody chose
# Of a size, the fields that hold its metal, the first of them that the calculator has.
_METAL_OF = {
    "conductor": ("conductor_metal", "metal"),
    "installed_conductor": ("conductor_metal",),
    "return_conductor": ("metal",),
    "neutral": ("metal",),
    "size": ("metal",),
}
_IN_PARALLEL = ("conductor", "installed_conductor")

Pairs = list[tuple[str, str]]
Beside = dict[str | None, tuple[str, object]]  # by field, the value there and its words; under None what has no field


def parted(fields: Mapping[str, Field], pairs: Pairs) -> tuple[Pairs, dict[str, Message]]:
    """Return written inputs, each size alone and what was beside it under the field that asks for it.

    Also words for each size that says something else than that field does; it is not among the inputs then. What no
    field asks for stays as it was written, and is refused when it is read.
    """
    conflicts: dict[str, Message] = {}
    for name, text in pairs:
        beside = _beside(fields, name, text)
        if not beside or max(Counter(each for each, _ in pairs if each in {name, *beside}).values()) > 1:
            continue  # what is entered twice is told so
        given = dict(pairs)
        for other, (value, shown) in beside.items():
            if other and given.get(other, "").strip().lower() not in (*_OPEN, value):
                conflicts[name] = message(
                    "“{typed}” says {shown}, and “{label}” says something else. Change one of them.",
                    typed=text,
                    shown=shown,
                    label=fields[other].label,
                )
        settled = {str(other): value for other, (value, _) in beside.items()} | {name: read_conductors(text).size}
        if name in conflicts:
            pairs = [pair for pair in pairs if pair[0] != name]
        else:
            pairs = [*(pair for pair in pairs if pair[0] not in settled), *settled.items()]
    return pairs, conflicts


def _beside(fields: Mapping[str, Field], name: str, text: str) -> Beside:
    """Return what is written beside a size; nothing where a part of it has no field."""
    if name not in _METAL_OF or name not in fields or fields[name].kind != "size":
        return {}
    try:
        written = read_conductors(text)
    except ValueError:
        return {}
    found = {**_number(fields, name, written), **_metal(fields, name, written)}
    return {} if None in found else found


def _number(fields: Mapping[str, Field], name: str, written: WrittenConductors) -> Beside:
    if not written.sets:
        return {}
    place = "sets" if "sets" in fields and name in _IN_PARALLEL else None
    return {place: (str(written.sets), message("{count} in parallel", count=written.sets))}


def _metal(fields: Mapping[str, Field], name: str, written: WrittenConductors) -> Beside:
    if not written.metal:
        return {}
    place = next((each for each in _METAL_OF[name] if each in fields), None)
    if place is None or written.metal not in {choice.value for choice in fields[place].choices}:
        return {None: (written.metal, "")}
    return {place: (written.metal, fields[place].shown(written.metal))}
