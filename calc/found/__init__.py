"""What is found on site, held against what the rule requires."""
