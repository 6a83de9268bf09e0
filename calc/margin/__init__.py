"""How far one input is from another answer."""
