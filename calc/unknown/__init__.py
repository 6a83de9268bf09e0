"""Unknown as a value: an input that is not known, or known only as a range, and what the answer is then."""
