"""Holds the values of an answer to what its calculator declares, by rules of its own."""

import math
from collections.abc import Mapping

from calc.conductors.area import listed_sizes
from calc.editions import DEFAULT_EDITION

SIZES = set(listed_sizes(DEFAULT_EDITION))


def faults(outputs, values: Mapping) -> list[str]:
    """Return what does not fit: a value that is not declared, is of another type, or must be there and is not."""
    declared = {output.name: output for output in outputs}
    found = [f"{name} is not declared" for name in values if name not in declared]
    for name, output in declared.items():
        value = values.get(name)
        if value is None:
            found += [] if output.when else [f"{name} is missing"]
        elif not fits(output, value):
            found.append(f"{name} is no {output.shape} {output.kind}: {value!r}")
    return found


def fits(output, value) -> bool:
    """Tell whether a value has the declared shape and kind."""
    if output.shape == "list":
        return type(value) is list and all(_is(output, each) for each in value)
    if output.shape == "by-name":
        return type(value) is dict and all(type(name) is str and _is(output, each) for name, each in value.items())
    return _is(output, value)


def _is(output, value) -> bool:
    match output.kind:
        case "text":
            return type(value) is str
        case "choice":
            return value in output.choices and type(value) is str
        case "size":
            return value in SIZES
        case "number":
            return type(value) in (int, float) and math.isfinite(value)
        case "whole-number":
            return type(value) is int
        case "yes-no":
            return type(value) is bool
        case "point":
            return type(value) is list and len(value) == 2 and all(type(each) in (int, float) for each in value)
        case "record":
            return type(value) is dict and not faults(output.parts, value)
    return False
