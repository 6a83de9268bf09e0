"""What an owner of a book ticked and corrected becomes part of the rules, whole or not at all. All of it invented."""

import csv
import io
import tomllib
from pathlib import Path

import pytest

from calc import EDITIONS, rulebook
from calc.editing import take_in, tree
from calc.editing.figures_cell import figures_cell, read_figures
from calc.editing.readings_table import read_table
from calc.editing.review import Reading, book_order, dated_rules
from calc.editing.review_page import review_page
from calc.editing.review_shown import csv_text, listing
from calc.editing.take_in import taken_in
from calc.editing.tree import RULES, SECTIONS, RefusedError, write_whole
from calc.editing.weight import Weight, keys_read
from calc.rulebook import file_of, rule

EDITION = "2026"
SOURCE = {
    "source": "invented-print",
    "source_title": "An invented print of the 2026 edition",
    "source_seen": "ten sections, invented",
    "source_date": "2026-11-30",
}
TEN = {
    "jumpers/supply_side_size": ("figures", "copper = 8; aluminum = 6", "copper = 6; aluminum = 4"),
    "grounding/equipment_grounding_size": ("figures", "through_ampere = 60;", "through_ampere = 70;"),
    "raceways/flexible_length_longest": ("figures", "figure: 6", "figure: 5"),
    "services/disconnects_maximum": ("figures", "figure: 6", "figure: 4"),
    "grounding/water_pipe_bond_cap": ("figures", "3/0", "2/0"),
    "jumpers/main_bonding_jumper_required": ("section", "250.24(C)", "250.24(D)"),
    "jumpers/main_bonding_jumper_material": ("section", "250.28(A)", "250.28(B)"),
    "raceways/service_raceway_connected": ("section", "250.80", "250.90"),
    "grounding/electrode_conductor_landing": ("note", "", "The bus may be in the meter enclosure."),
    "conductors/parallel_minimum": ("section", "", ""),
}


@pytest.fixture(scope="module")
def table():
    """Return the printed table of the ten statements, as rows by key."""
    printed = csv_text([Reading(rule(key, EDITION), Weight()) for key in TEN])
    assert printed.startswith("\ufeff")
    return list(csv.DictReader(io.StringIO(printed.removeprefix("\ufeff"), newline="")))


def written(rows) -> bytes:
    text = io.StringIO()
    sheet = csv.DictWriter(text, list(rows[0]), delimiter=";")
    sheet.writeheader()
    sheet.writerows(rows)
    return text.getvalue().encode("utf-8-sig")


def corrected(table, **more):
    rows = [dict(row) for row in table]
    for row in rows:
        column, old, new = TEN[row["key"]]
        assert old in row[column]
        row[column] = new if column == "note" else row[column].replace(old, new, 1)
        row["read"] = "yes"
        row.update(more)
    return rows


def test_ten_corrections_are_taken_in_with_their_source(table):
    texts = taken_in(read_table(written(corrected(table)), EDITION, SOURCE))
    sources = tomllib.loads(texts[RULES / "sources.toml"])
    assert sources["invented-print"]["title"] == SOURCE["source_title"] and "2026-11-30" in str(
        sources["invented-print"]
    )
    stated = {key: tomllib.loads(texts[RULES / f"{file_of(key)}.toml"])["editions"] for key in TEN}
    for key, editions in stated.items():
        assert editions[EDITION]["mark"] == "confirmed" and editions[EDITION]["sources"][0] == "invented-print"
        assert "No text of the 2026 edition was seen" not in editions[EDITION].get("note", "")
        before = rulebook._document(key)["editions"]
        assert {each: editions[each] for each in EDITIONS if each < EDITION} == {
            each: before[each] for each in EDITIONS if each < EDITION
        }
    jumper = stated["jumpers/supply_side_size"][EDITION]
    assert "same_as" not in jumper and jumper["rows"][0]["copper"] == "6" and len(jumper["rows"]) == 6
    assert stated["services/disconnects_maximum"][EDITION]["value"] == 4  # a number stays a number
    assert stated["jumpers/main_bonding_jumper_required"][EDITION]["section"] == "250.24(D)"
    assert tomllib.loads(texts[SECTIONS / "jumpers.toml"])[EDITION]["main_bonding_jumper_required"] == "250.24(D)"
    assert texts[SECTIONS / "raceways.toml"].count('service_raceway_connected = "250.90"') == 1


def test_a_tick_without_a_correction_confirms_what_stands_there(table):
    rows = [row | {"read": "x"} for row in table if row["key"] == "conductors/parallel_minimum"]
    (read,) = read_table(written(rows), EDITION, SOURCE)
    assert not read.corrected and read.section == rule("conductors/parallel_minimum", EDITION).section
    stated = tomllib.loads(taken_in([read])[RULES / "conductors/parallel_minimum.toml"])["editions"][EDITION]
    assert stated["mark"] == "confirmed" and "same_as" in stated


def test_what_is_not_ticked_stays_as_it_is(table):
    assert read_table(written(table), EDITION, SOURCE) == []


@pytest.mark.parametrize(
    ("change", "source", "complaint"),
    [
        ({}, {}, "names no source"),
        ({"read": ""}, SOURCE, "corrected and not ticked"),
        ({"read": "perhaps"}, SOURCE, "write yes"),
        ({"stamp": "0"}, SOURCE, "Print it anew"),
        ({"key": "jumpers/no_such_rule"}, SOURCE, "there is no rule"),
        ({"key": "electrodes/soil_resistivity"}, SOURCE, "stated by no edition"),
        ({"section": " "}, SOURCE, "names no section"),
        ({"figures": "copper = 8; colour = 6"}, SOURCE, "colour"),
        ({"figures": ""}, SOURCE, "no figures left"),
        ({}, SOURCE | {"source_title": "A print of no year"}, "does not name the 2026 edition"),
        ({}, SOURCE | {"source_title": ""}, "has no title"),
        ({}, SOURCE | {"source_date": ""}, "has no date"),
        ({}, SOURCE | {"source_date": "yesterday"}, "as 2029-01-31"),
        ({}, SOURCE | {"source": "Two words"}, "hyphens"),
        ({}, SOURCE | {"source": "nfpa-70-2023"}, "already"),
    ],
)
def test_a_row_that_cannot_be_taken_in_is_refused_by_its_number(table, change, source, complaint):
    rows = corrected(table)[:1]
    rows[0].update(change)
    with pytest.raises(RefusedError, match=r"^Row 2: ") as refused:
        read_table(written(rows), EDITION, source)
    assert complaint in str(refused.value)


def test_all_rows_that_cannot_be_taken_in_are_named_at_once(table):
    rows = corrected(table)
    rows[1]["read"], rows[3]["stamp"] = "perhaps", "0"
    with pytest.raises(RefusedError) as refused:
        read_table(written(rows), EDITION, SOURCE)
    assert [line.partition(": ")[0] for line in str(refused.value).splitlines()] == ["Row 3", "Row 5"]


def test_a_table_in_another_encoding_is_asked_for_again(table):
    rows = corrected(table, note="½ of the old one")
    with pytest.raises(RefusedError, match="CSV UTF-8"):
        read_table(written(rows).decode("utf-8-sig").encode("cp1252"), EDITION, SOURCE)


def test_a_word_among_numbers_is_refused_and_a_size_stays_a_text():
    stated = rule("grounding/equipment_grounding_size", EDITION)
    cell = figures_cell(stated)
    assert read_figures(cell, stated) == list(stated.rows)
    with pytest.raises(RefusedError, match="sixty"):
        read_figures(cell.replace("through_ampere = 60", "through_ampere = sixty"), stated)


def test_a_section_keeps_its_last_zero_through_a_spreadsheet(table):
    (row,) = (row for row in table if row["key"] == "raceways/service_raceway_connected")
    assert row["section"] == "Section 250.80"


@pytest.mark.parametrize("edition", EDITIONS)
def test_every_statement_of_an_edition_comes_back_from_its_table_as_it_went(edition):
    asked = [Reading(stated, Weight()) for stated in dated_rules(edition)]
    data = csv_text(asked).replace("\r\n,", "\r\nyes,").encode()
    read = read_table(data, edition, SOURCE | {"source_title": f"An invented print of the {edition} edition"})
    assert [each.stated for each in read] == [each.stated for each in asked]
    assert not [each.stated.key for each in read if each.corrected or each.note != str(each.stated.note)]


def test_the_list_and_the_page_show_our_words_our_figures_and_a_box():
    stated = rule("jumpers/supply_side_size", EDITION)
    asked = [Reading(stated, Weight(126, {"main-bonding-jumper"}, 16))]
    for shown in (listing(EDITION, asked), review_page(EDITION, asked)):
        assert str(stated.title) in shown and stated.section in shown and "worked answers: 126" in shown
        assert "through_copper = 1100kcmil; through_aluminum = 1750kcmil; copper = 2/0; aluminum = 4/0" in shown
    assert "[ ] 1. Table 250.102(C)(1)" in listing(EDITION, asked)
    assert "http" not in review_page(EDITION, asked)


def test_the_book_s_order_is_by_article_and_section_and_not_by_letters():
    printed = ["Article 100", "90.2", "250.24(A)(4)", "250.24(C)", "250.30(A)(1)", "250.102(C)", "Table 250.102(C)(1)"]
    assert sorted(printed, key=book_order)[:2] == ["90.2", "Article 100"]
    assert sorted(printed[:1:-1], key=book_order) == printed[2:]
    assert max(["680.26(B)", "Chapter 9, Table 8"], key=book_order) == "Chapter 9, Table 8"


def test_what_an_answer_reads_is_counted_whether_it_is_cited_or_not():
    read = keys_read("main-bonding-jumper", "2023", {"conductor": "500kcmil", "sets": "2"})
    assert {"jumpers/supply_side_size", "conductors/area", "jumpers/main_bonding_jumper_required"} <= read
    assert "places/pool_perimeter" not in read
    assert keys_read("main-bonding-jumper", "2023", {"conductor": "500kcmil", "sets": "2"}) == read


def test_files_are_written_all_or_none(tmp_path, monkeypatch):
    monkeypatch.setattr(tree, "ROOT", tmp_path)
    (tmp_path / "first").write_text("before")
    write_whole({Path("first"): "after", Path("new/second"): "there"})
    assert (tmp_path / "first").read_text() == "after" and (tmp_path / "new/second").read_text() == "there"
    (tmp_path / "folder").mkdir()
    with pytest.raises(OSError):
        write_whole({Path("first"): "lost", Path("third"): "lost", Path("folder"): "a folder is in its place"})
    assert (tmp_path / "first").read_text() == "after" and not (tmp_path / "third").exists()
    assert sorted(path.name for path in tmp_path.iterdir()) == ["first", "folder", "new"]


def test_a_source_told_in_two_ways_is_refused(table):
    rows = corrected(table)[:2]
    for row, seen in zip(rows, ("this", "that"), strict=True):
        row.update(SOURCE | {"source_seen": seen})
    with pytest.raises(RefusedError, match="two ways"):
        take_in.taken_in(read_table(written(rows), EDITION, {}))
