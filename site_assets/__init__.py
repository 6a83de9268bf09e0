"""Everything that turns the handbook's pages and calculators into a site."""
