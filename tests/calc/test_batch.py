"""A table in, a table out: every row equals the single call; bad rows are named by line and column, the rest kept."""

import csv
import io
import tracemalloc
from pathlib import Path

import pytest

from calc import CALCULATORS, EDITIONS, permalink
from calc.address import page_address
from calc.batch import TableError, answer_table, example_table, value_columns
from calc.json_output import result_to_dict
from tests.cases.read import cases

ROOT = Path(__file__).parents[2]
JUMPER = CALCULATORS["main-bonding-jumper"]
CASES = {
    slug: next((ROOT / "tests" / "cases").glob(f"**/{slug.replace('-', '_')}.toml")).relative_to(
        ROOT / "tests" / "cases"
    )
    for slug in CALCULATORS
}


def answered(table: str | bytes, calculator=JUMPER, given=()) -> list[dict[str, str]]:
    stream = io.BytesIO(table.encode() if isinstance(table, str) else table)
    return list(answer_table(calculator, stream, given).rows)


def written(table: str | bytes) -> str:
    answers = answer_table(JUMPER, io.BytesIO(table.encode() if isinstance(table, str) else table))
    return answers.first_line() + "".join(answers.line(row.values()) for row in answers.rows)


def refused(table: str | bytes, given=()) -> dict[str, str]:
    with pytest.raises(TableError) as fault:
        answered(table, given=given)
    return {each.field: str(each.words) for each in fault.value.fix}


@pytest.mark.parametrize("slug", CALCULATORS)
def test_every_worked_case_as_a_row_equals_the_single_call(slug):
    calculator = CALCULATORS[slug]
    asked = [
        {"edition": edition} | {name: str(value) for name, value in case["inputs"].items()}
        for edition, case in cases(CASES[slug].with_suffix("").as_posix())
    ]
    names = ["label", *dict.fromkeys(name for inputs in asked for name in inputs)]
    table = io.StringIO()
    writer = csv.DictWriter(table, names)
    writer.writeheader()
    writer.writerows({"label": f"case {number}"} | inputs for number, inputs in enumerate(asked))
    rows = answered(table.getvalue(), calculator)
    columns = value_columns(calculator)
    assert len(rows) == len(asked) > 0
    for given, row in zip(asked, rows, strict=True):
        inputs = {name: given[name] for name in names if name in given}
        single = result_to_dict(calculator.run(inputs.items()))
        assert row["outcome"] == single["outcome"], inputs
        if single["outcome"] == "fix":
            assert row["fix"].startswith(f"{single['fix'][0]['field']}: {single['fix'][0]['say']}")
            continue
        assert row["link"] == single["permalink"]
        assert row["sections"].split("; ") == list(dict.fromkeys(each["section"] for each in single["citations"]))
        assert row["warnings"] == " ".join(single["warnings"])
        assert row["mark"] in [each["mark"] for each in single["citations"]]
        if single["outcome"] == "not_covered":
            assert row["not_covered"] == "{why} {look_in}".format(**single["not_covered"])
            continue
        assert row["answer"] == single["answer"]["headline"]
        plain = {
            name: value for name, value in calculator.run(inputs.items()).answer.values.items()
            if isinstance(value, str | int | float)
        }  # fmt: skip
        shown = {name: {True: "yes", False: "no"}.get(value, str(value)) if isinstance(value, bool) else str(value)
                 for name, value in plain.items()}  # fmt: skip
        assert shown == {name: row[columns[name]] for name in plain}, "every plain value of an answer has its column"


@pytest.mark.parametrize("slug", CALCULATORS)
def test_the_example_table_is_answered_as_the_example(slug):
    calculator = CALCULATORS[slug]
    (row,) = answered(example_table(calculator), calculator)
    assert row["link"] == page_address(permalink.write(calculator(**calculator.example)))


@pytest.mark.parametrize("slug", CALCULATORS)
def test_an_answered_table_goes_in_again_and_comes_out_the_same(slug):
    calculator = CALCULATORS[slug]
    table = answer_table(calculator, io.BytesIO(example_table(calculator).encode()))
    first = table.first_line() + "".join(table.line(row.values()) for row in table.rows)
    again = answer_table(calculator, io.BytesIO(first.encode()))
    assert again.first_line() + "".join(again.line(row.values()) for row in again.rows) == first


def test_the_columns_read_come_first_as_they_were_and_no_column_has_the_name_of_another():
    header = next(csv.reader([written("metal,label,conductor\ncopper,A,3/0\n").splitlines()[0]]))
    assert header[:4] == ["metal", "label", "conductor", "line"]
    assert len(set(header)) == len(header)
    assert {"outcome", "answer", "size", "area_cmil", "sections", "mark", "warnings", "fix", "link"} <= set(header)


@pytest.mark.parametrize(
    ("edition", "mark", "words"), [("2020", "computed", "computed"), ("2026", "memory", "unverified: read the book")]
)
def test_the_worst_mark_of_all_citations_is_told(edition, mark, words, marked):
    if mark == "memory":
        marked("jumpers/supply_side_size", edition, mark)
    (row,) = answered(f"edition,conductor,sets\n{edition},500kcmil,2\n")
    marks = {
        each["mark"] for each in result_to_dict(JUMPER(edition=edition, conductor="500kcmil", sets=2))["citations"]
    }
    assert mark in marks and ("memory" in marks) == (mark == "memory")
    assert (row["mark"], row["mark_words"]) == (mark, words)


@pytest.mark.parametrize(
    "table",
    [
        "label,conductor,sets\r\nPanel A,500 kcmil,2\r\n",
        "\ufefflabel,conductor,sets\nPanel A,500 kcmil,2\n",
        "label;conductor;sets\nPanel A;500 kcmil;2",
        "label\tconductor\tsets\nPanel A\t500 kcmil\t2\n",
        '"label","conductor","sets"\n"Panel A","500 kcmil","2"\n',
        "\r\n\r\nlabel,conductor,sets\rPanel A,500 kcmil,2\r",
        " label , conductor ,sets,,\n Panel A , 500 kcmil , 2 ,,\n,,,,\n",
        "label,conductor,sets\nPanel A,500 kcmil,2,\n".encode("utf-16"),
    ],
)
def test_tables_as_spreadsheets_write_them_are_read(table):
    (row,) = answered(table)
    assert row["label"].strip() == "Panel A"
    assert (row["outcome"], row["size"]) == ("answer", "2/0")


def test_a_table_with_semicolons_comes_out_with_semicolons_and_any_other_with_commas():
    assert written("label;conductor\na,b;3/0\n").splitlines()[1].startswith("a,b;3/0;2;answer;")
    assert written("label\tconductor\na,b\t3/0\n").splitlines()[1].startswith('"a,b",3/0,2,answer,')


def test_the_mark_of_the_encoding_comes_out_when_it_went_in():
    assert written("\ufeffconductor\n3/0\n") == "\ufeff" + written("conductor\n3/0\n")
    assert not written("conductor\n3/0\n").startswith("\ufeff")


def test_blank_cells_are_left_out_and_lines_count_line_breaks_in_cells():
    rows = answered('label,edition,conductor,metal\n"a\nb\r\nc",2023,3/0,\n\n"d",2020,3/0,  \ne,2023,,copper\n')
    assert [(row["line"], row["outcome"]) for row in rows] == [("2", "answer"), ("6", "answer"), ("7", "fix")]
    assert rows[0]["label"] == "a\nb\r\nc"
    assert rows[2]["fix"].startswith("conductor: Enter a size")


@pytest.mark.parametrize(
    ("bad", "column", "says"),
    [
        ("x,5/0,1", "conductor", "“5/0” does not fit here. Enter a size"),
        ("x,3/0,two", "sets", "Enter a whole number from 1 to 30"),
        ("x,3/0", "sets", "The row ends before this column. It has 2 of 3 cells"),
        ("x", "conductor", "The row ends before this column. It has 1 of 3 cells"),
        ("x,3/0,1,2", "whole row", "It has 4 cells, and the first row has 3"),
        ("x,500,000,1", "whole row", "Put quotation marks around a cell"),
        ("x," + "9" * 201 + ",1", "conductor", "“" + "9" * 40 + "…” does not fit"),
        ("x,3/0\0,1", "conductor", "A character here cannot be read"),
        ("x\ufffd,3/0,1", "label", "A character here cannot be read"),
        ('"x,3/0,1', "whole row", "A quotation mark opens a cell in this row and is never closed"),
        ("x," + "9" * 7_000 + ",1", "whole row", "longer than 6000 characters"),
        ('"' + ("9" * 5_000 + "\n") * 30 + '",3/0,1', "whole row", "A quotation mark opens"),
    ],
)
def test_a_bad_row_is_named_by_line_and_column_and_the_rows_around_it_are_kept(bad, column, says):
    rows = answered(f"label,conductor,sets\nbefore,3/0,1\n{bad}\nafter,500kcmil,2\n")
    assert rows[0]["outcome"] == rows[-1]["outcome"] == "answer" and rows[-1]["size"] == "2/0"
    assert (rows[1]["line"], rows[1]["outcome"]) == ("3", "fix")
    assert rows[1]["fix"].startswith(f"{column}: ") and says in rows[1]["fix"]
    assert not rows[1]["link"] and not rows[1]["answer"]


def test_an_open_quotation_mark_at_the_end_costs_only_its_own_row():
    rows = answered('label,conductor\n"a,3/0\nb,3/0\nc,4/0')
    assert [(row["line"], row["outcome"]) for row in rows] == [("2", "fix"), ("3", "answer"), ("4", "answer")]


def test_an_inch_mark_at_the_beginning_of_a_cell_never_swallows_the_rows_below_it():
    table = 'label,conductor\n"6 in panel,3/0\nB,500kcmil\n"C, east",4\n'
    first, *others = answered(table)
    assert first["outcome"] == "fix" and "quotation mark" in first["fix"]
    assert [(row["label"], row["line"], row["size"]) for row in others] == [("B", "3", "1/0"), ("C, east", "4", "8")]
    (whole,) = answered('label,conductor\n"Panel ""A"",\nroom 2","3/0"\n')
    assert (whole["label"], whole["outcome"]) == ('Panel "A",\nroom 2', "answer")


@pytest.mark.parametrize("unseen", ["\N{ZERO WIDTH NO-BREAK SPACE}" * 2, "\N{ZERO WIDTH SPACE}", "\N{NO-BREAK SPACE}"])
def test_marks_without_width_around_the_name_of_a_column_count_as_blanks(unseen):
    (row,) = answered(f"{unseen}label,conductor{unseen}\nA,3/0\n")
    assert (row["label"], row["size"]) == ("A", "4")


def test_inch_marks_in_a_cell_are_no_quotation_marks():
    rows = answered('label,conductor\n2" pipe,3/0\n"3"" pipe",3/0\n')
    assert [row["label"] for row in rows] == ['2" pipe', '3" pipe']


def test_bytes_that_are_not_utf_8_name_their_row_and_the_rest_is_answered():
    rows = answered("label,conductor\nÑandú,3/0\nb,3/0\n".encode("latin-1"))
    assert [row["outcome"] for row in rows] == ["fix", "answer"]
    assert "save the table as UTF-8" in rows[0]["fix"]


FORMULAS = ["=1+1", "+1", "-1", "@SUM(A1)", "\tx", " =1", "=HYPERLINK(A1)", "\n=1", "\r\n@x", "＝1+1", "＋1",
            "－1", "＠x", "\u00a0=1", "\u3000=1", "\u200b=1", "\t =1", "\v-1"]  # fmt: skip


@pytest.mark.parametrize("text", FORMULAS)
def test_what_a_spreadsheet_would_take_for_a_formula_comes_out_harmless(text):
    table = io.StringIO()
    csv.writer(table).writerows([["label", "conductor", "sets"], [text, text, "1"], [text, "3/0", "1"]])
    rows = answered(table.getvalue())
    assert [row["label"] for row in rows] == [f"'{text}", f"'{text}"]
    assert rows[0]["conductor"] == f"'{text}"
    for row in csv.reader(io.StringIO(written(table.getvalue()))):
        assert [cell for cell in row if cell.strip()[:1] in ("=", "+", "-", "@", "＝")] == []


@pytest.mark.parametrize("text", ["'=1", "a=b", "3/0 - east", "", "Panel\n=A", "“=1”"])
def test_ordinary_text_comes_out_as_it_was(text):
    table = io.StringIO()
    csv.writer(table).writerows([["label", "conductor"], [text, "3/0"]])
    (row,) = answered(table.getvalue())
    assert row["label"] == text and row["outcome"] == "answer"


def test_a_temperature_below_zero_is_read_again_from_the_answered_table():
    calculator = CALCULATORS["available-fault-current"]
    asked = dict(calculator.example) | {"temperature": "-10"}
    table = io.StringIO()
    csv.writer(table).writerows([list(asked), list(asked.values())])
    first = answer_table(calculator, io.BytesIO(table.getvalue().encode()))
    written_out = first.first_line() + "".join(first.line(row.values()) for row in first.rows)
    (again,) = answered(written_out, calculator)
    assert again["outcome"] == "answer" and again["temperature"] == "'-10"
    assert "temperature=-10&" in again["link"]


@pytest.mark.parametrize(
    ("table", "column", "says"),
    [
        ("", "label", "its first row must name the columns"),
        ("\n\r\n", "label", "its first row must name the columns"),
        ("3/0,2,copper\n", "3/0", "The columns are label, edition, conductor"),
        (b"PK\x03\x04\x14\x00\x06\x00\xff", "PK", "The table must be text"),
        ("conductor,colour\n3/0,green\n", "colour", "There is no column with this name"),
        ("conductor,size\n3/0,4\n", "size", "There is no column with this name"),
        ("conductor,said\n3/0,x\n", "said", "There is no column with this name"),
        ("conductor,sets,conductor\n3/0,1,3/0\n", "conductor", "This column appears twice"),
        ("conductor,,sets\n3/0,,1\n", "column 2", "no name"),
        ("label,sets\nA,1\n", "conductor", "Every row needs it"),
    ],
)
def test_a_first_row_that_cannot_be_used_is_refused_before_any_row(table, column, says):
    fix = refused(table)
    assert says in next(words for name, words in fix.items() if name.startswith(column))


def test_many_unknown_columns_do_not_bury_the_rest():
    assert len(refused("conductor," + ",".join(f"x{number}" for number in range(1000)) + "\n")) <= 5


def test_only_a_first_row_gives_only_a_first_row():
    assert written("conductor\n").count("\r\n") == 1


def test_given_inputs_count_where_a_row_leaves_them_blank():
    rows = answered("label,edition,metal\na,,\nb,2026,aluminum\n", given=[("conductor", "3/0"), ("edition", "2017")])
    assert [row["link"].partition("&said")[0].split("?")[1].split("&")[0] for row in rows] == [
        "edition=2017",
        "edition=2026",
    ]
    assert [row["answer_metal"] for row in rows] == ["copper", "aluminum"]
    assert "entered twice" in refused("conductor\n3/0\n", given=[("sets", "1"), ("sets", "2")])["sets"]
    assert "no field with this name" in refused("conductor\n3/0\n", given=[("size", "1")])["size"]


@pytest.mark.parametrize("edition", EDITIONS)
def test_a_row_without_edition_is_warned_as_the_single_call_is(edition):
    """Four sets of 500 kcmil: 2017 sizes the water pipe's bond by the whole area, later editions stop at 3/0."""
    pipe = CALCULATORS["water-pipe-bonding"]
    rows = answered(f"conductor,sets,edition\n500kcmil,4,{edition}\n500kcmil,4,\n", pipe)
    assert "No edition picked" not in rows[0]["warnings"] and "No edition picked" in rows[1]["warnings"]
    (same,) = answered("conductor\n3/0\n")
    assert "No edition picked" not in same["warnings"]


def test_memory_does_not_grow_with_rows():
    class Made(io.RawIOBase):
        """A table made while it is read."""

        def __init__(self, count):
            self.left = [b"conductor,sets\n", *[b"500kcmil,2\n" * 10] * (count // 10)][::-1]

        def readable(self):
            return True

        def readinto(self, buffer):
            piece = self.left.pop() if self.left else b""
            buffer[: len(piece)] = piece
            return len(piece)

    def grown(count: int) -> int:
        rows = answer_table(JUMPER, Made(count)).rows
        next(rows)
        tracemalloc.start()
        for _ in rows:
            pass
        peak = tracemalloc.get_traced_memory()[1]
        tracemalloc.stop()
        return peak

    grown(100)
    a_kept_row = 1_000  # bytes at the least; what waits for the collector is far less for each row
    assert grown(5_000) - grown(500) < 4_500 * a_kept_row / 10
