"""The table by overcurrent device against a text read apart from the rules."""

from calc.editions import EDITIONS
from calc.rulebook import rule

# An engineering office's web article with all rows of Table 250.122, both columns; a trade newsletter (copper to
# 1200 A); NECA/NEIS question 2016-12-15 (4000 A: 500 kcmil copper); Steel Tube Institute (400 A: 3 copper, 1 aluminum).
DEVICE = [15, 20, 60, 100, 200, 300, 400, 500, 600, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000]
COPPER = "14 12 10 8 6 4 3 2 1 1/0 2/0 3/0 4/0 250kcmil 350kcmil 400kcmil 500kcmil 700kcmil 800kcmil"
# The 2017 text read prints 1200 where the 2023 table (and the web article) has 1250.
ALUMINUM = "12 10 8 6 4 2 1 1/0 2/0 3/0 4/0 250kcmil 350kcmil 400kcmil 600kcmil 600kcmil 750kcmil 1250kcmil 1250kcmil"


def test_the_table_by_device_has_the_rows_of_the_texts_in_every_edition():
    for edition in EDITIONS:
        rows = rule("grounding/equipment_grounding_size", edition).rows
        assert [row["through_ampere"] for row in rows] == DEVICE
        assert " ".join(row["copper"] for row in rows) == COPPER
        aluminum = ALUMINUM.replace("1250", "1200") if edition == "2017" else ALUMINUM
        assert " ".join(row["aluminum"] for row in rows) == aluminum
