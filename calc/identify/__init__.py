"""Which name is right for a part, by where it runs and what it joins."""
