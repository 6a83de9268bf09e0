"""The editions of NFPA 70, the National Electrical Code, that the rules know."""

EDITIONS = ("2017", "2020", "2023", "2026")
SHOWN_UNTIL_CHOSEN = "2023"
