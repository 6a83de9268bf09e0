"""What a result looks like: the same HTML at build time and in the browser."""
