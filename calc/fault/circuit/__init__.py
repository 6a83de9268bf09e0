"""A circuit of impedances and sources, solved, and what comes of ranges."""
