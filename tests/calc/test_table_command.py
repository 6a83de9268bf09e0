"""`python -m calc SLUG --table FILE`, run as a reader would: a table out, exit code 2 when a row is to fix."""

import csv
import io
import json
import subprocess
import sys
from pathlib import Path

import pytest

from calc import CALCULATORS
from calc.table import answer_table

ROOT = Path(__file__).parents[2]
JUMPER = CALCULATORS["main-bonding-jumper"]


def run(*arguments: str, table: bytes = b"") -> subprocess.CompletedProcess:
    command = [sys.executable, "-m", "calc", *arguments]
    return subprocess.run(command, cwd=ROOT, input=table, capture_output=True)


def test_the_command_line_writes_the_table_and_ends_with_2_when_a_row_is_to_fix():
    done = run("main-bonding-jumper", "--table", "-", "edition=2020", table=b"label,conductor\nA,5/0\nB,3/0\n")
    assert done.returncode == 2
    table = answer_table(JUMPER, io.BytesIO(b"label,conductor\nA,5/0\nB,3/0\n"), [("edition", "2020")])
    assert done.stdout.decode() == table.first_line() + "".join(table.line(row.values()) for row in table.rows)
    assert done.stderr.decode().strip() == "Answered: 1. To fix: 1. Not covered: 0."


def test_the_command_line_ends_with_0_when_every_row_is_answered_or_not_covered(tmp_path):
    file = tmp_path / "schedule.csv"
    file.write_text("conductor,place\n3/0,\n3/0,feeder-panel\n", encoding="utf-8")
    done = run("main-bonding-jumper", "--table", str(file))
    assert done.returncode == 0
    assert [row["outcome"] for row in csv.DictReader(io.StringIO(done.stdout.decode()))] == ["answer", "not_covered"]


@pytest.mark.parametrize(
    ("arguments", "field"),
    [
        (["--table"], "--table"),
        (["--table", "no-such-file.csv"], "--table"),
        (["--table", "."], "--table"),
        (["--table", "-", "three"], "three"),
        (["--table", "-"], "label"),
        (["--table", "-", "conductor=3/0"], "label"),
    ],
)
def test_a_table_that_cannot_be_used_ends_with_2_and_names_what_to_mend(arguments, field):
    done = run("main-bonding-jumper", *arguments)
    document = json.loads(done.stdout)
    assert done.returncode == 2 and done.stderr == b""
    assert field in [each["field"] for each in document["fix"]] and all(each["say"] for each in document["fix"])


def test_a_reader_who_wants_no_more_rows_ends_it_quietly():
    command = [sys.executable, "-m", "calc", "main-bonding-jumper", "--table", "-"]
    with subprocess.Popen(
        command, cwd=ROOT, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE
    ) as process:
        process.stdout.close()
        try:
            process.stdin.write(b"conductor\n" + b"3/0\n" * 1_000)
            process.stdin.close()
        except BrokenPipeError:
            pass
        assert process.stderr.read() == b""
        assert process.wait(timeout=60) == 1
