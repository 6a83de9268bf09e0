"""Pages read at an apprentice's level. `python -m tests.site.test_reading_level` prints the table."""

from statistics import median

import pytest

from site_assets.build.page_data import ROOMS
from tests.site.pages import SITE, article
from tests.site.reading_level import data_prose, grade, hazard_prose, prose, syllables

MEDIAN_AT_MOST, WORST_AT_MOST = 8, 10
# Tables and lists made from rules hold no prose of ours to speak of.
NO_PROSE = {"404.html", "method/figures.html", "book-index.html", "changes.html"}


def grades() -> dict[str, float]:
    found = {}
    for path in sorted(SITE.rglob("*.html")):
        name = path.relative_to(SITE).as_posix()
        if name in NO_PROSE or name.startswith("editions/2"):
            continue
        html = path.read_text(encoding="utf-8")
        sentences = prose(article(html))
        if name.partition("/")[0] in ROOMS:
            sentences += data_prose(name.removesuffix(".html"))
        if name == "method/hazards.html":
            sentences += hazard_prose()
        found[name] = grade(sentences)
    return found


@pytest.mark.parametrize(
    ("word", "count"), [("bond", 1), ("metal", 2), ("electrode", 3), ("continuity", 5), ("raceways", 2)]
)
def test_syllables_are_counted_as_spoken(word, count):
    assert syllables(word) == count


def test_the_grade_follows_the_published_formula():
    # 6 words, 1 sentence, 6 syllables: 0.39 x 6 + 11.8 x 1 - 15.59 = -1.45
    assert grade(["The cat sat on the mat."]) == pytest.approx(-1.45, abs=0.01)


def test_the_median_page_reads_at_grade_eight_and_the_worst_at_ten():
    found = grades()
    hard = {name: round(level, 1) for name, level in found.items() if level > WORST_AT_MOST}
    assert hard == {} and median(found.values()) <= MEDIAN_AT_MOST


if __name__ == "__main__":
    table = sorted(grades().items(), key=lambda row: row[1])
    for page, level in table:
        print(f"{level:5.1f}  {page}")
    print(f"{median(level for _, level in table):5.1f}  median of {len(table)} pages")
