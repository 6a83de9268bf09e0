"""What a calculator declares of its answers as plain data, for the list of `python -m calc`."""

from __future__ import annotations

from calc.batch import value_columns
from calc.calculator import Calculator
from calc.data_file import Data
from calc.output import Output


def outputs_to_list(calculator: Calculator) -> list[Data]:
    """Return every output of a calculator as dictionaries, each with its column in a table."""
    columns = value_columns(calculator)
    return [output_to_dict(output) | {"column": columns[output.name]} for output in calculator.outputs]


def output_to_dict(output: Output) -> Data:
    """Return an output's declaration: its name, what it means, its type and unit, and when it is there."""
    return {
        "name": output.name,
        "meaning": str(output.meaning),
        "kind": output.kind,
        "shape": output.shape,
        "unit": output.unit,
        "choices": list(output.choices),
        "when": str(output.when) if output.when else None,
        "parts": [output_to_dict(part) for part in output.parts],
    }
