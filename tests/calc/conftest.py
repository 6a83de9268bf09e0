"""Every answer that any test here gets is held to the outputs that its calculator declares."""

import pytest

from calc.calculator import Calculator
from calc.unknown.states import Open
from tests.calc.declared import faults


@pytest.fixture(scope="session", autouse=True)
def answers_held_to_their_declaration():
    """Make a run fail where its answer is not what the calculator declares."""
    run = Calculator.work

    def held(calculator, pairs):
        result = run(calculator, pairs)
        # Of an input that is open the answer has no one value.
        settled = not any(isinstance(value, Open) for value in result.inputs.values())
        found = faults(calculator.outputs, result.answer.values) if result.answer and settled else []
        assert not found, f"{calculator.slug}: {'; '.join(found)}"
        return result

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(Calculator, "work", held)
        yield
