"""`python -m calc SLUG --table FILE`, run as a reader would: a table out, exit code 2 when a row is to fix."""

import csv
import io
import json
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from calc import CALCULATORS
from calc.__main__ import main
from calc.batch import answer_table

ROOT = Path(__file__).parents[2]
JUMPER = CALCULATORS["main-bonding-jumper"]


def run(*arguments: str, table: bytes = b"") -> subprocess.CompletedProcess:
    command = [sys.executable, "-m", "calc", *arguments]
    return subprocess.run(command, cwd=ROOT, input=table, capture_output=True, check=False)


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


def in_shell(redirection: str, *arguments: str) -> subprocess.CompletedProcess:
    """Run the command with its streams as a shell redirects them."""
    command = f'exec "$@" {redirection}'
    return subprocess.run(
        ["sh", "-c", command, "sh", sys.executable, "-m", "calc", "main-bonding-jumper", *arguments],
        cwd=ROOT,
        stdin=subprocess.DEVNULL,
        check=False,
        capture_output=True,
    )


@pytest.fixture
def schedule(tmp_path):
    file = tmp_path / "schedule.csv"
    file.write_text("label,conductor\nA,3/0\nB,500kcmil\n", encoding="utf-8")
    return file


@pytest.mark.parametrize(
    ("redirection", "says"),
    [
        ("> /dev/full", "could not be completed"),
        (">&-", "Standard output is closed"),
        (">> {file}", "are the same file"),
    ],
)
def test_a_table_that_cannot_be_written_ends_with_1_and_one_line(redirection, says, schedule):
    before = schedule.read_bytes()
    done = in_shell(redirection.format(file=schedule), "--table", str(schedule))
    assert done.returncode == 1 and done.stdout == b""
    (line,) = done.stderr.decode().splitlines()
    assert says in line and schedule.read_bytes() == before


@pytest.mark.parametrize("redirection", ["> /dev/full", ">&-"])
def test_an_answer_that_cannot_be_written_ends_with_1_and_one_line(redirection):
    done = in_shell(redirection, "conductor=3/0")
    assert done.returncode == 1 and len(done.stderr.decode().splitlines()) == 1


def test_what_is_said_beside_a_table_never_gets_into_it(schedule):
    done = in_shell("2>&-", "--table", str(schedule))
    assert done.returncode == 0
    assert len(list(csv.DictReader(io.StringIO(done.stdout.decode())))) == 2 and b"Answered:" not in done.stdout
    assert in_shell("2>/dev/full", "--table", str(schedule)).stdout == done.stdout


def test_a_closed_standard_input_is_told_as_a_table_that_cannot_be_read():
    done = in_shell("<&-", "--table", "-")
    assert done.returncode == 2 and json.loads(done.stdout)["fix"][0]["field"] == "--table" and done.stderr == b""


def test_a_file_of_answers_is_what_standard_output_would_get(schedule):
    shown, out = run("main-bonding-jumper", "--table", str(schedule)), schedule.with_name("answers.csv")
    out.write_text("an older table")
    done = run("main-bonding-jumper", "--table", str(schedule), "--out", str(out))
    assert done.returncode == 0 and done.stdout == b"" and b"Answered: 2." in done.stderr
    assert out.read_bytes() == shown.stdout
    assert sorted(each.name for each in schedule.parent.iterdir()) == ["answers.csv", "schedule.csv"]


@pytest.mark.parametrize(
    ("out", "says"),
    [
        ("schedule.csv", "are the same file"),
        (".", "is not a file name"),
        ("new/", "is not a file name"),
        ("no/x.csv", "completed"),
    ],
)
def test_a_file_that_cannot_hold_the_answers_is_told_and_nothing_is_left(out, says, schedule):
    before = schedule.read_bytes()
    done = run("main-bonding-jumper", "--table", str(schedule), "--out", f"{schedule.parent}/{out}")
    assert done.returncode == 1 and says in done.stderr.decode() and len(done.stderr.splitlines()) == 1
    assert [each.name for each in schedule.parent.iterdir()] == ["schedule.csv"] and schedule.read_bytes() == before


def test_a_file_of_answers_keeps_who_may_read_it_and_a_protected_one_stays(schedule):
    out = schedule.with_name("answers.csv")
    out.write_text("an older table")
    out.chmod(0o600)
    assert main(["main-bonding-jumper", "--table", str(schedule), "--out", str(out)]) == 0
    assert out.stat().st_mode & 0o777 == 0o600 and out.read_text().startswith("label,")
    out.write_text("an older table")
    out.chmod(0o444)
    done = run("main-bonding-jumper", "--table", str(schedule), "--out", str(out))
    assert done.returncode == 1 and b"is write-protected" in done.stderr and out.read_text() == "an older table"


@pytest.mark.parametrize("table", ["colour\ngreen\n", ""])
def test_a_table_that_cannot_be_used_leaves_an_older_file_of_answers_as_it_was(table, schedule, capsys):
    schedule.write_text(table)
    out = schedule.with_name("answers.csv")
    out.write_text("an older table")
    assert main(["main-bonding-jumper", "--table", str(schedule), "--out", str(out)]) == 2
    assert json.loads(capsys.readouterr().out)["outcome"] == "fix"
    assert out.read_text() == "an older table" and len(list(out.parent.iterdir())) == 2


@pytest.mark.parametrize("arguments", [["--out", "x.csv"], ["--table", "-", "--out"]])
def test_a_file_of_answers_goes_with_a_table_and_has_a_name(arguments, capsys):
    assert main(["main-bonding-jumper", *arguments]) == 2
    assert json.loads(capsys.readouterr().out)["fix"][0]["field"] == "--out"


def test_a_table_that_is_stopped_says_so_and_leaves_no_half_file(tmp_path):
    out = tmp_path / "answers.csv"
    command = [sys.executable, "-m", "calc", "main-bonding-jumper", "--table", "-", "--out", str(out)]
    signal.signal(signal.SIGINT, signal.default_int_handler)  # else a run in the background hears no interrupt
    with subprocess.Popen(
        command, cwd=ROOT, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE
    ) as run:
        run.stdin.write(b"conductor\n" + b"3/0\n" * 5_000)
        run.stdin.flush()
        while not list(tmp_path.iterdir()):
            time.sleep(0.05)
        run.send_signal(signal.SIGINT)
        # An interrupt amid an import of Python's own ends it by that signal, which a shell tells as 130 too.
        assert run.wait(timeout=60) in (130, -signal.SIGINT)
        assert "The table is not complete." in run.stderr.read().decode()
    assert list(tmp_path.iterdir()) == []


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
